#pragma once
#include "model/problem.h"
#include <string>
#include <vector>

namespace model {

/// A rule that a placement breaks; indexes into the problem.
struct BrokenRule {
    std::string rule; // "storage", "height", "depth", "reach", "heavy", "hot", "hazard", "keep", "width", "chemical", "alike", "marker"
    std::vector<int> items;
    std::vector<int> places;
    friend bool operator==(const BrokenRule &, const BrokenRule &) = default;
};

/// Full recount of the objective, term by term, from nothing but the problem.
[[nodiscard]] Terms evaluate(const Problem &problem, const Placement &placement);
/// All hard rules that the placement breaks, in the order of items, then places, then pairs.
[[nodiscard]] std::vector<BrokenRule> brokenRules(const Problem &problem, const Placement &placement);
/// The rules that keep item `i` out of place `p`, whatever else stands there; empty if it may stand there.
[[nodiscard]] std::vector<std::string> placeRules(const Problem &problem, int i, int p);
/// True if code `c` may be put on item `i` standing in `p`.
[[nodiscard]] bool codeFits(const Problem &problem, int i, int p, int c);
/// Look-alike measure 0..1 of two items.
[[nodiscard]] double alike(const ProblemItem &a, const ProblemItem &b);

/// Natural figures shown beside the total.
struct NaturalFigures {
    double wrongPicksPerWeek = 0; // capped at the uses of the things concerned
    double awkwardReachesPerWeek = 0;
    double metresPerWeek = 0;
    int moved = 0, markerTypes = 0, marked = 0;
    double baysPerGroup = 0;
};
[[nodiscard]] NaturalFigures naturalFigures(const Problem &problem, const Placement &placement);

} // namespace model
