#include "model/plan_places.h"
#include "model/sentence.h"
#include "model/usual_sizes.h"
#include <algorithm>

namespace model {
namespace {

constexpr double cornerMetres = 0.6; // what stands on two walls meets in a square as deep as a usual unit

/// One wall of the walk: where it begins and which way it runs.
struct Wall {
    Position from;
    double floor = 0, top = 0, wall = 0; // metres taken of the three layers

    [[nodiscard]] double length() const { return std::max({floor, top, wall}); }
    [[nodiscard]] Position at(double along) const {
        return {from.x + along * from.runX, from.y + along * from.runY, from.runX, from.runY};
    }
    /// The next wall round the corner: to the right, since the walk is clockwise.
    [[nodiscard]] Wall next() const {
        Position corner = at(length() + cornerMetres);
        corner.runX = -from.runY;
        corner.runY = from.runX;
        return {corner};
    }
};

std::map<Id, Position> positions(const std::vector<Unit> &units) {
    Wall wall;
    std::map<Id, Position> out;
    for (const auto &unit : units) {
        if (unit.corner && !out.empty())
            wall = wall.next();
        const double width = (unit.width ? unit.width->value : usualUnitWidth(unit.kind)).value / 100;
        const bool hangs = unit.kind == UnitKind::WallCupboard || unit.kind == UnitKind::Rack;
        const bool tall = unit.kind == UnitKind::Larder || unit.kind == UnitKind::Fridge;
        if (tall)
            wall.floor = wall.top = wall.wall = wall.length();
        double &layer = hangs ? wall.wall : unit.kind == UnitKind::Worktop ? wall.top : wall.floor;
        out[unit.id] = wall.at(layer + width / 2);
        layer += width;
        if (tall)
            wall.floor = wall.top = wall.wall = layer;
    }
    return out;
}

/// Position of each work area: the first unit that names it.
std::map<WorkArea, Position> areaPositions(const std::vector<Unit> &units,
                                           const std::map<Id, Position> &position) {
    std::map<WorkArea, Position> out;
    for (const auto &unit : units) {
        if (unit.area != WorkArea::None)
            out.emplace(unit.area, position.at(unit.id));
    }
    return out;
}

Position middle(const std::map<Id, Position> &position) {
    Position sum;
    for (const auto &[id, here] : position) {
        sum.x += here.x / static_cast<double>(position.size());
        sum.y += here.y / static_cast<double>(position.size());
    }
    return sum;
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
            return fail(
                ErrorCode::Missing,
                Sentence::tr("The place {1} belongs to no unit. Enter its unit again.", {place.name}));
        const auto count = std::count_if(record.places.begin(), record.places.end(),
                                         [&](const Place &p) { return p.unit == place.unit; });
        const UsualSize size = sizeOf(place, *unit, static_cast<int>(count));
        const Position &here = walk.units.at(place.unit);
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
             .x = here.x,
             .y = here.y,
             .runX = here.runX,
             .runY = here.runY});
        out.places.push_back(place.id);
    }
    if (out.places.empty())
        return fail(ErrorCode::Missing,
                    Sentence::tr("There is no place yet. Enter one unit with a shelf or a drawer first."));
    return {};
}

} // namespace model
