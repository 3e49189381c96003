#include "model/progress.h"
#include "model/meanings.h"
#include "model/nut_allergy.h"
#include "model/planning.h"
#include "model/rule_words.h"
#include "model/sentence.h"
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>

namespace model {
namespace {

/// "two levels below what was expected"; `shortly` for the second mention: "one above it".
std::string levelWords(int level, bool shortly) {
    if (level == 0)
        return shortly ? Sentence::tr("at it") : Sentence::tr("at what was expected");
    const bool one = std::abs(level) == 1;
    if (level < 0) {
        if (shortly)
            return one ? Sentence::tr("one below it") : Sentence::tr("two below it");
        return one ? Sentence::tr("one level below what was expected")
                   : Sentence::tr("two levels below what was expected");
    }
    if (shortly)
        return one ? Sentence::tr("one above it") : Sentence::tr("two above it");
    return one ? Sentence::tr("one level above what was expected")
               : Sentence::tr("two levels above what was expected");
}

std::string sentenceOf(const std::vector<std::pair<Date, int>> &levels) {
    if (levels.empty())
        return Sentence::tr("Not rated yet.");
    const std::string first = sentenceCase(levelWords(levels.front().second, false));
    if (levels.size() == 1)
        return Sentence::tr("{1} on {2}. One rating: no change to speak of yet.",
                            {first, dateInWords(levels.front().first)});
    if (levels.back().second == levels.front().second)
        return Sentence::tr("{1} at first and now, over {2} ratings.",
                            {first, std::to_string(levels.size())});
    return Sentence::tr("{1} at first, {2} now.", {first, levelWords(levels.back().second, true)});
}

std::optional<Date> dateOf(const Case &record, const Rating &rating) {
    if (rating.date)
        return rating.date;
    for (const auto &visit : record.visits) {
        if (visit.id == rating.visit)
            return visit.date;
    }
    return std::nullopt;
}

const Visit *lastClosed(const Case &record) {
    const Visit *last = nullptr;
    for (const auto &visit : record.visits) {
        if (visit.closed && (last == nullptr || visit.number > last->number))
            last = &visit;
    }
    return last;
}

void addSafety(const Case &record, Date on, std::vector<std::string> &out) {
    std::vector<std::string> never;
    int old = 0;
    for (const auto &question : safetyQuestions()) {
        const auto found = record.safety.answers.find(question.question);
        if (found == record.safety.answers.end() || found->second.answer == Answer::NotAsked)
            never.push_back(Sentence::tr(question.asked));
        else if (!found->second.asked || *found->second.asked < on)
            ++old;
    }
    for (const auto &asked : never)
        out.push_back(Sentence::tr("Not asked: {1}", {asked}));
    if (old > 0)
        out.push_back(old == 1 ? Sentence::tr("Safety: confirm 1 answer again, given at an earlier visit.")
                               : Sentence::tr("Safety: confirm {1} answers again, given at an earlier visit.",
                                              {std::to_string(old)}));
    if (!record.diet.asked)
        out.emplace_back(Sentence::tr("Not asked: allergies and diet."));
    if (std::string asked = otherNutAsked(record.diet); !asked.empty())
        out.push_back(std::move(asked));
}

void addGoals(const Case &record, Date on, std::vector<std::string> &out) {
    for (const auto &goal : record.goals) {
        const bool rated =
            std::any_of(record.ratings.begin(), record.ratings.end(), [&](const Rating &rating) {
                const auto date = dateOf(record, rating);
                return rating.goal == goal.id && date && goal.review && *date >= *goal.review;
            });
        if (goal.review && *goal.review <= on && !rated)
            out.push_back(
                Sentence::tr("Goal due since {1}: {2}", {dateInWords(*goal.review), goal.sentence}));
    }
}

void addTests(const Case &record, std::vector<std::string> &out) {
    for (const auto &info : testInfos()) {
        std::string why;
        bool done = false;
        for (const auto &result : record.measurements) {
            done = done || (result.test == info.test && !result.typed.empty());
            if (result.test == info.test && !result.notTestedBecause.empty())
                why = result.notTestedBecause;
        }
        if (!done && !why.empty())
            out.push_back(Sentence::tr("Not tested: {1}. {2}.", {Sentence::tr(info.name), why}));
    }
}

void addPlan(const Case &record, std::vector<std::string> &out) {
    if (!record.plan)
        out.emplace_back(Sentence::tr("No plan yet."));
    else if (record.plan->lines.empty())
        out.emplace_back(Sentence::tr("No plan is possible yet: see what is short."));
    if (record.plan && !record.plan->lines.empty())
        for (const std::string &sentence : meaningsTold(record, record.plan->meaningMarks))
            out.push_back(sentence);
    const auto unplaced = std::count_if(record.things.begin(), record.things.end(),
                                        [](const Thing &thing) { return !thing.place; });
    if (unplaced > 0)
        out.push_back(unplaced == 1
                          ? Sentence::tr("1 thing without a place yet.")
                          : Sentence::tr("{1} things without a place yet.", {std::to_string(unplaced)}));
}

} // namespace

std::vector<GoalProgress> goalProgress(const Case &record) {
    std::vector<GoalProgress> out;
    for (const auto &goal : record.goals) {
        GoalProgress progress{goal.id, {}, ""};
        for (const auto &rating : record.ratings) {
            const auto date = dateOf(record, rating);
            if (rating.goal == goal.id && date)
                progress.levels.emplace_back(*date, rating.level);
        }
        std::stable_sort(progress.levels.begin(), progress.levels.end(),
                         [](const auto &a, const auto &b) { return a.first < b.first; });
        progress.sentence = sentenceOf(progress.levels);
        out.push_back(std::move(progress));
    }
    return out;
}

std::optional<double> attainmentT(const std::vector<std::pair<double, int>> &weightAndLevel, double rho) {
    double weights = 0;
    double squares = 0;
    double weighted = 0;
    const bool allZero = std::all_of(weightAndLevel.begin(), weightAndLevel.end(),
                                     [](const auto &goal) { return goal.first <= 0; });
    for (const auto &[weight, level] : weightAndLevel) {
        const double w = allZero ? 1 : weight;
        weights += w;
        squares += w * w;
        weighted += w * level;
    }
    const double spread = (1 - rho) * squares + rho * weights * weights;
    if (weightAndLevel.empty() || !(spread > 0))
        return std::nullopt;
    return 50 + 10 * weighted / std::sqrt(spread);
}

std::optional<double> attainmentNow(const Case &record) {
    std::vector<std::pair<double, int>> goals;
    const auto progress = goalProgress(record);
    for (std::size_t k = 0; k < progress.size(); ++k) {
        const Goal &goal = record.goals[k];
        if (!progress[k].levels.empty())
            goals.emplace_back(goal.importance * goal.difficulty, progress[k].levels.back().second);
    }
    return attainmentT(goals, rhoUsual);
}

std::vector<std::string> openItems(const Case &record, Date on) {
    std::vector<std::string> out;
    if (const Visit *last = lastClosed(record); last != nullptr && !last->carriedOver.empty())
        out.push_back(Sentence::tr("Carried over: {1}", {last->carriedOver}));
    addSafety(record, on, out);
    addGoals(record, on, out);
    addTests(record, out);
    addPlan(record, out);
    return out;
}

} // namespace model
