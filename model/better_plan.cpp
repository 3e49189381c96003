#include "model/better_plan.h"
#include "model/rule_words.h"
#include "model/sentence.h"
#include <algorithm>
#include <cmath>

namespace model {
namespace {

constexpr MilliMinutes toldApart = 100;

std::string moves(int count) {
    return count == 1 ? Sentence::tr("moves 1 thing")
                      : Sentence::tr("moves {1} things", {std::to_string(count)});
}

std::string marksOtherwise(int count) {
    return count == 1 ? Sentence::tr("marks otherwise 1 thing")
                      : Sentence::tr("marks otherwise {1} things", {std::to_string(count)});
}

void countChanges(const Plan &shown, BetterPlan &out) {
    for (const PlanLine &line : out.plan.lines) {
        const auto old = std::find_if(shown.lines.begin(), shown.lines.end(),
                                      [&](const PlanLine &one) { return one.thing == line.thing; });
        if (old == shown.lines.end() || old->place != line.place)
            ++out.moved;
        else if (old->marker != line.marker)
            ++out.marked;
    }
}

} // namespace

SolveOptions behindOptions() {
    SolveOptions options;
    options.moves *= 2;
    options.threads = 1;
    return options;
}

Result<std::optional<BetterPlan>> betterPlan(const Case &record, const Findings &findings,
                                             const SolveOptions &options, Date on) {
    if (!record.plan || record.plan->lines.empty())
        return fail(ErrorCode::Missing, Sentence::tr("There is no plan yet. Plan first."));
    const auto built = planProblem(record, findings);
    if (!built)
        return tl::unexpected(built.error());
    const auto shown = shownPlacement(*built, *record.plan);
    if (!shown)
        return tl::unexpected(shown.error());
    const MilliMinutes cost = evaluate(built->problem, *shown).total();
    return makePlan(record, findings, options, on).map([&](Plan plan) -> std::optional<BetterPlan> {
        if (plan.lines.empty() || cost - plan.terms.total() < toldApart)
            return std::nullopt;
        BetterPlan out{std::move(plan)};
        out.minutesLess = static_cast<double>(cost - out.plan.terms.total()) / 1000;
        countChanges(*record.plan, out);
        return out;
    });
}

std::string offerInWords(const BetterPlan &offer) {
    const auto less = static_cast<MilliMinutes>(std::llround(offer.minutesLess * 1000));
    const std::string minutes = minutesInWords(less);
    if (offer.moved > 0 && offer.marked > 0)
        return Sentence::tr("A plan {1} a week better exists; it {2} and {3}.",
                            {minutes, moves(offer.moved), marksOtherwise(offer.marked)});
    return Sentence::tr("A plan {1} a week better exists; it {2}.",
                        {minutes, offer.moved > 0 ? moves(offer.moved) : marksOtherwise(offer.marked)});
}

} // namespace model
