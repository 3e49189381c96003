#include "app/pages/contents_page.h"
#include "app/pages/entries.h"
#include "app/pages/kitchen_page.h"
#include "model/contents.h"
#include "model/lexicon.h"
#include "model/planning.h"
#include "model/sentence.h"
#include <QFile>
#include <algorithm>

namespace app {

using model::Case;
using model::ErrorCode;
using model::fail;
using model::Id;
using model::ListedLine;
using model::Place;
using model::Result;
using model::Sentence;

namespace {

constexpr qint64 largestFile = 1'000'000; // bytes; a list of 10,000 things is smaller

/// The place of that name: "larder, top shelf", or "top shelf" where there is only one. Fails with Missing.
Result<Id> placeNamed(const Case &record, const std::string &name, const Id &inHand) {
    if (name.empty())
        return inHand;
    const QString wanted = text(name).toLower().simplified();
    std::vector<Id> found;
    for (const Place &place : record.places) {
        const QString whole = text(model::placeWords(record, place.id)).toLower();
        if (whole == wanted || QString(whole).remove(QLatin1Char(',')) == wanted)
            return place.id;
        if (text(place.name).toLower() == wanted)
            found.push_back(place.id);
    }
    if (found.size() == 1)
        return found.front();
    return fail(
        ErrorCode::Missing,
        found.empty()
            ? Sentence::tr("no place is called {1}", {name})
            : Sentence::tr(
                  "more than one place is called {1}; name its unit too, for example larder, top shelf",
                  {name}));
}

QString problemOf(const Case &record, const ListedLine &line, const Id &inHand) {
    if (!line.problem.empty())
        return text(line.problem);
    const auto place = placeNamed(record, line.place, inHand);
    return place ? QString() : QObject::tr("Line %1: %2.").arg(line.number).arg(text(place.error().sentence));
}

} // namespace

std::vector<PageViewModel::FieldSpec> ContentsPage::listFields() {
    return {
        {{.key = "list",
          .kind = FieldKind::Multiline,
          .label = tr("The list"),
          .hint = tr("One line of contents each, or a table with column names. A line that ends with a colon "
                     "names the "
                     "place.")},
         [this] { return m_list; },
         [this](Case &, const QString &typed) -> Result<void> {
             m_list = typed;
             m_listed = model::readList(typed.toStdString(), m_session.lexicon());
             return {};
         }},
        {{.key = "file",
          .kind = FieldKind::File,
          .label = tr("Or a file"),
          .hint = tr("Text or CSV, for example /media/stick/kitchen.csv"),
          .choices = {QStringLiteral("csv"), QStringLiteral("txt"), QStringLiteral("tsv")}},
         {},
         [this](Case &, const QString &typed) -> Result<void> {
             QFile file(typed.trimmed());
             if (typed.trimmed().isEmpty())
                 return {};
             if (!file.open(QIODevice::ReadOnly))
                 return fail(ErrorCode::Missing,
                             Sentence::tr("The file cannot be read: {1}. Check the name. Kept.",
                                          {file.errorString().toStdString()}));
             if (file.size() > largestFile)
                 return fail(
                     ErrorCode::OutOfRange,
                     Sentence::tr("The file is larger than 1 MB, so it is no list of a kitchen. Kept."));
             m_list = QString::fromUtf8(file.readAll());
             m_listed = model::readList(m_list.toStdString(), m_session.lexicon());
             return {};
         }},
    };
}

std::vector<ListRow> ContentsPage::listRows() const {
    std::vector<ListRow> rows;
    for (const auto &line : m_listed) {
        const QString problem = problemOf(record(), line, m_place);
        QStringList doubts;
        for (const auto &item : line.items)
            if (!item.doubt.empty())
                doubts << text(item.doubt);
        rows.push_back(
            {.key = QString::number(line.number),
             .title = problem.isEmpty() ? text(model::readContentsBack(line.items)) : text(line.text),
             .facts = problem,
             .flag = problem.isEmpty() ? (doubts.isEmpty() ? QString() : tr("to ask")) : tr("not taken"),
             .section = line.place.empty() ? m_title : text(line.place)});
    }
    return rows;
}

void ContentsPage::showList() {
    setFields(listFields());
    std::size_t things = 0;
    std::size_t problems = 0;
    for (const auto &line : m_listed) {
        const bool sound = problemOf(record(), line, m_place).isEmpty();
        things += sound ? line.items.size() : 0;
        problems += sound ? 0 : 1;
    }
    std::vector<ActionRow> actions;
    if (things > 0)
        actions.push_back({.key = "take",
                           .title = counted(things, tr("Take in 1 thing"), tr("Take in %1 things")),
                           .primary = true});
    actions.push_back({.key = "line", .title = tr("Back to the shelf")});
    m_actions.setRows(std::move(actions));
    m_rowsLabel =
        problems == 0
            ? tr("What was understood")
            : tr("What was understood, %1 not").arg(counted(problems, tr("1 line"), tr("%1 lines")));
    m_rowsEmpty = tr("Paste a list above.");
    m_rows.setRows(listRows());
}

/// Takes in what was understood; the lines that were not stay in the field.
void ContentsPage::takeList() {
    std::size_t things = 0;
    QStringList left;
    const bool saved = change(tr("a list"), "things.added", [&](Case &r) {
        for (const auto &line : m_listed) {
            const auto place = placeNamed(r, line.place, m_place);
            if (!line.problem.empty() || !place) {
                left << (line.place.empty() ? text(line.text)
                                            : text(line.place) + QStringLiteral(":\n") + text(line.text));
                continue;
            }
            for (const auto &item : line.items) {
                r.things.push_back(item.thing);
                r.things.back().id = model::newId();
                r.things.back().place = *place;
                r.things.back().recorded = m_session.today();
                ++things;
            }
        }
    });
    if (!saved)
        return;
    m_list = left.join(QLatin1Char('\n'));
    m_listed.clear();
    const QString taken = counted(things, tr("1 thing taken in."), tr("%1 things taken in."));
    if (left.isEmpty()) {
        toLine();
        sayAfterFocus(taken);
        return;
    }
    m_listed = model::readList(m_list.toStdString(), m_session.lexicon());
    open({}, Mode::List);
    sayAfterFocus(taken + QLatin1Char(' ') +
                  counted(static_cast<std::size_t>(left.size()), tr("1 line is left in the field."),
                          tr("%1 lines are left in the field.")));
}

} // namespace app
