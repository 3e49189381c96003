#include "app/viewmodels/app_shell.h"
#include "app/pages/appliances_page.h"
#include "app/pages/caseload_page.h"
#include "app/pages/client_page.h"
#include "app/pages/contents_page.h"
#include "app/pages/goals_page.h"
#include "app/pages/kitchen_page.h"
#include "app/pages/marker_kit_page.h"
#include "app/pages/marker_test_page.h"
#include "app/pages/papers_page.h"
#include "app/pages/photos_page.h"
#include "app/pages/plan_page.h"
#include "app/pages/sight_pages.h"
#include "app/pages/upkeep_page.h"
#include "app/viewmodels/page_help.h"
#include "app/viewmodels/partner_lines.h"
#include "app/viewmodels/sentences.h"
#include "app/viewmodels/visit_steps.h"
#include "model/planning.h"
#include "model/sentence.h"
#include <QCoreApplication>
#include <QDateTime>
#include <QEvent>
#include <algorithm>
#include <utility>

namespace app {

using model::Sentence;
namespace {

QUrl screen(const char *name) {
    return QUrl(QStringLiteral("qrc:/qt/qml/Feltmark/screens/%1.qml").arg(QLatin1String(name)));
}

const char *screenOf(const QString &page) {
    if (page == QLatin1String("papers"))
        return "PapersScreen";
    if (page == QLatin1String("photos"))
        return "PhotosScreen";
    return page == QLatin1String("markertest") ? "MarkerTestScreen" : "StandardScreen";
}

constexpr int secondsOfWarning = 60;

/// How long the visit goes on, by its planned length; empty for one of another day or without a start.
QString timeLeft(const model::Visit &visit) {
    const QDateTime now = QDateTime::currentDateTime();
    if (!visit.date || !visit.startMinute || *visit.date != model::today())
        return {};
    const int left = *visit.startMinute + visit.plannedMinutes - now.time().msecsSinceStartOfDay() / 60'000;
    return left >= 0 ? AppShell::tr("%1 of %2 minutes left.").arg(left).arg(visit.plannedMinutes)
                     : AppShell::tr("%1 minutes over the planned %2.").arg(-left).arg(visit.plannedMinutes);
}

QString lockWarning() {
    return AppShell::tr("The records lock in one minute. Any key keeps them open.");
}

/// A long row or finding by its first sentence: where she is, not all that stands there.
QString shortened(const QString &field) {
    constexpr int shortEnough = 120;
    const auto end = field.indexOf(QLatin1String(". "));
    return cutShort(field.size() <= shortEnough || end < 0 ? field : field.left(end));
}

} // namespace

AppShell::AppShell(std::filesystem::path store, model::KeyCost cost, PageImageProvider &pictures)
    : m_folder(std::move(store)), m_cost(cost), m_settings(this) {
    definePages(pictures);
    connect(&m_session, &Session::changed, this, &AppShell::refreshRail);
    m_idle.setSingleShot(true);
    connect(&m_idle, &QTimer::timeout, this, &AppShell::warnOrLock);
    QCoreApplication::instance()->installEventFilter(this);
    setLocked(true);
    showEntry();
}

AppShell::~AppShell() = default;

void AppShell::openPracticeAtStart() {
    m_entry->practice();
}

void AppShell::definePages(PageImageProvider &pictures) {
    const auto add = [this](const char *key, const QString &title, bool needsClient, Make make) {
        m_kinds[QLatin1String(key)] = {title, needsClient, std::move(make)};
    };
    const auto measured = [this](model::Domain domain) {
        return [this, domain] { return std::make_unique<MeasurementPage>(m_session, *this, domain); };
    };
    add("caseload", tr("Caseload"), false,
        [this] { return std::make_unique<CaseloadPage>(m_session, *this); });
    add("client", tr("Client"), true, [this] { return std::make_unique<ClientPage>(m_session, *this); });
    add("safety", tr("Safety"), true, [this] { return std::make_unique<SafetyPage>(m_session, *this); });
    add("sight", tr("Sight"), true, measured(model::Domain::Sight));
    add("reading", tr("Reading trial"), true,
        [this] { return std::make_unique<ReadingPage>(m_session, *this); });
    add("legible", tr("Legible here?"), true,
        [this] { return std::make_unique<LegiblePage>(m_session, *this); });
    add("touch", tr("Touch"), true, measured(model::Domain::Touch));
    add("markertest", tr("Marker test"), true,
        [this] { return std::make_unique<MarkerTestPage>(m_session, *this); });
    add("markerkit", tr("Marker kit"), true,
        [this] { return std::make_unique<MarkerKitPage>(m_session, *this); });
    add("reach", tr("Reach"), true, measured(model::Domain::Reach));
    add("kitchen", tr("Kitchen"), true, [this] { return std::make_unique<KitchenPage>(m_session, *this); });
    add("contents", tr("Contents"), true,
        [this] { return std::make_unique<ContentsPage>(m_session, *this, m_place); });
    add("appliances", tr("Appliances"), true,
        [this] { return std::make_unique<AppliancesPage>(m_session, *this); });
    add("photos", tr("Photographs"), true, [this] { return std::make_unique<PhotosPage>(m_session, *this); });
    add("plan", tr("Plan"), true, [this] { return std::make_unique<PlanPage>(m_session, *this); });
    add("goals", tr("Goals"), true, [this] { return std::make_unique<GoalsPage>(m_session, *this); });
    add("papers", tr("Papers"), true,
        [this, &pictures] { return std::make_unique<PapersPage>(m_session, *this, pictures); });
    add("followup", tr("Follow-up"), true,
        [this] { return std::make_unique<FollowUpPage>(m_session, *this); });
    add("upkeep", tr("Upkeep"), true, [this] { return std::make_unique<UpkeepPage>(m_session, *this); });
    add("progress", tr("Progress"), true,
        [this] { return std::make_unique<ProgressPage>(m_session, *this); });
}

bool AppShell::openPage(const QString &key) {
    if (key.startsWith(QLatin1String("place:"))) {
        m_place = {key.mid(6).toStdString()};
        return openPage(QStringLiteral("contents"));
    }
    if (key.startsWith(QLatin1String("act:")))
        return pressOnPage(key.mid(4));
    if (key.startsWith(QLatin1String("thing:")))
        return openThing(key.mid(6));
    if (key.startsWith(QLatin1String("open:"))) {
        const auto opened = m_session.openClient({key.mid(5).toStdString()});
        if (!opened)
            say(text(opened.error().sentence));
        return !opened || openPage(QStringLiteral("client"));
    }
    if (key == QLatin1String("practice") && page() == QLatin1String("entry")) {
        m_entry->practice();
        return true;
    }
    if (key == QLatin1String("unlocked"))
        return openWhereItWasLocked() || openPage(QStringLiteral("caseload"));
    if (key == QLatin1String("beforeSettings"))
        return openPage(m_beforeSettings);
    if (key == QLatin1String("settings")) {
        showSettings();
        return true;
    }
    if (key == QLatin1String("entry") && !m_session.isOpen()) {
        showEntryPage();
        return true;
    }
    const auto kind = m_kinds.find(key);
    if (kind == m_kinds.end())
        return false;
    if (!m_session.isOpen()) {
        if (page() != QLatin1String("entry"))
            showEntryPage();
        sayAfterPage(tr("Unlock the records first."));
        return true;
    }
    if (kind->second.needsClient && !m_session.hasClient()) {
        say(tr("Open a client first."));
        return true;
    }
    setLocked(false);
    if (key == QLatin1String("caseload"))
        m_session.closeClient();
    auto model = kind->second.make();
    m_pageModel = model.get();
    connect(m_pageModel, &PageViewModel::refreshed, this, &AppShell::partnerChanged);
    m_pageModel->startAtRow(std::exchange(m_startRow, {}));
    prepare({key,
             kind->second.title,
             screen(screenOf(key)),
             {{QStringLiteral("vm"), QVariant::fromValue(m_pageModel)}},
             helpFor(key, *keys())});
    m_pageModel->refresh(); // before it is shown: the row that it starts at is there then
    emit pageOpened();
    m_shownPages.push_back(std::move(model));
    if (m_shownPages.size() > 1) // the page before still finishes its last event
        m_shownPages.front().release()->deleteLater(), m_shownPages.erase(m_shownPages.begin());
    refreshRail();
    waitForIdle();
    return true;
}

bool AppShell::openWhereItWasLocked() {
    const auto left = std::exchange(m_left, {});
    return left && m_kinds.contains(left->page) && m_session.openClient(left->client) && openPage(left->page);
}

void AppShell::showEntry() {
    auto entry = std::make_unique<EntryViewModel>(m_session, *this, m_folder, m_cost);
    m_entry = entry.get();
    m_pageModel = nullptr;
    emit partnerChanged();
    setSteps({});
    setClient({}, {});
    showEntryPage();
    m_shownPages.push_back(std::move(entry));
    while (m_shownPages.size() > 1) {
        m_shownPages.front().release()->deleteLater();
        m_shownPages.erase(m_shownPages.begin());
    }
}

/// Also from the settings, as far as it had come: a recovery code is shown only once.
void AppShell::showEntryPage() {
    show({QStringLiteral("entry"),
          entryTitle(),
          screen("EntryScreen"),
          {{QStringLiteral("entry"), QVariant::fromValue(m_entry)}},
          helpFor(QStringLiteral("entry"), *keys())});
}

QString AppShell::entryTitle() const {
    const QString stage = m_entry->stage();
    return stage == QLatin1String("unlock") ? tr("Unlock the records")
           : stage == QLatin1String("code") ? tr("Recovery code")
                                            : tr("Make new records");
}

void AppShell::showSettings() {
    if (page() != QLatin1String("settings"))
        m_beforeSettings = page();
    m_pageModel = nullptr;
    emit partnerChanged();
    show({QStringLiteral("settings"),
          tr("Settings"),
          screen("SettingsScreen"),
          {{QStringLiteral("settings"), QVariant::fromValue(&m_settings)}},
          helpFor(QStringLiteral("settings"), *keys())});
}

void AppShell::closeRecord() {
    m_idle.stop();
    if (const auto noted = m_session.note("locked", {}); !noted)
        say(text(noted.error().sentence));
    m_left.reset();
    if (m_session.hasClient() && !m_session.isPractice())
        m_left = Left{m_session.record().client.id, page()};
    setLocked(true); // the window lets go of the page first
    m_session.close();
    showEntry();
    say(tr("Locked. Passphrase."));
}

void AppShell::refreshRail() {
    if (!m_session.hasClient()) {
        setSteps({});
        setClient({}, {});
        return;
    }
    const auto &client = m_session.record().client;
    const auto *visit = m_session.visit();
    QString line = visit ? tr("Visit %1, %2")
                               .arg(visit->number)
                               .arg(visit->date ? text(model::dateInWords(*visit->date)) : QString())
                         : tr("No visit under way");
    if (client.invented)
        line += tr(". Invented.");
    setClient(cutShort(text(client.name)), line);
    setSteps(visitSteps(m_session));
}

/// The first page has a title for each of its stages, too.
QString AppShell::pageTitle() const {
    return page() == QLatin1String("entry") ? entryTitle() : ShellViewModel::pageTitle();
}

/// The first page has a help for each of its stages.
QString AppShell::helpText() const {
    return page() == QLatin1String("entry") && m_entry->stage() != QLatin1String("unlock")
               ? helpFor(QStringLiteral("entry-") + m_entry->stage(), m_keyNames)
               : ShellViewModel::helpText();
}

void AppShell::undo() {
    if (const QString refused = m_pageModel ? m_pageModel->takeBackRefused() : QString();
        !refused.isEmpty()) {
        say(tr("Undone: %1.").arg(refused));
        return;
    }
    const auto undone = m_session.hasClient()
                            ? m_session.undo()
                            : model::Result<QString>(
                                  model::fail(model::ErrorCode::Missing, Sentence::tr("Nothing to undo.")));
    say(undone ? tr("Undone: %1.").arg(*undone) : text(undone.error().sentence));
}

void AppShell::redo() {
    const auto redone = m_session.hasClient()
                            ? m_session.redo()
                            : model::Result<QString>(model::fail(model::ErrorCode::Missing,
                                                                 Sentence::tr("Nothing to do again.")));
    say(redone ? tr("Done again: %1.").arg(*redone) : text(redone.error().sentence));
}

QString AppShell::whereAmI(const QString &field) const {
    if (isLocked())
        return ShellViewModel::whereAmI(field);
    QString saved = m_session.isPractice() ? tr("Practice: nothing is kept.") : tr("All saved.");
    if (const auto *visit = m_session.visit())
        saved += QLatin1Char(' ') + tr("Visit %1. %2").arg(visit->number).arg(timeLeft(*visit)).trimmed();
    const QString title = m_pageModel ? m_pageModel->title() : QString();
    const QString kicker = m_pageModel ? m_pageModel->kicker() : QString();
    return sentencesOnce({cutShort(clientName()), stepLine(), title, shortened(field), kicker, saved});
}

QStringList AppShell::partnerLines() const {
    if (!isPartnerShown())
        return {};
    if (!m_pageModel || !m_session.hasClient())
        return {tr("This page is not shown to others.")};
    return app::partnerLines(page(), pageTitle(), *m_pageModel, m_session.record(), m_session.otherClient());
}

void AppShell::stopWork() {
    if (m_pageModel)
        m_pageModel->stopWork();
}

void AppShell::waitForIdle() {
    if (std::exchange(m_warned, false))
        takeBack(lockWarning());
    if (m_session.isOpen() && !m_session.isPractice())
        m_idle.start(lockMinutes() * 60'000 - secondsOfWarning * 1000);
}

void AppShell::warnOrLock() {
    if (m_warned) {
        lock();
        return;
    }
    m_warned = true;
    say(lockWarning());
    m_idle.start(secondsOfWarning * 1000);
}

bool AppShell::eventFilter(QObject *watched, QEvent *event) {
    const auto type = event->type();
    if ((type == QEvent::KeyPress || type == QEvent::MouseButtonPress || type == QEvent::TouchBegin) &&
        m_idle.isActive())
        waitForIdle();
    return ShellViewModel::eventFilter(watched, event);
}

} // namespace app
