#include "model/better_plan.h"
#include "model/demo.h"
#include "model/evaluate.h"
#include <algorithm>
#include <gmock/gmock.h>

namespace {

using namespace model;

constexpr Date on{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

SolveOptions little() {
    SolveOptions options;
    options.moves = 100'000;
    options.seeds = 2;
    return options;
}

/// Planned around a pin that is then taken back, so that the plan is dearer than it has to be.
Case dearer() {
    static const Case made = [] {
        Case record = demo::nora();
        const Findings findings = findingsOf(record, on);
        record.plan = makePlan(record, findings, little(), on).value();
        double most = 0;
        Plan worst;
        for (const Thing &thing : record.things)
            for (const Place &place : record.places) {
                Case pinned = record;
                pinned.overrules = {{newId(), thing.id, place.id, false, "", on}};
                const auto price = priceOf(record, findings, thing.id, place.id);
                if (!price || *price <= most)
                    continue;
                most = *price;
                worst = revisePlan(pinned, findings, revisionOptions(), on).value();
            }
        record.plan = worst;
        return record;
    }();
    return made;
}

TEST(BetterPlan, isOfferedWithWhatItSavesAndNothingIsChanged) {
    const Case record = dearer();
    const Case before = record;
    const Findings findings = findingsOf(record, on);
    const auto found = betterPlan(record, findings, little(), on);
    ASSERT_TRUE(found.has_value());
    ASSERT_TRUE(found->has_value());
    const BetterPlan &offer = **found;
    EXPECT_EQ(record, before);
    EXPECT_GE(offer.minutesLess, 0.1);
    const auto built = planProblem(record, findings).value();
    const auto shown = shownPlacement(built, *record.plan).value();
    const auto offered = shownPlacement(built, offer.plan).value();
    EXPECT_TRUE(brokenRules(built.problem, offered).empty());
    EXPECT_NEAR(offer.minutesLess * 1000,
                static_cast<double>(evaluate(built.problem, shown).total() -
                                    evaluate(built.problem, offered).total()),
                0.5);
    int moved = 0;
    for (std::size_t i = 0; i < built.things.size(); ++i)
        moved += shown.place[i] != offered.place[i] ? 1 : 0;
    EXPECT_EQ(offer.moved, moved);
}

TEST(BetterPlan, isNotOfferedForTheBestThatThisBudgetFinds) {
    Case record = demo::nora();
    const Findings findings = findingsOf(record, on);
    record.plan = makePlan(record, findings, little(), on).value();
    const auto found = betterPlan(record, findings, little(), on);
    ASSERT_TRUE(found.has_value());
    EXPECT_FALSE(found->has_value());
}

TEST(BetterPlan, needsAPlanThatHoldsAllThings) {
    Case record = demo::nora();
    const Findings findings = findingsOf(record, on);
    EXPECT_EQ(betterPlan(record, findings, little(), on).error().code, ErrorCode::Missing);
    record.plan = makePlan(record, findings, little(), on).value();
    record.plan->lines.pop_back();
    EXPECT_EQ(betterPlan(record, findings, little(), on).error().code, ErrorCode::Missing);
}

TEST(BetterPlan, canBeStopped) {
    const Case record = dearer();
    SolveOptions options = behindOptions();
    options.stop = [] { return true; };
    const auto found = betterPlan(record, findingsOf(record, on), options, on);
    EXPECT_TRUE(!found || !*found || (*found)->minutesLess > 0); // comes back at once, with what it has
}

TEST(BetterPlan, isOfferedInWords) {
    BetterPlan offer;
    offer.minutesLess = 6;
    offer.moved = 23;
    EXPECT_EQ(offerInWords(offer), "A plan 6.0 minutes a week better exists; it moves 23 things.");
    offer.marked = 1;
    EXPECT_EQ(offerInWords(offer),
              "A plan 6.0 minutes a week better exists; it moves 23 things and marks otherwise 1 thing.");
}

} // namespace
