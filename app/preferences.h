#pragma once
#include <QSettings>
#include <QSize>

class QFont;
class QPalette;

namespace app {

/// How the program looks on this laptop: colours, text size, keys, size of the window. It holds nothing of a
/// client, so it lies in a plain file of the user's configuration and is there before the records are
/// unlocked. Names: those of SettingsViewModel.
class Preferences {
public:
    Preferences();
    [[nodiscard]] QString value(const QString &name) const;
    void keep(const QString &name, const QString &value);
    /// The window's last size in pixels; invalid before the first start.
    [[nodiscard]] QSize windowSize() const;
    void keepWindowSize(const QSize &size);

private:
    QSettings m_file;
};

/// Colours that come nearest to the desktop's: "light", "dark", or "paper" and "contrast" where the desktop
/// is plain black and white.
[[nodiscard]] QString themeOf(const QPalette &desktop);
/// Text size that comes nearest to the desktop's, 1 to 4. 10 points at 96 dots an inch count as 1.
[[nodiscard]] double textScaleOf(const QFont &desktop, double dotsPerInch);

} // namespace app
