#pragma once
#include "model/case.h"

namespace model {

/// Where a goal stands: levels by visit in order, and what may be said of them.
struct GoalProgress {
    Id goal;
    std::vector<std::pair<Date, int>> levels;
    std::string sentence; // "Two levels below what was expected at first, one above it now."
};
[[nodiscard]] std::vector<GoalProgress> goalProgress(const Case &record);

/// Goal attainment T score of the latest levels; rho = 0.3. None without a rated goal.
/// Source: Kiresuk & Sherman 1968.
[[nodiscard]] std::optional<double> attainmentT(const std::vector<std::pair<double, int>> &weightAndLevel, double rho);

/// What the last visit left open, in words: goals due, safety not re-confirmed, not tested, carried over.
[[nodiscard]] std::vector<std::string> openItems(const Case &record, Date on);

} // namespace model
