#include "app/calm_events.h"
#include <QCoreApplication>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQmlProperty>
#include <QQuickItem>
#include <QQuickWindow>
#include <gmock/gmock.h>

namespace {

using testing::ElementsAre;
using testing::IsEmpty;

constexpr auto page = R"(
import QtQuick
Item {
    Accessible.role: Accessible.List
    Accessible.name: "List"
    Item {
        objectName: "row"
        Accessible.role: Accessible.ListItem
        Accessible.name: "Row"
        Accessible.focusable: true
    }
    Item { objectName: "silent"; Accessible.role: Accessible.StaticText; Accessible.name: "Row"; Accessible.ignored: true }
    Item { objectName: "message"; Accessible.role: Accessible.Notification; Accessible.name: "Saved." }
})";

/// A window with a list, and what of its events goes on to the reader.
class CalmEvents : public testing::Test {
protected:
    CalmEvents()
        : m_calm([this](QAccessibleEvent *event) {
              m_told.push_back(QStringLiteral("%1 %2")
                                   .arg(event->type(), 0, 16)
                                   .arg(event->object()->objectName())
                                   .toStdString());
          }) {
        QQmlComponent component(&m_engine);
        component.setData(page, {});
        m_page.reset(qobject_cast<QQuickItem *>(component.create()));
        m_page->setObjectName(QStringLiteral("list"));
        m_page->setParentItem(m_window.contentItem());
        for (QObject *known : {static_cast<QObject *>(m_page.get()), static_cast<QObject *>(item("row"))})
            happens(QAccessible::NameChanged, known);
        toldAfterTheTurn();
    }

    QQuickItem *item(const char *name) { return m_page->findChild<QQuickItem *>(QString::fromLatin1(name)); }
    void happens(QAccessible::Event type, QObject *object) {
        QAccessibleEvent event(object, type);
        m_calm.take(&event);
    }
    std::vector<std::string> told() { return std::exchange(m_told, {}); }
    std::vector<std::string> toldAfterTheTurn() {
        QCoreApplication::processEvents();
        return told();
    }

    QQmlEngine m_engine;
    QQuickWindow m_window;
    std::unique_ptr<QQuickItem> m_page;
    std::vector<std::string> m_told;
    app::CalmEvents m_calm;
};

// Numbers of QAccessible::Event (Qt 6.4, qaccessible_base.h): Focus 8005, NameChanged 800c, ObjectShow 8002,
// ObjectHide 8003.

TEST_F(CalmEvents, tellANameOnceThatChangesManyTimes) {
    for (int i = 0; i < 40; ++i)
        happens(QAccessible::NameChanged, item("row"));
    EXPECT_THAT(told(), IsEmpty());
    EXPECT_THAT(toldAfterTheTurn(), ElementsAre("800c row"));
    EXPECT_THAT(toldAfterTheTurn(), IsEmpty());
}

TEST_F(CalmEvents, letTheFocusThroughAtOnceAfterTheNamesOnItsWay) {
    happens(QAccessible::NameChanged, item("row"));
    happens(QAccessible::NameChanged, m_page.get());
    happens(QAccessible::Focus, item("row"));
    EXPECT_THAT(told(), ElementsAre("800c row", "800c list", "8005 row"));
    EXPECT_THAT(toldAfterTheTurn(), IsEmpty());
}

TEST_F(CalmEvents, letOtherObjectsWaitUntilTheFocusIsTold) {
    happens(QAccessible::ObjectShow, m_page.get());
    happens(QAccessible::NameChanged, item("row"));
    happens(QAccessible::Focus, m_page.get());
    EXPECT_THAT(told(), ElementsAre("8002 list", "8005 list"));
    EXPECT_THAT(toldAfterTheTurn(), ElementsAre("800c row"));
}

TEST_F(CalmEvents, tellOnlyWhereAnObjectEnds) {
    happens(QAccessible::ObjectHide, item("row"));
    happens(QAccessible::ObjectShow, item("row"));
    EXPECT_THAT(toldAfterTheTurn(), IsEmpty());
    happens(QAccessible::ObjectHide, item("row"));
    EXPECT_THAT(toldAfterTheTurn(), ElementsAre("8003 row"));
    happens(QAccessible::ObjectShow, item("row"));
    EXPECT_THAT(toldAfterTheTurn(), ElementsAre("8002 row"));
}

TEST_F(CalmEvents, tellOnlyTheOutermostOfWhatIsShownTogether) {
    for (QObject *object : {static_cast<QObject *>(item("row")), static_cast<QObject *>(m_page.get())})
        happens(QAccessible::ObjectShow, object);
    EXPECT_THAT(toldAfterTheTurn(), ElementsAre("8002 list"));
}

TEST_F(CalmEvents, tellNothingOfANewObjectUntilItChanges) {
    QQuickItem *message = item("message"); // stands for any object of which nothing was told yet
    message->setObjectName(QStringLiteral("new"));
    QQmlProperty::write(message, QStringLiteral("Accessible.role"), int(QAccessible::StaticText),
                        qmlContext(message));
    happens(QAccessible::ObjectShow, message);
    happens(QAccessible::NameChanged, message);
    EXPECT_THAT(toldAfterTheTurn(), IsEmpty());
    happens(QAccessible::NameChanged, message);
    EXPECT_THAT(toldAfterTheTurn(), ElementsAre("800c new"));
}

TEST_F(CalmEvents, tellNothingOfWhatTheReaderCannotFind) {
    happens(QAccessible::NameChanged, item("silent"));
    happens(QAccessible::ObjectShow, item("silent"));
    EXPECT_THAT(toldAfterTheTurn(), IsEmpty());
}

TEST_F(CalmEvents, letAMessageThroughAtOnce) {
    happens(QAccessible::NameChanged, item("message"));
    happens(QAccessible::ObjectShow, item("message"));
    EXPECT_THAT(told(), ElementsAre("800c message", "8002 message"));
}

TEST_F(CalmEvents, forgetWhatIsGone) {
    happens(QAccessible::NameChanged, item("row"));
    delete item("row");
    EXPECT_THAT(toldAfterTheTurn(), IsEmpty());
}

} // namespace
