#include "app/session.h"
#include "model/sentence.h"
#include <algorithm>

/// Two clients with one kitchen. Which two is a setting of the records, since it belongs to neither alone.
namespace app {

using model::Case;
using model::ErrorCode;
using model::fail;
using model::Id;
using model::Result;
using model::Sentence;
using model::SharedKitchen;

namespace {

const QString sharedKitchensKey = QStringLiteral("shared-kitchens");

} // namespace

Session::Sharing Session::sharingOf(const Id &client) const {
    for (const SharedKitchen &one : model::sharedKitchensFrom(setting(sharedKitchensKey).toStdString()))
        if (one.holds(client))
            return one;
    return std::nullopt;
}

/// The client in hand, with the kitchen that she shares if it is kept in the other record.
void Session::takeWithKitchen() {
    m_other.reset();
    m_sharingTrouble.clear();
    Case shown = m_stored;
    if (m_sharing) {
        auto other = load(m_sharing->otherThan(m_stored.client.id));
        if (other)
            m_other = std::move(*other);
        else
            m_sharingTrouble = tr("This kitchen is shared with a client whose record cannot be opened, so "
                                  "the plan is for this client alone. %1")
                                   .arg(QString::fromStdString(other.error().sentence));
    }
    if (m_other && m_sharing->partner == m_stored.client.id)
        model::takeKitchen(shown, *m_other);
    m_bases = model::planBasesFrom(setting(basesKey()).toStdString());
    take(std::move(shown));
}

Result<void> Session::setSharing(const Sharing &sharing) {
    auto all = model::sharedKitchensFrom(setting(sharedKitchensKey).toStdString());
    std::erase_if(all, [&](const SharedKitchen &one) { return one.holds(m_stored.client.id); });
    if (sharing)
        all.push_back(*sharing);
    const std::string text = model::sharedKitchensText(all);
    if (m_store)
        if (auto saved = m_store->saveSetting(sharedKitchensKey.toStdString(), text); !saved)
            return saved;
    m_settings[sharedKitchensKey] = QString::fromStdString(text);
    m_sharing = sharing;
    takeWithKitchen();
    return {};
}

Result<void> Session::shareKitchen(const Id &other, const QString &words) {
    Sharing next;
    if (!other.empty()) {
        const auto found = load(other);
        if (!found)
            return tl::unexpected(found.error());
        const Sharing others = sharingOf(other);
        if (others && !others->holds(m_stored.client.id))
            return fail(
                ErrorCode::Refused,
                Sentence::tr("{1} shares a kitchen with another client already. Choose nobody there first.",
                             {found->client.name}));
        if (other == m_stored.client.id)
            return fail(ErrorCode::Refused, Sentence::tr("Choose another client: this is the one in hand."));
        next = model::keptByTheFuller(*found, m_stored);
    }
    if (m_sharing && next && m_sharing->holds(other))
        return {};
    Step step{words, *m_record, *m_record, std::pair{m_sharing, next}};
    if (auto set = setSharing(next); !set)
        return set;
    addStep(std::move(step));
    return {};
}

const model::Together *Session::together() const {
    if (!m_other)
        return nullptr;
    if (!m_together) {
        const bool keeps = m_sharing->keeper == m_record->client.id;
        m_together = model::together(keeps ? *m_record : *m_other, keeps ? *m_other : m_stored, today());
    }
    return &*m_together;
}

const Case &Session::planRecord() const {
    const auto *both = together();
    return both ? both->record : *m_record;
}

const model::Findings &Session::planFindings() const {
    const auto *both = together();
    return both ? both->findings : m_findings;
}

const Result<model::WhyLines> &Session::planWhys() const {
    if (!m_whys)
        m_whys = model::WhyLines::of(planRecord(), planFindings());
    return *m_whys;
}

std::vector<std::string> Session::clashes() const {
    const auto *both = together();
    return both ? both->clashes : std::vector<std::string>();
}

Case Session::ownShare() const {
    const auto *both = together();
    return both ? model::ownShare(*m_record, m_findings, both->record) : *m_record;
}

} // namespace app
