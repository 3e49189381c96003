#include "app/accessible_text.h"
#include "app/page_image_provider.h"
#include "app/viewmodels/app_shell.h"
#include "layout_faults.h"
#include "model/demo.h"
#include <QDir>
#include <QGuiApplication>
#include <QImage>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QtQml/qqmlextensionplugin.h>
#include <algorithm>
#include <gmock/gmock.h>

Q_IMPORT_QML_PLUGIN(FeltmarkPlugin)

namespace {

/// The real screens on the invented caseload, in a window without a screen.
class Screens : public testing::TestWithParam<double> {
protected:
    Screens() : m_pictures(new app::PageImageProvider), m_shell({}, {}, *m_pictures) {
        m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        m_engine.addImageProvider(QStringLiteral("page"), m_pictures); // the engine owns it
        m_shell.openPracticeAtStart();
        m_engine.setInitialProperties(
            {{QStringLiteral("shell"), QVariant::fromValue<app::ShellViewModel *>(&m_shell)}});
        m_engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Feltmark/screens/Main.qml")));
    }
    QQuickWindow *window() { return qobject_cast<QQuickWindow *>(m_engine.rootObjects().value(0)); }

    void expectNoFaults(const QString &page) {
        m_shell.goTo(page);
        ASSERT_EQ(m_shell.page(), page);
        QQuickItem *root = window()->contentItem();
        EXPECT_TRUE(layout::settle(root)) << page.toStdString() << ": the layout never comes to rest";
        const QStringList faults = layout::faultsUnder(root);
        EXPECT_TRUE(faults.isEmpty()) << page.toStdString() << ":\n" << faults.join(u'\n').toStdString();
        takePictures(page);
    }

    /// Pictures to be looked at, into the folder that FELTMARK_SCREENSHOTS names; none without it.
    void takePictures(const QString &page) {
        const QString folder = qEnvironmentVariable("FELTMARK_SCREENSHOTS");
        if (folder.isEmpty() || !QDir().mkpath(folder))
            return;
        const QString before = m_shell.themeMode();
        const QString whose = m_shell.session().hasClient()
                                  ? QString::fromStdString(m_shell.session().record().client.code)
                                  : QStringLiteral("all");
        for (const char *theme : {"light", "dark", "contrast", "paper", "own"}) {
            m_shell.setThemeMode(QString::fromLatin1(theme));
            EXPECT_TRUE(layout::settle(window()->contentItem()));
            const QString name = QStringLiteral("%1/%2-%3-%4-%5.png")
                                     .arg(folder, page, whose, QString::fromLatin1(theme))
                                     .arg(100 * GetParam());
            EXPECT_TRUE(window()->grabWindow().save(name));
        }
        m_shell.setThemeMode(before);
    }

    app::PageImageProvider *m_pictures;
    app::AppShell m_shell;
    QQmlApplicationEngine m_engine;
};

TEST_P(Screens, holdEveryWordOfTheInventedClients) {
    ASSERT_NE(window(), nullptr);
    window()->resize(1280, 800);
    m_shell.setTextScale(GetParam());
    expectNoFaults(QStringLiteral("caseload"));
    const auto clients = m_shell.session().caseload();
    ASSERT_TRUE(clients.has_value());
    for (const auto &client : *clients) {
        m_shell.goTo(QStringLiteral("open:") + QString::fromStdString(client.id.text));
        for (const char *page :
             {"client", "safety", "sight", "touch", "markertest", "markerkit", "reach", "kitchen",
              "appliances", "contents", "plan", "goals", "papers", "followup", "progress"})
            expectNoFaults(QString::fromLatin1(page));
    }
    expectNoFaults(QStringLiteral("settings"));
}

// Names as they come: very long, from right to left, of signs that are no letters, a pasted table.
TEST_P(Screens, holdNamesOfAnyKind) {
    ASSERT_NE(window(), nullptr);
    window()->resize(1280, 800);
    m_shell.setTextScale(GetParam());
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
            expectNoFaults(QString::fromLatin1(page));
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
INSTANTIATE_TEST_SUITE_P(TextSizes, Screens, testing::Values(1, 2, 4));

} // namespace

int main(int argc, char **argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication application(argc, argv);
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    app::installTextAccessible();
    testing::InitGoogleMock(&argc, argv);
    return RUN_ALL_TESTS();
}
