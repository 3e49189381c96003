#include "app/pages/client_page.h"
#include "app/pages/entries.h"
#include <QTimer>
#include <algorithm>

/// With whom the client shares her kitchen.
namespace app {

using model::Id;

namespace {

QString nobody() {
    return QObject::tr("nobody of the caseload");
}

QString namesOf(const std::string &name, const std::string &code) {
    return QObject::tr("%1, code %2").arg(text(name), text(code));
}

} // namespace

std::vector<PageViewModel::FieldSpec> ClientPage::sharingFields() {
    QStringList choices{nobody()};
    if (const auto all = m_session.caseload())
        for (const auto &one : *all)
            if (one.id != record().client.id && !one.archived)
                choices << namesOf(one.name, one.code);
    const auto *other = m_session.otherClient();
    QString now = other ? namesOf(other->client.name, other->client.code) : nobody();
    if (!m_session.sharingTrouble().isEmpty())
        now = tr("a record that cannot be opened");
    if (!choices.contains(now))
        choices << now; // in the archive, or gone
    if (choices.size() == 1)
        return {};
    return {{{.key = "sharesKitchen",
              .kind = FieldKind::Choice,
              .label = tr("Shares the kitchen with"),
              .hint = tr("Another client of the caseload: the plan is then made for both"),
              .choices = choices,
              .note = m_session.sharingTrouble()},
             [now] { return now; },
             {}}};
}

void ClientPage::edit(const QString &key, const QString &value) {
    constexpr int listHasClosed = 150; // ms: the list it was chosen from gives the focus back first
    if (key == QLatin1String("sharesKitchen"))
        QTimer::singleShot(listHasClosed, this, [this, value] { shareKitchen(value); });
    else
        PageViewModel::edit(key, value);
}

void ClientPage::shareKitchen(const QString &chosen) {
    Id other;
    if (const auto all = m_session.caseload())
        for (const auto &one : *all)
            if (namesOf(one.name, one.code) == chosen)
                other = one.id;
    if (other.empty() && chosen != nobody())
        return;
    const std::size_t before = record().things.size();
    const QString words = tr("Shares the kitchen with: %1").arg(chosen);
    if (const auto shared = m_session.shareKitchen(other, words); !shared) {
        say(shared.error());
        refresh();
        return;
    }
    const QString kept =
        before != 0 && before != record().things.size()
            ? tr(" What this record held of a kitchen is set aside: it comes back with nobody chosen.")
            : QString();
    sayAfterFocus(m_session.otherClient()
                      ? words + tr(". One plan for both: bring it up to date.") + kept
                      : words + tr(". The plan is for this client alone: bring it up to date."));
}

} // namespace app
