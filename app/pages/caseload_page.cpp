#include "app/pages/caseload_page.h"
#include "app/pages/entries.h"
#include "app/viewmodels/sentences.h"
#include <algorithm>

namespace app {

using model::Result;

void CaseloadPage::refresh() {
    const auto clients = m_session.caseload();
    m_kicker = m_session.isPractice() ? tr("Practice caseload: all invented, nothing is kept")
                                      : tr("Encrypted on this computer");
    const auto typed = [](QString &into) {
        return [&into](model::Case &, const QString &value) -> Result<void> {
            into = value.trimmed();
            return {};
        };
    };
    if (m_adding) {
        setFields({
            {{.key = "newName", .label = tr("Name of the new client")},
             [this] { return m_name; },
             typed(m_name)},
            {{.key = "newCode",
              .label = tr("Code of the new client"),
              .hint = tr("Papers carry it in place of the name")},
             [this] { return m_code; },
             typed(m_code)},
        });
        m_actions.setRows({{.key = "add", .title = tr("Add the new client"), .primary = true},
                           {.key = "leave", .title = tr("Back to the list")}});
    } else {
        setFields({{{.key = "find", .label = tr("Find a client"), .hint = tr("Any part of a name or code")},
                    [this] { return m_filter; },
                    typed(m_filter)}});
        m_actions.setRows({{.key = "new", .title = tr("New client")}});
    }
    std::vector<ListRow> rows;
    if (clients) {
        const std::string wanted = model::searchForm(m_filter.toStdString());
        for (const auto &client : *clients)
            if (!client.archived && client.search.find(wanted) != std::string::npos)
                rows.push_back(
                    {.key = text(client.id.text),
                     .title = text(client.name),
                     .amount = text(client.code),
                     .facts = client.lastVisit ? tr("last visit %1").arg(shown(client.lastVisit))
                                               : tr("no visit yet"),
                     .flag = client.nextReview ? tr("review %1").arg(shown(client.nextReview)) : QString()});
    } else {
        m_findings.setRows({{.key = "error", .kind = "error", .answer = text(clients.error().sentence)}});
    }
    m_rowsLabel = tr("Clients");
    m_rowsEmpty = m_filter.isEmpty() ? tr("No client yet.") : tr("No client has that in name or code.");
    m_rows.setRows(std::move(rows));
    emit refreshed();
}

void CaseloadPage::edit(const QString &key, const QString &value) {
    PageViewModel::edit(key, value);
    if (key == QLatin1String("find"))
        say(m_rows.rows().empty() ? m_rowsEmpty
                                  : counted(m_rows.rows().size(), tr("1 client"), tr("%1 clients")));
}

void CaseloadPage::act(const QString &key) {
    if (key != QLatin1String("add")) {
        m_adding = key == QLatin1String("new");
        refresh();
        emit focusField(m_adding ? QStringLiteral("newName") : QStringLiteral("find"));
        return;
    }
    if (const auto added = m_session.addClient(m_name, m_code); !added) {
        say(added.error());
        emit focusField(m_name.isEmpty() ? QStringLiteral("newName") : QStringLiteral("newCode"));
        return;
    }
    const QString added = tr("Client added: %1.").arg(cutShort(m_name));
    m_shell.goTo(QStringLiteral("client"));
    m_shell.sayAfterPage(added);
}

/// Return in the last field adds the client, as the button does.
void CaseloadPage::returned(const QString &key) {
    const bool refused = std::ranges::any_of(
        m_form.rows(), [&](const FormField &field) { return field.key == key && !field.error.isEmpty(); });
    if (refused || !m_adding)
        return;
    if (key == QLatin1String("newName"))
        emit focusField(QStringLiteral("newCode"));
    else if (key == QLatin1String("newCode"))
        act(QStringLiteral("add"));
}

void CaseloadPage::activated(const QString &row) {
    open(row);
}

void CaseloadPage::open(const QString &row) {
    if (const auto opened = m_session.openClient({row.toStdString()}); !opened) {
        say(opened.error());
        return;
    }
    m_shell.goTo(QStringLiteral("client"));
}

void CaseloadPage::command(const QString & /*name*/) {
    if (const QString why = whyNotNow({}); !why.isEmpty()) {
        say(why);
        return;
    }
    if (const auto opened = m_session.openClient({m_row.toStdString()}); !opened)
        say(opened.error());
    else
        m_shell.startVisit();
}

QString CaseloadPage::whyNotNow(const QString & /*command*/) const {
    return m_row.isEmpty() ? tr("Choose a client first.") : QString();
}

} // namespace app
