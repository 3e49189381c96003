#pragma once
#include "model/planning.h"
#include <map>

namespace model {

/// Where things are along the wall, in metres from the door: the walk with three layers, floor, worktop and
/// wall; a unit of full height ends all three.
struct Walk {
    std::map<Id, double> units;       // the middle of each
    std::map<WorkArea, double> areas; // the first unit that names it
    double middle = 0;                // of the units: for things without a work area
};
[[nodiscard]] Walk walkOf(std::vector<Unit> units);

[[nodiscard]] ProblemStorage storageOf(Storage storage);

/// Adds the places with measured or usual sizes, light and locks that were not asked as dim and open. Fails
/// with Missing if there is none, or one belongs to no unit.
[[nodiscard]] Result<void> addPlaces(const Case &record, const Findings &findings, const Walk &walk,
                                     PlanProblem &out);

} // namespace model
