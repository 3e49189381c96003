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

/// Usual correlation between goals in the T score.
inline constexpr double rhoUsual = 0.3;
/// Goal attainment T score, 50 + 10 sum(w x) / sqrt((1 - rho) sum(w^2) + rho (sum w)^2); weights that are all
/// 0 count as all 1. None without a goal. Never to be shown without the levels themselves: they are ordinal.
/// Source: Kiresuk & Sherman 1968 (the formula printed in Turner-Stokes 2009 was wrong and has an erratum).
[[nodiscard]] std::optional<double> attainmentT(const std::vector<std::pair<double, int>> &weightAndLevel,
                                                double rho);

/// T score of the latest level of each rated goal, weight = importance times difficulty. None if none is
/// rated.
[[nodiscard]] std::optional<double> attainmentNow(const Case &record);

/// What the last visit left open, in words: goals due, safety not re-confirmed, not tested, carried over.
[[nodiscard]] std::vector<std::string> openItems(const Case &record, Date on);

} // namespace model
