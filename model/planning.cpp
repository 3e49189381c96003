#include "model/planning.h"
#include "model/evaluate.h"
#include "model/kit.h"
#include "model/meanings.h"
#include "model/plan_wishes.h"
#include "model/sentence.h"
#include "model/shelf_order.h"
#include "model/shelf_side.h"
#include <algorithm>
#include <tuple>

namespace model {
namespace {

constexpr double changeMinutes = 0.3; // charged for a changed line, so that a re-plan changes little

const Thing *thingOf(const Case &record, const Id &id) {
    const auto found = std::find_if(record.things.begin(), record.things.end(),
                                    [&](const Thing &thing) { return thing.id == id; });
    return found == record.things.end() ? nullptr : &*found;
}

/// The cheapest row of each place, counted from the side that is attended to.
std::vector<int> orderOnShelf(const Case &record, const PlanProblem &built, const Placement &placement) {
    const bool fromRight = countsFromRight(record);
    std::vector<int> order(built.things.size());
    for (int p = 0; p < static_cast<int>(built.places.size()); ++p) {
        std::vector<int> here = shelfRow(built.problem, placement, p);
        if (fromRight)
            std::reverse(here.begin(), here.end());
        for (int k = 0; k < static_cast<int>(here.size()); ++k)
            order[here[k]] = k;
    }
    return order;
}

MarkMedium labelMedium(const Case &record, const std::string &marker) {
    if (const Marker *kit = markerIn(record, marker); kit != nullptr && kit->medium != MarkMedium::Touch)
        return kit->medium;
    return record.client.readsBraille ? MarkMedium::Braille : MarkMedium::LargePrint;
}

/// Meanings of the thing for which a mark is reserved.
std::vector<std::string> markedMeanings(const Thing &thing, const Diet &diet,
                                        const std::vector<MeaningMark> &marks) {
    std::vector<std::string> out = meaningsOf(thing, diet);
    std::erase_if(out, [&](const std::string &meaning) {
        return std::none_of(marks.begin(), marks.end(),
                            [&](const auto &mark) { return mark.meaning == meaning; });
    });
    return out;
}

/// Her own wording, or the short name as this medium writes it.
std::string wordingOf(const Case &record, const Thing &thing, const std::string &marker,
                      const std::vector<MeaningMark> &reserved) {
    for (const auto &overrule : record.overrules) {
        if (overrule.thing == thing.id && !overrule.wording.empty())
            return overrule.wording;
    }
    Thing named = thing;
    if (const std::string warning = warningWord(thing, record.diet, reserved); !warning.empty())
        named.name += ", " + warning;
    return labelText(named, labelMedium(record, marker));
}

Plan emptyPlan(const PlanProblem &built, Date on) {
    Plan plan;
    plan.id = newId();
    plan.made = on;
    plan.meaningMarks = built.meanings;
    return plan;
}

Plan planOf(const Case &record, const PlanProblem &built, const Placement &placement, const Terms &terms,
            Date on) {
    Plan plan = emptyPlan(built, on);
    plan.terms = terms;
    const auto order = orderOnShelf(record, built, placement);
    for (std::size_t i = 0; i < built.things.size(); ++i) {
        const Thing &thing = *thingOf(record, built.things[i]);
        const int code = placement.code[i];
        const std::string marker = code == 0 ? "" : built.markers[code - 1];
        plan.lines.push_back({.thing = thing.id,
                              .place = built.places[placement.place[i]],
                              .order = order[i],
                              .marker = marker,
                              .meanings = markedMeanings(thing, record.diet, built.meanings),
                              .labelText = wordingOf(record, thing, marker, built.meanings)});
    }
    return plan;
}

Plan planWithout(const PlanProblem &built, Date on) {
    Plan plan = emptyPlan(built, on);
    for (const auto &shortage : shortages(built.problem)) {
        Shortage out{.rule = shortage.rule,
                     .needCm = shortage.needCm,
                     .haveCm = shortage.haveCm,
                     .things = {},
                     .places = {},
                     .sentence = shortage.sentence};
        for (const int i : shortage.items)
            out.things.push_back(built.things[i]);
        for (const int p : shortage.places)
            out.places.push_back(built.places[p]);
        plan.shortages.push_back(std::move(out));
    }
    return plan;
}

/// If it is her own decisions that leave no plan, that comes first.
Plan explained(Plan plan, const Case &record, const Findings &findings) {
    const std::vector<Overrule> clash = clashingWishes(record, findings);
    if (clash.empty())
        return plan;
    Shortage shortage{"wishes", std::nullopt, std::nullopt, {}, {}, clashInWords(record, clash)};
    for (const Overrule &wish : clash)
        shortage.things.push_back(wish.thing);
    plan.shortages.insert(plan.shortages.begin(), shortage);
    return plan;
}

Result<Plan> planFrom(const Case &record, const Findings &findings, const PlanProblem &built,
                      const Solution &solution, Date on) {
    if (solution.placement)
        return planOf(record, built, *solution.placement, evaluate(built.problem, *solution.placement), on);
    if (solution.stopped)
        return fail(ErrorCode::Refused,
                    Sentence::tr("Planning was stopped before a plan was found. Plan again."));
    return explained(planWithout(built, on), record, findings);
}

int codeOf(const PlanProblem &built, const std::string &marker) {
    const auto found = std::find(built.markers.begin(), built.markers.end(), marker);
    return found == built.markers.end() ? 0 : static_cast<int>(found - built.markers.begin()) + 1;
}

int indexOf(const std::vector<Id> &ids, const Id &id) {
    const auto found = std::find(ids.begin(), ids.end(), id);
    return found == ids.end() ? -1 : static_cast<int>(found - ids.begin());
}

/// The shown plan as far as it still fits; -1 for new things and things of a place that is gone.
Placement startFrom(const PlanProblem &built, const Plan &plan) {
    Placement out{std::vector<int>(built.things.size(), -1), std::vector<int>(built.things.size(), 0)};
    for (const auto &line : plan.lines) {
        const int i = indexOf(built.things, line.thing);
        if (i < 0)
            continue;
        out.place[i] = indexOf(built.places, line.place);
        out.code[i] = codeOf(built, line.marker);
    }
    return out;
}

bool sameMeanings(const Case &record, const PlanProblem &built) {
    return record.plan->meaningMarks == built.meanings &&
           std::all_of(record.plan->lines.begin(), record.plan->lines.end(), [&](const PlanLine &line) {
               const Thing *thing = thingOf(record, line.thing);
               return thing != nullptr &&
                      line.meanings == markedMeanings(*thing, record.diet, built.meanings) &&
                      line.labelText == wordingOf(record, *thing, line.marker, built.meanings);
           });
}

/// Still legal and costing what it cost: nothing changed that the plan rests on.
bool standsUnchanged(const Case &record, const PlanProblem &built) {
    const auto shown = shownPlacement(built, *record.plan);
    return shown && sameMeanings(record, built) && brokenRules(built.problem, *shown).empty() &&
           evaluate(built.problem, *shown) == record.plan->terms;
}

Solution revised(const PlanProblem &built, const Placement &from, const SolveOptions &options) {
    Problem problem = built.problem;
    problem.changeMinutes = changeMinutes;
    problem.shownPlace = from.place;
    problem.shownCode = from.code;
    return resolve(problem, from, options);
}

} // namespace

SolveOptions revisionOptions() {
    return {};
}

Result<Placement> shownPlacement(const PlanProblem &built, const Plan &plan) {
    Placement out{std::vector<int>(built.things.size(), -1), std::vector<int>(built.things.size(), 0)};
    for (const auto &line : plan.lines) {
        const int i = indexOf(built.things, line.thing);
        const int p = indexOf(built.places, line.place);
        const int code = codeOf(built, line.marker);
        if (i < 0 || p < 0 || (code == 0 && !line.marker.empty()))
            return fail(ErrorCode::Missing,
                        Sentence::tr("Things, places or marks changed since the plan was made. Plan again."));
        out.place[i] = p;
        out.code[i] = code;
    }
    if (std::find(out.place.begin(), out.place.end(), -1) != out.place.end())
        return fail(ErrorCode::Missing,
                    Sentence::tr("There are things that the plan does not hold yet. Plan again."));
    return out;
}

Result<Plan> makePlan(const Case &record, const Findings &findings, const SolveOptions &options, Date on) {
    return planProblem(record, findings).and_then([&](const PlanProblem &built) {
        return planFrom(record, findings, built, solve(built.problem, options), on);
    });
}

Result<Plan> revisePlan(const Case &record, const Findings &findings, const SolveOptions &options, Date on) {
    if (!record.plan || record.plan->lines.empty())
        return makePlan(record, findings, options, on);
    return planProblem(record, findings).and_then([&](const PlanProblem &built) -> Result<Plan> {
        if (standsUnchanged(record, built))
            return *record.plan;
        return planFrom(record, findings, built, revised(built, startFrom(built, *record.plan), options), on);
    });
}

} // namespace model
