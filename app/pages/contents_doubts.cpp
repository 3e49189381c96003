#include "app/pages/contents_page.h"
#include "app/pages/entries.h"
#include "model/contents.h"
#include "model/lexicon.h"
#include <algorithm>
#include <utility>

namespace app {

using model::Case;
using model::Id;
using model::Thing;

namespace {

/// What was said and what is asked of it, once if the question begins with it.
QString questionOn(const QString &said, const Thing &thing) {
    const QString question = doubtWords(thing);
    return question.startsWith(said) ? question : QStringLiteral("%1: %2").arg(said, question);
}

} // namespace

std::vector<ListRow> ContentsPage::answerRows() const {
    std::vector<ListRow> rows;
    const auto items = model::parseContents(thingInHand()->said, m_session.lexicon());
    if (!items)
        return rows;
    for (const auto &answer : items->front().answers)
        rows.push_back(
            {.key = QStringLiteral("%1.%2").arg(m_asked).arg(rows.size()), .title = text(answer.words)});
    return rows;
}

void ContentsPage::showDoubt() {
    const auto left = std::ranges::count_if(record().things, isDoubtful);
    const Thing &thing = *thingInHand();
    m_kicker = counted(static_cast<std::size_t>(left), tr("1 doubt"), tr("%1 doubts"));
    m_title = questionOn(text(thing.said), thing);
    setFields({{{.key = "answer",
                 .label = tr("Or say it in a line"),
                 .hint = tr("For example 2 small jars of the same")},
                {},
                {}}});
    m_actions.setRows({{.key = "line", .title = tr("Later, back to the shelf")},
                       {.key = "facts", .title = tr("All its facts")},
                       {.key = "remove", .title = tr("Remove this thing")}});
    m_rowsLabel = tr("Answers");
    m_rowsEmpty = tr("No answer is known.");
    m_rows.setRows(answerRows());
}

/// The line stands for the thing in hand: its first thing keeps place and history, others are added beside
/// it.
void ContentsPage::answer(const std::string &line) {
    auto items = model::parseContents(line, m_session.lexicon());
    if (!items) {
        refuse(QStringLiteral("answer"), text(line), text(items.error().sentence));
        return;
    }
    clearField(QStringLiteral("answer"));
    const Id id = m_thing;
    const QString words = text(items->front().thing.name);
    const bool saved = change(tr("%1 settled").arg(words), "thing.settled", [&](Case &r) {
        const auto found = std::ranges::find(r.things, id, &Thing::id);
        const Thing before = *found;
        const std::optional<Id> place = before.place;
        *found = items->front().thing;
        found->id = id;
        found->place = place;
        found->keep = before.keep;
        found->bestBefore = before.bestBefore;
        found->bought = before.bought;
        found->opened = before.opened;
        found->recorded = before.recorded;
        for (std::size_t i = 1; i < items->size(); ++i) {
            r.things.push_back((*items)[i].thing);
            r.things.back().id = model::newId();
            r.things.back().place = place;
            r.things.back().recorded = m_session.today();
        }
    });
    if (!saved)
        return;
    for (const auto &item : *items)
        m_session.learn(item.thing);
    const auto left = std::ranges::count_if(record().things, isDoubtful);
    if (const Thing *thing = thingInHand(); thing != nullptr && isDoubtful(*thing)) {
        open(id, Mode::Doubt);
        say(questionOn(words, *thing));
    } else if (left > 0) {
        nextDoubt(1);
    } else {
        const bool elsewhere = m_cameFrom && *m_cameFrom != m_place;
        toLine();
        sayAfterFocus(tr("%1. No doubts left.").arg(words) +
                      (elsewhere ? QLatin1Char(' ') + m_title + QLatin1Char('.') : QString()));
    }
}

void ContentsPage::settle() {
    const Thing *thing = thingInHand();
    if (thing != nullptr && !thing->doubt.empty()) {
        const Id id = m_thing;
        change(tr("%1 settled").arg(text(thing->name)), "thing.settled", [&](Case &r) {
            auto &settled = *std::ranges::find(r.things, id, &Thing::id);
            settled.doubt.clear();
            settled.said.clear();
        });
    }
    if (const Thing *known = thingInHand(); known != nullptr)
        m_session.learn(*known);
    toLine();
    const auto left = std::ranges::count_if(record().things, isDoubtful);
    say(left ? counted(static_cast<std::size_t>(left), tr("1 doubt left."), tr("%1 doubts left."))
             : tr("No doubts left."));
}

void ContentsPage::nextDoubt(int by) {
    std::vector<const Thing *> doubtful;
    for (const auto &thing : record().things)
        if (isDoubtful(thing))
            doubtful.push_back(&thing);
    if (doubtful.empty()) {
        say(tr("No doubts left."));
        return;
    }
    const auto at = std::ranges::find_if(doubtful, [this](const Thing *t) { return t->id == m_thing; });
    const auto count = static_cast<int>(doubtful.size());
    const int from = at == doubtful.end() ? (by > 0 ? -1 : 0) : static_cast<int>(at - doubtful.begin());
    const Thing next = *doubtful[static_cast<std::size_t>((from + by + count) % count)];
    if (m_mode == Mode::Line && !m_cameFrom)
        m_cameFrom = m_place;
    if (next.place)
        m_place = *next.place;
    const QString left = counted(static_cast<std::size_t>(count), tr("1 left"), tr("%1 left"));
    open(next.id, Mode::Doubt);
    // Before the answers, which take the focus a moment later.
    if (m_mode == Mode::Doubt)
        say(tr("%1 %2.").arg(questionOn(text(next.said), next), left) +
            (std::exchange(m_answersTold, true) || m_shell.isShortSpeech()
                 ? QString()
                 : QLatin1Char(' ') + tr("Enter accepts, Down for more.")));
    else
        sayAfterFocus(tr("%1 %2.").arg(questionOn(text(next.name), next), left));
}

} // namespace app
