#include "model/kit.h"
#include "model/planning.h"
#include "model/rule_words.h"
#include "model/sentence.h"
#include "model/short_name.h"
#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace model {
namespace {

constexpr MilliMinutes aboutEqual = 100; // a week: less is no difference to speak of

std::string lowerFirst(std::string text) {
    if (text.size() > 1 && text[0] >= 'A' && text[0] <= 'Z' && !(text[1] >= 'A' && text[1] <= 'Z'))
        text[0] = static_cast<char>(text[0] - 'A' + 'a');
    return text;
}

std::string oftenWords(double uses) {
    if (uses >= 6.5)
        return Sentence::tr("Daily use");
    if (uses >= 1.5)
        return Sentence::tr("Used {1} times a week", {std::to_string(static_cast<int>(std::lround(uses)))});
    return uses >= 0.75 ? Sentence::tr("Weekly use") : Sentence::tr("Rare use");
}

std::string reachWords(const ProblemClient &client, double heightCm) {
    if (heightCm < client.knuckleCm)
        return heightCm < client.knuckleCm - 35 ? Sentence::tr("low down") : Sentence::tr("a little low");
    if (heightCm > client.shoulderCm)
        return heightCm > client.shoulderCm + 20 ? Sentence::tr("high up") : Sentence::tr("a little high");
    return Sentence::tr("easy reach");
}

std::string areaWords(const Case &record, const Id &thing) {
    static constexpr std::array words{Sentence::later("middle of the kitchen"),
                                      Sentence::later("cooker"),
                                      Sentence::later("work surface"),
                                      Sentence::later("sink"),
                                      Sentence::later("fridge"),
                                      Sentence::later("table"),
                                      Sentence::later("door")};
    for (const auto &other : record.things) {
        if (other.id == thing)
            return Sentence::tr(words.at(static_cast<std::size_t>(other.area)));
    }
    return Sentence::tr(words[0]);
}

/// What one term says for the line, or nothing.
std::string termWords(const std::string &term, const ProblemItem &item, const std::string &area,
                      bool samePlace, bool marked) {
    if (term == "walk")
        return Sentence::tr("near the {1}", {area});
    if (term == "dark")
        return Sentence::tr("light enough to see");
    if (term == "move")
        return Sentence::tr("it stands there already");
    if (term == "group")
        return Sentence::tr("keeps {1} together", {item.group});
    if (term == "shelf-mates")
        return Sentence::tr("beside the other {1}", {item.sub});
    if (term == "learning")
        return Sentence::tr("no further kind of mark to learn");
    if (term == "marking")
        return marked ? Sentence::tr("little work to mark") : Sentence::tr("no mark needed");
    if (term == "wrong picks")
        return samePlace ? Sentence::tr("its mark tells it from what feels alike")
                         : Sentence::tr("away from what feels alike");
    return {};
}

std::string becauseOf(const Case &record, const PlanProblem &built, const Placement &shown, int i,
                      const LineReason &reason) {
    const ProblemItem &item = built.problem.items[i];
    const ProblemPlace &place = built.problem.places[shown.place[i]];
    std::string out =
        oftenWords(item.usesPerWeek) + ", " + reachWords(built.problem.client, place.heightCm) + ".";
    const bool samePlace = reason.runnerUpPlace == shown.place[i];
    std::string more;
    int said = 0;
    for (const auto &term : reason.terms) {
        const std::string words =
            termWords(term.name, item, areaWords(record, built.things[i]), samePlace, shown.code[i] != 0);
        if (term.difference < aboutEqual || words.empty() || said == 2)
            continue;
        more += (more.empty() ? "" : "; ") + words;
        ++said;
    }
    return more.empty() ? out : out + " " + sentenceCase(more) + ".";
}

std::string markWords(const PlanProblem &built, int code) {
    return code == 0 ? Sentence::tr("without a mark")
                     : Sentence::tr("with {1}", {lowerFirst(built.problem.markers[code - 1].name)});
}

std::string priceWords(MilliMinutes price) {
    if (price > -aboutEqual && price < aboutEqual)
        return Sentence::tr("about equal.");
    const std::string minutes = minutesInWords(std::abs(price));
    return price > 0 ? Sentence::tr("{1} a week more.", {minutes})
                     : Sentence::tr("{1} a week less.", {minutes});
}

/// The rules that keep it out of most other places, the kind of storage last since it goes without saying.
std::string noOtherPlace(const LineReason &reason) {
    constexpr std::size_t enough = 3;
    std::map<std::string, int> counts;
    for (const auto &[place, broken] : reason.impossible) {
        for (const auto &rule : broken)
            counts[rule] += rule == "storage" ? 0 : 1;
    }
    if (counts.contains("keep"))
        return Sentence::tr("It has to stay where it is.");
    std::vector<std::pair<int, std::string>> most;
    for (const auto &[rule, count] : counts)
        most.emplace_back(-count, rule);
    std::sort(most.begin(), most.end());
    std::string rules;
    for (std::size_t k = 0; k < std::min(enough, most.size()); ++k)
        rules += (rules.empty() ? "" : ", ") + shortRule(most[k].second);
    return rules.empty() ? Sentence::tr("There is no other place.")
                         : Sentence::tr("No other place is possible as things stand: {1}.", {rules});
}

/// An exchange with another thing, where it is clearly better than to move alone.
std::string swapOf(const PlanProblem &built, const LineReason &reason, bool elsewhere) {
    if (!reason.swapWith || (elsewhere && reason.swapPrice > reason.price - aboutEqual))
        return "";
    return Sentence::tr(" An exchange with {1} would do: {2}",
                        {built.problem.items[*reason.swapWith].name, priceWords(reason.swapPrice)});
}

std::string singleRunnerUp(const PlanProblem &built, const Placement &shown, int i,
                           const LineReason &reason) {
    const std::string none = noOtherPlace(reason);
    if (!reason.runnerUpPlace)
        return none;
    const int place = *reason.runnerUpPlace;
    const int code = reason.runnerUpCode.value_or(shown.code[i]);
    std::string where =
        place == shown.place[i] ? Sentence::tr("the same place") : built.problem.places[place].name;
    if (code != shown.code[i])
        where += ", " + markWords(built, code);
    const std::string priced = sentenceCase(where) + ": " + priceWords(reason.price);
    return place == shown.place[i] ? none + " " + priced : priced;
}

std::string runnerUpOf(const PlanProblem &built, const Placement &shown, int i, const LineReason &reason) {
    const bool elsewhere = reason.runnerUpPlace && *reason.runnerUpPlace != shown.place[i];
    return singleRunnerUp(built, shown, i, reason) + swapOf(built, reason, elsewhere);
}

std::string markOf(const Case &record, const PlanLine &line) {
    const Marker *marker = markerIn(record, line.marker);
    return marker == nullptr ? Sentence::tr("no mark") : lowerFirst(marker->name);
}

const PlanLine *lineOf(const std::optional<Plan> &plan, const Id &thing) {
    if (!plan)
        return nullptr;
    const auto found = std::find_if(plan->lines.begin(), plan->lines.end(),
                                    [&](const PlanLine &line) { return line.thing == thing; });
    return found == plan->lines.end() ? nullptr : &*found;
}

std::string nameIn(const Case &record, const Id &thing) {
    for (const auto &other : record.things) {
        if (other.id == thing)
            return sentenceCase(other.name);
    }
    return Sentence::tr("A thing");
}

/// What is new about one thing; empty if nothing is.
std::string changeOf(const Case &before, const Case &after, const PlanLine &line) {
    const PlanLine *old = lineOf(before.plan, line.thing);
    const std::string name = nameIn(after, line.thing);
    if (old == nullptr)
        return Sentence::tr("{1}: new, {2}, {3}.",
                            {name, placeWords(after, line.place), markOf(after, line)});
    std::string out;
    if (old->place != line.place)
        out += Sentence::tr(" now {1}, was {2}.",
                            {placeWords(after, line.place), placeWords(before, old->place)});
    if (old->marker != line.marker)
        out += Sentence::tr(" Mark now {1}, was {2}.", {markOf(after, line), markOf(after, *old)});
    if (old->meanings != line.meanings)
        out += line.meanings.empty() ? Sentence::tr(" Take its warning mark off.")
                                     : Sentence::tr(" Warning mark now put on.");
    return out.empty() ? "" : name + ":" + out;
}

} // namespace

std::string sentenceCase(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

std::string minutesInWords(MilliMinutes minutes) {
    const MilliMinutes tenths = (minutes + 50) / 100;
    const std::string number = std::to_string(tenths / 10) + "." + std::to_string(tenths % 10);
    return tenths == 10 ? Sentence::tr("{1} minute", {number}) : Sentence::tr("{1} minutes", {number});
}

WhyLines::WhyLines(const Case &record, PlanProblem built, Placement shown)
    : m_record(record), m_built(std::move(built)), m_shown(std::move(shown)), m_reasons(m_built.problem) {}

Result<WhyLines> WhyLines::of(const Case &record, const Findings &findings) {
    if (!record.plan || record.plan->lines.empty())
        return fail(ErrorCode::Missing, Sentence::tr("There is no plan yet. Plan first."));
    auto built = planProblem(record, findings);
    if (!built)
        return tl::unexpected(built.error());
    auto shown = shownPlacement(*built, *record.plan);
    if (!shown)
        return tl::unexpected(shown.error());
    return WhyLines(record, std::move(*built), std::move(*shown));
}

Result<LineWhy> WhyLines::why(const Id &thing) const {
    const auto found = std::find(m_built.things.begin(), m_built.things.end(), thing);
    if (found == m_built.things.end())
        return fail(ErrorCode::Missing, Sentence::tr("That thing is not in this kitchen."));
    const int i = static_cast<int>(found - m_built.things.begin());
    const LineReason reason = m_reasons.elsewhere(m_shown, i);
    LineWhy out{
        becauseOf(m_record, m_built, m_shown, i, reason), runnerUpOf(m_built, m_shown, i, reason), {}, 0};
    if (reason.runnerUpPlace) {
        out.runnerUpPlace = m_built.places[*reason.runnerUpPlace];
        out.runnerUpMinutes = static_cast<double>(reason.price) / 1000;
    }
    return out;
}

Result<LineWhy> whyLine(const Case &record, const Findings &findings, const Id &thing) {
    return WhyLines::of(record, findings).and_then([&](const WhyLines &lines) { return lines.why(thing); });
}

std::vector<std::string> planChanges(const Case &before, const Case &after) {
    std::vector<std::string> out;
    if (after.plan) {
        for (const auto &line : after.plan->lines) {
            if (const std::string change = changeOf(before, after, line); !change.empty())
                out.push_back(change);
        }
    }
    if (before.plan) {
        for (const auto &line : before.plan->lines) {
            if (lineOf(after.plan, line.thing) == nullptr)
                out.push_back(Sentence::tr("{1}: no more in the plan.", {nameIn(before, line.thing)}));
        }
    }
    return out;
}

std::string placeWords(const Case &record, const Id &place) {
    const auto found = std::find_if(record.places.begin(), record.places.end(),
                                    [&](const Place &p) { return p.id == place; });
    if (found == record.places.end())
        return Sentence::tr("a place that is gone");
    const auto unit = std::find_if(record.units.begin(), record.units.end(),
                                   [&](const Unit &u) { return u.id == found->unit; });
    if (unit == record.units.end())
        return found->name;
    if (found->name.empty() || unit->name.find(found->name) != std::string::npos)
        return unit->name;
    return unit->name + ", " + found->name;
}

std::string labelText(const Thing &thing, MarkMedium medium) {
    switch (medium) {
    case MarkMedium::SpokenTag:
        return tagText(thing, thing.name);
    case MarkMedium::LargePrint:
        return sentenceCase(thing.name);
    case MarkMedium::Braille: // a capital costs a cell
    case MarkMedium::Touch:
        break;
    }
    return thing.name;
}

} // namespace model
