#include "app/pages/plan_page.h"
#include "app/pages/background.h"
#include "app/pages/entries.h"
#include "app/pages/kitchen_page.h"
#include "model/fixing.h"
#include "model/kit.h"
#include "model/legible.h"
#include "model/meanings.h"
#include "model/shelf_side.h"
#include "reports/kitchen_figure.h"
#include <QPointer>
#include <QRegularExpression>
#include <algorithm>
#include <map>
#include <set>

namespace app {

using model::Case;
using model::Id;
using model::PlanLine;
using model::Result;
using model::Thing;

namespace {

/// "second from the left"
QString countedOnShelf(std::size_t index, bool fromRight) {
    const QStringList ordinals{QObject::tr("first"),  QObject::tr("second"), QObject::tr("third"),
                               QObject::tr("fourth"), QObject::tr("fifth"),  QObject::tr("sixth")};
    const auto i = static_cast<qsizetype>(index);
    const QString at = i < ordinals.size() ? ordinals.at(i) : QObject::tr("number %1").arg(i + 1);
    return (fromRight ? QObject::tr("%1 from the right") : QObject::tr("%1 from the left")).arg(at);
}

QString sentence(const QString &words) {
    return words.left(1).toUpper() + words.mid(1);
}

QString minutes(double value) {
    return QString::number(value, 'f', 1);
}

QString placeName(const Case &record, const Id &place) {
    return text(model::placeWords(record, place));
}

/// In the order of the kitchen page.
std::vector<Id> placesByUnit(const Case &record) {
    std::vector<Id> out;
    for (const auto &unit : record.units)
        for (const auto &place : record.places)
            if (place.unit == unit.id)
                out.push_back(place.id);
    return out;
}

/// The first sentence alone; the others stand with the findings, to be read one by one.
QString shortagesInWords(const model::Plan &plan) {
    const QString first = text(plan.shortages.front().sentence);
    static const QRegularExpression end(QStringLiteral("(?<=[.?!]) (?=[A-Z])"));
    const QStringList sentences = first.split(end);
    const auto more = static_cast<std::size_t>(sentences.size()) - 1 + plan.shortages.size() - 1;
    if (more == 0)
        return first;
    return sentences.front() + QLatin1Char(' ') +
           counted(more, QObject::tr("1 more sentence is in the findings of this page."),
                   QObject::tr("%1 more sentences are in the findings of this page."));
}

} // namespace

QStringList PlanPage::commands() const {
    return {QStringLiteral("why"), QStringLiteral("overrule"), QStringLiteral("readBack")};
}

const PlanLine *PlanPage::lineInHand() const {
    if (!planned().plan)
        return nullptr;
    const auto found = std::ranges::find(planned().plan->lines, Id{m_row.toStdString()}, &PlanLine::thing);
    return found == planned().plan->lines.end() ? nullptr : &*found;
}

QString PlanPage::nameOf(const Id &thing) const {
    const auto found = std::ranges::find(planned().things, thing, &Thing::id);
    return found == planned().things.end() ? QString() : text(found->name);
}

std::vector<ListRow> PlanPage::lineRows() const {
    std::vector<ListRow> rows;
    const bool fromRight = model::countsFromRight(planned());
    std::map<std::string, std::vector<const PlanLine *>> linesOn;
    for (const auto &line : planned().plan->lines)
        linesOn[line.place.text].push_back(&line);
    std::map<std::string, const Thing *> things;
    for (const auto &thing : planned().things)
        things[thing.id.text] = &thing;
    std::set<std::string> decided;
    for (const auto &overrule : planned().overrules)
        decided.insert(overrule.thing.text);
    for (const Id &place : placesByUnit(planned())) {
        auto &here = linesOn[place.text];
        std::ranges::sort(here, {}, &PlanLine::order);
        const QString where = placeName(planned(), place);
        for (std::size_t i = 0; i < here.size(); ++i) {
            const auto found = things.find(here[i]->thing.text);
            const Thing *thing = found == things.end() ? nullptr : found->second;
            const bool overruled = decided.contains(here[i]->thing.text);
            const QString at = sentence(countedOnShelf(i, fromRight));
            const QString mark = sentence(markWords(*here[i], thing));
            const QString name = thing ? text(thing->name) : QString();
            QStringList spoken{name, at, mark, overruled ? tr("your decision") : QString()};
            spoken.removeAll(QString());
            rows.push_back({.key = text(here[i]->thing.text),
                            .title = name,
                            .amount = thing && thing->count ? QString::number(*thing->count) : QString(),
                            .facts = tr("%1. %2.").arg(at, mark),
                            .flag = overruled ? tr("your decision") : QString(),
                            .spoken = spoken.join(QStringLiteral(". ")),
                            .section = where});
        }
    }
    return rows;
}

void PlanPage::refresh() {
    const auto &plan = planned().plan;
    const bool has = plan && !plan->lines.empty();
    m_rowsLabel = tr("Things and their places");
    m_rowsEmpty = plan ? tr("No plan is possible yet: see what is short.") : tr("No plan yet.");
    m_rows.setRows(has ? lineRows() : std::vector<ListRow>{});
    m_whyThing = {};
    dropStaleOffer();
    refreshKicker();
    if (!lineInHand())
        m_row = m_rows.rows().empty() ? QString() : m_rows.rows().front().key;
    refreshActions();
    refreshWhy();
    emit refreshed();
}

void PlanPage::refreshKicker() {
    const auto &plan = planned().plan;
    if (plan && !plan->lines.empty()) {
        std::set<std::string> kinds;
        for (const auto &line : plan->lines)
            if (!line.marker.empty())
                kinds.insert(line.marker);
        m_kicker = tr("%1 things, %2. %3 minutes a week in all.")
                       .arg(plan->lines.size())
                       .arg(counted(kinds.size(), tr("1 kind of mark"), tr("%1 kinds of mark")))
                       .arg(minutes(static_cast<double>(plan->terms.total()) / 1000)) +
                   offerWords();
    } else {
        m_kicker = tr("%1 things on %2 places").arg(planned().things.size()).arg(planned().places.size());
    }
    if (const auto *other = m_session.otherClient())
        m_kicker += (m_kicker.endsWith(QLatin1Char('.')) ? QString() : QStringLiteral(".")) +
                    tr(" For %1 and %2.").arg(text(record().client.name), text(other->client.name));
    if (const QString changed = changedWords(); !changed.isEmpty())
        m_kicker = changed + QLatin1Char(' ') + m_kicker;
}

void PlanPage::refreshActions() {
    const auto &plan = planned().plan;
    const bool has = plan && !plan->lines.empty();
    std::vector<ActionRow> actions;
    if (m_working)
        actions.push_back({.key = "stop", .title = tr("Stop")});
    actions.push_back({.key = has ? "revise" : "make",
                       .title = has ? tr("Bring the plan up to date") : tr("Work out the plan"),
                       .primary = true,
                       .unavailable = m_working ? tr("The plan is being worked out.") : QString()});
    if (has)
        actions.push_back({.key = "make",
                           .title = tr("Work it out afresh"),
                           .unavailable = m_working ? tr("The plan is being worked out.") : QString()});
    for (ActionRow &action : offerActions())
        actions.push_back(std::move(action));
    const PlanLine *line = lineInHand();
    std::vector<FieldSpec> fields;
    if (m_weights) {
        fields = weightFields();
        actions = weightActions();
    } else if (line) {
        fields = lineFields(*line);
        actions.push_back({.key = "keepHere", .title = tr("The client wants it there")});
        actions.push_back({.key = "notHere", .title = tr("Keep it out of this place")});
        if (std::ranges::count(planned().overrules, line->thing, &model::Overrule::thing) > 0)
            actions.push_back({.key = "forget", .title = tr("Take back your decision")});
    }
    if (has && !m_weights)
        actions.push_back({.key = "weights", .title = tr("Weights and limits")});
    setFields(std::move(fields));
    m_actions.setRows(std::move(actions));
}

void PlanPage::refreshWhy() {
    std::vector<FindingRow> rows;
    const bool holds = m_session.planChangedSince().empty();
    if (planned().plan)
        for (const auto &shortage : planned().plan->shortages)
            rows.push_back({.key = text(shortage.sentence),
                            .kind = holds ? "error" : "caution",
                            .answer = holds
                                          ? text(shortage.sentence)
                                          : tr("Before the last changes: %1").arg(text(shortage.sentence))});
    if (planned().plan)
        for (const auto &sentence : model::meaningsTold(planned(), planned().plan->meaningMarks))
            rows.push_back({.key = text(sentence), .kind = "caution", .answer = text(sentence)});
    std::ranges::copy(sharingRows(), std::back_inserter(rows));
    const std::size_t ofPage = rows.size();
    if (const PlanLine *line = lineInHand()) {
        if (m_whyThing != line->thing) {
            const auto why = m_session.planWhys().and_then(
                [&](const model::WhyLines &lines) { return lines.why(line->thing); });
            m_why = why ? std::optional(*why) : std::nullopt;
            m_whyThing = line->thing;
            if (!why)
                rows.push_back({.key = "stale", .kind = "caution", .answer = text(why.error().sentence)});
        }
        if (m_why) {
            rows.push_back({.key = "why",
                            .question = tr("Why: %1").arg(nameOf(line->thing)),
                            .answer = placeName(planned(), line->place),
                            .reason = text(m_why->because)});
            rows.push_back(markRow(*line));
            const auto label = model::legibleThing(planned(), m_session.planFindings(), line->thing);
            if (label && m_session.planFindings().printAcuity)
                rows.push_back({.key = "print",
                                .question = tr("Print label here"),
                                .answer = text(model::wordsOf(label->verdict)),
                                .reason = text(label->because)});
            rows.push_back({.key = "runnerUp", .question = tr("Runner-up"), .answer = text(m_why->runnerUp)});
        }
        for (std::size_t i = ofPage; i < rows.size(); ++i)
            rows[i].ofRow = true;
        std::ranges::copy(m_weights ? comparisonRows() : decisionRows(), std::back_inserter(rows));
        m_drawing = drawingOf(planned(), line->place);
        m_drawingWords = tr("%1 stands in: %2. %3")
                             .arg(nameOf(line->thing), placeName(planned(), line->place),
                                  text(reports::kitchenFigure(planned()).words));
    } else {
        m_drawing = {};
    }
    m_findings.setRows(std::move(rows));
}

void PlanPage::moved(const QString &row) {
    if (row == m_row)
        return;
    m_row = row;
    refreshActions();
    refreshWhy();
    emit refreshed();
}

void PlanPage::activated(const QString &row) {
    moved(row);
    sayWhy();
}

void PlanPage::sayWhy() {
    if (m_why && lineInHand())
        say(tr("%1 Runner-up: %2").arg(text(m_why->because), text(m_why->runnerUp)));
    else
        say(noReasonWords());
}

QString PlanPage::noReasonWords() const {
    if (!planned().plan)
        return tr("There is no plan yet. Work it out first.");
    if (planned().plan->lines.empty())
        return tr("No plan is possible yet: see what is short.");
    if (lineInHand() && !m_session.planWhys())
        return text(m_session.planWhys().error().sentence);
    return tr("Choose a line first.");
}

void PlanPage::command(const QString &name) {
    if (name == QLatin1String("why"))
        sayWhy();
    else if (name == QLatin1String("overrule")) {
        if (!lineInHand()) {
            say(noReasonWords());
            return;
        }
        emit focusField(QStringLiteral("overrule"));
    } else if (const PlanLine *line = lineInHand()) {
        say(tr("%1. %2. %3.")
                .arg(nameOf(line->thing), sentence(placeName(planned(), line->place)),
                     sentence(markWords(*line))));
    }
}

void PlanPage::act(const QString &key) {
    if (key == QLatin1String("forget"))
        forgetOverrule();
    else if (key == QLatin1String("keepHere") || key == QLatin1String("notHere"))
        keepHere(key == QLatin1String("notHere"));
    else if (key == QLatin1String("weights") || key == QLatin1String("lines"))
        showWeights(key == QLatin1String("weights"));
    else if (key == QLatin1String("usual"))
        usualWeights();
    else if (key == QLatin1String("compare"))
        compare();
    else if (key == QLatin1String("stop"))
        *m_stop = true;
    else if (key == QLatin1String("stopLooking")) {
        stopLooking();
        refresh();
        emit focusRow(m_row);
        sayAfterFocus(tr("Stopped. The plan stays as it is."));
    } else if (key == QLatin1String("takeBetter"))
        takeBetter();
    else if (!m_working && (key == QLatin1String("make") || key == QLatin1String("revise"))) {
        const bool afresh = key == QLatin1String("make");
        m_working = true;
        m_revised = !afresh;
        m_plannedFor = m_session.planBasisNow();
        stopLooking();
        *m_stop = false;
        m_shell.beginWork(tr("Planning."));
        refreshActions();
        model::SolveOptions options = afresh ? model::SolveOptions{} : model::revisionOptions();
        options.stop = [stop = m_stop] { return stop->load(); };
        options.progress = [shell = QPointer<ShellViewModel>(&m_shell)](double share) {
            QMetaObject::invokeMethod(
                shell,
                [shell, share] {
                    if (shell)
                        shell->showProgress(share);
                },
                Qt::QueuedConnection);
        };
        inBackground(
            this,
            [copy = planned(), findings = m_session.planFindings(), options, afresh, on = m_session.today()] {
                return afresh ? model::makePlan(copy, findings, options, on)
                              : model::revisePlan(copy, findings, options, on);
            },
            [this](const Result<model::Plan> &made) { take(made); });
    }
}

void PlanPage::take(const Result<model::Plan> &made) {
    m_working = false;
    if (!made) {
        m_shell.endWork(text(made.error().sentence));
        refreshActions();
        return;
    }
    const Case before = planned();
    const bool saved = change(tr("plan"), "plan.made", [&](Case &r) { r.plan = *made; });
    if (saved)
        m_session.keepPlanBasis(m_plannedFor);
    if (!saved) {
        m_shell.endWork(tr("The plan was not saved."));
    } else if (!made->shortages.empty()) {
        m_shell.endWork(tr("No plan possible. %1").arg(shortagesInWords(*made)));
    } else {
        const auto changes = before.plan ? model::planChanges(before, planned()) : std::vector<std::string>{};
        QString sentence = counted(made->lines.size(), tr("Plan ready, 1 thing placed."),
                                   tr("Plan ready, %1 things placed."));
        if (before.plan && !before.plan->lines.empty())
            sentence = changes.empty() ? tr("The plan holds. Nothing changes.")
                                       : counted(changes.size(), tr("Plan ready, 1 line changed."),
                                                 tr("Plan ready, %1 lines changed.")) +
                                             QLatin1Char(' ') + text(changes.front());
        m_shell.endWork(sentence);
    }
    if (saved && m_revised)
        lookForBetter();
    refresh();
    if (!m_rows.rows().empty())
        emit focusRow(m_rows.rows().front().key);
}

} // namespace app
