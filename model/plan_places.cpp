#include "model/plan_places.h"
#include "model/usual_sizes.h"
#include <algorithm>

namespace model {
namespace {

std::map<Id, double> positions(const std::vector<Unit> &units) {
    double floor = 0;
    double top = 0;
    double wall = 0;
    std::map<Id, double> out;
    for (const auto &unit : units) {
        const double width = (unit.width ? unit.width->value : usualUnitWidth(unit.kind)).value / 100;
        const bool hangs = unit.kind == UnitKind::WallCupboard || unit.kind == UnitKind::Rack;
        const bool tall = unit.kind == UnitKind::Larder || unit.kind == UnitKind::Fridge;
        if (tall)
            floor = top = wall = std::max({floor, top, wall});
        double &layer = hangs ? wall : unit.kind == UnitKind::Worktop ? top : floor;
        out[unit.id] = layer + width / 2;
        layer += width;
        if (tall)
            floor = top = wall = layer;
    }
    return out;
}

/// Position of each work area: the first unit that names it.
std::map<WorkArea, double> areaPositions(const std::vector<Unit> &units,
                                         const std::map<Id, double> &position) {
    std::map<WorkArea, double> out;
    for (const auto &unit : units) {
        if (unit.area != WorkArea::None)
            out.emplace(unit.area, position.at(unit.id));
    }
    return out;
}

double middle(const std::map<Id, double> &position) {
    double sum = 0;
    for (const auto &[id, x] : position)
        sum += x;
    return position.empty() ? 0 : sum / static_cast<double>(position.size());
}

} // namespace

Walk walkOf(std::vector<Unit> units) {
    std::stable_sort(units.begin(), units.end(),
                     [](const Unit &a, const Unit &b) { return a.order < b.order; });
    const auto position = positions(units);
    return {position, areaPositions(units, position), middle(position)};
}

ProblemStorage storageOf(Storage storage) {
    switch (storage) {
    case Storage::Dry:
        return ProblemStorage::Dry;
    case Storage::Fridge:
        return ProblemStorage::Fridge;
    case Storage::Freezer:
        return ProblemStorage::Freezer;
    }
    return ProblemStorage::Dry;
}

Result<void> addPlaces(const Case &record, const Findings &findings, const Walk &walk, PlanProblem &out) {
    std::map<Id, int> bays;
    for (const auto &place : record.places) {
        const auto unit = std::find_if(record.units.begin(), record.units.end(),
                                       [&](const Unit &u) { return u.id == place.unit; });
        if (unit == record.units.end())
            return fail(ErrorCode::Missing,
                        "The place " + place.name + " belongs to no unit. Enter its unit again.");
        const auto count = std::count_if(record.places.begin(), record.places.end(),
                                         [&](const Place &p) { return p.unit == place.unit; });
        const UsualSize size = sizeOf(place, *unit, static_cast<int>(count));
        const bool high = size.height >= findings.childReach;
        out.problem.places.push_back(
            {.name = placeWords(record, place.id),
             .heightCm = size.height.value,
             .widthCm = size.width.value,
             .depthCm = size.depth.value,
             .clearCm = size.clear.value,
             .storage = storageOf(place.storage),
             .secure = high || unit->lockable == Answer::Yes,
             .lit = place.light == Light::Bright || place.light == Light::Fair,
             .counter = place.counter,
             .bay = bays.emplace(place.unit, static_cast<int>(bays.size())).first->second,
             .x = walk.units.at(place.unit)});
        out.places.push_back(place.id);
    }
    if (out.places.empty())
        return fail(ErrorCode::Missing,
                    "There is no place yet. Enter one unit with a shelf or a drawer first.");
    return {};
}

} // namespace model
