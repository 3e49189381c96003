#include "app/viewmodels/app_shell.h"
#include <QTime>

/// A visit begins and ends from wherever she is.
namespace app {

QString AppShell::visitCommand() const {
    if (!m_session.hasClient())
        return {};
    return m_session.visit() ? QStringLiteral("closeVisit") : QStringLiteral("startVisit");
}

/// Below the steps it would be the second button of that name on the pages that have one.
QString AppShell::visitAction() const {
    return page() == QLatin1String("client") || page() == QLatin1String("followup") ? QString()
                                                                                    : visitWords();
}

QString AppShell::visitWords() const {
    if (!m_session.hasClient())
        return {};
    return m_session.visit() ? tr("Close visit %1").arg(m_session.visit()->number) : tr("Start a visit");
}

QString AppShell::whyNotNow(const QString &command, const QStringList &ofPage) const {
    const bool starts = command == QLatin1String("startVisit");
    if (starts && ofPage.contains(command) && m_pageModel)
        return m_pageModel->whyNotNow(command);
    if (starts || command == QLatin1String("closeVisit")) {
        if (!m_session.isOpen())
            return tr("Unlock the records first.");
        if (!m_session.hasClient())
            return tr("Open a client first.");
        if (starts && m_session.visit())
            return tr("Visit %1 is under way.").arg(m_session.visit()->number);
        return starts || m_session.visit() ? QString() : tr("No visit is under way.");
    }
    if ((command == QLatin1String("lock") || command == QLatin1String("caseload")) && !m_session.isOpen())
        return tr("Unlock the records first.");
    return ShellViewModel::whyNotNow(command, ofPage);
}

void AppShell::startVisit() {
    QString words = whyNotNow(QStringLiteral("startVisit"), {});
    if (!m_session.hasClient()) {
        say(words);
        return;
    }
    if (words.isEmpty()) {
        model::Visit visit;
        visit.id = model::newId();
        visit.date = m_session.today();
        visit.startMinute = QTime::currentTime().msecsSinceStartOfDay() / 60'000;
        visit.number = static_cast<int>(m_session.record().visits.size()) + 1;
        words = tr("Visit %1 started").arg(visit.number);
        if (!editVisit(words, "visit.started", [&](model::Case &r) { r.visits.push_back(visit); }))
            return;
        words += QLatin1Char('.');
    }
    goTo(m_session.record().visits.size() > 1 ? QStringLiteral("followup") : QStringLiteral("safety"));
    sayAfterPage(words);
}

void AppShell::closeVisit() {
    if (const QString why = whyNotNow(QStringLiteral("closeVisit"), {}); !why.isEmpty()) {
        say(why);
        return;
    }
    emit leaving(); // what is typed is of this visit
    const int number = m_session.visit()->number;
    if (editVisit(tr("visit %1 closed").arg(number), "visit.closed",
                  [](model::Case &r) { r.visits.back().closed = true; }))
        say(tr("Visit %1 closed.").arg(number));
}

bool AppShell::editVisit(const QString &words, const std::string &what, const Session::Change &change) {
    const auto saved = m_session.edit(words, what, change);
    if (!saved)
        say(tr("Not saved. %1").arg(text(saved.error().sentence)));
    return saved.has_value();
}

} // namespace app
