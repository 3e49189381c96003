#include "app/accessible_text.h"
#include <QAccessible>
#include <QAccessibleObject>
#include <QPointer>
#include <QQuickItem>
#include <QQuickWindow>

namespace app {
namespace {

bool isSecret(const QObject *control) {
    return control->property("echoMode").toInt() != 0;
}

/// Where the old and the new text differ, so that the reader can speak the difference.
struct TextChange {
    int at = 0;
    QString removed, added;
};

TextChange difference(const QString &before, const QString &after) {
    qsizetype head = 0, beforeEnd = before.size(), afterEnd = after.size();
    while (head < beforeEnd && head < afterEnd && before[head] == after[head])
        ++head;
    while (beforeEnd > head && afterEnd > head && before[beforeEnd - 1] == after[afterEnd - 1]) {
        --beforeEnd;
        --afterEnd;
    }
    return {static_cast<int>(head), before.mid(head, beforeEnd - head), after.mid(head, afterEnd - head)};
}

/// Tells the reader what was typed and deleted in one control. Silent about secrets.
class ChangeTeller : public QObject {
    Q_OBJECT

public:
    explicit ChangeTeller(QObject *control)
        : QObject(control), m_before(control->property("text").toString()) {
        connect(control, SIGNAL(textChanged()), this, SLOT(tell()));
    }

private slots:
    void tell() {
        const TextChange change = difference(m_before, parent()->property("text").toString());
        m_before = isSecret(parent()) ? QString() : parent()->property("text").toString();
        if (!QAccessible::isActive() || isSecret(parent()))
            return;
        if (!change.removed.isEmpty()) {
            QAccessibleTextRemoveEvent event(parent(), change.at, change.removed);
            QAccessible::updateAccessibility(&event);
        }
        if (!change.added.isEmpty()) {
            QAccessibleTextInsertEvent event(parent(), change.at, change.added);
            QAccessible::updateAccessibility(&event);
        }
    }

private:
    QString m_before;
};

class TextAccessible : public QAccessibleObject,
                       public QAccessibleTextInterface,
                       public QAccessibleActionInterface {
public:
    explicit TextAccessible(QQuickItem *control) : QAccessibleObject(control) {}

    QWindow *window() const override { return item() ? item()->window() : nullptr; }
    QAccessibleInterface *parent() const override;
    QAccessibleInterface *child(int /*index*/) const override { return nullptr; }
    QAccessibleInterface *childAt(int /*x*/, int /*y*/) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface * /*child*/) const override { return -1; }
    QRect rect() const override {
        return QRectF(item()->mapToGlobal(QPointF(0, 0)), item()->size()).toRect();
    }
    QAccessible::Role role() const override { return QAccessible::EditableText; }
    QAccessible::State state() const override;
    QString text(QAccessible::Text kind) const override;
    void *interface_cast(QAccessible::InterfaceType type) override;

    QStringList actionNames() const override { return {setFocusAction()}; }
    void doAction(const QString &action) override {
        if (action == setFocusAction())
            item()->forceActiveFocus();
    }
    QStringList keyBindingsForAction(const QString & /*action*/) const override { return {}; }

    QString text(int from, int to) const override { return shown().mid(from, to - from); }
    int characterCount() const override { return static_cast<int>(shown().size()); }
    int cursorPosition() const override { return number("cursorPosition"); }
    void setCursorPosition(int position) override { object()->setProperty("cursorPosition", position); }
    void selection(int /*index*/, int *from, int *to) const override {
        *from = number("selectionStart");
        *to = number("selectionEnd");
    }
    int selectionCount() const override { return number("selectionStart") != number("selectionEnd") ? 1 : 0; }
    void addSelection(int from, int to) override {
        QMetaObject::invokeMethod(object(), "select", Q_ARG(int, from), Q_ARG(int, to));
    }
    void removeSelection(int /*index*/) override { QMetaObject::invokeMethod(object(), "deselect"); }
    void setSelection(int /*index*/, int from, int to) override { addSelection(from, to); }
    QString attributes(int /*offset*/, int *from, int *to) const override {
        *from = 0; // one run: an empty range would make the reader find no text at all
        *to = characterCount();
        return {};
    }
    QRect characterRect(int offset) const override {
        QRectF place;
        QMetaObject::invokeMethod(object(), "positionToRectangle", Q_RETURN_ARG(QRectF, place),
                                  Q_ARG(int, offset));
        return place.translated(item()->mapToGlobal(QPointF(0, 0))).toRect();
    }
    int offsetAtPoint(const QPoint & /*point*/) const override { return -1; }
    void scrollToSubstring(int from, int /*to*/) override { setCursorPosition(from); }

private:
    QQuickItem *item() const { return static_cast<QQuickItem *>(object()); }
    int number(const char *property) const { return object()->property(property).toInt(); }
    QString shown() const {
        const QString text = object()->property("text").toString();
        return isSecret(object()) ? QString(text.size(), QLatin1Char('*')) : text;
    }
};

/// Also in a dialog that is closed and so in no window: a reader that asks then keeps the answer, and would
/// take an entry without parent for one that is gone when the dialog opens again.
QAccessibleInterface *TextAccessible::parent() const {
    const QQuickItem *top = item()->window() ? item()->window()->contentItem() : nullptr;
    for (QQuickItem *above = item()->parentItem(); above && above != top; above = above->parentItem()) {
        if (QAccessibleInterface *face = QAccessible::queryAccessibleInterface(above))
            return face;
    }
    return window() ? QAccessible::queryAccessibleInterface(window()) : nullptr;
}

/// Whether scrolling has taken an item out of every view that clips it.
bool isScrolledAway(const QQuickItem *item) {
    for (const QQuickItem *above = item->parentItem(); above; above = above->parentItem()) {
        const QRectF inside = item->mapRectToItem(above, QRectF(QPointF(0, 0), item->size()));
        if (above->clip() && !inside.intersects(QRectF(QPointF(0, 0), above->size())))
            return true;
    }
    return false;
}

QAccessible::State TextAccessible::state() const {
    QAccessible::State state;
    state.focusable = true;
    state.focused = item()->hasActiveFocus();
    state.readOnly = object()->property("readOnly").toBool();
    state.editable = !state.readOnly;
    state.multiLine = object()->property("lineCount").isValid();
    state.selectableText = true;
    state.invisible = !item()->isVisible();
    state.offscreen = isScrolledAway(item());
    state.disabled = !item()->isEnabled();
    state.passwordEdit = isSecret(object());
    return state;
}

QString TextAccessible::text(QAccessible::Text kind) const {
    if (kind == QAccessible::Name)
        return object()->property("spokenName").toString();
    if (kind == QAccessible::Description)
        return object()->property("spokenHint").toString();
    return kind == QAccessible::Value ? shown() : QString();
}

void *TextAccessible::interface_cast(QAccessible::InterfaceType type) {
    if (type == QAccessible::TextInterface)
        return static_cast<QAccessibleTextInterface *>(this);
    if (type == QAccessible::ActionInterface)
        return static_cast<QAccessibleActionInterface *>(this);
    return nullptr;
}

QAccessibleInterface *makeTextAccessible(const QString &className, QObject *object) {
    if (className != QLatin1String("QQuickTextField") && className != QLatin1String("QQuickTextArea"))
        return nullptr;
    auto *control = qobject_cast<QQuickItem *>(object);
    if (!control)
        return nullptr;
    new ChangeTeller(control);
    return new TextAccessible(control);
}

} // namespace

void installTextAccessible() {
    QAccessible::installFactory(makeTextAccessible);
}

} // namespace app

#include "accessible_text.moc"
