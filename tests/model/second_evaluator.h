#pragma once
#include "model/problem.h"
#include <string>
#include <vector>

/// A second count of the plan objective and its rules, written from the description of the model and not from
/// model/evaluate.cpp, so that the two can be held against each other. Plain and slow on purpose.
namespace model::fixtures {

struct SecondCount {
    Terms terms;
    /// One entry for each rule that is broken: "height 3" (item 3), "width 2" and "chemical 2" (place 2),
    /// "alike 3 7" and "apart 3 7" (items 3 and 7). Sorted.
    std::vector<std::string> broken;
};

[[nodiscard]] SecondCount secondCount(const Problem &problem, const Placement &placement);

} // namespace model::fixtures
