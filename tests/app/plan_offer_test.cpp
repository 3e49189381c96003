#include "app/pages/plan_page.h"
#include "app/session.h"
#include <QSignalSpy>
#include <QTest>
#include <gmock/gmock.h>

namespace app {
namespace {

constexpr int longEnough = 120'000; // ms

/// A hasty plan: bringing it up to date keeps what it can, so that a whole plan is better.
class PlanOffer : public ::testing::Test {
protected:
    void SetUp() override {
        session.openPractice();
        const auto clients = session.caseload();
        for (const auto &client : *clients)
            if (client.name.starts_with("Idris")) {
                ASSERT_TRUE(session.openClient(client.id));
            }
        ASSERT_TRUE(session.edit("plan", "test", [&](model::Case &r) {
            model::SolveOptions hasty;
            hasty.moves = 100'000;
            hasty.seeds = 1;
            const auto findings = model::findingsOf(r, session.today());
            r.plan = model::makePlan(r, findings, hasty, session.today()).value();
        }));
        ASSERT_FALSE(session.record().plan->lines.empty());
        page.refresh();
    }
    bool has(const QString &action) {
        const auto &rows = page.actions()->rows();
        return std::ranges::find(rows, action, &ActionRow::key) != rows.end();
    }
    Session session;
    ShellViewModel shell;
    PlanPage page{session, shell};
};

TEST_F(PlanOffer, comesAfterAReplanAndChangesNothingByItself) {
    page.act("revise");
    ASSERT_TRUE(QTest::qWaitFor([&] { return has("stopLooking") || has("takeBetter"); }, longEnough));
    const model::Case shown = session.record();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !has("stopLooking"); }, longEnough));
    EXPECT_EQ(session.record(), shown);
    ASSERT_TRUE(has("takeBetter"));
    EXPECT_TRUE(page.kicker().contains("a week better exists"));
    EXPECT_FALSE(shell.message().contains("a week better exists")) << "what came of the last key stays";
    page.act("takeBetter");
    EXPECT_LT(session.record().plan->terms.total(), shown.plan->terms.total());
    EXPECT_FALSE(has("takeBetter"));
}

TEST_F(PlanOffer, isStopped) {
    page.act("revise");
    ASSERT_TRUE(QTest::qWaitFor([&] { return has("stopLooking") || has("takeBetter"); }, longEnough));
    page.act("stopLooking");
    EXPECT_FALSE(has("stopLooking") || has("takeBetter"));
    QTest::qWait(200);
    EXPECT_FALSE(has("takeBetter"));
}

TEST_F(PlanOffer, goesWhenTheRecordChanges) {
    page.act("revise");
    ASSERT_TRUE(QTest::qWaitFor([&] { return has("stopLooking") || has("takeBetter"); }, longEnough));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !has("stopLooking"); }, longEnough));
    ASSERT_TRUE(session.edit("more tea", "test", [](model::Case &r) { r.things.front().usesPerWeek = 20; }));
    EXPECT_FALSE(has("takeBetter"));
}

} // namespace
} // namespace app
