#include "model/demo.h"
#include "model/plan_basis.h"
#include <gmock/gmock.h>

namespace {

using namespace model;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

/// The invented Nora with a plan of one line a thing; what the plan says does not matter here.
Case planned() {
    Case record = demo::nora();
    Plan plan;
    plan.id = newId();
    for (const Thing &thing : record.things)
        plan.lines.push_back({.thing = thing.id,
                              .place = record.places.front().id,
                              .order = 0,
                              .marker = {},
                              .meanings = {},
                              .labelText = {}});
    record.plan = plan;
    return record;
}

TEST(PlanBasis, tellsNothingWhileNothingChanged) {
    const Case record = planned();
    EXPECT_THAT(changedSince(planBasis(record), record), IsEmpty());
    EXPECT_EQ(planBasis(record).plan, record.plan->id);
}

TEST(PlanBasis, countsUnitsPlacesAndThingsThatCameWentOrAreOtherwise) {
    const Case before = planned();
    const PlanBasis basis = planBasis(before);
    Case after = before;
    Unit unit;
    unit.id = newId();
    after.units.push_back(unit);
    after.places.front().drawer = !after.places.front().drawer;
    after.things.erase(after.things.begin(), after.things.begin() + 2);
    after.things.front().usesPerWeek = 20;
    EXPECT_THAT(changedSince(basis, after),
                ElementsAre("1 unit added", "1 place changed", "2 things removed", "1 thing changed"));
    after = before;
    std::swap(after.things.front(), after.things.back());
    EXPECT_THAT(changedSince(basis, after), IsEmpty()) << "their order is no fact";
}

TEST(PlanBasis, tellsAnswersAndResultsThatThePlanRestsOn) {
    const Case before = planned();
    Case after = before;
    after.safety.answers[SafetyQuestion::Falls].answer = Answer::Yes;
    after.household.children = Answer::NotAsked;
    after.measurements.pop_back();
    after.wishes.emplace().id = newId();
    EXPECT_THAT(changedSince(planBasis(before), after),
                ElementsAre("safety answers changed", "household changed", "test results changed",
                            "weights changed"));
}

// What only names the client, or is kept for upkeep, moves no thing.
TEST(PlanBasis, leavesOutWhatNoPlanRestsOn) {
    const Case before = planned();
    Case after = before;
    after.client.name = "Another Name";
    after.client.media.largePrint = !after.client.media.largePrint;
    after.household.whoShops = "A neighbour";
    after.diet.other = "low salt";
    after.things.front().opened = after.things.front().bought = Date{};
    after.things.front().note = "part used";
    after.goals.clear();
    after.visits.clear();
    EXPECT_THAT(changedSince(planBasis(before), after), IsEmpty());
}

TEST(PlanBasis, knowsTheAnswersOfTheOtherClientOfASharedKitchen) {
    const Case one = planned();
    Case other = demo::idris();
    const PlanBasis basis = planBasis(one, &other);
    EXPECT_THAT(changedSince(basis, one), IsEmpty());
    // Opened herself she has the same kitchen and answers of her own.
    other.units = one.units, other.places = one.places, other.things = one.things, other.kit = one.kit;
    other.overrules = one.overrules, other.wishes = one.wishes, other.plan = one.plan;
    EXPECT_THAT(changedSince(basis, other), IsEmpty());
    other.household.children = Answer::NotAsked;
    EXPECT_THAT(changedSince(basis, other), ElementsAre("household changed"));
    EXPECT_THAT(changedSince(planBasis(one), demo::tilda()), testing::Not(testing::Contains("diet changed")))
        << "nothing is known of her answers then";
}

TEST(PlanBasis, isReadAsItWasWritten) {
    const std::vector<PlanBasis> bases{planBasis(planned()), planBasis(demo::idris())};
    EXPECT_EQ(planBasesFrom(planBasesText(bases)), bases);
    for (const char *damaged :
         {"", "nothing", "{}", "[1]", R"([{"plan":"x"}])", R"([{"plan":1,"marks":{}}])"})
        EXPECT_THAT(planBasesFrom(damaged), IsEmpty()) << damaged;
}

TEST(PlanBasis, withoutOneThePlanItselfTellsWhatItDoesNotKnow) {
    Case record = planned();
    EXPECT_THAT(changedSince(*record.plan, record), IsEmpty());
    record.things.push_back(record.things.front());
    record.things.back().id = newId();
    record.things.erase(record.things.begin());
    EXPECT_THAT(changedSince(*record.plan, record), ElementsAre("1 thing added", "1 thing removed"));
    const auto lines = record.plan->lines.size();
    record.places.erase(record.places.begin());
    EXPECT_THAT(changedSince(*record.plan, record),
                testing::Contains("the places of " + std::to_string(lines) + " things removed"));
}

} // namespace
