#include "model/plan_safety.h"
#include "model/evaluate.h"
#include "model/kit.h"
#include "model/legible.h"
#include "model/meanings.h"
#include "model/short_name.h"
#include "model/upkeep.h"
#include <algorithm>

namespace model {
namespace {

constexpr double alikeKeepsApart =
    0.15;                   // look-alike measure from which a mix-up that harms is not left to a mark
constexpr int fewKinds = 3; // judgement

/// Nothing more is put beside medicines: their place is agreed and their own.
void leaveMedicinesAlone(const Case &record, PlanProblem &out) {
    for (std::size_t m = 0; m < record.things.size(); ++m) {
        const int place = out.problem.items[m].current;
        if (!record.things[m].medicine || place < 0)
            continue;
        for (std::size_t i = 0; i < record.things.size(); ++i) {
            ProblemItem &item = out.problem.items[i];
            if (!record.things[i].medicine && item.current != place)
                item.forbidden.push_back(place);
        }
    }
}

/// Look-alikes whose mix-up does harm stand apart: a chemical and food, food with and without the avoided
/// allergen; with reduced feeling any hazard or medicine, since a touch mark alone never tells it.
bool mixUpHarms(const ProblemItem &a, const ProblemItem &b, bool feelsLess) {
    const bool chemicalAndFood = (a.klass == 'C' && b.klass == 'F') || (a.klass == 'F' && b.klass == 'C');
    const bool allergen = a.klass == 'F' && b.klass == 'F' && a.allergen != b.allergen;
    return chemicalAndFood || allergen || (feelsLess && a.hazard != b.hazard);
}

void addApart(const Case &record, const Findings &findings, Problem &problem) {
    const bool feelsLess =
        record.safety.cautious(SafetyQuestion::ReducedProtectiveFeeling) || findings.touchSensitivity < 1;
    const int count = static_cast<int>(problem.items.size());
    for (int i = 0; i < count; ++i) {
        for (int j = i + 1; j < count; ++j) {
            if (mixUpHarms(problem.items[i], problem.items[j], feelsLess) &&
                alike(problem.items[i], problem.items[j]) >= alikeKeepsApart)
                problem.apart.emplace_back(i, j);
        }
    }
}

/// A place where `i` may stand, or none.
std::optional<int> anyPlace(const Problem &problem, int i) {
    for (int p = 0; p < static_cast<int>(problem.places.size()); ++p)
        if (placeRules(problem, i, p).empty())
            return p;
    return std::nullopt;
}

/// What warns and has no mark left that says so gets words, where the client reads a label that holds on it.
/// Not medicines: their labels are the pharmacist's.
void labelWhatWarns(const Case &record, PlanProblem &out) {
    for (int i = 0; i < static_cast<int>(out.things.size()); ++i) {
        ProblemItem &item = out.problem.items[i];
        const std::optional<int> place = anyPlace(out.problem, i);
        if (item.pinnedCode || !place || warningWord(record.things[i], record.diet, out.meanings).empty())
            continue;
        for (int c = 1; c <= static_cast<int>(out.markers.size()) && !item.pinnedCode; ++c)
            if (out.problem.markers[c - 1].ownText && codeFits(out.problem, i, *place, c))
                item.pinnedCode = c;
    }
}

/// Codes that are labels in print.
std::vector<int> printedCodes(const Case &record, const PlanProblem &out) {
    const std::vector<Marker> kit = kitOf(record);
    std::vector<int> codes;
    for (std::size_t m = 0; m < out.markers.size(); ++m) {
        const auto marker = std::ranges::find(kit, out.markers[m], &Marker::key);
        if (marker != kit.end() && marker->medium == MarkMedium::LargePrint)
            codes.push_back(static_cast<int>(m) + 1);
    }
    return codes;
}

} // namespace

bool touchesFood(const Thing &thing) {
    return thing.klass == Klass::Neither && thing.group != "cleaning" && thing.sub != "cloths" &&
           thing.sub != "odds";
}

void forbidHighAndLow(const Case &record, const Problem &problem, ProblemItem &item) {
    constexpr double daily = 5; // uses a week
    constexpr double bendCm = 35;
    const bool unsteady = record.safety.cautious(SafetyQuestion::DizzyLookingUpOrBending) ||
                          record.safety.cautious(SafetyQuestion::Falls);
    const bool notHigh = needsHelpUp(record);
    if ((!unsteady && !notHigh) || item.usesPerWeek < daily)
        return;
    const ProblemClient &client = problem.client;
    for (int p = 0; p < static_cast<int>(problem.places.size()); ++p) {
        const double height = problem.places[p].heightCm;
        if ((notHigh && height > client.shoulderCm) || (unsteady && height < client.knuckleCm - bendCm))
            item.forbidden.push_back(p);
    }
}

void keepOwnApart(const Case &record, const Thing &thing, ProblemItem &item) {
    const bool bin = std::any_of(record.places.begin(), record.places.end(), [&](const Place &place) {
        return place.own && place.storage == thing.storage;
    });
    for (int p = 0; p < static_cast<int>(record.places.size()); ++p)
        if (thing.own ? bin && !record.places[p].own : record.places[p].own)
            item.forbidden.push_back(p);
}

void forbidUnreadable(const Case &record, const Findings &findings, PlanProblem &out) {
    const std::vector<int> printed = printedCodes(record, out);
    if (printed.empty())
        return;
    for (std::size_t i = 0; i < out.things.size(); ++i) {
        const Thing &thing = record.things[i];
        const auto fits = [&](const std::string &words) { return printFitsOn(thing, words, findings); };
        const auto fitsShorter = [&](const std::string &shorter) {
            return fits(shorter) && isNobodysName(record, thing.id, shorter);
        };
        const bool mayShorten = warningWord(thing, record.diet, out.meanings).empty() && !thing.spoilsMeal;
        if (!fits(thing.name) && !(mayShorten && std::ranges::any_of(shorterNames(thing.name), fitsShorter)))
            out.problem.items[i].unreadable = printed;
    }
}

std::optional<int> mostKindsOfMarks(const Case &record) {
    if (record.wishes && record.wishes->mostKinds)
        return record.wishes->mostKinds;
    return record.safety.cautious(SafetyQuestion::MemoryDifficulty) ? std::optional(fewKinds) : std::nullopt;
}

void addSafetyRules(const Case &record, const Findings &findings, PlanProblem &out) {
    leaveMedicinesAlone(record, out);
    labelWhatWarns(record, out);
    addApart(record, findings, out.problem);
    out.problem.oneThingPerMark = true;
    out.problem.allergenApart = !record.diet.avoids.empty();
    if (const auto most = mostKindsOfMarks(record))
        out.problem.mostToLearn = std::max(0, *most - static_cast<int>(out.meanings.size()));
}

} // namespace model
