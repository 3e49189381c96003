#include "app/pages/upkeep_page.h"
#include "app/pages/entries.h"
#include "model/supplies.h"
#include <algorithm>

namespace app {

using model::Case;
using model::DatedThing;
using model::DateState;
using model::Thing;

namespace {

QString stateWords(DateState state) {
    switch (state) {
    case DateState::PastSafety:
        return QObject::tr("past use by");
    case DateState::PastOpened:
        return QObject::tr("open too long");
    case DateState::PastQuality:
        return QObject::tr("past best before");
    case DateState::PastGuidance:
        return QObject::tr("past guidance");
    case DateState::AskReader:
        return QObject::tr("ask a reader");
    case DateState::Soon:
        return QObject::tr("use first");
    case DateState::Later:
    case DateState::NoDate:
        return {};
    }
    return {};
}

QString sectionOf(DateState state) {
    switch (state) {
    case DateState::AskReader:
        return QObject::tr("A date of safety that nobody read");
    case DateState::Soon:
        return QObject::tr("Within a week");
    case DateState::Later:
        return QObject::tr("Later");
    case DateState::PastSafety:
    case DateState::PastOpened:
    case DateState::PastQuality:
    case DateState::PastGuidance:
        return QObject::tr("Past its date");
    case DateState::NoDate:
        return QObject::tr("No date");
    }
    return {};
}

/// What the sentence says after the name of the thing.
QString factsOf(const DatedThing &one) {
    const QString sentence = text(one.sentence);
    return sentence.mid(sentence.indexOf(QLatin1String(": ")) + 2);
}

} // namespace

const Thing *UpkeepPage::thingInHand() const {
    const auto found = std::ranges::find(record().things, model::Id{m_row.toStdString()}, &Thing::id);
    return found == record().things.end() ? nullptr : &*found;
}

void UpkeepPage::refresh() {
    showRows();
    if (!thingInHand())
        m_row = m_rows.rows().empty() ? QString() : m_rows.rows().front().key;
    showForm();
    showFindings();
    emit refreshed();
}

void UpkeepPage::showRows() {
    std::vector<ListRow> rows;
    std::size_t sortOut = 0;
    for (const DatedThing &one : model::datedThings(record(), m_session.today())) {
        const auto thing = std::ranges::find(record().things, one.thing, &Thing::id);
        sortOut += one.state <= DateState::AskReader ? 1 : 0;
        rows.push_back({.key = text(one.thing.text),
                        .title = text(thing->name),
                        .facts = factsOf(one),
                        .flag = stateWords(one.state),
                        .section = sectionOf(one.state)});
    }
    m_kicker = counted(rows.size(), tr("1 food"), tr("%1 foods")) + QStringLiteral(", ") +
               (sortOut == 0 ? tr("none to sort out") : tr("%1 to sort out").arg(sortOut));
    m_rowsLabel = tr("Food by date");
    m_rowsEmpty = tr("No food is recorded.");
    m_rows.setRows(std::move(rows));
}

void UpkeepPage::showForm() {
    std::vector<ActionRow> actions;
    const Thing *thing = thingInHand();
    if (m_settings) {
        setFields(settingFields());
        actions.push_back({.key = "dates", .title = tr("Back to the dates"), .primary = true});
    } else {
        setFields(thing ? dateFields(*thing) : std::vector<FieldSpec>{});
        if (thing) {
            actions.push_back({.key = "opened", .title = tr("Opened today")});
            actions.push_back({.key = "newPack", .title = tr("New pack today")});
        }
        actions.push_back({.key = "fridgeDone", .title = tr("Fridge checked today")});
        actions.push_back({.key = "roundDone", .title = tr("Cleaned and audited today")});
        actions.push_back({.key = "settings", .title = tr("Days, region and prices")});
    }
    m_actions.setRows(std::move(actions));
}

void UpkeepPage::showFindings() {
    std::vector<FindingRow> rows;
    int number = 0;
    for (const auto &task : model::upkeepTasks(record(), m_session.today())) {
        if (!task.due || task.when == "once")
            continue;
        QString answer = tr("next %1, %2").arg(shown(task.due), text(task.when));
        if (task.missed)
            answer = tr("was due %1, not noted as done; %2").arg(shown(task.missed), answer);
        if (task.who != model::Doer::Client)
            answer += tr("; by %1").arg(text(model::doerInWords(task.who)));
        rows.push_back({.key = QStringLiteral("task%1").arg(number++),
                        .question = text(task.task),
                        .answer = answer,
                        .reason = text(task.source)});
    }
    const auto needed = model::supplies(m_session.planRecord(), m_session.planFindings());
    QStringList names;
    for (const auto &supply : needed)
        names << tr("%1 %2").arg(supply.count).arg(text(supply.name));
    rows.push_back(
        {.key = "supplies",
         .question = tr("Supplies, with a tenth to spare"),
         .answer = names.isEmpty()
                       ? tr("none, without a plan")
                       : tr("%1 in all").arg(text(model::priceInWords(model::totalCost(needed), record()))),
         .reason = names.join(QStringLiteral(", "))});
    for (const auto &banned : model::bannedMaterials(m_session.planRecord(), m_session.planFindings()))
        rows.push_back({.key = QStringLiteral("banned") + text(banned.material),
                        .question = tr("Not for this client: %1").arg(text(banned.material)),
                        .answer = tr("instead: %1").arg(text(banned.instead)),
                        .reason = text(banned.because)});
    m_findings.setRows(std::move(rows));
}

void UpkeepPage::moved(const QString &row) {
    if (row == m_row)
        return;
    m_row = row;
    showForm();
    emit refreshed();
}

void UpkeepPage::activated(const QString &row) {
    moved(row);
    command(QStringLiteral("correct"));
}

void UpkeepPage::command(const QString & /*name*/) {
    if (!thingInHand()) {
        say(tr("Choose a food first."));
        return;
    }
    if (m_settings)
        act(QStringLiteral("dates"));
    emit focusField(QStringLiteral("printed"));
}

void UpkeepPage::act(const QString &key) {
    if (key == QLatin1String("settings") || key == QLatin1String("dates")) {
        m_settings = key == QLatin1String("settings");
        refresh();
        emit focusHeading();
    } else if (key == QLatin1String("fridgeDone")) {
        done(&model::UpkeepWishes::fridgeDone, tr("Fridge checked"));
    } else if (key == QLatin1String("roundDone")) {
        done(&model::UpkeepWishes::roundDone, tr("Cleaned and audited"));
    } else if (key == QLatin1String("opened")) {
        changePack(tr("opened"), model::markOpened);
    } else if (key == QLatin1String("newPack")) {
        changePack(tr("new pack"), model::markNewPack);
    }
}

void UpkeepPage::changePack(const QString &words, void (*how)(Thing &, model::Date)) {
    const Thing *thing = thingInHand();
    if (!thing)
        return;
    const model::Id id = thing->id;
    const QString name = text(thing->name);
    if (!change(tr("%1: %2").arg(name, words), "thing.dates",
                [&](Case &r) { how(*std::ranges::find(r.things, id, &Thing::id), m_session.today()); }))
        return;
    const auto all = model::datedThings(record(), m_session.today());
    const auto now = std::ranges::find(all, id, &DatedThing::thing);
    const QString oldest =
        how == model::markNewPack && model::oldestCounts(*std::ranges::find(record().things, id, &Thing::id))
            ? tr(" Of several packs the dates of the oldest stay: empty the fields when it is used up.")
            : QString();
    say(tr("%1: %2. %3").arg(name, words, factsOf(*now)) + oldest);
}

} // namespace app
