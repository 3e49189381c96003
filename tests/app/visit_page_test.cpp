#include "app/page_image_provider.h"
#include "app/viewmodels/app_shell.h"
#include <QCoreApplication>
#include <QEvent>
#include <algorithm>
#include <gmock/gmock.h>

namespace app {
namespace {

/// The practice caseload; Nora has one visit behind her.
class VisitOfPractice : public ::testing::Test {
protected:
    void SetUp() override { shell.openPracticeAtStart(); }
    // Pages that were left go with the next events, while what they show is still there.
    void TearDown() override { QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); }
    void open(const std::string &name) {
        const auto clients = shell.session().caseload();
        for (const auto &client : *clients)
            if (client.name.find(name) != std::string::npos)
                shell.goTo("open:" + text(client.id.text));
        ASSERT_TRUE(shell.session().hasClient());
    }
    PageViewModel &page() {
        return *shell.property("pageProperties").toMap().value("vm").value<PageViewModel *>();
    }
    QStringList menu(const QString &typed) {
        shell.findCommands(typed, shell.property("pageProperties").toMap().contains("vm") ? page().commands()
                                                                                          : QStringList());
        QStringList titles;
        for (const auto &row : shell.destinations()->rows())
            titles << row.title;
        return titles;
    }
    PageImageProvider pictures;
    AppShell shell{{}, model::KeyCost::cheapest(), pictures};
};

TEST_F(VisitOfPractice, isOfferedOnlyWhereItCanBeStarted) {
    EXPECT_EQ(menu("visit").filter("Start").size(), 0) << "no client is open";
    shell.startVisit();
    EXPECT_EQ(shell.message(), "Open a client first.");
    open("Nora");
    for (const char *name : {"client", "sight", "contents", "plan", "followup"}) {
        shell.goTo(QLatin1String(name));
        EXPECT_EQ(menu("visit").filter("Start a visit").size(), 1) << name;
        EXPECT_EQ(menu("close").size(), 0) << name;
    }
    EXPECT_EQ(shell.visitAction(), "") << "the page has a button of that name";
    shell.goTo("sight");
    EXPECT_EQ(shell.visitAction(), "Start a visit");
}

TEST_F(VisitOfPractice, isStartedAndClosedFromEveryPage) {
    open("Nora");
    shell.goTo("sight");
    shell.startVisit();
    ASSERT_NE(shell.session().visit(), nullptr);
    EXPECT_EQ(shell.message(), "Visit 2 started.");
    EXPECT_EQ(shell.page(), "followup");
    shell.goTo("contents");
    EXPECT_EQ(shell.visitAction(), "Close visit 2");
    EXPECT_EQ(menu("start a visit").size(), 0) << "one is under way";
    EXPECT_EQ(menu("close").filter("isit").size(), 1);
    shell.startVisit();
    EXPECT_EQ(shell.message(), "Visit 2 is under way.");
    EXPECT_EQ(shell.session().record().visits.size(), 2U);
    shell.goTo("papers");
    shell.closeVisit();
    EXPECT_EQ(shell.message(), "Visit 2 closed.");
    EXPECT_EQ(shell.page(), "papers");
    shell.closeVisit();
    EXPECT_EQ(shell.message(), "No visit is under way.");
    shell.undo();
    EXPECT_NE(shell.session().visit(), nullptr);
}

TEST_F(VisitOfPractice, isClosedOnTheClientPageToo) {
    open("Nora");
    page().act("startVisit");
    shell.goTo("client");
    const auto &rows = page().actions()->rows();
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].title, "Go on with visit 2");
    EXPECT_EQ(rows[1].title, "Close visit 2");
    EXPECT_EQ(menu("close").size(), 1) << "the button, not its key once more";
    page().act("closeVisit");
    EXPECT_EQ(shell.session().visit(), nullptr);
}

TEST_F(VisitOfPractice, isStartedToTheClientInHandOnTheCaseload) {
    page().command("startVisit");
    EXPECT_EQ(shell.message(), "Choose a client first.");
    page().moved(page().rows()->rows().front().key);
    EXPECT_EQ(menu("start a visit").size(), 1);
    page().command("startVisit");
    ASSERT_TRUE(shell.session().hasClient());
    EXPECT_NE(shell.session().visit(), nullptr);
}

TEST_F(VisitOfPractice, menuOffersOnlyWhatCanBeDoneHere) {
    open("Nora");
    EXPECT_EQ(menu("why this").size(), 0);
    shell.goTo("plan");
    EXPECT_EQ(menu("why this").size(), 1);
    EXPECT_EQ(menu("partner's page").size(), 0);
    shell.togglePartner();
    EXPECT_EQ(menu("partner's page").size(), 2);
}

TEST_F(VisitOfPractice, settingsAreFoundInTheMenu) {
    open("Nora");
    ASSERT_THAT(menu("setting"), ::testing::ElementsAre("Settings"));
    shell.goTo(shell.destinations()->rows().front().key);
    EXPECT_EQ(shell.page(), "settings");
    EXPECT_EQ(menu("setting").filter("Settings").size(), 0);
}

TEST_F(VisitOfPractice, isFoundByItsName) {
    open("Nora");
    shell.findDestinations("start a vis");
    ASSERT_EQ(shell.destinations()->rows().size(), 1U) << "the button of the page";
    EXPECT_EQ(shell.destinations()->rows().front().key, "act:startVisit");
    shell.goTo("sight");
    shell.findDestinations("start a vis");
    ASSERT_EQ(shell.destinations()->rows().size(), 1U);
    EXPECT_EQ(shell.destinations()->rows().front().key, "command:startVisit");
}

} // namespace
} // namespace app
