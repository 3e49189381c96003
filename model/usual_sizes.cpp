#include "model/usual_sizes.h"

namespace model {
namespace {

/// Of one kind of unit, in cm: bottom place above the floor, step from place to place, depth inside.
struct Form {
    double unitWidth, bottom, step, depth;
};

Form formOf(UnitKind kind) {
    switch (kind) {
    case UnitKind::WallCupboard:
        return {60, 140, 28, 30};
    case UnitKind::BaseCupboard:
        return {60, 15, 35, 50};
    case UnitKind::DrawerStack:
        return {50, 15, 22, 45};
    case UnitKind::Larder:
        return {60, 15, 35, 40};
    case UnitKind::Worktop:
        return {100, 90, 0, 55};
    case UnitKind::Fridge:
        return {60, 40, 28, 35};
    case UnitKind::Freezer:
        return {60, 15, 22, 40};
    case UnitKind::Rack:
        return {40, 110, 20, 15};
    }
    return {60, 90, 30, 30};
}

constexpr double sides = 4;     // both side walls of a unit
constexpr double thickness = 2; // of a shelf

} // namespace

Centimetres usualUnitWidth(UnitKind kind) {
    return {formOf(kind).unitWidth};
}

UsualSize usualSize(UnitKind kind, Centimetres unitWidth, int order, int count) {
    const Form form = formOf(kind);
    const double above = form.step * (count - 1 - order);
    return {{unitWidth.value - sides}, {form.depth}, {form.step - thickness}, {form.bottom + above}};
}

UsualSize sizeOf(const Place &place, const Unit &unit, int count) {
    const Centimetres outer = unit.width ? unit.width->value : usualUnitWidth(unit.kind);
    UsualSize size = usualSize(unit.kind, outer, place.order, count);
    const auto take = [](const std::optional<Length> &measured, Centimetres &usual) {
        if (measured)
            usual = measured->value;
    };
    take(place.width, size.width);
    take(place.depth, size.depth);
    take(place.clear, size.clear);
    take(place.height, size.height);
    return size;
}

} // namespace model
