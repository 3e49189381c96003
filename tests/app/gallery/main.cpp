#include "app/accessible_text.h"
#include "app/calm_events.h"
#include "gallery_shell.h"
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QtQml/qqmlextensionplugin.h>

Q_IMPORT_QML_PLUGIN(FeltmarkPlugin)
Q_IMPORT_QML_PLUGIN(GalleryPlugin)

/// gallery [PAGE [THEME [SCALE]]]
int main(int argc, char **argv) {
    QGuiApplication application(argc, argv);
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    app::installTextAccessible();
    app::installCalmEvents();
    gallery::GalleryShell shell;
    const QStringList words = QGuiApplication::arguments();
    if (words.size() > 1)
        shell.goTo(words[1]);
    if (words.size() > 2)
        shell.setThemeMode(words[2]);
    if (words.size() > 3)
        shell.setTextScale(words[3].toDouble());
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.setInitialProperties(
        {{QStringLiteral("shell"), QVariant::fromValue<app::ShellViewModel *>(&shell)}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Feltmark/screens/Main.qml")));
    return engine.rootObjects().isEmpty() ? 1 : QGuiApplication::exec();
}
