#include "app/preferences.h"
#include "app/viewmodels/shell_view_model.h"
#include <QFont>
#include <QPalette>

namespace app {
namespace {

const QString windowSizeName = QStringLiteral("windowSize");
constexpr double plainPoints = 10, plainDots = 96;

} // namespace

Preferences::Preferences()
    : m_file(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("feltmark"),
             QStringLiteral("feltmark")) {}

QString Preferences::value(const QString &name) const {
    return m_file.value(name).toString();
}

void Preferences::keep(const QString &name, const QString &value) {
    m_file.setValue(name, value);
}

QSize Preferences::windowSize() const {
    return m_file.value(windowSizeName).toSize();
}

void Preferences::keepWindowSize(const QSize &size) {
    m_file.setValue(windowSizeName, size);
}

QString themeOf(const QPalette &desktop) {
    const QColor paper = desktop.color(QPalette::Window), ink = desktop.color(QPalette::WindowText);
    const bool dark = paper.lightnessF() < ink.lightnessF();
    const bool plain = (paper == QColor(Qt::white) && ink == QColor(Qt::black)) ||
                       (paper == QColor(Qt::black) && ink == QColor(Qt::white));
    if (plain)
        return dark ? QStringLiteral("contrast") : QStringLiteral("paper");
    return dark ? QStringLiteral("dark") : QStringLiteral("light");
}

double textScaleOf(const QFont &desktop, double dotsPerInch) {
    const double wanted = desktop.pointSizeF() * dotsPerInch / (plainPoints * plainDots);
    double scale = 1;
    for (const double offered : ShellViewModel::scales())
        if (offered <= wanted)
            scale = offered;
    return scale;
}

} // namespace app
