#include "app/pages/entries.h"
#include "app/pages/sight_pages.h"
#include "model/legible.h"
#include "model/planning.h"
#include <algorithm>

namespace app {

namespace {

/// Label colours as they are spoken: print on ground.
const QStringList &colourChoices() {
    static const QStringList choices{QObject::tr("black on white"), QObject::tr("black on yellow"),
                                     QObject::tr("white on black"), QObject::tr("dark blue on white"),
                                     QObject::tr("red on white"),   QObject::tr("grey on white")};
    return choices;
}

model::LabelColours coloursOf(const QString &words) {
    const QStringList parts = words.split(QStringLiteral(" on "));
    if (parts.size() != 2)
        return {};
    const auto print = model::parseColour(parts[0].toStdString());
    const auto ground = model::parseColour(parts[1].toStdString());
    return print && ground ? model::LabelColours{*print, *ground} : model::LabelColours{};
}

QString keyOf(const model::LabelRow &row) {
    return text(row.place.text + "/" + row.thing.text);
}

} // namespace

void LegiblePage::edit(const QString &key, const QString &value) {
    if (key == QLatin1String("colours"))
        m_colours = value;
    refresh();
}

void LegiblePage::moved(const QString &row) {
    if (row == m_row)
        return;
    m_row = row;
    showReason();
}

void LegiblePage::showReason() {
    std::vector<FindingRow> reasons;
    for (const auto &row : model::legibleHere(record(), m_session.findings(), coloursOf(m_colours)))
        if (keyOf(row) == m_row)
            reasons.push_back({.key = "why",
                               .question = text(row.words),
                               .answer = text(model::wordsOf(row.verdict)),
                               .reason = text(row.because)});
    reasons.push_back(
        {.key = "estimate",
         .kind = "caution",
         .answer = tr("An estimate from the acuity: true only when the client has read it there.")});
    m_findings.setRows(std::move(reasons));
}

void LegiblePage::refresh() {
    if (m_colours.isEmpty())
        m_colours = colourChoices().front();
    setFields({{{.key = "colours",
                 .kind = FieldKind::Choice,
                 .label = tr("Colours of the labels"),
                 .hint = tr("Print, then ground"),
                 .choices = colourChoices()},
                [this] { return m_colours; },
                {}}});
    const auto labels = model::legibleHere(record(), m_session.findings(), coloursOf(m_colours));
    const auto works = std::ranges::count(labels, model::Legible::Works, &model::LabelRow::verdict);
    const auto lamp = std::ranges::count(labels, model::Legible::WithLamp, &model::LabelRow::verdict);
    m_kicker = labels.empty()
                   ? tr("No labels to read yet")
                   : tr("%1 of %2 labels work, %3 more with a lamp").arg(works).arg(labels.size()).arg(lamp);
    std::vector<ListRow> rows;
    for (const auto &label : labels)
        rows.push_back({.key = keyOf(label),
                        .title = text(label.words),
                        .amount = text(model::wordsOf(label.verdict)),
                        .facts = text(label.because),
                        .section = text(model::placeWords(record(), label.place))});
    m_rowsLabel = tr("Labels");
    m_rowsEmpty = tr("No places yet. Enter the kitchen first.");
    m_rows.setRows(std::move(rows));
    if (m_row.isEmpty() && !labels.empty())
        m_row = keyOf(labels.front());
    showReason();
    emit refreshed();
}

} // namespace app
