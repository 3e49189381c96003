#include "model/plan_wishes.h"
#include "model/evaluate.h"
#include "model/kit.h"
#include "model/meanings.h"
#include "model/rule_words.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>
#include <set>

namespace model {
namespace {

std::string nameOf(const Case &record, const Id &thing) {
    const auto found = std::find_if(record.things.begin(), record.things.end(),
                                    [&](const Thing &other) { return other.id == thing; });
    return found == record.things.end() ? Sentence::tr("A thing that is gone") : sentenceCase(found->name);
}

bool decidesPlace(const Overrule &wish) {
    return !wish.marker && wish.wording.empty();
}

/// True if the older decision no more counts beside the newer.
bool replaces(const Overrule &wish, const Overrule &older) {
    if (wish.thing != older.thing)
        return false;
    if (wish.marker)
        return older.marker.has_value();
    if (!wish.wording.empty())
        return !older.wording.empty();
    if (!decidesPlace(older))
        return false;
    return wish.forbid ? older.place == wish.place : !older.forbid || older.place == wish.place;
}

bool possible(const Case &record, const Findings &findings) {
    constexpr std::int64_t moves = 20'000;
    SolveOptions options;
    options.moves = moves;
    options.seeds = 1;
    options.threads = 1;
    const auto built = planProblem(record, findings);
    return !built || solve(built->problem, options).placement.has_value();
}

constexpr const char *mustStay = Sentence::later("it must stay there");

bool isMustStay(const Overrule &wish) {
    return wish.id.text.empty() && wish.reason == mustStay;
}

/// Her decisions, and what must stay where it is, as if it were one.
std::vector<Overrule> allWishes(const Case &record) {
    constexpr int must = 3;
    std::vector<Overrule> wishes = record.overrules;
    for (const Thing &thing : record.things)
        if (thing.keep == must && thing.place)
            wishes.push_back(
                {.id = {}, .thing = thing.id, .place = *thing.place, .reason = mustStay, .date = {}});
    return wishes;
}

bool possibleWith(Case record, const Findings &findings, const std::vector<Overrule> &wishes) {
    constexpr int must = 3;
    record.overrules.clear();
    std::set<Id> staying;
    for (const Overrule &wish : wishes) {
        if (isMustStay(wish))
            staying.insert(wish.thing);
        else
            record.overrules.push_back(wish);
    }
    for (Thing &thing : record.things)
        if (thing.keep == must && !staying.contains(thing.id))
            thing.keep = must - 1;
    return possible(record, findings);
}

/// Two that clash, if there are any, among not too many.
std::vector<Overrule> clashingPair(const Case &record, const Findings &findings) {
    constexpr std::size_t mostTried = 10;
    const std::vector<Overrule> all = allWishes(record);
    for (std::size_t a = 0; a < all.size() && all.size() <= mostTried; ++a)
        for (std::size_t b = a + 1; b < all.size(); ++b)
            if (!possibleWith(record, findings, {all[a], all[b]}))
                return {all[a], all[b]};
    return {};
}

/// Left out one by one while no plan is possible.
std::vector<Overrule> clashingSet(const Case &record, const Findings &findings) {
    std::vector<Overrule> clash = allWishes(record);
    for (std::size_t k = clash.size(); k-- > 0;) {
        std::vector<Overrule> fewer = clash;
        fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(k));
        if (!possibleWith(record, findings, fewer))
            clash = fewer;
    }
    return clash;
}

int otherLinesChanged(const Plan &before, const Plan &after, const Id &thing) {
    int changed = 0;
    for (const PlanLine &line : after.lines) {
        const auto old = std::find_if(before.lines.begin(), before.lines.end(),
                                      [&](const PlanLine &one) { return one.thing == line.thing; });
        if (line.thing != thing &&
            (old == before.lines.end() || old->place != line.place || old->marker != line.marker))
            ++changed;
    }
    return changed;
}

/// A place that a rule of its own forbids is refused before anything is worked out.
Result<void> checkPlace(const Case &record, const Findings &findings, const Overrule &wish) {
    if (!decidesPlace(wish) || wish.forbid)
        return {};
    return planProblem(record, findings).and_then([&](const PlanProblem &built) -> Result<void> {
        const auto item = std::find(built.things.begin(), built.things.end(), wish.thing);
        const auto place = std::find(built.places.begin(), built.places.end(), wish.place);
        if (item == built.things.end() || place == built.places.end())
            return {};
        const int i = static_cast<int>(item - built.things.begin());
        const int p = static_cast<int>(place - built.places.begin());
        for (const std::string &rule : placeRules(built.problem, i, p))
            if (rule != "overruled" && rule != "keep") // her own earlier decisions and wishes give way
                return fail(ErrorCode::Refused, refusal(built, i, p, rule));
        return {};
    });
}

Result<void> checkMark(const Case &record, const Findings &findings, const Overrule &wish) {
    if (!wish.marker || wish.marker->empty())
        return {};
    return planProblem(record, findings).and_then([&](const PlanProblem &built) -> Result<void> {
        const Marker *marker = markerIn(record, *wish.marker);
        const std::string name = marker == nullptr ? *wish.marker : marker->name;
        if (const auto banned = findings.bannedMarks.find(*wish.marker); banned != findings.bannedMarks.end())
            return fail(ErrorCode::Refused,
                        Sentence::tr("{1} is not for this client: {2}. This rule is not overruled: correct "
                                     "the answer itself, with who said so.",
                                     {sentenceCase(name), banned->second}));
        const auto meaning =
            std::find_if(built.meanings.begin(), built.meanings.end(),
                         [&](const MeaningMark &mark) { return mark.marker == *wish.marker; });
        if (meaning != built.meanings.end())
            return fail(
                ErrorCode::Refused,
                Sentence::tr("{1} means {2} everywhere, so it tells nothing else. Choose another mark.",
                             {sentenceCase(name), meaningName(meaning->meaning)}));
        const auto code = std::find(built.markers.begin(), built.markers.end(), *wish.marker);
        const auto item = std::find(built.things.begin(), built.things.end(), wish.thing);
        if (code == built.markers.end() || item == built.things.end())
            return fail(ErrorCode::Refused, Sentence::tr("{1} is not among the marks that this client tells "
                                                         "apart or can read. Choose another mark.",
                                                         {sentenceCase(name)}));
        const int i = static_cast<int>(item - built.things.begin());
        Problem open = built.problem; // whatever was chosen before
        open.items[i].pinnedCode.reset();
        open.items[i].unreadable.clear(); // it may be put on a card
        for (int p = 0; p < static_cast<int>(built.places.size()); ++p)
            if (placeRules(open, i, p).empty() &&
                codeFits(open, i, p, static_cast<int>(code - built.markers.begin()) + 1))
                return {};
        return fail(
            ErrorCode::Refused,
            Sentence::tr(
                "{1} does not hold on {2}, or not in the cold or wet where {3} is kept. Choose another mark.",
                {sentenceCase(name), built.problem.items[i].surface, built.problem.items[i].name}));
    });
}

} // namespace

Case withWish(Case record, Overrule wish) {
    std::erase_if(record.overrules, [&](const Overrule &older) { return replaces(wish, older); });
    record.overrules.push_back(std::move(wish));
    return record;
}

std::string wishInWords(const Case &record, const Overrule &wish) {
    std::string words = nameOf(record, wish.thing) + ": ";
    if (wish.marker) {
        const Marker *marker = markerIn(record, *wish.marker);
        words += wish.marker->empty()
                     ? Sentence::tr("no mark")
                     : Sentence::tr("marked with {1}", {(marker == nullptr ? *wish.marker : marker->name)});
    } else if (!wish.wording.empty()) {
        words += Sentence::tr("label reads \"{1}\"", {wish.wording});
    } else {
        const std::string place = placeWords(record, wish.place);
        words += wish.forbid ? Sentence::tr("not in {1}", {place}) : Sentence::tr("to stand in {1}", {place});
    }
    return words +
           (wish.reason.empty()
                ? "."
                : Sentence::tr(", since {1}.", {isMustStay(wish) ? Sentence::tr(mustStay) : wish.reason}));
}

Result<WishOutcome> tryWish(const Case &record, const Findings &findings, const Overrule &wish, Date on) {
    if (!record.plan || record.plan->lines.empty())
        return fail(ErrorCode::Missing, Sentence::tr("There is no plan yet. Plan first."));
    if (const auto allowed = checkPlace(record, findings, wish); !allowed)
        return tl::unexpected(allowed.error());
    if (const auto allowed = checkMark(record, findings, wish); !allowed)
        return tl::unexpected(allowed.error());
    WishOutcome out{withWish(record, wish), 0, 0};
    auto plan = revisePlan(out.record, findings, revisionOptions(), on);
    if (!plan)
        return tl::unexpected(plan.error());
    if (plan->lines.empty()) {
        if (decidesPlace(wish) && !wish.forbid) // a rule of safety says which fact to correct
            if (const auto price = priceOf(record, findings, wish.thing, wish.place); !price)
                return tl::unexpected(price.error());
        return fail(ErrorCode::Refused,
                    Sentence::tr("With that no plan is left. {1}", {plan->shortages.front().sentence}));
    }
    out.price = static_cast<double>(plan->terms.total() - record.plan->terms.total()) / 1000;
    out.changed = otherLinesChanged(*record.plan, *plan, wish.thing);
    out.record.plan = std::move(*plan);
    return out;
}

std::vector<Overrule> clashingWishes(const Case &record, const Findings &findings) {
    const std::vector<Overrule> wishes = allWishes(record);
    if (wishes.empty() || possible(record, findings) || !possibleWith(record, findings, {}))
        return {};
    for (const Overrule &wish : wishes)
        if (!possibleWith(record, findings, {wish}))
            return {wish};
    const std::vector<Overrule> pair = clashingPair(record, findings);
    return pair.empty() ? clashingSet(record, findings) : pair;
}

std::string clashInWords(const Case &record, const std::vector<Overrule> &clash) {
    std::string words = clash.size() == 1 ? Sentence::tr("This decision leaves no plan: ")
                                          : Sentence::tr("These decisions clash: ");
    for (const Overrule &wish : clash) {
        std::string one = wishInWords(record, wish);
        one.pop_back();
        words += one + (&wish == &clash.back() ? ". " : "; ");
    }
    return words + (clash.size() == 1 ? Sentence::tr("Take it back, or mend what is short.")
                                      : Sentence::tr("Take one of them back."));
}

std::string PlanFigure::words() const {
    return typed::words(value, 1);
}

std::vector<PlanFigure> figuresOf(const Problem &problem, const Placement &shown) {
    const NaturalFigures figures = naturalFigures(problem, shown);
    return {{Sentence::tr("Wrong picks a week, at most one a use"), figures.wrongPicksPerWeek},
            {Sentence::tr("Awkward reaches a week"), figures.awkwardReachesPerWeek},
            {Sentence::tr("Metres walked a week"), figures.metresPerWeek},
            {Sentence::tr("Kinds of marks to learn"), static_cast<double>(figures.markerTypes)},
            {Sentence::tr("Things marked"), static_cast<double>(figures.marked)},
            {Sentence::tr("Things moved"), static_cast<double>(figures.moved)},
            {Sentence::tr("Units for each group"), figures.baysPerGroup}};
}

Result<std::vector<PlanFigure>> figuresOf(const Case &record, const Findings &findings) {
    if (!record.plan || record.plan->lines.empty())
        return fail(ErrorCode::Missing, Sentence::tr("There is no plan yet. Plan first."));
    return planProblem(record, findings).and_then([&](const PlanProblem &built) {
        return shownPlacement(built, *record.plan).map([&](const Placement &shown) {
            return figuresOf(built.problem, shown);
        });
    });
}

Result<SideBySide> compareWeights(const Case &record, const Findings &findings, const PlanWeights &other,
                                  Date on) {
    Case after = record;
    if (!after.wishes)
        after.wishes = PlanWishes{};
    after.wishes->weights = other;
    return figuresOf(record, findings).and_then([&](const std::vector<PlanFigure> &now) {
        return revisePlan(after, findings, revisionOptions(), on).and_then([&](const Plan &plan) {
            after.plan = plan;
            return figuresOf(after, findings).map([&](const std::vector<PlanFigure> &then) {
                return SideBySide{now, then, planChanges(record, after)};
            });
        });
    });
}

} // namespace model
