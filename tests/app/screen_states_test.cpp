#include "app/viewmodels/entry_view_model.h"
#include "real_screens.h"
#include <QAccessible>
#include <QImage>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>

namespace {

/// What a page shows only after something was done on it: a test that runs, a plan, lists and dialogs that
/// are open.
class ScreenStates : public RealScreens {
protected:
    ScreenStates() {
        const auto clients = m_shell.session().caseload();
        m_shell.goTo(QStringLiteral("open:") + QString::fromStdString(clients->front().id.text));
    }
    app::PageViewModel *page() {
        return m_shell.property("pageProperties").toMap().value("vm").value<app::PageViewModel *>();
    }
    /// Presses the button with that key and waits for the work that it begins.
    void act(const QString &key) {
        const auto &actions = page()->actions()->rows();
        ASSERT_NE(std::ranges::find(actions, key, &app::ActionRow::key), actions.end()) << key.toStdString();
        page()->act(key);
        ASSERT_TRUE(QTest::qWaitFor([this] { return m_shell.busyWith().isEmpty(); }, 60'000));
    }
    /// Shown items under the page that open a list or a dialog.
    std::vector<QQuickItem *> openers() {
        std::vector<QQuickItem *> all;
        collect(window()->contentItem(), all);
        return all;
    }
    /// The list or dialog that is open over the page.
    QObject *opened() {
        for (QQuickItem *overlay : window()->contentItem()->childItems())
            for (const QQuickItem *item : overlay->childItems())
                if (item->inherits("QQuickPopupItem") && item->isVisible())
                    return item->parent();
        return nullptr;
    }
    void expectNoFaultsOpen(const QString &state) {
        EXPECT_TRUE(layout::settle(window()->contentItem()));
        ASSERT_NE(opened(), nullptr) << state.toStdString();
        expectNoFaults(state);
        ASSERT_TRUE(QMetaObject::invokeMethod(opened(), "close"));
        EXPECT_TRUE(layout::settle(window()->contentItem()));
        EXPECT_EQ(opened(), nullptr) << state.toStdString();
    }

    QQuickItem *listOf(const char *label) {
        return found(window()->contentItem(), [label](const QQuickItem *item) {
            return item->inherits("QQuickColumn") && item->property("currentKey").isValid() &&
                   item->property("label").toString() == QLatin1String(label);
        });
    }

    /// The focus is to be seen on the item whose name for the reader begins so.
    void expectRingOn(const QString &name) {
        QQuickItem *item = found(window()->contentItem(), [&](const QQuickItem *one) {
            QAccessibleInterface *face = QAccessible::queryAccessibleInterface(const_cast<QQuickItem *>(one));
            return one->activeFocusOnTab() && face && face->text(QAccessible::Name).startsWith(name);
        });
        ASSERT_NE(item, nullptr) << name.toStdString();
        item->forceActiveFocus(Qt::TabFocusReason);
        EXPECT_TRUE(layout::settle(window()->contentItem()));
        const QQuickItem *ring =
            found(item, [](const QQuickItem *one) { return one->objectName() == u"focusRing"; });
        ASSERT_NE(ring, nullptr) << name.toStdString();
        EXPECT_NE(ring->property("item").value<QQuickItem *>(), nullptr) << name.toStdString();
    }

    /// The first that is shown and is so.
    template<class Is> static QQuickItem *found(QQuickItem *from, const Is &is) {
        if (!from->isVisible() || is(from))
            return from->isVisible() ? from : nullptr;
        for (QQuickItem *child : from->childItems())
            if (QQuickItem *item = found(child, is))
                return item;
        return nullptr;
    }

private:
    static void collect(QQuickItem *from, std::vector<QQuickItem *> &all) {
        if (!from->isVisible())
            return;
        if (from->property("opensList").toBool() ||
            from->property("spokenName").toString().contains(QLatin1String("opens a list")))
            all.push_back(from);
        for (QQuickItem *child : from->childItems())
            collect(child, all);
    }
};

TEST_P(ScreenStates, holdATestThatRuns) {
    openPage("markertest");
    act("new");
    expectNoFaults("markertest-laid-out");
    act("begin");
    EXPECT_NE(page()->trialWords(), "");
    expectNoFaults("markertest-running");
}

TEST_P(ScreenStates, holdAPlanItsWeightsAndItsPapers) {
    openPage("plan");
    act("make");
    ASSERT_FALSE(page()->rows()->rows().empty());
    expectNoFaults("plan-made");
    page()->moved(page()->rows()->rows().back().key);
    expectNoFaults("plan-last-row");
    act("weights");
    expectNoFaults("plan-weights");
    openPage("papers");
    act("make");
    expectNoFaults("papers-made");
    expectRingOn("Picture of the paper");
}

TEST_P(ScreenStates, holdPhotographsAListAndSettingsOfUpkeep) {
    QImage image(800, 600, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    const QTemporaryDir folder;
    ASSERT_TRUE(image.save(folder.filePath("shelf.png")));
    openPage("photos");
    page()->edit("words", "Tins in two rows, labels to the front");
    page()->edit("file", folder.filePath("shelf.png"));
    page()->act("add");
    ASSERT_EQ(page()->rows()->rows().size(), 1U);
    EXPECT_TRUE(layout::settle(window()->contentItem()));
    QTest::qWait(300); // the picture is read beside
    expectNoFaults("photos-one");
    expectRingOn("Photograph. ");
    openPage("upkeep");
    act("settings");
    expectNoFaults("upkeep-settings");
    openPage("goals");
    act("new");
    expectNoFaults("goals-new");
    openPage("contents");
    act("list");
    page()->edit("list", "larder:\n2 rice, oil glass\nxyzzy plugh 12 34");
    expectNoFaults("contents-list");
}

TEST_P(ScreenStates, holdEveryListThatOpens) {
    std::size_t lists = 0;
    for (const char *name :
         {"client", "sight", "reading", "legible", "touch", "markertest", "markerkit", "reach", "kitchen",
          "appliances", "contents", "photos", "goals", "papers", "upkeep", "settings"}) {
        openPage(QString::fromLatin1(name));
        EXPECT_TRUE(layout::settle(window()->contentItem()));
        const auto all = openers();
        for (std::size_t i = 0; i < all.size(); ++i, ++lists) {
            ASSERT_TRUE(QMetaObject::invokeMethod(all[i], "clicked"));
            expectNoFaultsOpen(QStringLiteral("%1-open-%2").arg(QString::fromLatin1(name)).arg(i));
        }
    }
    EXPECT_GE(lists, 8U);
}

TEST_P(ScreenStates, holdEveryDialogOfTheWindow) {
    openPage("contents");
    for (const char *command : {"help", "allKeys", "messages", "goTo", "menu"}) {
        ASSERT_TRUE(QMetaObject::invokeMethod(window(), "act", Q_ARG(QString, QString::fromLatin1(command))));
        EXPECT_TRUE(layout::settle(window()->contentItem()));
        ASSERT_NE(opened(), nullptr) << command;
        const auto *scroll = opened()->property("contentItem").value<QQuickItem *>();
        const QQuickItem *focused = window()->activeFocusItem();
        ASSERT_NE(scroll, nullptr);
        if (focused != nullptr && scroll->isAncestorOf(focused)) {
            const double top = scroll->property("contentY").toDouble();
            const double bottom = focused->mapToItem(scroll, {0, focused->height()}).y() + top;
            EXPECT_TRUE(top == 0 || bottom + 20 >= scroll->height()) << command << ": its heading is cut off";
        }
        expectNoFaultsOpen(QString::fromLatin1(command));
    }
}

// An answer by mouse opens a note below it: the next question stays where the hand found it, wherever it can.
TEST_P(ScreenStates, keepTheNextQuestionWhereItIs) {
    ASSERT_TRUE(m_shell.session().addClient(QStringLiteral("Wilma Oatfield"), QStringLiteral("W1")));
    openPage("safety");
    EXPECT_TRUE(layout::settle(window()->contentItem()));
    const auto question = [this](const char *words) {
        return found(window()->contentItem(), [words](const QQuickItem *item) {
            return item->inherits("QQuickText") && item->property("text").toString() == QLatin1String(words);
        });
    };
    QQuickItem *next = question("Is a phone within reach in the kitchen?");
    ASSERT_NE(next, nullptr);
    QQuickItem *answer = found(question("Is the way out clear?")->parentItem(), [](const QQuickItem *item) {
        return item->property("spokenName").toString() == QLatin1String("No");
    });
    ASSERT_NE(answer, nullptr);
    const double before = next->mapToScene({0, 0}).y();
    ASSERT_TRUE(QMetaObject::invokeMethod(answer, "pointed"));
    ASSERT_TRUE(QMetaObject::invokeMethod(answer, "picked"));
    EXPECT_TRUE(layout::settle(window()->contentItem()));
    QTest::qWait(200);
    ASSERT_NE(question("Note: Is the way out clear?"), nullptr);
    EXPECT_NEAR(next->mapToScene({0, 0}).y(), before, 1);
}

TEST_P(ScreenStates, holdTheStepsInPlaceOfThePage) {
    openPage("sight");
    window()->setProperty("stepsOpen", true);
    expectNoFaults("steps");
    m_shell.setTextScale(4);
    window()->setProperty("stepsOpen", true);
    m_shell.setTextScale(1);
    EXPECT_FALSE(window()->property("stepsOpen").toBool()) << "they stand beside the page again";
}

// What gets a date stands further up in the list by date; what is done next is done to the same food.
TEST_P(ScreenStates, keepTheFoodInHandWhereItsRowMoves) {
    openPage("upkeep");
    EXPECT_TRUE(layout::settle(window()->contentItem()));
    QQuickItem *list = listOf("Food by date");
    ASSERT_NE(list, nullptr);
    const QString food = page()->rows()->rows().back().key;
    ASSERT_TRUE(QMetaObject::invokeMethod(list, "focusKey", Q_ARG(QString, food)));
    EXPECT_TRUE(layout::settle(window()->contentItem()));
    emit page()->focusHeading(); // or on a button: the list has lost the focus
    EXPECT_TRUE(layout::settle(window()->contentItem()));
    page()->edit("printed", "1 January 2020");
    EXPECT_TRUE(layout::settle(window()->contentItem()));
    ASSERT_NE(page()->rows()->rows().back().key, food);
    EXPECT_EQ(list->property("currentKey").toString(), food);
    EXPECT_EQ(page()->rows()->keyAt(list->property("currentIndex").toInt()), food);
    const auto before = m_shell.session().record().things;
    act("newPack");
    QStringList changed;
    for (std::size_t i = 0; i < before.size(); ++i)
        if (!(m_shell.session().record().things[i] == before[i]))
            changed << QString::fromStdString(before[i].id.text);
    EXPECT_EQ(changed, QStringList(food));
}

// The last row of a list far down: why it stands there is in sight with it.
TEST_P(ScreenStates, keepWhyInSightOfItsRow) {
    openPage("plan");
    act("make");
    EXPECT_TRUE(layout::settle(window()->contentItem()));
    QQuickItem *list = listOf("Things and their places");
    ASSERT_NE(list, nullptr);
    window()->requestActivate();
    const int last = static_cast<int>(page()->rows()->rows().size()) - 1;
    ASSERT_TRUE(QMetaObject::invokeMethod(list, "focusRow", Q_ARG(int, last)));
    QTest::qWait(200); // the pane follows a moment later
    EXPECT_TRUE(layout::settle(window()->contentItem()));
    const QString question = QStringLiteral("Why: %1").arg(page()->rows()->rows().back().title);
    const QQuickItem *why = found(window()->contentItem(), [&](const QQuickItem *item) {
        return item->inherits("QQuickText") && item->property("text").toString() == question;
    });
    ASSERT_NE(why, nullptr) << question.toStdString();
    const double top = why->mapToScene({0, 0}).y();
    EXPECT_GE(top, 0);
    EXPECT_LT(top, window()->height());
}

INSTANTIATE_TEST_SUITE_P(TextSizes, ScreenStates, testing::Values(1, 2, 4));

QString temporaryStore() {
    static const QTemporaryDir folder;
    static int number = 0;
    return folder.filePath(QStringLiteral("store%1").arg(++number));
}

/// The first page, before there are records and when they are locked.
class EntryStates : public RealScreens {
protected:
    EntryStates() : RealScreens(temporaryStore().toStdString()) {}
    app::EntryViewModel *entry() {
        return m_shell.property("pageProperties").toMap().value("entry").value<app::EntryViewModel *>();
    }
};

TEST_P(EntryStates, holdMakingUnlockingAndTheRecoveryCode) {
    ASSERT_EQ(entry()->stage(), "setup");
    expectNoFaults("entry");
    entry()->create("Quilla", "short", "short");
    EXPECT_NE(entry()->error(), "");
    expectNoFaults("entry-refused");
    const QString passphrase = QStringLiteral("five pomelo syrup lanterns hum");
    entry()->create("Quilla", passphrase, passphrase);
    ASSERT_TRUE(QTest::qWaitFor([this] { return entry()->stage() == "code"; }, 20'000));
    expectNoFaults("entry-code");
    const QString code = entry()->groups().join(QLatin1Char(' '));
    for (const char *wayOut : {"beforeSettings", "caseload", "entry"}) {
        m_shell.goTo(QStringLiteral("settings"));
        ASSERT_EQ(m_shell.page(), "settings");
        m_shell.goTo(QString::fromLatin1(wayOut));
        ASSERT_EQ(m_shell.page(), "entry") << wayOut;
        EXPECT_EQ(entry()->groups().join(QLatin1Char(' ')), code) << "it is shown only now";
    }
    QSignalSpy opened(&m_shell, &app::ShellViewModel::pageOpened);
    entry()->confirm(entry()->groups().at(entry()->askedGroup() - 1));
    ASSERT_TRUE(opened.count() > 0 || opened.wait(5000));
    expectNoFaults("caseload-empty");
    m_shell.lock();
    ASSERT_EQ(entry()->stage(), "unlock");
    expectNoFaults("entry-unlock");
    entry()->unlock("wrong");
    ASSERT_TRUE(QTest::qWaitFor([this] { return !entry()->error().isEmpty(); }, 20'000));
    expectNoFaults("entry-wrong");
}

INSTANTIATE_TEST_SUITE_P(TextSizes, EntryStates, testing::Values(1, 2, 4));

} // namespace
