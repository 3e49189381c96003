#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <iostream>

/// A window with one text field: what the start of the program is compared with.
int main(int argc, char **argv) {
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    QGuiApplication application(argc, argv);
    QQmlApplicationEngine engine;
    engine.loadData(
        "import QtQuick.Controls\n"
        "ApplicationWindow { visible: true; width: 1280; height: 800; TextField { focus: true } }");
    if (engine.rootObjects().isEmpty())
        return 1;
    auto *window = qobject_cast<QQuickWindow *>(engine.rootObjects().constFirst());
    QObject::connect(window, &QQuickWindow::frameSwapped, &application, [window] {
        if (!window->activeFocusItem())
            return;
        std::cout << "ready" << std::endl;
        QCoreApplication::quit();
    });
    return QGuiApplication::exec();
}
