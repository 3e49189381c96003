#include "model/demo.h"
#include "model/planning.h"
#include <algorithm>
#include <gmock/gmock.h>

namespace {

using namespace model;

constexpr Date on{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

/// Twelve tins 7.5 cm deep: four behind one another in 30 cm, so three columns.
TEST(PlanProblem, packsAlikeStandBehindOneAnother) {
    Case record = demo::idris();
    auto &tins = *std::find_if(record.things.begin(), record.things.end(),
                               [](const Thing &thing) { return thing.name == "chopped tomatoes"; });
    tins.count = 12;
    const auto built = planProblem(record, findingsOf(record, on));
    const auto i = std::find(built->things.begin(), built->things.end(), tins.id) - built->things.begin();
    EXPECT_DOUBLE_EQ(built->problem.items[i].runCm, 22.5);
    EXPECT_DOUBLE_EQ(built->problem.items[i].widthCm, 7.5);
}

TEST(PlanProblem, whatWasNotMeasuredTakesUsualOrCautiousValues) {
    Case record = demo::nora();
    for (auto &place : record.places)
        place.width = place.depth = place.clear = place.height = std::nullopt;
    for (auto &place : record.places)
        place.light = Light::NotAsked;
    for (auto &unit : record.units) {
        unit.width.reset();
        unit.lockable = Answer::NotAsked;
    }
    record.things[0].weight.reset();
    const auto built = planProblem(record, findingsOf(record, on));
    ASSERT_TRUE(built.has_value());
    for (const auto &place : built->problem.places) {
        EXPECT_FALSE(place.lit) << place.name;
        EXPECT_GT(place.widthCm, 30) << place.name;
        EXPECT_TRUE(place.counter || place.clearCm > 15) << place.name;
        EXPECT_EQ(place.secure, place.heightCm >= 110) << place.name; // the child's reach, no lock known
    }
    EXPECT_GT(built->problem.items[0].weightKg, 0.4); // 7.5 x 7.5 x 11 cm, as if of water
}

TEST(PlanProblem, positionsFollowTheWalk) {
    const Case record = demo::nora(); // larder 50, then worktop 90 over drawers 60 and sink 60, fridge 55
    const auto built = planProblem(record, findingsOf(record, on));
    const auto &places = built->problem.places;
    EXPECT_DOUBLE_EQ(places[0].x, 0.25);                // larder
    EXPECT_DOUBLE_EQ(places[3].x, 0.50 + 0.45);         // worktop behind it
    EXPECT_DOUBLE_EQ(places[4].x, 0.50 + 0.30);         // wall cupboard above the worktop
    EXPECT_DOUBLE_EQ(places[6].x, 0.50 + 0.30);         // drawers below it
    EXPECT_DOUBLE_EQ(places[8].x, 0.50 + 1.20 + 0.275); // the fridge ends drawers and sink
    EXPECT_EQ(places[0].bay, places[1].bay);
    EXPECT_NE(places[4].bay, places[6].bay);
}

} // namespace
