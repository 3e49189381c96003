#include "layout_faults.h"
#include <QAccessible>
#include <QCoreApplication>
#include <QElapsedTimer>
#include <QThread>
#include <gtest/gtest.h>

namespace layout {
namespace {

constexpr double slack = 1.5;      // pixels, for rounding
constexpr double leastTarget = 44; // WCAG 2.2, success criterion 2.5.5, target size (enhanced)

bool isText(const QQuickItem *item) {
    return item->inherits("QQuickText");
}

QString describe(const QQuickItem *item) {
    QString words = item->property("text").toString();
    if (words.isEmpty())
        words = item->property("label").toString();
    return QStringLiteral("%1 \"%2\"")
        .arg(QString::fromLatin1(item->metaObject()->className()), words.left(40));
}

bool isShown(const QQuickItem *item) {
    return item->isVisible() && item->opacity() > 0;
}

QRectF boxOf(const QQuickItem *item) {
    return {QPointF(0, 0), item->size()};
}

bool isScrolled(const QQuickItem *item) {
    return item->parentItem() && item->parentItem()->inherits("QQuickFlickable");
}

/// The nearest thing around a text that has a size of its own and does not scroll.
const QQuickItem *boxAround(const QQuickItem *item) {
    const QQuickItem *box = item->parentItem();
    while (box && (box->width() <= 0 || box->height() <= 0) && !isScrolled(box))
        box = box->parentItem();
    return box && !isScrolled(box) ? box : nullptr;
}

void checkText(const QQuickItem *text, QStringList &faults) {
    if (text->property("text").toString().isEmpty())
        return;
    const bool firstLines = text->objectName() == QLatin1String("firstLines"); // the whole is one key away
    if (text->property("truncated").toBool() && !firstLines)
        faults << describe(text) + QStringLiteral(" is truncated");
    const double contentWidth = text->property("contentWidth").toDouble();
    const double contentHeight = text->property("contentHeight").toDouble();
    if (contentWidth > text->width() + slack)
        faults << describe(text) +
                      QStringLiteral(": words %1 wide in %2").arg(contentWidth).arg(text->width());
    if (contentHeight > text->height() + slack)
        faults << describe(text) +
                      QStringLiteral(": words %1 high in %2").arg(contentHeight).arg(text->height());
    const QQuickItem *box = boxAround(text);
    if (!box)
        return;
    const QRectF inside = text->mapRectToItem(box, boxOf(text));
    if (!boxOf(box).adjusted(-slack, -slack, slack, slack).contains(inside))
        faults << describe(text) + QStringLiteral(" lies outside ") + describe(box);
}

/// Every Tab stop is something to press or to type into, and so are the buttons.
bool isTarget(const QQuickItem *item) {
    return item->activeFocusOnTab() &&
           (item->inherits("QQuickControl") || item->inherits("QQuickTextArea") ||
            item->inherits("QQuickTextField") ||
            QAccessible::queryAccessibleInterface(const_cast<QQuickItem *>(item)));
}

/// The ring of a control must not be cut by the part that scrolls it.
void checkRing(const QQuickItem *ring, QStringList &faults) {
    for (const QQuickItem *above = ring->parentItem(); above; above = above->parentItem()) {
        if (!above->clip())
            continue;
        const QRectF inside = ring->mapRectToItem(above, boxOf(ring));
        if (inside.left() < -slack || inside.right() > above->width() + slack)
            faults << describe(ring->parentItem()) + QStringLiteral(": no room for the focus ring");
        return;
    }
}

void checkSiblings(const QQuickItem *positioner, QStringList &faults) {
    const QList<QQuickItem *> children = positioner->childItems();
    for (qsizetype i = 0; i < children.size(); ++i)
        for (qsizetype j = i + 1; j < children.size(); ++j) {
            const QQuickItem *a = children[i], *b = children[j];
            if (!isShown(a) || !isShown(b) || a->objectName() == QLatin1String("focusRing") ||
                b->objectName() == QLatin1String("focusRing"))
                continue;
            const QRectF shared = QRectF(a->position(), a->size()) & QRectF(b->position(), b->size());
            if (shared.width() > slack && shared.height() > slack)
                faults << describe(a) + QStringLiteral(" overlaps ") + describe(b);
        }
}

void walk(const QQuickItem *item, QStringList &faults) {
    if (item->objectName() == QLatin1String("focusRing")) {
        checkRing(item, faults);
        return;
    }
    if (!isShown(item))
        return;
    if (isText(item))
        checkText(item, faults);
    if (isTarget(item) && (item->height() < leastTarget || item->width() < leastTarget))
        faults << describe(item) + QStringLiteral(" is only %1 by %2").arg(item->width()).arg(item->height());
    if (item->inherits("QQuickBasePositioner"))
        checkSiblings(item, faults);
    for (const QQuickItem *child : item->childItems())
        walk(child, faults);
}

void addGeometry(const QQuickItem *item, size_t &sum) {
    sum = qHashMulti(sum, item->x(), item->y(), item->width(), item->height(), item->isVisible());
    for (const QQuickItem *child : item->childItems())
        addGeometry(child, sum);
}

} // namespace

QStringList faultsUnder(QQuickItem *root) {
    QStringList faults;
    walk(root, faults);
    return faults;
}

bool settle(QQuickItem *root) {
    QElapsedTimer clock;
    clock.start();
    size_t before = 0;
    for (int same = 0; same < 4;) {
        if (clock.elapsed() > 5000)
            return false;
        QCoreApplication::processEvents();
        QThread::msleep(2); // the offscreen window draws in between
        size_t now = 1;
        addGeometry(root, now);
        same = now == before ? same + 1 : 0;
        before = now;
    }
    return true;
}

void failOnWarnings() {
    qInstallMessageHandler(
        [](QtMsgType /*type*/, const QMessageLogContext & /*context*/, const QString &message) {
            const bool isMeant = message.contains(QLatin1String("NoSuchPage.qml")); // the gallery asks for it
            if (message.contains(QLatin1String("loop"), Qt::CaseInsensitive) ||
                (message.contains(QLatin1String(".qml")) && !isMeant))
                ADD_FAILURE() << message.toStdString();
        });
}

} // namespace layout
