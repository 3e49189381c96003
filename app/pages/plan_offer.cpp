#include "app/pages/background.h"
#include "app/pages/entries.h"
#include "app/pages/plan_page.h"
#include <QCoreApplication>
#include <QPointer>

/// Behind the plan that is shown a whole one is worked out; it is offered and never taken by itself.
namespace app {

using model::BetterPlan;
using model::Case;
using model::Result;

void PlanPage::lookForBetter() {
    stopLooking();
    if (!planned().plan || planned().plan->lines.empty())
        return;
    m_look = std::make_shared<std::atomic<bool>>(false);
    m_lookedAt = 0;
    m_offerFor = planned();
    model::SolveOptions options = model::behindOptions();
    options.stop = [stop = m_look] { return stop->load(); };
    options.progress = [page = QPointer<PlanPage>(this), stop = m_look](double share) {
        QMetaObject::invokeMethod(
            QCoreApplication::instance(),
            [page, stop, share] {
                if (page && page->m_look == stop)
                    page->showLooking(share);
            },
            Qt::QueuedConnection);
    };
    inBackground(
        this,
        [copy = m_offerFor, findings = m_session.planFindings(), options, on = m_session.today()] {
            return model::betterPlan(copy, findings, options, on);
        },
        [this, stop = m_look](const Result<std::optional<BetterPlan>> &found) {
            if (m_look != stop)
                return; // the record has changed since, or she stopped it
            m_look.reset();
            if (found && *found && !stop->load())
                offer(**found);
            else
                refresh();
        });
}

void PlanPage::stopLooking() {
    if (m_look)
        *m_look = true;
    m_look.reset();
    m_offer.reset();
}

void PlanPage::showLooking(double share) {
    constexpr int step = 10; // percent
    const int now = static_cast<int>(share * 100) / step * step;
    if (now == m_lookedAt)
        return;
    m_lookedAt = now;
    refreshKicker();
    emit refreshed();
}

void PlanPage::offer(const BetterPlan &found) {
    m_offer = found;
    refresh();
    m_shell.sayBeside(text(model::offerInWords(found))); // the head of the page shows it
}

QString PlanPage::offerWords() const {
    if (m_offer)
        return QLatin1Char(' ') + text(model::offerInWords(*m_offer));
    return m_look ? tr(" Looking for a better plan: %1 percent.").arg(m_lookedAt) : QString();
}

/// "Out of date: 1 unit added, 3 things changed since. Bring the plan up to date."
QString PlanPage::changedWords() const {
    constexpr std::size_t told = 3;
    const auto &changes = m_session.planChangedSince();
    if (changes.empty() || m_working)
        return {};
    QStringList words;
    for (std::size_t i = 0; i < std::min(told, changes.size()); ++i)
        words << text(changes[i]);
    if (changes.size() > told)
        words << tr("more");
    const bool has = !planned().plan->lines.empty();
    return (has ? tr("Out of date: %1 since it was worked out. Bring the plan up to date.")
                : tr("Out of date: %1 since it was worked out. Work out the plan again."))
        .arg(words.join(QStringLiteral(", ")));
}

/// What was found or is being looked for belongs to the record as it was.
void PlanPage::dropStaleOffer() {
    if ((m_look || m_offer) && planned() != m_offerFor)
        stopLooking();
}

std::vector<ActionRow> PlanPage::offerActions() const {
    std::vector<ActionRow> actions;
    if (m_offer)
        actions.push_back({.key = "takeBetter", .title = tr("Take the better plan")});
    if (m_look)
        actions.push_back({.key = "stopLooking", .title = tr("Stop looking for a better plan")});
    return actions;
}

void PlanPage::takeBetter() {
    if (!m_offer)
        return;
    const model::Plan plan = m_offer->plan;
    const Case before = planned();
    if (!change(tr("better plan"), "plan.better", [&](Case &r) { r.plan = plan; }))
        return;
    const auto changes = model::planChanges(before, planned());
    emit focusRow(m_row);
    sayAfterFocus(counted(changes.size(), tr("Taken. 1 line changed."), tr("Taken. %1 lines changed.")));
}

} // namespace app
