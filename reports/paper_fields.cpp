#include "reports/paper_fields.h"
#include "model/kit.h"
#include "model/marks.h"
#include "reports/kitchen_figure.h"
#include <algorithm>

namespace reports {

using namespace model;

std::string withoutStop(std::string words) {
    while (!words.empty() && (words.back() == '.' || words.back() == ' '))
        words.pop_back();
    return words;
}

std::string listed(const std::vector<std::string> &words) {
    std::string all;
    for (const std::string &word : words)
        all += (all.empty() ? "" : "; ") + word;
    return all;
}

void add(Fields &fields, const Fields &more) {
    for (const auto &[name, field] : more.named)
        fields.named.insert_or_assign(name, field);
}

void addList(Fields &fields, const std::string &name, std::vector<Fields> list) {
    fields.named["has" + sentenceCase(name)] = !list.empty();
    fields.named[name] = std::move(list);
}

void addText(Fields &fields, const std::string &name, const std::string &text) {
    fields.named["has" + sentenceCase(name)] = !text.empty();
    fields.named[name] = text;
}

Result<const Plan *> planOf(const Case &record) {
    if (!record.plan)
        return fail(ErrorCode::Missing, "There is no plan yet. Make the plan first, then the papers.");
    if (record.plan->lines.empty() && !record.plan->shortages.empty())
        return fail(ErrorCode::Infeasible,
                    "There is no plan that fits. " + record.plan->shortages.front().sentence);
    if (record.plan->lines.empty())
        return fail(ErrorCode::Missing,
                    "The plan is empty. Enter what is in the kitchen, then make the plan again.");
    return &*record.plan;
}

Result<Document> fillPaper(const std::string &name, const Fields &fields, const Case &record, Date on,
                           const std::string &madeBy, std::map<std::string, Figure> figures) {
    figures.emplace("kitchen", kitchenFigure(record));
    return fillTemplate(name, fields, figures).transform([&](Document document) {
        document.date = isoDate(on);
        document.author = madeBy;
        return document;
    });
}

Fields subjectFields(const Case &record, Date on, const std::string &madeBy) {
    Fields fields;
    fields.named["invented"] = record.client.invented;
    fields.named["name"] = record.client.name.empty() ? record.client.code : record.client.name;
    fields.named["code"] = record.client.code;
    fields.named["date"] = dateInWords(on);
    fields.named["planDate"] =
        record.plan && record.plan->made ? dateInWords(*record.plan->made) : dateInWords(on);
    addText(fields, "maker", madeBy);
    fields.named["whomToAsk"] = sentenceCase(withoutStop(record.client.whomToAsk)) + ".";
    fields.named["hasWhom"] = !record.client.whomToAsk.empty();
    return fields;
}

namespace {

bool wasAsked(const Caution &caution) {
    return !caution.because.starts_with("not asked");
}

/// What was noted with the answer; the answer alone says nothing to a reader who does not see the question.
std::string reasonOf(const Caution &caution) {
    if (!caution.because.starts_with("answered"))
        return withoutStop(caution.because);
    const auto note = caution.because.find(": ");
    return note == std::string::npos ? std::string() : withoutStop(caution.because.substr(note + 2));
}

} // namespace

Fields cautionFields(const Findings &findings) {
    std::vector<Caution> cautions = findings.cautions;
    std::stable_partition(cautions.begin(), cautions.end(),
                          [](const Caution &caution) { return caution.urgent; });
    std::vector<Fields> list;
    for (const Caution &caution : cautions) {
        Fields fields;
        fields.named["sentence"] = caution.sentence;
        addText(fields, "reason", reasonOf(caution));
        fields.named["notAsked"] = !wasAsked(caution);
        fields.named["urgent"] = caution.urgent;
        list.push_back(std::move(fields));
    }
    Fields all;
    all.named["someNotAsked"] = std::any_of(cautions.begin(), cautions.end(),
                                            [](const Caution &caution) { return !wasAsked(caution); });
    addList(all, "cautions", std::move(list));
    return all;
}

std::optional<Date> dayOf(const Case &record, const Rating &rating) {
    if (rating.date)
        return rating.date;
    for (const Visit &visit : record.visits)
        if (visit.id == rating.visit)
            return visit.date;
    return std::nullopt;
}

std::string levelWords(const Goal &goal, int level) {
    const int index = level + 2;
    if (index < 0 || index >= static_cast<int>(goal.levels.size()))
        return {};
    return withoutStop(goal.levels.at(static_cast<std::size_t>(index)));
}

void addLevel(Fields &fields, int level) {
    const char *names[] = {"minusTwo", "minusOne", "zero", "plusOne", "plusTwo"};
    for (int i = -2; i <= 2; ++i)
        fields.named[names[i + 2]] = i == level;
}

namespace {

const Rating *lastRating(const Case &record, const Id &goal) {
    const Rating *last = nullptr;
    for (const Rating &rating : record.ratings)
        if (rating.goal == goal && (!last || dayOf(record, rating) >= dayOf(record, *last)))
            last = &rating;
    return last;
}

std::vector<Fields> levelList(const Case &record, const Goal &goal) {
    const Rating *now = lastRating(record, goal.id);
    const auto day = now ? dayOf(record, *now) : std::nullopt;
    std::vector<Fields> levels;
    for (int level = 2; level >= -2; --level) {
        const std::string words = levelWords(goal, level);
        Fields fields;
        addLevel(fields, level);
        fields.named["words"] = words;
        fields.named["written"] = !words.empty();
        fields.named["isNow"] = day && now->level == level;
        fields.named["foundOn"] = day ? dateInWords(*day) : std::string();
        levels.push_back(std::move(fields));
    }
    return levels;
}

} // namespace

Fields goalFields(const Case &record) {
    std::vector<Fields> list;
    for (const Goal &goal : record.goals) {
        Fields fields;
        fields.named["number"] = std::to_string(list.size() + 1);
        fields.named["goal"] = withoutStop(goal.sentence);
        fields.named["levels"] = levelList(record, goal);
        addText(fields, "review", goal.review ? dateInWords(*goal.review) : std::string());
        list.push_back(std::move(fields));
    }
    Fields all;
    addList(all, "goals", std::move(list));
    return all;
}

bool means(const PlanLine &line, const std::string &meaning) {
    return std::find(line.meanings.begin(), line.meanings.end(), meaning) != line.meanings.end();
}

const Marker *markOf(const Case &record, const PlanLine &line) {
    return line.marker.empty() ? nullptr : markerIn(record, line.marker);
}

bool hasWords(const Marker &marker) {
    return marker.medium != MarkMedium::Touch;
}

bool onlyBehind(const Case &record) {
    return record.safety.cautious(SafetyQuestion::OneSideNotAttended);
}

} // namespace reports
