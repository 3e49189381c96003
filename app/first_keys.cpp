#include "app/first_keys.h"
#include <QKeyEvent>
#include <QKeySequence>
#include <algorithm>
#include <array>

namespace app {
namespace {

constexpr std::array taken{"lock", "sayAgain", "whereAmI", "undo", "redo", "larger", "smaller", "plainSize"};

} // namespace

bool FirstKeys::takes(const QString &command) const {
    return std::ranges::any_of(taken, [&](const char *own) { return command == QLatin1String(own); });
}

void FirstKeys::itemChange(ItemChange change, const ItemChangeData &data) {
    if (change == ItemSceneChange) {
        if (m_window)
            m_window->removeEventFilter(this);
        m_window = data.window;
        if (m_window)
            m_window->installEventFilter(this);
    }
    QQuickItem::itemChange(change, data);
}

QString FirstKeys::commandOf(const QKeyEvent &pressed) const {
    // Plus needs Shift on many keyboards.
    const QKeyCombination typed =
        pressed.key() == Qt::Key_Plus
            ? QKeyCombination(pressed.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier), Qt::Key_Plus)
            : pressed.keyCombination();
    const QString sequence = QKeySequence(typed).toString(QKeySequence::PortableText);
    for (const char *own : taken)
        if (m_keys && m_keys->sequencesOf(QString::fromLatin1(own)).contains(sequence))
            return QString::fromLatin1(own);
    return {};
}

bool FirstKeys::eventFilter(QObject *watched, QEvent *event) {
    const bool isOverride = event->type() == QEvent::ShortcutOverride;
    if (watched != m_window || (!isOverride && event->type() != QEvent::KeyPress))
        return false;
    const QString command = commandOf(*static_cast<QKeyEvent *>(event));
    if (command.isEmpty())
        return false;
    const QQuickItem *focused = m_window->activeFocusItem();
    if ((command == QLatin1String("undo") || command == QLatin1String("redo")) && focused &&
        focused->property("unsaved").toBool())
        return false;
    event->accept();
    if (!isOverride)
        emit this->pressed(command);
    return true;
}

} // namespace app
