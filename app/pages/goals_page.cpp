#include "app/pages/goals_page.h"
#include "app/pages/entries.h"
#include <algorithm>

namespace app {

using model::Case;
using model::Goal;
using model::Id;
using model::Result;

namespace {

/// Where the level -2 to 2 stands among the five.
std::size_t levelIndex(int level) {
    return static_cast<std::size_t>(level) + 2U;
}

QString levelName(int level) {
    switch (level) {
    case -2:
        return QObject::tr("\u22122, much less than expected");
    case -1:
        return QObject::tr("\u22121, less than expected");
    case 0:
        return QObject::tr("0, as expected");
    case 1:
        return QObject::tr("+1, more than expected");
    default:
        return QObject::tr("+2, much more than expected");
    }
}

/// What came of it, and what it still lacks.
QString keptWords(const Goal &goal) {
    const auto empty = std::ranges::count(goal.levels, std::string());
    QStringList open;
    if (goal.sentence.empty())
        open << QObject::tr("its words");
    if (empty > 0)
        open << counted(static_cast<std::size_t>(empty), QObject::tr("1 level"), QObject::tr("%1 levels"));
    if (!goal.review)
        open << QObject::tr("the day of review");
    return open.isEmpty() ? QObject::tr("Goal kept, nothing open.")
                          : QObject::tr("Goal kept. Still open: %1.").arg(open.join(QStringLiteral(", ")));
}

Goal &goalIn(Case &record, const Id &id) {
    return *std::ranges::find(record.goals, id, &Goal::id);
}

} // namespace

QStringList levelChoices(const Goal &goal) {
    QStringList words;
    for (int level = -2; level <= 2; ++level) {
        const auto &own = goal.levels.at(levelIndex(level));
        words << (own.empty() ? levelName(level) : levelName(level) + QStringLiteral(": ") + text(own));
    }
    return words;
}

std::vector<PageViewModel::FieldSpec> GoalsPage::goalFields(const Id &id) {
    const auto goal = [this, id]() -> const Goal & {
        return *std::ranges::find(record().goals, id, &Goal::id);
    };
    std::vector<FieldSpec> fields{
        {{.key = "sentence",
          .kind = FieldKind::Multiline,
          .label = tr("Goal"),
          .hint = tr("Who does what, how well, by when. Ctrl+Return or Tab takes it.")},
         [goal] { return text(goal().sentence); },
         [id](Case &r, const QString &typed) -> Result<void> {
             goalIn(r, id).sentence = typed.trimmed().toStdString();
             return {};
         }}};
    for (int level = -2; level <= 2; ++level) {
        const auto index = levelIndex(level);
        fields.push_back({{.key = QStringLiteral("level%1").arg(level),
                           .label = levelName(level),
                           .hint = tr("What is seen then; one thing, no gaps")},
                          [goal, index] { return text(goal().levels.at(index)); },
                          [id, index](Case &r, const QString &typed) -> Result<void> {
                              goalIn(r, id).levels.at(index) = typed.trimmed().toStdString();
                              return {};
                          }});
    }
    const auto weight = [&](const char *key, const QString &label, int Goal::*member) -> FieldSpec {
        return {{.key = key, .kind = FieldKind::Number, .label = label, .hint = tr("0 to 3")},
                [goal, member] { return QString::number(goal().*member); },
                [id, member](Case &r, const QString &typed) -> Result<void> {
                    const auto value = wholeNumber(typed, 0, 3);
                    if (!value)
                        return tl::unexpected(value.error());
                    goalIn(r, id).*member = *value;
                    return {};
                }};
    };
    fields.push_back(weight("importance", tr("Importance to the client"), &Goal::importance));
    fields.push_back(weight("difficulty", tr("Difficulty"), &Goal::difficulty));
    fields.push_back({{.key = "review",
                       .kind = FieldKind::Date,
                       .label = tr("Review on"),
                       .hint = tr("For example 25 February 2027")},
                      [goal] { return shown(goal().review); },
                      [id](Case &r, const QString &typed) -> Result<void> {
                          const auto date = dateOrNone(typed);
                          if (!date)
                              return tl::unexpected(date.error());
                          goalIn(r, id).review = *date;
                          return {};
                      }});
    return fields;
}

/// A goal is whole with its sentence, five levels and a day to look at it again.
bool GoalsPage::isGap(const FormField &field) const {
    return PageViewModel::isGap(field) || field.value.isEmpty();
}

void GoalsPage::refresh() {
    const auto &goals = record().goals;
    const auto inHand = std::ranges::find(goals, m_goal, &Goal::id);
    if (inHand == goals.end())
        m_goal = {};
    m_kicker = counted(goals.size(), tr("1 goal agreed"), tr("%1 goals agreed"));
    setFields(m_goal.empty() ? std::vector<FieldSpec>{} : goalFields(m_goal));
    std::vector<ActionRow> actions{{.key = "new", .title = tr("New goal"), .primary = m_goal.empty()}};
    if (!m_goal.empty()) {
        actions.insert(actions.begin(), {.key = "done", .title = tr("Done"), .primary = true});
        actions.push_back({.key = "remove", .title = tr("Remove this goal")});
    }
    m_actions.setRows(std::move(actions));
    std::vector<ListRow> rows;
    for (const auto &goal : goals) {
        const auto written =
            std::ranges::count_if(goal.levels, [](const std::string &level) { return !level.empty(); });
        rows.push_back({.key = text(goal.id.text),
                        .title = goal.sentence.empty() ? tr("Goal without words") : text(goal.sentence),
                        .facts = goal.review ? tr("Review on %1").arg(shown(goal.review)) : QString(),
                        .flag = written < 5 ? tr("%1 of 5 levels").arg(written) : QString()});
    }
    m_rowsLabel = tr("Goals");
    m_rowsEmpty = tr("No goal yet. Levels are written before treatment.");
    m_rows.setRows(std::move(rows));
    emit refreshed();
}

void GoalsPage::act(const QString &key) {
    if (key == QLatin1String("new")) {
        Goal goal;
        goal.id = model::newId();
        goal.agreed = m_session.today();
        const Id id = goal.id;
        if (change(tr("new goal"), "goal.added", [&](Case &r) { r.goals.push_back(goal); }))
            activated(text(id.text));
    } else if (key == QLatin1String("done")) {
        const Id id = m_goal;
        const QString words = keptWords(*std::ranges::find(record().goals, id, &Goal::id));
        activated({});
        emit focusRow(text(id.text));
        sayAfterFocus(words);
    } else if (key == QLatin1String("remove")) {
        const Id id = m_goal;
        if (change(tr("goal removed"), "goal.removed", [&](Case &r) {
                std::erase_if(r.ratings, [&](const model::Rating &rating) { return rating.goal == id; });
                std::erase_if(r.goals, [&](const Goal &goal) { return goal.id == id; });
            }))
            say(tr("Goal removed."));
    }
}

void GoalsPage::activated(const QString &row) {
    m_goal = {row.toStdString()};
    refresh();
    if (!m_goal.empty())
        emit focusField(QStringLiteral("sentence"));
}

void GoalsPage::command(const QString & /*name*/) {
    if (!m_row.isEmpty())
        activated(m_row);
}

} // namespace app
