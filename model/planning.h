#pragma once
#include "model/case.h"
#include "model/findings.h"
#include "model/marks.h"
#include "model/solve.h"

namespace model {

/// The placement problem of a case, with the ids that its indexes stand for.
struct PlanProblem {
    Problem problem;
    std::vector<Id> things;            // per item
    std::vector<Id> places;            // per place
    std::vector<std::string> markers;  // per code from 1: kit keys
    std::vector<MeaningMark> meanings; // reserved first
};

/// Builds the problem. What is not measured takes the cautious or usual value. Fails with Missing (no place,
/// no thing, a thing without size) with a sentence that names it.
[[nodiscard]] Result<PlanProblem> planProblem(const Case &record, const Findings &findings);

/// True if the pack has, may have, or was not checked for an allergen that the client avoids.
[[nodiscard]] bool hasAvoidedAllergen(const Thing &thing, const Diet &diet);
/// Meaning marks that the thing carries, see meanings.h.
[[nodiscard]] std::vector<std::string> meaningsOf(const Thing &thing, const Diet &diet);

/// A fresh plan. A plan with shortages and no lines is an answer, not an error. Fails with Missing, or with
/// Refused if it was stopped before a plan was found.
[[nodiscard]] Result<Plan> makePlan(const Case &record, const Findings &findings, const SolveOptions &options,
                                    Date on);
/// The plan that keeps the lines of record.plan wherever it can; the same plan if nothing changed that it
/// rests on.
[[nodiscard]] Result<Plan> revisePlan(const Case &record, const Findings &findings,
                                      const SolveOptions &options, Date on);
/// The budget with which prices are worked out; a revision with the same budget costs what was said.
[[nodiscard]] SolveOptions revisionOptions();

/// The shown plan in the numbers of the problem. Fails with Missing if things or places changed since it was
/// made.
[[nodiscard]] Result<Placement> shownPlacement(const PlanProblem &problem, const Plan &plan);

/// Why one line is so, in one or two sentences, with runner-up and price.
struct LineWhy {
    std::string because;
    std::string runnerUp; // "Larder, top shelf: 2.0 minutes a week more."
    std::optional<Id> runnerUpPlace;
    double runnerUpMinutes = 0; // a week
};
[[nodiscard]] Result<LineWhy> whyLine(const Case &record, const Findings &findings, const Id &thing);

/// The same for many lines of one plan, quicker.
class WhyLines {
public:
    /// Fails with Missing if there is no plan, or if things or places changed since it was made.
    [[nodiscard]] static Result<WhyLines> of(const Case &record, const Findings &findings);
    [[nodiscard]] Result<LineWhy> why(const Id &thing) const;
    [[nodiscard]] const PlanProblem &problem() const { return m_built; }
    [[nodiscard]] const Placement &shown() const { return m_shown; }

private:
    WhyLines(const Case &record, PlanProblem built, Placement shown);

    Case m_record;
    PlanProblem m_built;
    Placement m_shown;
    LineReasons m_reasons;
};
/// Whether the thing may be overruled to `place`, and the price in minutes a week: what the whole plan costs
/// more with that line so, all others changed as little as possible. Fails with Refused and says which rule,
/// and for rules of safety that the fact itself has to be corrected.
[[nodiscard]] Result<double> priceOf(const Case &record, const Findings &findings, const Id &thing,
                                     const Id &place);

/// The name of a thing as it is written on its label in this medium, before it is fitted: see short_name.h
/// and reports/labels.h.
[[nodiscard]] std::string labelText(const Thing &thing, MarkMedium medium);

/// What differs between two plans, in words, one sentence a thing.
[[nodiscard]] std::vector<std::string> planChanges(const Case &before, const Case &after);

/// "wall cupboard left of the cooker, top shelf".
[[nodiscard]] std::string placeWords(const Case &record, const Id &place);

} // namespace model
