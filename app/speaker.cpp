#include "app/speaker.h"
#include "app/viewmodels/shell_view_model.h"
#include <QAccessible>
#include <QQuickWindow>

namespace app {

void Speaker::say(const QString &text) const {
    for (QObject *owner = parent(); owner; owner = owner->parent()) {
        const auto *item = qobject_cast<QQuickItem *>(owner);
        if (!item || !item->window())
            continue;
        if (auto *shell = item->window()->property("shell").value<ShellViewModel *>())
            shell->say(text);
        return;
    }
}

QString Speaker::nameOf(QQuickItem *item) const {
    QAccessibleInterface *face = item ? QAccessible::queryAccessibleInterface(item) : nullptr;
    return face ? face->text(QAccessible::Name) : QString();
}

} // namespace app
