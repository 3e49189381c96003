#pragma once
#include "model/case.h"
#include "model/findings.h"
#include "model/upkeep.h"

namespace model {

/// One step of laying the kitchen out as planned.
struct WorkStep {
    std::string step;
    std::optional<Id> place; // none: of the whole kitchen
    std::vector<Id> things;  // that are put there, as the shelf is counted: see shelf_side.h
    int minutes = 0;         // a default of this program
    Doer who = Doer::Together;
    std::string help;               // what somebody else lifts or sets down, and why; or empty
    std::vector<std::string> first; // what is sorted out before it, a sentence each
    std::string pause;              // said after the step: where the kitchen stands; or empty
};

/// Sort out by date, then unit by unit, hazards first, then what is used most: at each pause, after an hour
/// at most, the units done are whole, what waits on the tray is named, and the kitchen is usable. Empty
/// without a plan.
[[nodiscard]] std::vector<WorkStep> workOrder(const Case &record, const Findings &findings, Date on);

} // namespace model
