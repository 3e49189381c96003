#pragma once
#include <QObject>

namespace app {

/// Tells when the desktop takes other colours, for instance dark ones in the evening.
class DesktopColours : public QObject {
    Q_OBJECT

public:
    explicit DesktopColours(QObject *parent = nullptr);
    bool eventFilter(QObject *watched, QEvent *event) override;

signals:
    /// @param theme As of themeOf().
    void changed(const QString &theme);
};

} // namespace app
