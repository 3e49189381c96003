#include "app/speaker.h"
#include "app/viewmodels/shell_view_model.h"
#include <QAccessible>
#include <QQuickWindow>

namespace app {

ShellViewModel *Speaker::shell() const {
    for (QObject *owner = parent(); owner; owner = owner->parent())
        if (const auto *item = qobject_cast<QQuickItem *>(owner); item && item->window())
            return item->window()->property("shell").value<ShellViewModel *>();
    return nullptr;
}

void Speaker::say(const QString &text) const {
    if (auto *heard = shell())
        heard->say(text);
}

void Speaker::announce(const QString &text) const {
    if (auto *heard = shell())
        heard->announce(text);
}

QString Speaker::nameOf(QQuickItem *item) const {
    QAccessibleInterface *face = item ? QAccessible::queryAccessibleInterface(item) : nullptr;
    if (!face)
        return {};
    const QString name = face->text(QAccessible::Name);
    // An answer says little without its question.
    const QAccessibleInterface *group = face->role() == QAccessible::RadioButton ? face->parent() : nullptr;
    return group && group->role() == QAccessible::Grouping
               ? group->text(QAccessible::Name) + QLatin1Char(' ') + name
               : name;
}

void Speaker::tellFocus(QQuickItem *item) const {
    if (!item)
        return;
    QAccessibleEvent event(item, QAccessible::Focus);
    QAccessible::updateAccessibility(&event);
}

} // namespace app
