#include "app/pages/appliances_page.h"
#include "model/appliance_line.h"
#include "model/appliance_marks.h"
#include "model/kit.h"
#include "model/typed.h"
#include <algorithm>

namespace app {

using model::Appliance;
using model::ApplianceMarks;
using model::Case;
using model::Id;
using model::Result;

namespace {

/// "off: large bump. 180: row of three bumps. Without a mark: 220."
QString marksInWords(const Case &record, const ApplianceMarks &marks) {
    QStringList words;
    for (const auto &mark : marks.marks) {
        const auto *marker = model::markerIn(record, mark.marker);
        const QString setting = mark.control.empty()
                                    ? text(mark.setting)
                                    : QObject::tr("%1, %2").arg(text(mark.control), text(mark.setting));
        words << QObject::tr("%1: %2.").arg(setting, marker ? text(marker->name) : text(mark.marker));
    }
    QStringList bare;
    for (const auto &setting : marks.unmarked)
        bare << text(setting);
    if (!bare.isEmpty())
        words << QObject::tr("Without a mark: %1.").arg(bare.join(QStringLiteral("; ")));
    return words.join(QLatin1Char(' '));
}

QString heatWords(const Appliance &appliance) {
    return appliance.heat ? text(model::typed::words(appliance.heat->value, 1)) + QStringLiteral(" C")
                          : QString();
}

Appliance *applianceIn(Case &record, const Id &id) {
    const auto found = std::ranges::find(record.appliances, id, &Appliance::id);
    return found == record.appliances.end() ? nullptr : &*found;
}

Result<void> writeLine(Case &record, const Id &id, const QString &typed) {
    auto read = model::parseAppliance(typed.toStdString());
    if (!read)
        return tl::unexpected(read.error());
    if (Appliance *appliance = applianceIn(record, id)) {
        appliance->name = read->name;
        appliance->controls = std::move(read->controls);
    }
    return {};
}

Result<void> writeHeat(Case &record, const Id &id, const QString &typed) {
    const auto heat = model::readHeat(typed.toStdString());
    if (!heat)
        return tl::unexpected(heat.error());
    if (Appliance *appliance = applianceIn(record, id))
        appliance->heat = *heat;
    return {};
}

} // namespace

const Appliance *AppliancesPage::inHand() const {
    const auto found = std::ranges::find(record().appliances, m_hand, &Appliance::id);
    return found == record().appliances.end() ? nullptr : &*found;
}

std::vector<PageViewModel::FieldSpec> AppliancesPage::handFields(const Id &id) {
    const auto appliance = [this, id]() -> const Appliance & {
        return *std::ranges::find(record().appliances, id, &Appliance::id);
    };
    return {{{.key = "line",
              .label = tr("Appliance and its settings"),
              .hint = tr("Name, colon, settings; off first, then those used most")},
             [appliance] { return text(model::applianceLine(appliance())); },
             [id](Case &r, const QString &typed) { return writeLine(r, id, typed); }},
            {{.key = "heat",
              .label = tr("Heat beside the controls after an hour's use"),
              .hint = tr("By thermometer, never by hand; for example 55 C. Empty: not measured")},
             [appliance] { return heatWords(appliance()); },
             [id](Case &r, const QString &typed) { return writeHeat(r, id, typed); }}};
}

std::vector<ListRow> AppliancesPage::applianceRows() const {
    const auto marks = model::applianceMarks(m_session.planRecord(), m_session.planFindings());
    std::vector<ListRow> rows;
    for (std::size_t k = 0; k < marks.size(); ++k) {
        const Appliance &appliance = record().appliances[k];
        rows.push_back({.key = text(appliance.id.text),
                        .title = text(appliance.name),
                        .facts = marksInWords(record(), marks[k]),
                        .flag = appliance.heat || !model::mayGetHot(appliance.name)
                                    ? QString()
                                    : tr("heat not measured")});
    }
    return rows;
}

std::vector<FindingRow> AppliancesPage::findingRows() const {
    std::vector<FindingRow> rows;
    const auto marks = model::applianceMarks(m_session.planRecord(), m_session.planFindings());
    for (std::size_t k = 0; k < marks.size(); ++k) {
        if (marks[k].told.empty() || (inHand() && marks[k].appliance != m_hand))
            continue;
        QStringList sentences;
        for (const auto &sentence : marks[k].told)
            sentences << text(sentence);
        rows.push_back({.key = QStringLiteral("told.") + text(marks[k].appliance.text),
                        .question = text(record().appliances[k].name),
                        .answer = sentences.join(QLatin1Char(' '))});
    }
    QStringList cautions;
    for (const auto &sentence : model::applianceCautions(m_session.planRecord()))
        cautions << text(sentence);
    rows.push_back({.key = "caution", .question = tr("Caution"), .answer = cautions.join(QLatin1Char(' '))});
    return rows;
}

void AppliancesPage::refresh() {
    if (!inHand())
        m_hand = {};
    m_kicker = tr("On each control off and the two settings used most get a mark.");
    std::vector<ActionRow> actions;
    if (inHand()) {
        setFields(handFields(m_hand));
        actions = {{.key = "done", .title = tr("Done, next appliance"), .primary = true},
                   {.key = "remove", .title = tr("Remove this appliance")}};
    } else {
        setFields({{{.key = "appliance",
                     .label = tr("Appliance and its settings"),
                     .hint = tr("For example oven: off, 180, 200; or cooker: ring: off, 3; oven: off, 180")},
                    {},
                    {}}});
        actions = {{.key = "kitchen", .title = tr("Back to the kitchen")}};
    }
    m_actions.setRows(std::move(actions));
    m_findings.setRows(findingRows());
    m_rowsLabel = tr("Appliances");
    m_rowsEmpty = tr("No appliance yet. Begin with the one that the client uses daily.");
    m_rows.setRows(applianceRows());
    emit refreshed();
}

void AppliancesPage::edit(const QString &key, const QString &value) {
    if (key == QLatin1String("appliance"))
        take(value);
    else
        PageViewModel::edit(key, value);
}

void AppliancesPage::take(const QString &line) {
    if (line.trimmed().isEmpty())
        return;
    auto appliance = model::parseAppliance(line.toStdString());
    if (!appliance) {
        refuse(QStringLiteral("appliance"), line, text(appliance.error().sentence));
        return;
    }
    appliance->id = model::newId();
    if (!change(line.trimmed(), "appliance.added", [&](Case &r) { r.appliances.push_back(*appliance); }))
        return;
    clearField(QStringLiteral("appliance"));
    const auto marks = model::applianceMarks(m_session.planRecord(), m_session.planFindings());
    say(tr("%1. %2").arg(text(appliance->name), marksInWords(record(), marks.back())));
}

void AppliancesPage::activated(const QString &row) {
    m_hand = {row.toStdString()};
    refresh();
    emit focusField(inHand() ? QStringLiteral("line") : QStringLiteral("appliance"));
}

void AppliancesPage::act(const QString &key) {
    if (key == QLatin1String("done"))
        activated({});
    else if (key == QLatin1String("remove") && inHand())
        remove();
    else if (key == QLatin1String("kitchen"))
        m_shell.goTo(QStringLiteral("kitchen"));
}

void AppliancesPage::remove() {
    const Id id = m_hand;
    const QString name = text(inHand()->name);
    if (!change(tr("removed %1").arg(name), "appliance.removed", [&](Case &r) {
            std::erase_if(r.appliances, [&](const Appliance &a) { return a.id == id; });
        }))
        return;
    activated({});
    sayAfterFocus(tr("%1 removed.").arg(name));
}

void AppliancesPage::command(const QString &name) {
    if (name == QLatin1String("correct")) {
        if (!m_row.isEmpty())
            activated(m_row);
        return;
    }
    QStringList words;
    for (const auto &row : applianceRows())
        words << row.title + QStringLiteral(". ") + row.facts;
    say(words.isEmpty() ? tr("No appliance yet.") : words.join(QLatin1Char(' ')));
}

} // namespace app
