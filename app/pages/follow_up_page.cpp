#include "app/pages/entries.h"
#include "app/pages/goals_page.h"
#include "model/progress.h"
#include "model/sentence.h"
#include <algorithm>

namespace app {

using model::Case;
using model::ErrorCode;
using model::fail;
using model::Goal;
using model::Id;
using model::Rating;
using model::Result;
using model::Sentence;

namespace {

const Rating *ratingOf(const Case &record, const Id &goal, const Id &visit) {
    const auto found = std::ranges::find_if(
        record.ratings, [&](const Rating &rating) { return rating.goal == goal && rating.visit == visit; });
    return found == record.ratings.end() ? nullptr : &*found;
}

/// The rating of a goal at a visit, made if there is none yet.
Rating &ratingIn(Case &record, const Id &goal, const Id &visit, model::Date on) {
    for (auto &rating : record.ratings)
        if (rating.goal == goal && rating.visit == visit)
            return rating;
    Rating rating;
    rating.id = model::newId();
    rating.goal = goal;
    rating.visit = visit;
    rating.date = on;
    record.ratings.push_back(rating);
    return record.ratings.back();
}

} // namespace

std::vector<PageViewModel::FieldSpec> FollowUpPage::ratingFields(const Goal &goal) {
    const Id id = goal.id;
    const Id visit = m_session.visit()->id;
    const QStringList choices = levelChoices(goal);
    const QString name = text(goal.sentence);
    return {
        {{.key = text(id.text) + QStringLiteral("-level"),
          .kind = FieldKind::Choice,
          .label = tr("Level now: %1").arg(name),
          .choices = choices},
         [this, id, visit, choices] {
             const Rating *rating = ratingOf(record(), id, visit);
             return rating ? choices.at(rating->level + 2) : QString();
         },
         [this, id, visit, choices](Case &r, const QString &chosen) -> Result<void> {
             ratingIn(r, id, visit, m_session.today()).level = static_cast<int>(choices.indexOf(chosen)) - 2;
             return {};
         }},
        {{.key = text(id.text) + QStringLiteral("-evidence"),
          .label = tr("What was seen: %1").arg(name),
          .hint = tr("Counts, conditions, help; the level first")},
         [this, id, visit] {
             const Rating *rating = ratingOf(record(), id, visit);
             return rating ? text(rating->evidence) : QString();
         },
         [this, id, visit](Case &r, const QString &typed) -> Result<void> {
             if (!ratingOf(r, id, visit))
                 return fail(ErrorCode::Missing, Sentence::tr("Choose the level first. Kept."));
             ratingIn(r, id, visit, m_session.today()).evidence = typed.trimmed().toStdString();
             return {};
         }},
    };
}

void FollowUpPage::refresh() {
    const model::Visit *visit = m_session.visit();
    std::vector<FieldSpec> fields;
    std::vector<ActionRow> actions;
    if (visit) {
        m_kicker = tr("Visit %1, %2").arg(visit->number).arg(shown(visit->date));
        for (const auto &goal : record().goals)
            for (auto &field : ratingFields(goal))
                fields.push_back(std::move(field));
        const auto note = [this](const char *key, const QString &label,
                                 std::string model::Visit::*member) -> FieldSpec {
            return {
                {.key = key, .label = label},
                [this, member] { return m_session.visit() ? text(m_session.visit()->*member) : QString(); },
                [member](Case &r, const QString &typed) -> Result<void> {
                    r.visits.back().*member = typed.trimmed().toStdString();
                    return {};
                }};
        };
        fields.push_back(note("whoWasThere", tr("Who was there"), &model::Visit::whoWasThere));
        fields.push_back(note("note", tr("Note of this visit"), &model::Visit::note));
        fields.push_back(note("carriedOver", tr("Left open for next time"), &model::Visit::carriedOver));
        actions.push_back({.key = "plan", .title = tr("On to the plan"), .primary = true});
        actions.push_back({.key = "upkeep", .title = tr("Upkeep page")});
        actions.push_back({.key = "progress", .title = tr("Progress page")});
        actions.push_back({.key = "closeVisit",
                           .title = tr("Close this visit"),
                           .keyName = m_shell.keys()->keyOf(QStringLiteral("closeVisit"))});
    } else {
        m_kicker = tr("No visit is under way.");
        actions.push_back({.key = "startVisit",
                           .title = tr("Start a visit"),
                           .keyName = m_shell.keys()->keyOf(QStringLiteral("startVisit")),
                           .primary = true});
        actions.push_back({.key = "upkeep", .title = tr("Upkeep page")});
        actions.push_back({.key = "progress", .title = tr("Progress page")});
    }
    setFields(std::move(fields));
    m_actions.setRows(std::move(actions));
    std::vector<ListRow> open;
    for (const auto &item : model::openItems(record(), m_session.today()))
        open.push_back({.key = text(item), .title = text(item)});
    m_rowsLabel = tr("Open since last time");
    m_rowsEmpty = tr("Nothing is open.");
    m_rows.setRows(std::move(open));
    std::vector<FindingRow> findings;
    for (const auto &progress : model::goalProgress(record())) {
        const auto goal = std::ranges::find(record().goals, progress.goal, &Goal::id);
        if (goal != record().goals.end())
            findings.push_back({.key = text(progress.goal.text),
                                .question = text(goal->sentence),
                                .answer = text(progress.sentence)});
    }
    m_findings.setRows(std::move(findings));
    emit refreshed();
}

void FollowUpPage::act(const QString &key) {
    if (key == QLatin1String("closeVisit"))
        m_shell.closeVisit();
    else if (key == QLatin1String("startVisit"))
        m_shell.startVisit();
    else
        m_shell.goTo(key);
}

void ProgressPage::refresh() {
    const auto all = model::goalProgress(record());
    m_kicker = counted(record().goals.size(), tr("1 goal"), tr("%1 goals")) + QStringLiteral(", ") +
               counted(record().visits.size(), tr("1 visit"), tr("%1 visits"));
    QVariantList charts;
    for (const auto &progress : all) {
        const auto goal = std::ranges::find(record().goals, progress.goal, &Goal::id);
        if (goal == record().goals.end() || progress.levels.empty())
            continue;
        QVariantList points;
        for (const auto &[date, level] : progress.levels)
            points.append(QVariantMap{{"date", text(model::dateInWords(date))}, {"level", level}});
        charts.append(QVariantMap{
            {"label", text(goal->sentence)}, {"sentence", text(progress.sentence)}, {"points", points}});
    }
    setCharts(charts);
    std::vector<FindingRow> findings;
    if (const auto t = model::attainmentNow(record()))
        findings.push_back(
            {.key = "t",
             .question = tr("All goals together"),
             .answer = tr("T score %1").arg(*t, 0, 'f', 1),
             .reason = tr("50 is as expected. Levels are ranks, not measures: read it with the levels "
                          "themselves. Source: Kiresuk and Sherman 1968.")});
    if (charts.isEmpty())
        findings.push_back(
            {.key = "none",
             .kind = "quiet",
             .answer = tr("No goal has a level yet. Levels are given on the follow-up page.")});
    m_findings.setRows(std::move(findings));
    m_actions.setRows({{.key = "papers", .title = tr("On to the papers"), .primary = true}});
    emit refreshed();
}

} // namespace app
