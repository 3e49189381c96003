#include "app/accessible_text.h"
#include "gallery/gallery_shell.h"
#include "layout_faults.h"
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QtQml/qqmlextensionplugin.h>
#include <gmock/gmock.h>

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

private:
    QQmlApplicationEngine m_engine;
};

TEST_F(Layout, holdsInEveryThemeTextSizeAndWindowSize) {
    ASSERT_NE(window(), nullptr);
    for (const QSize size : {QSize(1280, 800), QSize(1366, 768)})
        for (const char *theme : {"light", "dark", "contrast"})
            for (const double scale : {1.0, 1.5, 2.0, 4.0}) {
                window()->resize(size);
                m_shell.setThemeMode(QString::fromLatin1(theme));
                m_shell.setTextScale(scale);
                for (const QString &page : m_shell.pageKeys()) {
                    m_shell.goTo(page);
                    expectNoFaults(QStringLiteral("%1, %2, %3 %, %4 wide")
                                       .arg(page, QString::fromLatin1(theme))
                                       .arg(100 * scale)
                                       .arg(size.width()));
                }
            }
}

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
