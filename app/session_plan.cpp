#include "app/session.h"
#include "model/plan_holds.h"
#include <algorithm>

/// What the plan rests on, so that later changes can be told: a setting of the records, kept for the kitchen.
namespace app {

namespace {

constexpr std::size_t keptBases = 4; // undo brings an older plan back

} // namespace

QString Session::basesKey() const {
    const model::Id &keeper = m_sharing ? m_sharing->keeper : m_stored.client.id;
    return QStringLiteral("plan-basis/") + QString::fromStdString(keeper.text);
}

model::PlanBasis Session::planBasisNow() const {
    return model::planBasis(*m_record, m_other ? &*m_other : nullptr);
}

void Session::rememberBasis(model::PlanBasis basis) {
    std::erase(m_bases, basis);
    m_bases.insert(m_bases.begin(), std::move(basis));
    if (m_bases.size() > keptBases)
        m_bases.resize(keptBases);
    m_changedSince.reset();
    keepSetting(basesKey(), QString::fromStdString(model::planBasesText(m_bases)));
}

void Session::keepPlanBasis(model::PlanBasis basis) {
    if (!m_record || !m_record->plan)
        return;
    basis.plan = m_record->plan->id;
    rememberBasis(std::move(basis));
    emit changed();
}

const std::vector<std::string> &Session::planChangedSince() const {
    if (m_changedSince)
        return *m_changedSince;
    m_changedSince.emplace();
    if (!m_record || !m_record->plan)
        return *m_changedSince;
    std::optional<std::vector<std::string>> newest;
    for (const model::PlanBasis &basis : m_bases) {
        if (basis.plan != m_record->plan->id)
            continue;
        const auto changes = model::changedSince(basis, *m_record);
        if (changes.empty()) // a plan that held after a change holds before it as well
            return *m_changedSince;
        if (!newest)
            newest = changes;
    }
    *m_changedSince = newest ? *newest : model::changedSince(*m_record->plan, *m_record);
    return *m_changedSince;
}

const PlanTold &Session::planTold() const {
    if (m_told)
        return *m_told;
    m_told.emplace();
    const auto &plan = planRecord().plan;
    if (!plan || plan->lines.empty())
        return *m_told;
    for (auto &label :
         reports::thingLabels(planRecord(), planFindings()).value_or(std::vector<reports::Label>()))
        m_told->labels.try_emplace(label.thing.text, label);
    if (const auto &lines = planWhys()) {
        m_told->figures = model::figuresOf(lines->problem().problem, lines->shown());
        m_told->broken = model::brokenToday(*lines);
    }
    return *m_told;
}

} // namespace app
