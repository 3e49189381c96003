#include "model/demo.h"
#include "model/kitchen_line.h"
#include "model/usual_sizes.h"
#include <gmock/gmock.h>

namespace {

using namespace model;
using testing::HasSubstr;

TEST(UnitLine, isReadInTheOrderOfTheWalk) {
    const auto units = parseUnits(
        "larder by the door 50 cm 4 shelves, worktop; wall cupboard left of the cooker two shelves\n"
        "drawers under the worktop 3 drawers, cupboard under the sink, fridge, freezer 600 mm wide");
    ASSERT_TRUE(units) << units.error().sentence;
    ASSERT_EQ(units->units.size(), 7U);
    EXPECT_EQ(units->units.at(0).unit.name, "larder by the door");
    EXPECT_EQ(units->units.at(0).unit.kind, UnitKind::Larder);
    EXPECT_EQ(units->units.at(0).unit.area, WorkArea::Entry);
    EXPECT_EQ(units->units.at(0).unit.width->value.value, 50);
    EXPECT_EQ(units->units.at(0).places, 4);
    EXPECT_EQ(units->units.at(1).unit.kind, UnitKind::Worktop);
    EXPECT_EQ(units->units.at(2).unit.kind, UnitKind::WallCupboard);
    EXPECT_EQ(units->units.at(2).unit.area, WorkArea::Hob);
    EXPECT_EQ(units->units.at(2).places, 2);
    EXPECT_EQ(units->units.at(3).unit.kind, UnitKind::DrawerStack)
        << "what it stands under does not say what it is";
    EXPECT_EQ(units->units.at(4).unit.kind, UnitKind::BaseCupboard);
    EXPECT_EQ(units->units.at(5).unit.kind, UnitKind::Fridge);
    EXPECT_EQ(units->units.at(6).unit.width->value.value, 60);
}

TEST(UnitLine, whatIsInItDoesNotSayWhatItIs) {
    const auto units =
        parseUnits("freezer 3 drawers, fridge two shelves, base cupboard by the door 2 drawers, "
                   "3 drawers by the sink, worktop 1 shelf, trolley 3 drawers");
    ASSERT_TRUE(units) << units.error().sentence;
    ASSERT_EQ(units->units.size(), 6U);
    EXPECT_EQ(units->units.at(0).unit.kind, UnitKind::Freezer);
    EXPECT_EQ(units->units.at(0).places, 3);
    EXPECT_EQ(units->units.at(1).unit.kind, UnitKind::Fridge);
    EXPECT_EQ(units->units.at(2).unit.kind, UnitKind::BaseCupboard);
    EXPECT_EQ(units->units.at(3).unit.kind, UnitKind::DrawerStack) << "nothing else says it";
    EXPECT_EQ(units->units.at(4).unit.kind, UnitKind::Worktop);
    EXPECT_EQ(units->units.at(5).unit.kind, UnitKind::Rack);
}

TEST(UnitLine, turnsACorner) {
    const auto units = parseUnits("larder, then the corner; worktop, base cupboard in the corner, fridge");
    ASSERT_TRUE(units) << units.error().sentence;
    ASSERT_EQ(units->units.size(), 4U);
    EXPECT_FALSE(units->units.at(0).unit.corner);
    EXPECT_TRUE(units->units.at(1).unit.corner);
    EXPECT_FALSE(units->units.at(2).unit.corner) << "where it stands, no turn of the walk";
    EXPECT_FALSE(units->units.at(3).unit.corner);
    const auto open = parseUnits("larder, corner");
    EXPECT_EQ(open->units.size(), 1U);
    EXPECT_EQ(open->left, "corner");
    EXPECT_THAT(open->why, HasSubstr("Behind the corner"));
}

TEST(UnitLine, takesWhatItUnderstandsAndLeavesTheRest) {
    const auto read = parseUnits("larder by the door, corner, wibble; worktop, larder 40 shelves, fridge");
    ASSERT_TRUE(read);
    ASSERT_EQ(read->units.size(), 3U);
    EXPECT_FALSE(read->units[1].unit.corner) << "the corner belongs to what was not understood";
    EXPECT_EQ(read->left, "corner, wibble, larder 40 shelves");
    EXPECT_THAT(read->why, HasSubstr("No unit in it: wibble."));
    EXPECT_THAT(read->why, HasSubstr("Nor this: larder 40 shelves."));
    EXPECT_EQ(read->before, 1U) << "behind the larder by the door";
    EXPECT_EQ(parseUnits("larder, fridge")->left, "");
}

TEST(UnitLine, isRefusedWithASentence) {
    EXPECT_THAT(parseUnits("wibble by the door").error().sentence,
                HasSubstr("No unit in it: wibble by the door"));
    EXPECT_THAT(parseUnits("larder 40 shelves").error().sentence, HasSubstr("Possible: 1 to 12"));
    EXPECT_THAT(parseUnits("larder 900 cm").error().sentence, HasSubstr("from 5 to 500 cm"));
    EXPECT_THAT(parseUnits(" ; ").error().sentence, HasSubstr("for example"));
    EXPECT_FALSE(parseUnits(std::string(10'000, 'x')));
}

std::vector<std::string> names(const Case &record) {
    std::vector<std::string> out;
    for (const auto &unit : record.units)
        out.push_back(unit.name);
    return out;
}

TEST(KitchenWalk, isInsertedMovedAndCopied) {
    Case record = newCase("A", "B");
    const auto units = parseUnits("larder 2 shelves, fridge");
    for (const auto &said : units->units)
        addUnit(record, said.unit, said.places, {});
    addUnit(record, parseUnits("worktop")->units.front().unit, 1, record.units[1].id);
    EXPECT_THAT(names(record), testing::ElementsAre("larder", "worktop", "fridge"));
    EXPECT_TRUE(moveBy(record, record.units[2].id, -1));
    EXPECT_THAT(names(record), testing::ElementsAre("larder", "fridge", "worktop"));
    EXPECT_FALSE(moveBy(record, record.units[0].id, -1));
    const auto copy = copyUnit(record, record.units[0].id);
    ASSERT_TRUE(copy);
    EXPECT_EQ(record.units[1].id, *copy);
    EXPECT_EQ(std::ranges::count(record.places, *copy, &Place::unit), 2);
    for (std::size_t i = 0; i < record.units.size(); ++i)
        EXPECT_EQ(record.units[i].order, static_cast<int>(i));
}

TEST(KitchenWalk, aShelfIsSplitInTwo) {
    Case record = newCase("A", "B");
    addUnit(record, parseUnits("wall cupboard")->units.front().unit, 1, {});
    record.places[0].clear = Length{{40}, "40", Basis::Measured};
    record.places[0].height = Length{{120}, "120", Basis::Measured};
    const auto lower = splitPlace(record, record.places[0].id);
    ASSERT_TRUE(lower);
    ASSERT_EQ(record.places.size(), 2U);
    EXPECT_EQ(record.places[0].clear->value.value, 19);
    EXPECT_EQ(record.places[1].clear->value.value, 19);
    EXPECT_EQ(record.places[0].height->value.value, 141); // 120 + 19 + 2 of the board
    EXPECT_EQ(record.places[1].height->value.value, 120);
    EXPECT_EQ(record.places[1].clear->basis, Basis::Estimated) << "until it is measured";
    record.places[1].clear = Length{{9}, "9", Basis::Measured};
    EXPECT_FALSE(splitPlace(record, record.places[1].id)) << "too low for two";
}

TEST(UnitLine, metresTakeACommaOrAPoint) {
    const auto read =
        parseUnits("worktop by the sink 1,2 m, larder 0.6 metres 3 shelves, wall cupboard 1 metre");
    ASSERT_TRUE(read);
    ASSERT_EQ(read->units.size(), 3U);
    EXPECT_EQ(read->units[0].unit.name, "worktop by the sink");
    EXPECT_EQ(read->units[0].unit.width->value.value, 120);
    EXPECT_DOUBLE_EQ(read->units[1].unit.width->value.value, 60);
    EXPECT_EQ(read->units[2].unit.width->value.value, 100);
    EXPECT_EQ(read->left, "");
}

TEST(UnitLine, whereTheWalkBeginsIsNoPartOfAUnit) {
    for (const char *line : {"from the door: larder, worktop", "From the door, clockwise: larder, worktop",
                             "from the door clockwise, larder, worktop"}) {
        const auto read = parseUnits(line);
        ASSERT_TRUE(read) << line;
        ASSERT_EQ(read->units.size(), 2U) << line;
        EXPECT_EQ(read->units[0].unit.name, "larder") << line;
        EXPECT_EQ(read->left, "") << line;
    }
}

TEST(KitchenMap, isSaidFromTheDoorClockwise) {
    const auto map = mapInWords(demo::nora());
    EXPECT_EQ(map[0], "From the door, clockwise.");
    EXPECT_EQ(map[1], "1, larder by the door, 50 cm wide, 3 shelves.");
    EXPECT_EQ(map[2], "Corner. 2, worktop left of the cooker, 90 cm wide.");
    EXPECT_EQ(map[4], "4, drawers left of the cooker, 60 cm wide, 1 drawer.");
    EXPECT_EQ(map.size(), 7U);
    EXPECT_EQ(mapInWords(newCase("A", "B")).front(), "No unit yet.");
}

} // namespace
