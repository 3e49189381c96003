#pragma once
#include "app/viewmodels/key_model.h"
#include <QPointer>
#include <QQuickItem>
#include <QQuickWindow>
#include <QtQml/qqmlregistration.h>

namespace app {

/// Takes, in the window it lies in, those keys that must come before any control and any dialog: lock, say
/// again, where am I, text size, undo, redo. A control whose property `unsaved` is true (typing that is not
/// yet part of the record) keeps undo and redo for itself.
class FirstKeys : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(app::KeyModel *keys MEMBER m_keys NOTIFY keysChanged REQUIRED)

public:
    using QQuickItem::QQuickItem;
    Q_INVOKABLE [[nodiscard]] bool takes(const QString &command) const;

signals:
    void keysChanged();
    void pressed(const QString &command);

protected:
    void itemChange(ItemChange change, const ItemChangeData &data) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    /// Empty if the key is none of ours.
    [[nodiscard]] QString commandOf(const QKeyEvent &pressed) const;

    QPointer<KeyModel> m_keys;
    QPointer<QQuickWindow> m_window;
};

} // namespace app
