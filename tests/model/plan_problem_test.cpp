#include "model/demo.h"
#include "model/planning.h"
#include <algorithm>
#include <cmath>
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
    Case record = demo::nora(); // larder 50, then worktop 90 over drawers 60 and sink 60, fridge 55
    for (Unit &unit : record.units)
        unit.corner = false;
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

/// Straight geometry: a square corner 0.6 m deep lies between the walls; the walk turns to the right.
TEST(PlanProblem, aCornerTurnsTheWalkToTheRight) {
    Case record = demo::nora();
    for (Unit &unit : record.units)
        unit.corner = unit.kind == UnitKind::Fridge;
    const auto built = planProblem(record, findingsOf(record, on));
    const auto &fridge = built->problem.places[8];
    EXPECT_DOUBLE_EQ(fridge.x, 0.50 + 1.20 + 0.60);
    EXPECT_DOUBLE_EQ(fridge.y, 0.275);
    EXPECT_DOUBLE_EQ(fridge.runX, 0);
    EXPECT_DOUBLE_EQ(fridge.runY, 1);
    EXPECT_DOUBLE_EQ(built->problem.places[6].y, 0) << "the drawers stay on the first wall";
}

/// 3 m, corner, 0 m, corner, 3 m: what faces across the room is nearer than along the walls.
TEST(PlanProblem, oppositeWallsAreAsFarApartAsTheRoomIsWide) {
    Case record;
    const auto add = [&](double width, bool corner, WorkArea area) {
        Unit unit;
        unit.id = newId();
        unit.name = "unit";
        unit.kind = UnitKind::BaseCupboard;
        unit.order = static_cast<int>(record.units.size());
        unit.width = Length{{width}, "", Basis::Measured};
        unit.corner = corner;
        unit.area = area;
        Place shelf;
        shelf.id = newId();
        shelf.unit = unit.id;
        shelf.name = "shelf";
        record.places.push_back(shelf);
        record.units.push_back(unit);
    };
    add(100, false, WorkArea::None);
    add(300, true, WorkArea::None);
    add(100, true, WorkArea::Hob);
    Thing salt;
    salt.id = newId();
    salt.name = "salt";
    salt.area = WorkArea::Hob;
    salt.width = salt.depth = salt.height = Length{{8}, "", Basis::Measured};
    record.things.push_back(salt);
    const auto built = planProblem(record, findingsOf(record, on));
    ASSERT_TRUE(built.has_value()) << built.error().sentence;
    const auto &places = built->problem.places;
    const auto &item = built->problem.items.front();
    const double across = std::hypot(places[0].x - item.areaX, places[0].y - item.areaY);
    EXPECT_NEAR(across, std::hypot(0.6, 3.6), 1e-9) << "along the walls it is 4.7 m";
}

} // namespace
