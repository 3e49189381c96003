#include "app/desktop_colours.h"
#include "app/preferences.h"
#include <QEvent>
#include <QGuiApplication>
#include <QPalette>

namespace app {

DesktopColours::DesktopColours(QObject *parent) : QObject(parent) {
    QCoreApplication::instance()->installEventFilter(this);
}

bool DesktopColours::eventFilter(QObject *watched, QEvent *event) {
    if (watched == QCoreApplication::instance() && event->type() == QEvent::ApplicationPaletteChange)
        emit changed(themeOf(QGuiApplication::palette()));
    return false;
}

} // namespace app
