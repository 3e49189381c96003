#pragma once
#include "model/case.h"

namespace model {

/// One step of laying the kitchen out as planned.
struct WorkStep {
    std::string step;
    std::optional<Id> place; // none: of the whole kitchen
    std::vector<Id> things;  // that are put there, from the left
    int minutes = 0;         // a default of this program
    std::string pause;       // said after the step: where the kitchen stands; or empty
};

/// Empty and clean, then place by place: hazards first, then what is used most, so that the kitchen is usable
/// at the end of every hour. Empty without a plan.
[[nodiscard]] std::vector<WorkStep> workOrder(const Case &record);

} // namespace model
