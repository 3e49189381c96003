#include "app/calm_events.h"
#include <QGuiApplication>
#include <QQuickItem>
#include <QTimer>
#include <QWindow>

namespace app {
namespace {

bool canWait(QAccessible::Event type) {
    return type == QAccessible::NameChanged || type == QAccessible::DescriptionChanged ||
           type == QAccessible::ObjectShow || type == QAccessible::ObjectHide;
}

/// What has the focus: its name is spoken when it changes. And what is spoken by itself when it is shown.
bool isSpokenAtOnce(const QQuickItem &item, const QAccessibleInterface &object) {
    return item.hasActiveFocus() || object.role() == QAccessible::Notification;
}

/// Whether the reader can come to the object from the window: what is ignored is not among the children of
/// its parent.
bool isInTree(const QAccessibleInterface &object) {
    const QAccessibleInterface *parent = object.parent();
    return parent != nullptr && parent->indexOfChild(&object) >= 0;
}

CalmEvents *installed = nullptr;

void receive(QAccessibleEvent *event) {
    installed->take(event);
}

/// On to the reader, past ourselves: the handler is the only way in that Qt makes public.
void sendOn(QAccessibleEvent *event) {
    QAccessible::installUpdateHandler(nullptr);
    QAccessible::updateAccessibility(event);
    QAccessible::installUpdateHandler(&receive);
}

} // namespace

CalmEvents::CalmEvents(Send send, QObject *parent) : QObject(parent), m_send(std::move(send)) {
    QAccessible::installActivationObserver(this);
}

CalmEvents::~CalmEvents() {
    QAccessible::removeActivationObserver(this);
}

void CalmEvents::accessibilityActiveChanged(bool active) {
    if (!active)
        return;
    for (const QWindow *window : QGuiApplication::allWindows())
        for (QObject *object : window->findChildren<QObject *>())
            know(object);
}

void CalmEvents::take(QAccessibleEvent *event) {
    auto *item = qobject_cast<QQuickItem *>(event->object());
    const QAccessibleInterface *object = event->accessibleInterface();
    if (item != nullptr && object != nullptr && canWait(event->type()) && !isSpokenAtOnce(*item, *object)) {
        hold(event);
        return;
    }
    for (; item != nullptr; item = item->parentItem())
        tellOf(item);
    m_send(event);
}

void CalmEvents::hold(QAccessibleEvent *event) {
    QObject *object = event->object();
    auto place = m_places.constFind(object);
    if (place == m_places.constEnd() || m_held[*place].object == nullptr) {
        place = m_places.insert(object, m_held.size());
        m_held.push_back({.object = object});
    }
    Held &held = m_held[*place];
    held.name |= event->type() == QAccessible::NameChanged;
    held.description |= event->type() == QAccessible::DescriptionChanged;
    if (event->type() == QAccessible::ObjectShow || event->type() == QAccessible::ObjectHide) {
        held.wasShownOrHidden = true;
        held.shown += event->type() == QAccessible::ObjectShow ? 1 : -1;
    }
    if (!m_isWaiting)
        QTimer::singleShot(0, this, &CalmEvents::tellAll);
    m_isWaiting = true;
}

void CalmEvents::know(QObject *object) {
    m_known.insert(object);
    connect(object, &QObject::destroyed, this, [this](QObject *gone) { m_known.remove(gone); });
}

/// Never heard of before, and made just now: a new object is shown or hidden first.
bool CalmEvents::isNew(const Held &held) {
    if (m_known.contains(held.object))
        return false;
    know(held.object);
    return held.wasShownOrHidden;
}

void CalmEvents::tell(const Held &held, const QHash<QObject *, int> &shownTogether) {
    const auto send = [&](bool wanted, QAccessible::Event type) {
        if (!wanted || held.object == nullptr)
            return;
        QAccessibleEvent event(held.object, type);
        m_send(&event);
    };
    const QAccessibleInterface *object =
        held.object == nullptr ? nullptr : QAccessible::queryAccessibleInterface(held.object);
    if (object == nullptr || isNew(held) || !isInTree(*object))
        return;
    const bool isOutermost = shownTogether.value(object->parent()->object()) != held.shown;
    send(isOutermost && held.shown < 0, QAccessible::ObjectHide);
    send(held.name, QAccessible::NameChanged);
    send(held.description, QAccessible::DescriptionChanged);
    send(isOutermost && held.shown > 0, QAccessible::ObjectShow);
}

void CalmEvents::tellOf(QObject *object) {
    const auto place = m_places.constFind(object);
    if (place == m_places.constEnd())
        return;
    const Held held = std::exchange(m_held[*place], {});
    m_places.erase(place);
    tell(held);
}

void CalmEvents::tellAll() {
    m_isWaiting = false;
    m_places.clear();
    const std::vector<Held> all = std::exchange(m_held, {});
    QHash<QObject *, int> shownTogether;
    for (const Held &held : all)
        shownTogether.insert(held.object, held.shown);
    for (const Held &held : all)
        tell(held, shownTogether);
}

void installCalmEvents() {
    installed = new CalmEvents(sendOn, QCoreApplication::instance());
    QAccessible::installUpdateHandler(&receive);
    QObject::connect(installed, &QObject::destroyed, [] { QAccessible::installUpdateHandler(nullptr); });
}

} // namespace app
