#include "app/window.h"
#include "app/accessible_text.h"
#include "app/page_image_provider.h"
#include "app/viewmodels/app_shell.h"
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <iostream>

namespace app {

namespace {

void endWhenReady(const QQuickWindow &window) {
    QObject::connect(&window, &QQuickWindow::frameSwapped, &window, [&window] {
        if (!window.activeFocusItem() || window.activeFocusItem() == window.contentItem())
            return;
        std::cout << "ready" << std::endl;
        QCoreApplication::quit();
    });
}

} // namespace

int runWindow(int argc, char **argv, const WindowStart &start) {
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    QGuiApplication application(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("feltmark"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Feltmark"));
    QGuiApplication::setDesktopFileName(QStringLiteral("org.feltmark.Feltmark"));
    installTextAccessible();
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    auto *pictures = new PageImageProvider; // the engine owns it
    engine.addImageProvider(QStringLiteral("page"), pictures);
    AppShell shell(start.store, model::KeyCost{}, *pictures);
    if (start.demo)
        shell.openPracticeAtStart();
    engine.setInitialProperties(
        {{QStringLiteral("shell"), QVariant::fromValue(static_cast<ShellViewModel *>(&shell))}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Feltmark/screens/Main.qml")));
    if (engine.rootObjects().isEmpty()) {
        std::cerr << "feltmark: The window cannot be shown on this display.\n";
        return 1;
    }
    if (start.timed)
        endWhenReady(*qobject_cast<QQuickWindow *>(engine.rootObjects().constFirst()));
    const int status = QGuiApplication::exec();
    shell.lock();
    return status;
}

} // namespace app
