#pragma once
#include <QAccessible>
#include <QHash>
#include <QObject>
#include <QPointer>
#include <QSet>
#include <functional>
#include <vector>

namespace app {

/// Lets through at once what a screen reader speaks, and tells the rest once, when the turn of the event loop
/// is over.
///
/// A new page or list changes name and visibility of hundreds of objects, many of them again with each row
/// that is added. A reader takes every such event in turn, so that without this the focus is spoken a second
/// late. Held back are names, descriptions, shown and hidden: each object tells its last state, once; what
/// the reader cannot find is not told at all. Before the focus moves, what is held back of the object and of
/// what it lies in goes ahead, so that no old name is spoken.
class CalmEvents : public QObject, public QAccessible::ActivationObserver {
    Q_OBJECT

public:
    using Send = std::function<void(QAccessibleEvent *)>;

    /// @param send Where events go: to the reader, in tests to a list.
    explicit CalmEvents(Send send, QObject *parent = nullptr);

    ~CalmEvents() override;
    Q_DISABLE_COPY_MOVE(CalmEvents)

    void take(QAccessibleEvent *event);
    /// A reader that comes later may know all that is there by then.
    void accessibilityActiveChanged(bool active) override;

private:
    struct Held {
        QPointer<QObject> object;
        bool name = false, description = false;
        bool wasShownOrHidden = false;
        int shown = 0; // 1 shown, -1 hidden, 0 in the end as before
    };

    void hold(QAccessibleEvent *event);
    void know(QObject *object);
    bool isNew(const Held &held);
    void tell(const Held &held, const QHash<QObject *, int> &shownTogether = {});
    void tellOf(QObject *object);
    void tellAll();

    Send m_send;
    QHash<QObject *, std::size_t> m_places; // in m_held
    std::vector<Held> m_held;               // in the order in which they came
    QSet<QObject *> m_known;                // not new to the reader
    bool m_isWaiting = false;
};

/// Puts it between Qt and the reader. Call once, before QML is loaded.
void installCalmEvents();

} // namespace app
