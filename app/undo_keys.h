#pragma once
#include <QPointer>
#include <QQuickItem>
#include <QQuickWindow>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace app {

/// Takes, in the window it lies in, the undo and redo keys before a text control does. A control whose
/// property `unsaved` is true (typing that is not yet part of the record) keeps them for its own undo.
class UndoKeys : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QStringList undoKeys MEMBER m_undoKeys NOTIFY keysChanged)
    Q_PROPERTY(QStringList redoKeys MEMBER m_redoKeys NOTIFY keysChanged)

public:
    using QQuickItem::QQuickItem;

signals:
    void keysChanged();
    void undo();
    void redo();

protected:
    void itemChange(ItemChange change, const ItemChangeData &data) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    QPointer<QQuickWindow> m_window;
    QStringList m_undoKeys, m_redoKeys;
};

} // namespace app
