#pragma once
#include "model/problem.h"
#include <string>
#include <vector>

namespace model {

/// A rule that a placement breaks; indexes into the problem.
struct BrokenRule {
    /// "storage", "height", "depth", "reach", "heavy", "hot", "hazard", "keep", "overruled", "marker" (of one
    /// item), "width", "chemical", "allergen" (of one place), "alike", "once", "apart" (of two items),
    /// "kinds" (of all)
    std::string rule;
    std::vector<int> items;
    std::vector<int> places;
    friend bool operator==(const BrokenRule &, const BrokenRule &) = default;
};

/// Full recount of the objective, term by term, from nothing but the problem.
[[nodiscard]] Terms evaluate(const Problem &problem, const Placement &placement);
/// The same with the risk of no pairs but those with item `i`: where only its line changes, the difference of
/// two of these is that of two full recounts.
[[nodiscard]] Terms evaluateAround(const Problem &problem, const Placement &placement, int i);
/// All hard rules that the placement breaks, in the order of items, then places, then pairs.
[[nodiscard]] std::vector<BrokenRule> brokenRules(const Problem &problem, const Placement &placement);
/// The rules that keep item `i` out of place `p`, whatever else stands there, "width" if it alone is too wide
/// among them; empty if it may stand there.
[[nodiscard]] std::vector<std::string> placeRules(const Problem &problem, int i, int p);
/// True if code `c` may be put on item `i` standing in `p`.
[[nodiscard]] bool codeFits(const Problem &problem, int i, int p, int c);
/// Food, or what food touches: never in one place with a chemical.
[[nodiscard]] bool keptFromChemicals(const ProblemItem &item);
/// True if the two may not share a place: a chemical and what is kept from it, or food with the avoided
/// allergen and food without it. The rule broken, or nothing.
[[nodiscard]] std::string sharingRule(const Problem &problem, int i, int j);
/// True if code `c` has to be learnt.
[[nodiscard]] bool isLearnt(const Problem &problem, int c);
/// Look-alike measure 0..1 of two items.
[[nodiscard]] double alike(const ProblemItem &a, const ProblemItem &b);

/// Widths and heights of all items side by side: rules most pairs out without a look at the items.
class Sizes {
public:
    struct Size {
        double widthCm, heightCm;
    };
    static constexpr double farthestAlike = 6.0; // exp(-6.0 / 2) is under the least measure
    static double distance(const Size &a, const Size &b) {
        constexpr double widthScaleCm = 1.0, heightScaleCm = 2.0;
        const double wide = (a.widthCm - b.widthCm) / widthScaleCm;
        const double high = (a.heightCm - b.heightCm) / heightScaleCm;
        return wide * wide + high * high;
    }

    explicit Sizes(const std::vector<ProblemItem> &items);
    /// True if the two differ so much in size that their look-alike measure is 0.
    [[nodiscard]] bool differ(int i, int j) const { return distance(m_sizes[i], m_sizes[j]) > farthestAlike; }

private:
    std::vector<Size> m_sizes;
};

/// Natural figures shown beside the total.
struct NaturalFigures {
    double wrongPicksPerWeek = 0;     // of each thing at most its uses: the sum over pairs overstates
    double awkwardReachesPerWeek = 0; // uses outside knuckle to shoulder, or of glass above the shoulder
    double metresPerWeek = 0;         // walked, there and back
    int moved = 0, markerTypes = 0, marked = 0;
    double baysPerGroup = 0;
};
[[nodiscard]] NaturalFigures naturalFigures(const Problem &problem, const Placement &placement);

} // namespace model
