#pragma once
#include "model/planning.h"
#include <map>

namespace model {

/// In metres from where the walk begins, and which way left to right runs there for somebody who faces the
/// wall.
struct Position {
    double x = 0, y = 0;
    double runX = 1, runY = 0;
};
/// Where things are: the walk along each wall with three layers, floor, worktop and wall; a unit of full
/// height ends all three, a corner turns to the right.
struct Walk {
    std::map<Id, Position> units;       // the middle of each
    std::map<WorkArea, Position> areas; // the first unit that names it
    Position middle;                    // of the units: for things without a work area
};
[[nodiscard]] Walk walkOf(std::vector<Unit> units);

[[nodiscard]] ProblemStorage storageOf(Storage storage);

/// Adds the places with measured or usual sizes, light and locks that were not asked as dim and open. Fails
/// with Missing if there is none, or one belongs to no unit.
[[nodiscard]] Result<void> addPlaces(const Case &record, const Findings &findings, const Walk &walk,
                                     PlanProblem &out);

} // namespace model
