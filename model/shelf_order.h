#pragma once
#include "model/problem.h"
#include <vector>

/// The order of things on one shelf: a second stage, when it is settled what stands where.
namespace model {

/// What a row costs, in mmin a week: the risk of each two neighbours, 200 for each change of sub-category,
/// and for each thing its way along the shelf from the side where it is used. Single row, a finger's gap
/// between.
[[nodiscard]] MilliMinutes rowCost(const Problem &problem, const Placement &placement, int place,
                                   const std::vector<int> &row);
/// The items of a place from the left: the cheapest row for up to 12 things, else a row that no turning round
/// of a stretch makes cheaper. Of equal rows the one that is smaller by group, sub-category and name.
[[nodiscard]] std::vector<int> shelfRow(const Problem &problem, const Placement &placement, int place);

} // namespace model
