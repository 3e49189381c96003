#include "app/pages/entries.h"
#include "app/pages/plan_page.h"

/// What the plan page says of two clients with one kitchen, and of a plan that does not hold any more.
namespace app {

std::vector<FindingRow> PlanPage::sharingRows() const {
    std::vector<FindingRow> rows;
    for (const std::string &sentence : m_session.planTold().broken)
        rows.push_back(
            {.key = QStringLiteral("broken.") + text(sentence),
             .kind = "error",
             .answer = tr("This plan does not hold today, bring it up to date. %1").arg(text(sentence))});
    if (!m_session.sharingTrouble().isEmpty())
        rows.push_back({.key = "sharing", .kind = "error", .answer = m_session.sharingTrouble()});
    for (const std::string &sentence : m_session.clashes())
        rows.push_back(
            {.key = QStringLiteral("clash.") + text(sentence), .kind = "caution", .answer = text(sentence)});
    return rows;
}

} // namespace app
