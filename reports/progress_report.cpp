#include "model/progress.h"
#include "reports/paper_fields.h"
#include "reports/papers.h"
#include <algorithm>
#include <cstdio>

namespace reports {

using namespace model;

namespace {

std::vector<const Rating *> ratingsOf(const Case &record, const Id &goal) {
    std::vector<const Rating *> ratings;
    for (const Rating &rating : record.ratings)
        if (rating.goal == goal && dayOf(record, rating))
            ratings.push_back(&rating);
    std::stable_sort(ratings.begin(), ratings.end(),
                     [&](const auto *a, const auto *b) { return *dayOf(record, *a) < *dayOf(record, *b); });
    return ratings;
}

std::vector<Fields> ratingFields(const Case &record, const Goal &goal) {
    std::vector<Fields> list;
    for (const Rating *rating : ratingsOf(record, goal.id)) {
        const std::string words = levelWords(goal, rating->level);
        Fields fields;
        fields.named["ratedOn"] = dateInWords(*dayOf(record, *rating));
        addLevel(fields, rating->level);
        fields.named["words"] = words;
        fields.named["written"] = !words.empty();
        addText(fields, "evidence", withoutStop(rating->evidence));
        list.push_back(std::move(fields));
    }
    return list;
}

Fields progressFields(const Case &record) {
    Fields all = goalFields(record);
    auto &goals = std::get<std::vector<Fields>>(all.named["goals"]);
    const auto progress = goalProgress(record);
    for (std::size_t i = 0; i < goals.size(); ++i) {
        const Goal &goal = record.goals[i];
        const auto found =
            std::find_if(progress.begin(), progress.end(), [&](const auto &p) { return p.goal == goal.id; });
        auto ratings = ratingFields(record, goal);
        goals[i].named["rated"] = !ratings.empty();
        goals[i].named["ratings"] = std::move(ratings);
        goals[i].named["sentence"] = found == progress.end() ? std::string() : found->sentence;
    }
    return all;
}

std::string oneDecimal(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.1f", value);
    return text;
}

/// Weight of a goal is importance times difficulty.
/// Source: Kiresuk & Sherman 1968; King's College London overview of goal attainment scaling.
Fields scoreFields(const Case &record) {
    std::vector<std::pair<double, int>> first, last;
    for (const Goal &goal : record.goals) {
        const auto ratings = ratingsOf(record, goal.id);
        if (ratings.empty())
            continue;
        const double weight = goal.importance * goal.difficulty;
        first.emplace_back(weight, ratings.front()->level);
        last.emplace_back(weight, ratings.back()->level);
    }
    const auto then = attainmentT(first, rhoUsual);
    const auto now = attainmentT(last, rhoUsual);
    Fields fields;
    fields.named["hasScore"] = then && now;
    fields.named["scoreThen"] = then ? oneDecimal(*then) : std::string();
    fields.named["scoreNow"] = now ? oneDecimal(*now) : std::string();
    fields.named["goalsUsed"] = std::to_string(last.size());
    fields.named["goalsInAll"] = std::to_string(record.goals.size());
    fields.named["goalsReached"] = std::to_string(
        std::count_if(last.begin(), last.end(), [](const auto &goal) { return goal.second >= 0; }));
    return fields;
}

Fields visitFields(const Case &record, Date on) {
    std::vector<Fields> visits, open;
    for (const Visit &visit : record.visits) {
        Fields fields;
        fields.named["number"] = std::to_string(visit.number);
        fields.named["dated"] = visit.date.has_value();
        fields.named["visitDate"] = visit.date ? dateInWords(*visit.date) : std::string();
        addText(fields, "carried", withoutStop(visit.carriedOver));
        visits.push_back(std::move(fields));
    }
    for (const std::string &item : openItems(record, on)) {
        Fields fields;
        fields.named["item"] = item;
        open.push_back(std::move(fields));
    }
    Fields all;
    addList(all, "visits", std::move(visits));
    addList(all, "open", std::move(open));
    return all;
}

} // namespace

Result<Document> progressReport(const Case &record, const Findings &findings, Date on,
                                const std::string &madeBy) {
    Fields fields = subjectFields(record, on, madeBy);
    addText(fields, "question", record.client.question);
    add(fields, cautionFields(findings));
    add(fields, progressFields(record));
    add(fields, scoreFields(record));
    add(fields, visitFields(record, on));
    return fillPaper("progress_report", fields, record, on, madeBy);
}

} // namespace reports
