#pragma once
#include <QObject>
#include <QQuickItem>
#include <QtQml/qqmlregistration.h>

namespace app {

class ShellViewModel;

/// Put into a control that has something to say: passes a sentence to the shell of the window that the
/// control is in.
class Speaker : public QObject {
    Q_OBJECT
    QML_ELEMENT

public:
    using QObject::QObject;
    Q_INVOKABLE void say(const QString &text) const;
    /// Spoken, and written nowhere: eyes see it already.
    Q_INVOKABLE void announce(const QString &text) const;
    /// What the screen reader calls an item, empty for none.
    Q_INVOKABLE [[nodiscard]] QString nameOf(QQuickItem *item) const;
    /// Tells the screen reader once more where the focus is: on a window that has just come up it speaks of
    /// the window alone.
    Q_INVOKABLE void tellFocus(QQuickItem *item) const;

private:
    /// Of the window that the control is in, if it has one.
    [[nodiscard]] ShellViewModel *shell() const;
};

} // namespace app
