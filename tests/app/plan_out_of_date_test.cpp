#include "app/page_image_provider.h"
#include "app/pages/plan_page.h"
#include "app/viewmodels/app_shell.h"
#include <QCoreApplication>
#include <QEvent>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <gmock/gmock.h>

namespace app {
namespace {

using ::testing::HasSubstr;

constexpr int longEnough = 120'000; // ms

/// Nora of the practice caseload with a hasty plan.
class PlanOutOfDate : public ::testing::Test {
protected:
    void SetUp() override {
        shell.openPracticeAtStart();
        const auto clients = shell.session().caseload();
        for (const auto &client : *clients)
            if (client.name.starts_with("Nora"))
                shell.goTo("open:" + text(client.id.text));
        ASSERT_TRUE(shell.session().hasClient());
        change([&](model::Case &r) {
            model::SolveOptions hasty;
            hasty.moves = 100'000;
            hasty.seeds = 1;
            r.plan = model::makePlan(r, shell.session().findings(), hasty, shell.session().today()).value();
        });
        ASSERT_FALSE(shell.session().record().plan->lines.empty());
    }
    void TearDown() override { QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); }
    void change(const Session::Change &how) { ASSERT_TRUE(shell.session().edit("a change", "test", how)); }
    Step step() {
        const auto &steps = shell.steps()->rows();
        return *std::ranges::find(steps, QString("plan"), &Step::key);
    }
    PageViewModel &page() {
        return *shell.property("pageProperties").toMap().value("vm").value<PageViewModel *>();
    }
    PageImageProvider pictures;
    AppShell shell{{}, model::KeyCost::cheapest(), pictures};
};

TEST_F(PlanOutOfDate, isToldInTheStepsAndOnThePage) {
    EXPECT_EQ(step().state, "worked out");
    EXPECT_TRUE(step().done);
    change([](model::Case &r) { r.things.front().usesPerWeek = 20; });
    EXPECT_EQ(step().state, "out of date");
    EXPECT_FALSE(step().done);
    shell.goTo("plan");
    EXPECT_TRUE(page().kicker().startsWith(
        "Out of date: 1 thing changed since it was worked out. Bring the plan up to date."))
        << page().kicker().toStdString();
    shell.undo();
    EXPECT_EQ(step().state, "worked out") << "it is as it was";
    EXPECT_FALSE(page().kicker().contains("Out of date"));
}

TEST_F(PlanOutOfDate, isOverWhenItIsWorkedOutAgainEvenIfNothingMoves) {
    change([](model::Case &r) { r.household.children = model::Answer::NotAsked; });
    ASSERT_EQ(step().state, "out of date");
    shell.goTo("plan");
    page().act("revise");
    ASSERT_TRUE(QTest::qWaitFor([&] { return shell.busyWith().isEmpty(); }, longEnough));
    EXPECT_EQ(step().state, "worked out") << page().kicker().toStdString();
    EXPECT_FALSE(page().kicker().contains("Out of date"));
    page().act("stopLooking");
    while (shell.session().record().household.children == model::Answer::NotAsked)
        shell.undo();
    ASSERT_TRUE(shell.session().record().plan);
    EXPECT_EQ(step().state, "worked out");
}

TEST_F(PlanOutOfDate, whatWasShortBeforeTheChangeIsToldAsOfThen) {
    change([](model::Case &r) {
        model::Plan none;
        none.id = model::newId();
        none.shortages.push_back({"room", {}, {}, {}, {}, "Rice can stand nowhere."});
        r.plan = none;
    });
    EXPECT_EQ(step().state, "none possible");
    shell.goTo("plan");
    const auto shortage = [&] { return page().findings()->rows().front(); };
    EXPECT_EQ(shortage().answer, "Rice can stand nowhere.");
    change([](model::Case &r) { r.things.pop_back(); });
    EXPECT_EQ(shortage().answer, "Before the last changes: Rice can stand nowhere.");
    EXPECT_NE(shortage().kind, "error");
    EXPECT_THAT(page().kicker().toStdString(), HasSubstr("Work out the plan again."));
    EXPECT_EQ(step().state, "out of date");
}

TEST_F(PlanOutOfDate, isToldAboveThePapers) {
    const auto told = [&] {
        shell.goTo("papers");
        const auto &rows = page().findings()->rows();
        return std::ranges::count(rows, QString("planBefore"), &FindingRow::key);
    };
    EXPECT_EQ(told(), 0);
    change([](model::Case &r) { r.things.front().usesPerWeek = 20; });
    EXPECT_EQ(told(), 1);
}

// The next start knows it as well.
TEST(PlanOutOfDateInRecords, isKnownWhenTheRecordsAreOpenedAgain) {
    const QTemporaryDir folder;
    const std::string store = folder.filePath("store").toStdString();
    const std::string secret = "five words that stand together";
    model::Id client;
    {
        Session session;
        session.openStore(
            std::move(model::Store::create(store, secret, "Ada", model::KeyCost::cheapest())->store), "Ada");
        ASSERT_TRUE(session.addClient("Invented Person", "K7"));
        client = session.record().client.id;
        ASSERT_TRUE(session.edit("plan", "test", [](model::Case &r) {
            r.plan.emplace().id = model::newId();
            r.plan->shortages.push_back({"room", {}, {}, {}, {}, "No place."});
        }));
        EXPECT_TRUE(session.planChangedSince().empty());
        ASSERT_TRUE(
            session.edit("pets", "test", [](model::Case &r) { r.household.pets = model::Answer::Yes; }));
    }
    Session session;
    session.openStore(std::move(*model::Store::open(store, secret, "Ada", model::KeyCost::cheapest())),
                      "Ada");
    ASSERT_TRUE(session.openClient(client));
    EXPECT_THAT(session.planChangedSince(), ::testing::ElementsAre("household changed"));
}

} // namespace
} // namespace app
