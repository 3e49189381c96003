#pragma once
#include "model/planning.h"

/// The therapist's decisions about the plan: what they cost, which of them clash, what other weights would
/// change.
namespace model {

/// The record with this decision; it takes the place of an earlier one about the same of the same thing.
[[nodiscard]] Case withWish(Case record, Overrule wish);
/// "Rice: to stand in larder, top shelf, since the client wants it there."
[[nodiscard]] std::string wishInWords(const Case &record, const Overrule &wish);

/// The plan with one more decision, all else changed as little as possible.
struct WishOutcome {
    Case record;      // with the decision and its plan
    double price = 0; // minutes a week that the whole plan costs more
    int changed = 0;  // other lines that change with it
};
/// Fails with Refused and says which rule, or which decisions clash; with Missing where there is no plan yet.
[[nodiscard]] Result<WishOutcome> tryWish(const Case &record, const Findings &findings, const Overrule &wish,
                                          Date on);

/// The decisions without any one of which a plan would be possible: none if it is possible as it is, or not
/// even without all of them. The fewest found: each alone, then each two, then one set of which none can be
/// spared.
[[nodiscard]] std::vector<Overrule> clashingWishes(const Case &record, const Findings &findings);
/// "These decisions clash: ... . Take one of them back."
[[nodiscard]] std::string clashInWords(const Case &record, const std::vector<Overrule> &clash);

/// One figure of the plan that people can picture, before and after.
struct PlanFigure {
    std::string name; // "Wrong picks a week"
    double value = 0;
    [[nodiscard]] std::string words() const; // "3.4"
    friend bool operator==(const PlanFigure &, const PlanFigure &) = default;
};
/// Wrong picks, awkward reaches, metres, marks to learn, things marked, things moved, units a group. Fails
/// with Missing where there is no plan, or it holds not all things.
[[nodiscard]] Result<std::vector<PlanFigure>> figuresOf(const Case &record, const Findings &findings);
/// The same of a problem that is built already.
[[nodiscard]] std::vector<PlanFigure> figuresOf(const Problem &problem, const Placement &shown);

/// What a plan by other weights would be, beside the shown one.
struct SideBySide {
    std::vector<PlanFigure> now, then; // in the same order
    std::vector<std::string> changes;  // line by line, in words
};
[[nodiscard]] Result<SideBySide> compareWeights(const Case &record, const Findings &findings,
                                                const PlanWeights &other, Date on);

} // namespace model
