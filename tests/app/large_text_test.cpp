#include "real_screens.h"
#include <QTest>
#include <algorithm>

namespace {

/// Eyes that see a little: very large text leaves room for few lines, so what does not fit has to be reached.
class LargeText : public RealScreens {
protected:
    LargeText() {
        const auto clients = m_shell.session().caseload();
        m_shell.goTo(QStringLiteral("open:") + QString::fromStdString(clients->front().id.text));
        window()->requestActivate();
        settle();
    }
    void settle() { EXPECT_TRUE(layout::settle(window()->contentItem())); }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(window(), key, modifiers);
        settle();
    }
    void act(const char *command) {
        ASSERT_TRUE(QMetaObject::invokeMethod(window(), "act", Q_ARG(QString, QString::fromLatin1(command))));
        settle();
    }
    app::PageViewModel *page() {
        return m_shell.property("pageProperties").toMap().value("vm").value<app::PageViewModel *>();
    }
    /// All that are shown and are so.
    template<class Is> std::vector<QQuickItem *> all(const Is &is) {
        std::vector<QQuickItem *> found;
        collect(window()->contentItem(), is, found);
        return found;
    }
    std::vector<QQuickItem *> ofType(const char *type) {
        return all([type](const QQuickItem *item) {
            return QLatin1String(item->metaObject()->className()).startsWith(QLatin1String(type));
        });
    }
    double top(const QQuickItem *item) { return item->mapToScene({0, 0}).y(); }

private:
    template<class Is> static void collect(QQuickItem *from, const Is &is, std::vector<QQuickItem *> &found) {
        if (!from->isVisible())
            return;
        if (is(from))
            found.push_back(from);
        for (QQuickItem *child : from->childItems())
            collect(child, is, found);
    }
};

// Down does not leave a row before its end was in sight, nor Up before its start; where rows fit each key
// moves.
TEST_P(LargeText, readsARowToItsEndBeforeTheNext) {
    for (const QSize size : {QSize(1280, 800), QSize(1366, 768)}) {
        window()->resize(size);
        openPage("markerkit");
        settle();
        const auto lists = ofType("ListEntry_");
        const auto list = std::ranges::find_if(
            lists, [](const QQuickItem *one) { return one->property("label").toString() == u"Marks"; });
        ASSERT_NE(list, lists.end());
        ASSERT_TRUE(QMetaObject::invokeMethod(*list, "focusRow", Q_ARG(int, 0)));
        settle();
        QQuickItem *first = window()->activeFocusItem();
        const bool fits = first->height() <= window()->height();
        EXPECT_EQ(fits, GetParam() < 4);
        int keys = 0;
        while (window()->activeFocusItem() == first && keys < 9) {
            const bool endInSight = top(first) + first->height() <= window()->height() + 1;
            press(Qt::Key_Down);
            ++keys;
            EXPECT_EQ(window()->activeFocusItem() != first, endInSight) << keys;
        }
        EXPECT_EQ(keys == 1, fits);
        QQuickItem *second = window()->activeFocusItem();
        const bool startInSight = top(second) >= 0;
        press(Qt::Key_Up);
        EXPECT_TRUE(startInSight) << "a row that is reached is shown from its start";
        EXPECT_EQ(window()->activeFocusItem(), first);
        if (fits)
            continue;
        press(Qt::Key_Down);
        EXPECT_LT(top(first), 0);
        press(Qt::Key_Up);
        EXPECT_EQ(window()->activeFocusItem(), first) << "back to its start";
        EXPECT_GE(top(first), 0);
    }
}

// F6 passes by the message line while there is no message; on it the whole message is shown.
TEST_P(LargeText, goesToTheMessageLineOnlyForAMessage) {
    openPage("goals");
    settle();
    const auto lines = [this] { return ofType("Notifier_"); };
    ASSERT_EQ(lines().size(), 1);
    for (int i = 0; i < 4; ++i) {
        act("nextRegion");
        EXPECT_FALSE(lines().front()->property("isFocused").toBool()) << i;
    }
    const QString message = QStringLiteral("The papers cannot be written into that folder: you may not write "
                                           "there. Choose another folder, then write them again.");
    openPage("goals");
    m_shell.say(message);
    settle();
    act("nextRegion");
    ASSERT_TRUE(lines().front()->property("isFocused").toBool());
    const auto words = all([](const QQuickItem *item) { return item->objectName() == u"firstLines"; });
    ASSERT_EQ(words.size(), 1);
    EXPECT_EQ(words.front()->property("text").toString(), message);
    EXPECT_FALSE(words.front()->property("truncated").toBool());
    EXPECT_GE(top(words.front()), 0);
    expectNoFaults("message-whole");
}

// Numbers in the drawing of one unit become smaller rather than vanish.
TEST_P(LargeText, keepsTheNumbersOfAUnit) {
    openPage("kitchen");
    ASSERT_FALSE(page()->rows()->rows().empty());
    page()->activated(page()->rows()->keyAt(0));
    settle();
    const auto drawings = ofType("KitchenDrawing_");
    ASSERT_EQ(drawings.size(), 1);
    QStringList wanted;
    for (const QVariant &box : drawings.front()->property("boxes").toList())
        if (const QString label = box.toMap().value("label").toString(); !label.isEmpty())
            wanted << label;
    ASSERT_GE(wanted.size(), 3);
    QStringList shown;
    for (const QQuickItem *text : all([](const QQuickItem *item) { return item->inherits("QQuickText"); }))
        if (drawings.front()->isAncestorOf(text) && wanted.contains(text->property("text").toString()))
            shown << text->property("text").toString();
    wanted.sort();
    shown.sort();
    EXPECT_EQ(shown.join(u' ').toStdString(), wanted.join(u' ').toStdString());
    drawings.front()->childItems().front()->forceActiveFocus(Qt::TabFocusReason);
    settle();
    expectNoFaults("kitchen-unit");
}

// Which page this is stays in sight when its heading does not.
TEST_P(LargeText, saysWhichPageThisIsWhileItsHeadingIsAway) {
    openPage("upkeep");
    settle();
    EXPECT_TRUE(ofType("PlaceBar_").empty());
    for (int i = 0; i < 12 && ofType("PlaceBar_").empty(); ++i)
        press(Qt::Key_Tab);
    const auto bars = ofType("PlaceBar_");
    ASSERT_EQ(bars.size(), GetParam() > 1);
    expectNoFaults("place-bar");
    if (bars.empty())
        return;
    EXPECT_EQ(bars.front()->property("text").toString(), "Upkeep");
    EXPECT_GE(top(window()->activeFocusItem()), bars.front()->height()) << "under the bar";
    QTest::mouseClick(window(), Qt::LeftButton, {}, QPoint(100, 10));
    settle();
    EXPECT_TRUE(ofType("PlaceBar_").empty()) << "a click on it leads back to the heading";
}

// By mouse the menu is one click away, however far the steps are scrolled.
TEST_P(LargeText, keepsTheMenuOverTheSteps) {
    openPage("sight");
    if (GetParam() > 1)
        act("nextRegion");
    for (int i = 0; i < 8; ++i)
        press(Qt::Key_Down);
    const auto menus = all([](const QQuickItem *item) {
        return item->property("text").toString() == u"Menu" && item->property("keyName").isValid();
    });
    ASSERT_EQ(menus.size(), 1);
    EXPECT_GE(top(menus.front()), 0);
    EXPECT_LE(top(menus.front()) + menus.front()->height(), window()->height());
}

// The list of commands gets shorter as one types; the field stays under the pointer.
TEST_P(LargeText, keepsTheTopOfTheMenuWhereItIs) {
    openPage("sight");
    act("menu");
    const auto fields = all([this](const QQuickItem *item) { return item == window()->activeFocusItem(); });
    ASSERT_EQ(fields.size(), 1);
    const double before = top(fields.front());
    for (const char letter : {'l', 'o', 'c'})
        QTest::keyClick(window(), letter);
    settle();
    EXPECT_EQ(top(fields.front()), before);
}

// Where both panes scroll, each bar stands beside what it scrolls.
TEST_P(LargeText, setsNoTwoScrollBarsSideBySide) {
    for (const char *name : {"safety", "kitchen", "sight", "plan"}) {
        openPage(QString::fromLatin1(name));
        if (QLatin1String(name) == QLatin1String("plan")) { // its second pane comes later
            page()->act("make");
            ASSERT_TRUE(QTest::qWaitFor([this] { return m_shell.busyWith().isEmpty(); }, 60'000));
        }
        settle();
        std::vector<double> at;
        for (const QQuickItem *bar :
             all([](const QQuickItem *item) { return item->inherits("QQuickScrollBar"); }))
            if (bar->property("size").toDouble() < 1 && bar->height() > 0)
                at.push_back(bar->mapToScene({0, 0}).x());
        std::ranges::sort(at);
        for (std::size_t i = 1; i < at.size(); ++i)
            EXPECT_GT(at[i] - at[i - 1], 0.1 * window()->width()) << name;
    }
}

INSTANTIATE_TEST_SUITE_P(TextSizes, LargeText, testing::Values(1, 2, 4));

} // namespace
