#include "model/evaluate.h"
#include "model/place_choice.h"
#include "model/rule_words.h"
#include "model/sentence.h"
#include <algorithm>

namespace model {
namespace {

/// A rule of safety that what stands there now would break, if the thing came to it; empty if there is none.
std::string brokenBeside(const PlanProblem &built, const Placement &shown, int i, int p) {
    Placement moved = shown;
    moved.place[i] = p;
    for (const auto &broken : brokenRules(built.problem, moved)) {
        const bool concerns = std::find(broken.items.begin(), broken.items.end(), i) != broken.items.end();
        if (concerns && (broken.rule == "chemical" || broken.rule == "allergen" || broken.rule == "apart"))
            return broken.rule;
    }
    return {};
}

Result<int> indexIn(const std::vector<Id> &ids, const Id &id, const char *what) {
    const auto found = std::find(ids.begin(), ids.end(), id);
    if (found == ids.end())
        return fail(ErrorCode::Missing, Sentence::tr(what));
    return static_cast<int>(found - ids.begin());
}

Result<double> priceOfPinned(const Case &record, const Findings &findings, const Overrule &pin,
                             MilliMinutes shownTotal) {
    Case pinned = record;
    std::erase_if(pinned.overrules, [&](const Overrule &o) { return o.thing == pin.thing; });
    pinned.overrules.push_back(pin);
    const auto plan = revisePlan(pinned, findings, revisionOptions(), record.plan->made.value_or(today()));
    if (!plan)
        return tl::unexpected(plan.error());
    if (plan->lines.empty()) {
        std::string sentence = Sentence::tr("With that no plan is left.");
        if (!plan->shortages.empty())
            sentence += " " + plan->shortages.front().sentence;
        return fail(ErrorCode::Refused, sentence);
    }
    return static_cast<double>(plan->terms.total() - shownTotal) / 1000;
}

} // namespace

Result<double> priceOf(const Case &record, const Findings &findings, const Id &thing, const Id &place) {
    if (!record.plan || record.plan->lines.empty())
        return fail(ErrorCode::Missing, Sentence::tr("There is no plan yet. Plan first."));
    return planProblem(record, findings).and_then([&](const PlanProblem &built) -> Result<double> {
        const auto shown = shownPlacement(built, *record.plan);
        const auto i = indexIn(built.things, thing, Sentence::later("That thing is not in this kitchen."));
        const auto p = indexIn(built.places, place, Sentence::later("That place is not in this kitchen."));
        if (!shown || !i || !p)
            return tl::unexpected(!shown ? shown.error() : !i ? i.error() : p.error());
        if (shown->place[*i] == *p)
            return 0.0;
        if (const auto rules = refusedBy(built, *i, *p); !rules.empty())
            return fail(ErrorCode::Refused, refusal(built, *i, *p, rules.front()));
        const MilliMinutes total = evaluate(built.problem, *shown).total();
        auto price = priceOfPinned(
            record, findings, {.id = {}, .thing = thing, .place = place, .reason = {}, .date = {}}, total);
        const std::string beside = price ? "" : brokenBeside(built, *shown, *i, *p);
        if (!beside.empty()) // what stands there cannot move away either
            return fail(ErrorCode::Refused, refusal(built, *i, *p, beside));
        return price;
    });
}

} // namespace model
