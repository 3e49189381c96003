#include "app/accessible_text.h"
#include "app/desktop_colours.h"
#include "model/demo.h"
#include "real_screens.h"
#include <QAccessible>
#include <QGuiApplication>
#include <QImage>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPalette>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QRegularExpression>
#include <QtQml/qqmlextensionplugin.h>
#include <algorithm>
#include <ctime>
#include <gmock/gmock.h>

Q_IMPORT_QML_PLUGIN(FeltmarkPlugin)

namespace {

/// The real screens on the invented caseload.
class Screens : public RealScreens {
protected:
    void expectNoFaultsOn(const QString &page) {
        openPage(page);
        expectNoFaults(page);
    }
};

TEST_P(Screens, holdEveryWordOfTheInventedClients) {
    ASSERT_NE(window(), nullptr);
    expectNoFaultsOn(QStringLiteral("caseload"));
    const auto clients = m_shell.session().caseload();
    ASSERT_TRUE(clients.has_value());
    for (const auto &client : *clients) {
        m_shell.goTo(QStringLiteral("open:") + QString::fromStdString(client.id.text));
        for (const char *page : {"client", "safety", "sight", "reading", "legible", "touch", "markertest",
                                 "markerkit", "reach", "kitchen", "appliances", "contents", "photos", "plan",
                                 "goals", "papers", "followup", "upkeep", "progress"})
            expectNoFaultsOn(QString::fromLatin1(page));
    }
    expectNoFaultsOn(QStringLiteral("settings"));
}

/// What a screen reader is given below this: role, name, description and states, line by line.
void addTree(QAccessibleInterface *from, int depth, QStringList &lines) {
    const QAccessible::State state = from->state();
    lines << QStringLiteral("%1%2 %3|%4|%5%6%7%8%9")
                 .arg(QString(depth, u' '))
                 .arg(from->role())
                 .arg(from->text(QAccessible::Name), from->text(QAccessible::Description))
                 .arg(state.focusable)
                 .arg(state.checked)
                 .arg(state.selected)
                 .arg(state.invisible)
                 .arg(state.disabled);
    for (int i = 0; i < from->childCount(); ++i)
        if (QAccessibleInterface *child = from->child(i))
            addTree(child, depth + 1, lines);
}

// axtree goes through each screen in one theme a day; in the others a reader is given the same. But for the
// settings, which tell the theme.
TEST_P(Screens, giveTheReaderTheSameTreeInEveryTheme) {
    const auto clients = m_shell.session().caseload();
    m_shell.goTo(QStringLiteral("open:") + QString::fromStdString(clients->front().id.text));
    for (const char *page :
         {"caseload",   "client",    "safety", "sight",    "reading",    "legible",  "touch",
          "markertest", "markerkit", "reach",  "kitchen",  "appliances", "contents", "photos",
          "plan",       "goals",     "papers", "followup", "upkeep",     "progress"}) {
        if (QLatin1String(page) == QLatin1String("client"))
            m_shell.goTo(QStringLiteral("open:") + QString::fromStdString(clients->front().id.text));
        openPage(QString::fromLatin1(page));
        QStringList first;
        for (const char *theme : {"light", "dark", "contrast", "paper", "own"}) {
            m_shell.setThemeMode(QString::fromLatin1(theme));
            EXPECT_TRUE(layout::settle(window()->contentItem()));
            QStringList lines;
            addTree(QAccessible::queryAccessibleInterface(window()), 0, lines);
            EXPECT_GT(lines.size(), 10) << page;
            if (first.isEmpty())
                first = lines;
            EXPECT_EQ(lines.join(u'\n').toStdString(), first.join(u'\n').toStdString())
                << page << " in " << theme;
        }
        m_shell.setThemeMode(QStringLiteral("light"));
    }
}

// Names as they come: very long, from right to left, of signs that are no letters, a pasted table.
TEST_P(Screens, holdNamesOfAnyKind) {
    ASSERT_NE(window(), nullptr);
    const std::vector<QString> names{
        QString(10'000, QLatin1Char('x')),
        QStringLiteral("\u05d3\u05d5\u05d2\u05de\u05d4 \u05d1\u05d3\u05d5\u05d9\u05d4"),
        QString::fromUtf8("\xF0\x9F\xA5\x95 carrots \xF0\x9F\xA5\x95"), QStringLiteral("rice\t2\npasta\t3"),
        QStringLiteral("a\u0007b\u200fc")};
    for (std::size_t i = 0; i < names.size(); ++i) {
        ASSERT_TRUE(m_shell.session().addClient(names[i], QStringLiteral("W%1").arg(i)));
        const std::string name = names[i].toStdString();
        ASSERT_TRUE(m_shell.session().edit(QStringLiteral("kitchen"), "test", [&](model::Case &r) {
            const auto demo = model::demo::nora();
            r.units = {demo.units.front()};
            r.places = {demo.places.front()};
            r.things = {demo.things.front()};
            r.units.front().name = r.places.front().name = r.things.front().name = name;
        }));
        for (const char *page : {"client", "kitchen", "contents", "plan", "papers"})
            expectNoFaultsOn(QString::fromLatin1(page));
        m_shell.goTo(QStringLiteral("caseload"));
    }
}

class Keys : public Screens {
protected:
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers) {
        for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event(type, key, modifiers);
            QCoreApplication::sendEvent(window(), &event);
        }
        EXPECT_TRUE(layout::settle(window()->contentItem()));
    }
};

TEST_P(Keys, changeTheTextSizeInADialogToo) {
    m_shell.goTo(QStringLiteral("caseload"));
    window()->requestActivate();
    ASSERT_TRUE(QMetaObject::invokeMethod(window(), "act", Q_ARG(QString, QStringLiteral("help"))));
    press(Qt::Key_Plus, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(m_shell.textScale(), 1.25);
    press(Qt::Key_Minus, Qt::ControlModifier);
    EXPECT_EQ(m_shell.textScale(), 1);
}

TEST_P(Keys, coverTheScreenWhenItIsBlank) {
    m_shell.goTo(QStringLiteral("caseload"));
    m_shell.toggleBlank();
    ASSERT_TRUE(layout::settle(window()->contentItem()));
    const QImage blank = window()->grabWindow();
    EXPECT_EQ(blank.pixelColor(5, 5), QColor(Qt::black));
    EXPECT_EQ(blank.pixelColor(blank.width() - 5, blank.height() - 5), QColor(Qt::black));
    m_shell.toggleBlank();
    ASSERT_TRUE(layout::settle(window()->contentItem()));
    EXPECT_NE(window()->grabWindow().pixelColor(5, 5), QColor(Qt::black));
}

// From anywhere to anywhere without a key: the menu stands at the end of the message line.
TEST_P(Keys, areNotNeededForTheMenu) {
    m_shell.goTo(QStringLiteral("caseload"));
    ASSERT_TRUE(layout::settle(window()->contentItem()));
    const QPointF at(window()->width() - 40, window()->height() - 30);
    for (const auto type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
        QMouseEvent event(type, at, at, Qt::LeftButton,
                          type == QEvent::MouseButtonPress ? Qt::LeftButton : Qt::NoButton, Qt::NoModifier);
        QCoreApplication::sendEvent(window(), &event);
    }
    ASSERT_TRUE(layout::settle(window()->contentItem()));
    const auto all = window()->findChildren<QObject *>();
    EXPECT_TRUE(std::ranges::any_of(all, [](const QObject *o) { return o->property("opened").toBool(); }));
}

/// Processor time of this thread in milliseconds: what a busy machine adds is not ours.
double spentMs() {
    timespec spent{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &spent);
    return static_cast<double>(spent.tv_sec) * 1e3 + static_cast<double>(spent.tv_nsec) / 1e6;
}

class Speech : public Keys {
protected:
    /// What a screen reader says of the item that has the focus.
    QString spoken() {
        QQuickItem *item = window()->activeFocusItem();
        const QAccessibleInterface *object = item ? QAccessible::queryAccessibleInterface(item) : nullptr;
        return object ? object->text(QAccessible::Name) : QString();
    }
    void enterList() {
        const QRegularExpression place(QStringLiteral("[0-9] of [0-9]"));
        for (int tabs = 0; tabs < 60 && !place.match(spoken()).hasMatch(); ++tabs)
            press(Qt::Key_Tab, Qt::NoModifier);
        ASSERT_TRUE(place.match(spoken()).hasMatch()) << spoken().toStdString();
    }
    /// Milliseconds of processor from the key until other words are there to be spoken.
    double timeOf(Qt::Key key) {
        const QString before = spoken();
        const double start = spentMs();
        QKeyEvent event(QEvent::KeyPress, key, Qt::NoModifier);
        QCoreApplication::sendEvent(window(), &event);
        for (int turns = 0; turns < 20 && spoken() == before; ++turns)
            QCoreApplication::processEvents();
        EXPECT_NE(spoken().toStdString(), before.toStdString());
        return spentMs() - start;
    }
};

// 50 ms from the key to what a screen reader speaks, in a kitchen of 80 things.
TEST_P(Speech, followsAKeyWithinFiftyMilliseconds) {
    const auto clients = m_shell.session().caseload();
    ASSERT_TRUE(clients.has_value());
    const auto usual = std::ranges::find(*clients, std::string("DEMO-I"), &model::ClientSummary::code);
    ASSERT_NE(usual, clients->end());
    m_shell.goTo(QStringLiteral("open:") + QString::fromStdString(usual->id.text));
    ASSERT_EQ(m_shell.session().record().things.size(), 80U);
    window()->requestActivate();
    for (const char *page : {"contents", "plan"}) {
        m_shell.goTo(QString::fromLatin1(page));
        ASSERT_TRUE(layout::settle(window()->contentItem()));
        enterList();
        double slowest = 0;
        for (int presses = 0; presses < 60; ++presses)
            slowest = std::max(slowest, timeOf(presses % 2 == 1 ? Qt::Key_Up : Qt::Key_Down));
        RecordProperty(std::string("slowestMs-") + page, std::to_string(slowest));
        EXPECT_LT(slowest, 50) << page;
    }
}

class LongList : public Screens {};

TEST_P(LongList, isWalkedByTheArrowsAcrossItsParts) {
    ASSERT_NE(window(), nullptr);
    for (int i = 0; i < 97; ++i)
        ASSERT_TRUE(
            m_shell.session().addClient(QStringLiteral("Invented %1").arg(i), QStringLiteral("P%1").arg(i)));
    m_shell.goTo(QStringLiteral("caseload"));
    window()->requestActivate();
    ASSERT_TRUE(layout::settle(window()->contentItem()));
    const auto press = [this](Qt::Key key) {
        QKeyEvent event(QEvent::KeyPress, key, Qt::NoModifier);
        QCoreApplication::sendEvent(window(), &event);
        QCoreApplication::processEvents();
    };
    const auto position = [this] {
        const QQuickItem *item = window()->activeFocusItem();
        return item ? item->property("position").toString() : QString();
    };
    for (int tabs = 0; tabs < 10 && position().isEmpty(); ++tabs)
        press(Qt::Key_Tab);
    ASSERT_EQ(position(), "1 of 100");
    for (int row = 2; row <= 83; ++row) {
        press(Qt::Key_Down);
        ASSERT_EQ(position(), QStringLiteral("%1 of 100").arg(row));
    }
    for (int row = 82; row >= 78; --row) {
        press(Qt::Key_Up);
        ASSERT_EQ(position(), QStringLiteral("%1 of 100").arg(row));
    }
    press(Qt::Key_End);
    EXPECT_EQ(position(), "100 of 100");
    press(Qt::Key_Home);
    EXPECT_EQ(position(), "1 of 100");
}

INSTANTIATE_TEST_SUITE_P(TextSize, LongList, testing::Values(1));
INSTANTIATE_TEST_SUITE_P(TextSize, Keys, testing::Values(1));
INSTANTIATE_TEST_SUITE_P(TextSize, Speech, testing::Values(1));
INSTANTIATE_TEST_SUITE_P(TextSizes, Screens, testing::Values(1, 2, 4));

TEST(Preferences, followTheDesktopWhenItTakesOtherColours) {
    app::ShellViewModel shell;
    app::SettingsViewModel settings(&shell);
    const app::DesktopColours colours;
    QObject::connect(&colours, &app::DesktopColours::changed, &settings,
                     [&settings](const QString &theme) { settings.setDesktop(theme, 1); });
    const QPalette before = QGuiApplication::palette();
    QGuiApplication::setPalette(QPalette(QColor("#2a2a2a")));
    EXPECT_EQ(shell.themeMode(), "dark");
    settings.edit("theme", "High contrast, light");
    QGuiApplication::setPalette(before);
    EXPECT_EQ(shell.themeMode(), "paper") << "what was chosen stays";
}

} // namespace

int main(int argc, char **argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    layout::failOnWarnings();
    QGuiApplication application(argc, argv);
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    app::installTextAccessible();
    testing::InitGoogleMock(&argc, argv);
    return RUN_ALL_TESTS();
}
