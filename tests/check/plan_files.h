#pragma once
#include "model/problem.h"
#include <string>
#include <vector>

/// The files of plan_case.
namespace check {

/// A placement problem and the ids that its indexes have in the file.
struct PlanCase {
    model::Problem problem;
    std::vector<int> itemIds, placeIds;
};

/// Throws BadInput.
[[nodiscard]] PlanCase readPlanCase(const std::string &file);
/// Place ids become indexes. Throws BadInput, also if the plan is not one for this case.
[[nodiscard]] model::Placement readPlacement(const std::string &file, const PlanCase &planCase);

/// Position of `id`, or bad input saying that `what` has no such id.
[[nodiscard]] int indexOf(const std::vector<int> &ids, int id, const std::string &what);

} // namespace check
