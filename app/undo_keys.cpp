#include "app/undo_keys.h"
#include <QKeyEvent>
#include <QKeySequence>
#include <QQuickItem>
#include <algorithm>

namespace app {
namespace {

bool isOneOf(const QKeyEvent &pressed, const QStringList &keys) {
    const QKeySequence sequence(pressed.keyCombination());
    return std::ranges::any_of(keys, [&](const QString &key) {
        return QKeySequence::fromString(key, QKeySequence::PortableText) == sequence;
    });
}

} // namespace

void UndoKeys::itemChange(ItemChange change, const ItemChangeData &data) {
    if (change == ItemSceneChange) {
        if (m_window)
            m_window->removeEventFilter(this);
        m_window = data.window;
        if (m_window)
            m_window->installEventFilter(this);
    }
    QQuickItem::itemChange(change, data);
}

bool UndoKeys::eventFilter(QObject *watched, QEvent *event) {
    const bool isOverride = event->type() == QEvent::ShortcutOverride;
    if (watched != m_window || (!isOverride && event->type() != QEvent::KeyPress))
        return false;
    const auto *pressed = static_cast<QKeyEvent *>(event);
    const bool isUndo = isOneOf(*pressed, m_undoKeys);
    if (!isUndo && !isOneOf(*pressed, m_redoKeys))
        return false;
    const QQuickItem *focused = m_window->activeFocusItem();
    if (focused && focused->property("unsaved").toBool())
        return false;
    event->accept();
    if (!isOverride)
        emit isUndo ? undo() : redo();
    return true;
}

} // namespace app
