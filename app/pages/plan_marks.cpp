#include "app/pages/plan_page.h"
#include "model/fixing.h"
#include "model/kit.h"
#include "model/meanings.h"
#include <algorithm>

/// How a line of the plan is marked: mark, where it sits, words of the label.
namespace app {

using model::Case;
using model::Marker;
using model::PlanLine;
using model::Thing;

namespace {

const Thing *thingOf(const Case &record, const PlanLine &line) {
    const auto found = std::ranges::find(record.things, line.thing, &Thing::id);
    return found == record.things.end() ? nullptr : &*found;
}

const Marker *markOf(const Case &record, const std::string &meaning) {
    for (const auto &mark : record.plan->meaningMarks)
        if (mark.meaning == meaning)
            return model::markerIn(record, mark.marker);
    return nullptr;
}

} // namespace

const reports::Label *PlanPage::labelOf(const model::Id &thing) const {
    const auto &labels = m_session.planTold().labels;
    const auto found = labels.find(thing.text);
    return found == labels.end() || found->second.medium == reports::LabelMedium::SquareCode ? nullptr
                                                                                             : &found->second;
}

/// "braille label “rice”, on a card on the clip, meaning mark allergen"
QString PlanPage::markWords(const PlanLine &line) const {
    return markWords(line, thingOf(planned(), line));
}

QString PlanPage::markWords(const PlanLine &line, const Thing *thing) const {
    QStringList words;
    if (const Marker *marker = model::markerIn(planned(), line.marker); marker && thing) {
        words << text(marker->name);
        if (const reports::Label *label = labelOf(line.thing)) {
            const bool tag = label->medium == reports::LabelMedium::SpokenTag;
            words.last() +=
                QStringLiteral(" \u201c") + text(tag ? label->name : label->words) + QStringLiteral("\u201d");
            if (!label->fits)
                words << tr("does not fit");
        }
        words << text(model::fixingOf(*thing, *marker).where);
    }
    for (const auto &meaning : line.meanings)
        words << tr("meaning mark %1").arg(text(model::meaningName(meaning)));
    return words.isEmpty() ? tr("no mark") : words.join(QStringLiteral(", "));
}

/// One row for every line, so that the rows of two lines are the same ones.
FindingRow PlanPage::markRow(const PlanLine &line) const {
    FindingRow row{.key = "marking", .question = tr("How it is marked")};
    const Thing *thing = thingOf(planned(), line);
    QStringList fixing;
    if (const Marker *marker = model::markerIn(planned(), line.marker); marker && thing)
        fixing << text(model::fixingWords(model::fixingOf(*thing, *marker), *marker));
    for (const auto &meaning : line.meanings)
        if (const Marker *marker = markOf(planned(), meaning); marker && thing)
            fixing << tr("Meaning %1: %2")
                          .arg(text(model::meaningName(meaning)),
                               text(model::fixingWords(
                                   model::fixingOf(*thing, *marker, model::MarkRole::Meaning), *marker)));
    row.answer =
        fixing.isEmpty() ? tr("No mark: its place and its shape tell it.") : fixing.join(QLatin1Char(' '));
    if (const reports::Label *label = labelOf(line.thing)) {
        QStringList told{tr("The label says: %1").arg(text(label->words))};
        if (!told.front().endsWith(QLatin1Char('.')))
            told.front() += QLatin1Char('.');
        for (const auto &sentence : label->told)
            told << text(sentence);
        row.reason = told.join(QLatin1Char(' '));
    }
    return row;
}

} // namespace app
