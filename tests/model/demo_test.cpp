#include "model/demo.h"
#include "model/planning.h"
#include <gmock/gmock.h>
#include <map>
#include <set>

namespace {

using namespace model;

std::vector<Id> idsOf(const Case &record) {
    std::vector<Id> ids{record.client.id, record.safety.id, record.household.id, record.diet.id};
    const auto add = [&](const auto &list) {
        for (const auto &part : list)
            ids.push_back(part.id);
    };
    add(record.units);
    add(record.places);
    add(record.things);
    add(record.measurements);
    add(record.goals);
    add(record.ratings);
    add(record.visits);
    return ids;
}

TEST(Demo, isThreeInventedClientsOfDifferentNeeds) {
    const auto all = demo::all();
    ASSERT_EQ(all.size(), 3U);
    std::set<Id> ids;
    for (const auto &record : all) {
        EXPECT_TRUE(record.client.invented);
        EXPECT_FALSE(record.client.whomToAsk.empty());
        EXPECT_FALSE(record.plan.has_value());
        for (const auto &id : idsOf(record))
            EXPECT_TRUE(ids.insert(id).second) << id.text;
    }
}

TEST(Demo, kitchensHoldTwentyFiveEightyAndFortyThings) {
    EXPECT_EQ(demo::nora().things.size(), 25U);
    EXPECT_EQ(demo::idris().things.size(), 80U);
    EXPECT_EQ(demo::idris().places.size(), 16U);
    EXPECT_EQ(demo::tilda().things.size(), 40U);
}

TEST(Demo, isTheSameEveryTime) {
    EXPECT_EQ(demo::idris(), demo::idris());
    EXPECT_EQ(demo::nora().things.at(6).id.text, "demo-nora-thing-07");
}

TEST(Demo, isFoundByShortName) {
    EXPECT_EQ(demo::byName("Tilda")->client.id, demo::tilda().client.id);
    EXPECT_FALSE(demo::byName("nobody").has_value());
}

TEST(Demo, readersDiffer) {
    EXPECT_GE(demo::nora().client.media.printSize->value, 24);
    EXPECT_LE(demo::nora().client.media.printSize->value, 28);
    EXPECT_EQ(demo::nora().safety.answer(SafetyQuestion::ReducedProtectiveFeeling), Answer::Yes);
    EXPECT_EQ(demo::idris().client.media.braille, BrailleGrade::Contracted);
    EXPECT_EQ(demo::idris().safety.answer(SafetyQuestion::Implant), Answer::Yes);
    EXPECT_EQ(demo::idris().safety.answer(SafetyQuestion::LatexAllergy), Answer::NotAsked);
    EXPECT_EQ(demo::tilda().visits.size(), 4U);
}

TEST(Demo, thingsStandInPlacesThatAreThereAndMeasured) {
    for (const auto &record : demo::all()) {
        std::map<Id, double> room;
        for (const auto &place : record.places) {
            ASSERT_TRUE(place.width && place.depth && place.height) << place.id.text;
            EXPECT_GT(place.width->value.value, 20) << place.id.text;
            EXPECT_LT(place.width->value.value, 150) << place.id.text;
            room[place.id] = place.width->value.value;
        }
        for (const auto &thing : record.things) {
            ASSERT_TRUE(thing.place && room.contains(*thing.place)) << thing.name;
            EXPECT_LT(thing.width->value.value, 40) << thing.name;
        }
    }
}

TEST(Demo, allMeasurementsAreUnderstood) {
    for (const auto &record : demo::all()) {
        for (const auto &result : record.measurements) {
            const bool tested = result.notTestedBecause.empty();
            EXPECT_TRUE(!tested || readBack(result).has_value())
                << record.client.name << ": " << result.typed;
        }
    }
}

} // namespace
