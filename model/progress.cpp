#include "model/progress.h"
#include "model/meanings.h"
#include "model/nut_allergy.h"
#include "model/planning.h"
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>

namespace model {
namespace {

/// "two levels below what was expected"; `shortly` for the second mention: "one above it".
std::string levelWords(int level, bool shortly) {
    static constexpr std::array numbers{"no", "one", "two"};
    if (level == 0)
        return shortly ? "at it" : "at what was expected";
    const int steps = std::min(2, std::abs(level));
    const std::string side = level < 0 ? " below " : " above ";
    const std::string levels = shortly ? "" : steps == 1 ? " level" : " levels";
    return numbers.at(static_cast<std::size_t>(steps)) + levels + side +
           (shortly ? "it" : "what was expected");
}

std::string sentenceOf(const std::vector<std::pair<Date, int>> &levels) {
    if (levels.empty())
        return "Not rated yet.";
    std::string first = levelWords(levels.front().second, false);
    first[0] = static_cast<char>(first[0] - 'a' + 'A');
    if (levels.size() == 1)
        return first + " on " + dateInWords(levels.front().first) +
               ". One rating: no change to speak of yet.";
    if (levels.back().second == levels.front().second)
        return first + " at first and now, over " + std::to_string(levels.size()) + " ratings.";
    return first + " at first, " + levelWords(levels.back().second, true) + " now.";
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
            never.push_back(question.asked);
        else if (!found->second.asked || *found->second.asked < on)
            ++old;
    }
    for (const auto &asked : never)
        out.push_back("Not asked: " + asked);
    if (old > 0)
        out.push_back("Safety: confirm " + std::to_string(old) + (old == 1 ? " answer" : " answers") +
                      " again, given at an earlier visit.");
    if (!record.diet.asked)
        out.emplace_back("Not asked: allergies and diet.");
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
            out.push_back("Goal due since " + dateInWords(*goal.review) + ": " + goal.sentence);
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
            out.push_back("Not tested: " + info.name + ". " + why + ".");
    }
}

void addPlan(const Case &record, std::vector<std::string> &out) {
    if (!record.plan)
        out.emplace_back("No plan yet.");
    else if (record.plan->lines.empty())
        out.emplace_back("No plan is possible yet: see what is short.");
    if (record.plan && !record.plan->lines.empty())
        for (const std::string &sentence : meaningsTold(record, record.plan->meaningMarks))
            out.push_back(sentence);
    const auto unplaced = std::count_if(record.things.begin(), record.things.end(),
                                        [](const Thing &thing) { return !thing.place; });
    if (unplaced > 0)
        out.push_back(std::to_string(unplaced) + (unplaced == 1 ? " thing" : " things") +
                      " without a place yet.");
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
        out.push_back("Carried over: " + last->carriedOver);
    addSafety(record, on, out);
    addGoals(record, on, out);
    addTests(record, out);
    addPlan(record, out);
    return out;
}

} // namespace model
