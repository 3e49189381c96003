#include "app/accessible_text.h"
#include "gallery/gallery_shell.h"
#include "layout_faults.h"
#include <QAccessible>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QTest>
#include <QtQml/qqmlextensionplugin.h>
#include <algorithm>
#include <gmock/gmock.h>

Q_IMPORT_QML_PLUGIN(FeltmarkPlugin)
Q_IMPORT_QML_PLUGIN(GalleryPlugin)

namespace {

QPointingDevice *finger() {
    static QPointingDevice *device = QTest::createTouchDevice();
    return device;
}

/// The gallery, worked by a finger alone.
class Touch : public testing::TestWithParam<double> {
protected:
    Touch() {
        m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        m_engine.setInitialProperties(
            {{QStringLiteral("shell"), QVariant::fromValue<app::ShellViewModel *>(&m_shell)}});
        m_engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Feltmark/screens/Main.qml")));
        window()->resize(1280, 800);
        m_shell.setTextScale(GetParam());
    }
    QQuickWindow *window() { return qobject_cast<QQuickWindow *>(m_engine.rootObjects().value(0)); }
    void settle() { EXPECT_TRUE(layout::settle(window()->contentItem())); }
    void open(const char *page) {
        m_shell.goTo(QString::fromLatin1(page));
        settle();
    }

    /// What a person would call it; the name of the item for a reader begins so.
    QQuickItem *named(const QString &begin, QAccessible::Role role) {
        return find(window()->contentItem(), [&](QQuickItem *item) {
            QAccessibleInterface *spoken = QAccessible::queryAccessibleInterface(item);
            return spoken && spoken->role() == role && spoken->text(QAccessible::Name).startsWith(begin);
        });
    }
    QQuickItem *scrolled() {
        return find(window()->contentItem(), [](QQuickItem *item) {
            return item->inherits("QQuickFlickable") && item->height() > 200 &&
                   item->property("contentHeight").toDouble() > item->height() + 100 &&
                   item->width() > 500; // not the rail
        });
    }

    /// A finger goes down on the middle of it, in sight, and up again.
    void tap(QQuickItem *item) {
        ASSERT_NE(item, nullptr);
        bringIntoSight(item);
        const QPoint at = item->mapToScene({item->width() / 2, item->height() / 2}).toPoint();
        ASSERT_TRUE(QRect(QPoint(0, 0), window()->size()).contains(at));
        QTest::touchEvent(window(), finger()).press(0, at, window());
        settle();
        QTest::touchEvent(window(), finger()).release(0, at, window());
        settle();
    }
    void swipe(QPoint from, int byY) {
        constexpr int steps = 8;
        QTest::touchEvent(window(), finger()).press(0, from, window());
        for (int i = 1; i <= steps; ++i) {
            QTest::qWait(15);
            QTest::touchEvent(window(), finger()).move(0, from + QPoint(0, byY * i / steps), window());
        }
        QTest::touchEvent(window(), finger()).release(0, from + QPoint(0, byY), window());
        QTest::qWait(300);
        settle();
    }

    gallery::GalleryShell m_shell;

private:
    template<class Is> static QQuickItem *find(QQuickItem *from, const Is &is) {
        if (!from->isVisible())
            return nullptr;
        if (is(from))
            return from;
        for (QQuickItem *child : from->childItems())
            if (QQuickItem *found = find(child, is))
                return found;
        return nullptr;
    }
    /// As by a flick: the part that scrolls is moved until it shows.
    void bringIntoSight(QQuickItem *item) {
        for (QQuickItem *above = item->parentItem(); above; above = above->parentItem()) {
            if (!above->inherits("QQuickFlickable"))
                continue;
            const double top = item->mapToItem(above, {0, 0}).y();
            if (top < 0 || top + item->height() > above->height()) {
                above->setProperty("wandered", true); // as after a swipe
                above->setProperty("contentY",
                                   std::max(0.0, above->property("contentY").toDouble() + top - 100));
            }
            settle();
        }
    }

    QQmlApplicationEngine m_engine;
};

TEST_P(Touch, pressesAButton) {
    open("fields");
    tap(named("Next place", QAccessible::Button));
    EXPECT_EQ(m_shell.message(), "Next.");
}

TEST_P(Touch, setsAndClearsACheckBox) {
    open("fields");
    QQuickItem *box = named("Uses braille", QAccessible::CheckBox);
    tap(box);
    EXPECT_TRUE(box->property("checked").toBool());
    tap(box);
    EXPECT_FALSE(box->property("checked").toBool());
}

TEST_P(Touch, chooses) {
    open("form");
    tap(named("Dim", QAccessible::RadioButton));
    const auto &fields = m_shell.form()->rows();
    const auto light = std::ranges::find(fields, "light", &app::FormField::key);
    EXPECT_EQ(light->value, "Dim");
}

TEST_P(Touch, opensALongListAndTakesFromIt) {
    open("form");
    tap(named("Kind of unit", QAccessible::Button));
    tap(named("Fridge,", QAccessible::ListItem));
    const auto &fields = m_shell.form()->rows();
    EXPECT_EQ(std::ranges::find(fields, "unit", &app::FormField::key)->value, "Fridge");
    EXPECT_EQ(named("Fridge,", QAccessible::ListItem), nullptr) << "the list is shut";
}

TEST_P(Touch, activatesARow) {
    open("form");
    tap(named("Rice", QAccessible::ListItem));
    EXPECT_EQ(m_shell.message(), "Correct rice.");
}

TEST_P(Touch, scrollsByAFlickAndPressesNothingMeanwhile) {
    open("form");
    QQuickItem *page = scrolled();
    ASSERT_NE(page, nullptr);
    page->setProperty("contentY", 0);
    settle();
    const QString before = m_shell.message();
    swipe({500, 500}, -350);
    const double low = page->property("contentY").toDouble();
    EXPECT_GT(low, 150);
    EXPECT_EQ(m_shell.message(), before);
    swipe({500, 200}, 350);
    EXPECT_LT(page->property("contentY").toDouble(), low);
}

INSTANTIATE_TEST_SUITE_P(TextSizes, Touch, testing::Values(1, 2, 4));

} // namespace

int main(int argc, char **argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication application(argc, argv);
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    app::installTextAccessible();
    testing::InitGoogleMock(&argc, argv);
    return RUN_ALL_TESTS();
}
