#include "app/accessible_text.h"
#include "gallery/gallery_shell.h"
#include "layout_faults.h"
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQmlComponent>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QtQml/qqmlextensionplugin.h>
#include <algorithm>
#include <array>
#include <gmock/gmock.h>
#include <memory>
#include <random>

Q_IMPORT_QML_PLUGIN(FeltmarkPlugin)
Q_IMPORT_QML_PLUGIN(GalleryPlugin)

namespace {

/// The gallery in a window without a screen.
class Layout : public testing::Test {
protected:
    Layout() {
        m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        m_engine.setInitialProperties(
            {{QStringLiteral("shell"), QVariant::fromValue<app::ShellViewModel *>(&m_shell)}});
        m_engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Feltmark/screens/Main.qml")));
    }
    QQuickWindow *window() { return qobject_cast<QQuickWindow *>(m_engine.rootObjects().value(0)); }

    void expectNoFaults(const QString &state) {
        QQuickItem *root = window()->contentItem();
        EXPECT_TRUE(layout::settle(root)) << state.toStdString() << ": the layout never comes to rest";
        const QStringList faults = layout::faultsUnder(root);
        EXPECT_TRUE(faults.isEmpty()) << state.toStdString() << ":\n" << faults.join(u'\n').toStdString();
    }

    gallery::GalleryShell m_shell;

    bool hasOpenDialog() {
        const auto all = window()->findChildren<QObject *>();
        return std::ranges::any_of(all, [](const QObject *o) { return o->property("opened").toBool(); });
    }

private:
    QQmlApplicationEngine m_engine;
};

class ThemedLayout : public Layout, public testing::WithParamInterface<const char *> {};

TEST_P(ThemedLayout, holdsInEveryTextSizeAndWindowSize) {
    ASSERT_NE(window(), nullptr);
    m_shell.setThemeMode(QString::fromLatin1(GetParam()));
    for (const QSize size : {QSize(1280, 800), QSize(1366, 768)})
        for (const double scale : {1.0, 1.5, 2.0, 4.0}) {
            window()->resize(size);
            m_shell.setTextScale(scale);
            for (const QString &page : m_shell.pageKeys()) {
                m_shell.goTo(page);
                expectNoFaults(
                    QStringLiteral("%1, %2 %, %3 wide").arg(page).arg(100 * scale).arg(size.width()));
            }
        }
}

INSTANTIATE_TEST_SUITE_P(Themes, ThemedLayout, testing::Values("light", "dark", "contrast", "paper", "own"));

TEST_F(Layout, holdsInEveryDialog) {
    ASSERT_NE(window(), nullptr);
    for (const double scale : {1.0, 4.0}) {
        m_shell.setTextScale(scale);
        for (const char *command : {"help", "allKeys", "messages", "goTo"}) {
            m_shell.goTo("fields"); // closes the last dialog
            ASSERT_TRUE(
                QMetaObject::invokeMethod(window(), "act", Q_ARG(QString, QString::fromLatin1(command))));
            EXPECT_TRUE(hasOpenDialog()) << command;
            expectNoFaults(QStringLiteral("%1, %2 %").arg(QString::fromLatin1(command)).arg(100 * scale));
        }
    }
}

TEST_F(Layout, holdsWhileWorkIsInHand) {
    ASSERT_NE(window(), nullptr);
    m_shell.work();
    for (const double scale : {1.0, 4.0}) {
        m_shell.setTextScale(scale);
        expectNoFaults(QStringLiteral("busy, %1 %").arg(100 * scale));
    }
}

// A page on screen lays itself out again and again while text size, theme and window change.
TEST_F(Layout, holdsThroughManyLiveChanges) {
    ASSERT_NE(window(), nullptr);
    std::mt19937 draw(20261125);
    const auto one = [&](const auto &list) { return list[draw() % list.size()]; };
    const std::vector<double> scales = app::ShellViewModel::scales();
    for (const char *page : {"fields", "form", "pictures", "settings"}) {
        m_shell.goTo(QString::fromLatin1(page));
        for (int change = 0; change < 12; ++change) {
            m_shell.setTextScale(one(scales));
            m_shell.setThemeMode(
                QString::fromLatin1(one(std::array{"light", "dark", "contrast", "paper", "own"})));
            window()->resize(one(std::array{640, 1024, 1280, 1366, 1920}), 768);
            expectNoFaults(QStringLiteral("%1 after change %2: %3 %, %4 wide")
                               .arg(QString::fromLatin1(page))
                               .arg(change)
                               .arg(100 * m_shell.textScale())
                               .arg(window()->width()));
        }
    }
}

struct Planted {
    const char *fault;
    const char *qml;
};

/// The walk must find what is planted, or its silence means nothing.
class PlantedFault : public testing::TestWithParam<Planted> {};

TEST_P(PlantedFault, isFound) {
    QQuickWindow window;
    window.resize(400, 400);
    window.show();
    QQmlEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QQmlComponent component(&engine);
    component.setData(QByteArray("import QtQuick\nimport QtQuick.Templates as T\n") + GetParam().qml, QUrl());
    const std::unique_ptr<QObject> object(component.create());
    ASSERT_NE(object, nullptr) << component.errorString().toStdString();
    auto *item = qobject_cast<QQuickItem *>(object.get());
    item->setParentItem(window.contentItem());
    EXPECT_TRUE(layout::settle(item));
    EXPECT_THAT(layout::faultsUnder(item).join(u'\n').toStdString(), testing::HasSubstr(GetParam().fault));
}

INSTANTIATE_TEST_SUITE_P(
    Each, PlantedFault,
    testing::Values(
        Planted{"is truncated", "Text { width: 40; elide: Text.ElideRight; text: 'Words that are cut' }"},
        Planted{"high in",
                "Text { width: 60; height: 20; wrapMode: Text.Wrap; text: 'Words that need more lines' }"},
        Planted{"wide in", "Text { width: 40; text: 'Words that do not wrap' }"},
        Planted{"lies outside", "Item { width: 30; height: 30; Text { x: 20; text: 'Words' } }"},
        Planted{"is only", "T.Button { width: 60; height: 30; activeFocusOnTab: true }"},
        Planted{"overlaps", "Column { spacing: -9; Text { text: 'One' } Text { text: 'Two' } }"},
        Planted{"no room for the focus ring",
                "Item { width: 90; height: 90; clip: true; Item { width: 90; height: 60; "
                "Item { objectName: 'focusRing'; x: -5; width: 100; height: 70 } } }"}));

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
