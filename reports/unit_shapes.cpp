#include "reports/unit_shapes.h"
#include "reports/paper_fields.h"
#include <algorithm>

namespace reports {

using namespace model;

namespace {

bool isCold(UnitKind kind) {
    return kind == UnitKind::Fridge || kind == UnitKind::Freezer;
}

} // namespace

Shape shapeOf(UnitKind kind) {
    switch (kind) {
    case UnitKind::WallCupboard:
        return {Above, 140, 210, 60};
    case UnitKind::Rack:
        return {Above, 140, 180, 40};
    case UnitKind::Worktop:
        return {Worktop, 90, 120, 60};
    case UnitKind::BaseCupboard:
    case UnitKind::DrawerStack:
        return {Below, 0, 90, 60};
    case UnitKind::Larder:
        return {FullHeight, 0, 210, 60};
    case UnitKind::Fridge:
    case UnitKind::Freezer:
        return {FullHeight, 0, 180, 60};
    }
    return {FullHeight, 0, 210, 60};
}

bool standsUnder(const Case &record, const Unit &lower, const Unit &upper) {
    const auto below = placesOf(record, lower.id), above = placesOf(record, upper.id);
    if (!isCold(lower.kind) || !isCold(upper.kind) || below.empty() || above.empty())
        return false;
    return std::all_of(below.begin(), below.end(), [&](const Place *low) {
        return std::all_of(above.begin(), above.end(), [&](const Place *high) {
            return low->height && high->height && low->height->value < high->height->value;
        });
    });
}

} // namespace reports
