#include "demo_case.h"
#include "reports/kitchen_figure.h"
#include <algorithm>
#include <gmock/gmock.h>

using namespace model;
using namespace reports;
using ::testing::HasSubstr;
using ::testing::Not;

namespace {

Unit unit(int order, UnitKind kind, std::optional<double> width, const std::string &name) {
    Unit one;
    one.id = newId();
    one.order = order;
    one.name = name;
    one.kind = kind;
    if (width)
        one.width = Length{{*width}, "", Basis::Measured};
    return one;
}

Place place(const Unit &unit, double heightCm) {
    Place one;
    one.id = newId();
    one.unit = unit.id;
    one.height = Length{{heightCm}, "", Basis::Measured};
    return one;
}

bool overlap(const Figure::Box &a, const Figure::Box &b) {
    constexpr double touch = 1e-9;
    return a.x + a.width > b.x + touch && b.x + b.width > a.x + touch && a.y + a.height > b.y + touch &&
           b.y + b.height > a.y + touch;
}

} // namespace

class KitchenFigure : public ::testing::TestWithParam<std::string> {};
INSTANTIATE_TEST_SUITE_P(Demo, KitchenFigure, ::testing::Values("nora", "idris", "tilda"),
                         [](const auto &of) { return of.param; });

TEST_P(KitchenFigure, drawsEveryUnitApartAndInside) {
    const Case record = demo::byName(GetParam()).value();
    const Figure figure = kitchenFigure(record);
    std::vector<Figure::Box> outlines;
    for (const Figure::Box &box : figure.boxes) {
        EXPECT_GE(box.x, 0);
        EXPECT_GE(box.y, 0);
        EXPECT_LE(box.x + box.width, figure.width + 1e-9);
        EXPECT_LE(box.y + box.height, figure.height + 1e-9);
        if (box.thick)
            outlines.push_back(box);
    }
    EXPECT_EQ(outlines.size(), record.units.size());
    for (std::size_t i = 0; i < outlines.size(); ++i)
        for (std::size_t j = i + 1; j < outlines.size(); ++j)
            EXPECT_FALSE(overlap(outlines[i], outlines[j])) << i << " and " << j;
    EXPECT_LE(figure.width, 159.2); // A4 less two margins of one inch
}

TEST_P(KitchenFigure, saysEveryUnitInWords) {
    const Case record = demo::byName(GetParam()).value();
    const Figure figure = kitchenFigure(record);
    for (std::size_t i = 0; i < record.units.size(); ++i)
        EXPECT_THAT(figure.words, HasSubstr(std::to_string(i + 1) + ", " + record.units[i].name));
}

TEST(KitchenFigure, drawsWidthsToScale) {
    Case record = newCase("", "K1");
    record.units = {unit(0, UnitKind::BaseCupboard, 40, "a"), unit(1, UnitKind::BaseCupboard, 80, "b")};
    const Figure figure = kitchenFigure(record);
    ASSERT_EQ(figure.boxes.size(), 2u);
    EXPECT_DOUBLE_EQ(figure.boxes[1].width, 2 * figure.boxes[0].width);
    EXPECT_DOUBLE_EQ(figure.boxes[1].x, figure.boxes[0].width);
    EXPECT_THAT(figure.words, HasSubstr("Widths are drawn to scale"));
}

TEST(KitchenFigure, drawsAFreezerUnderItsFridge) {
    Case record = newCase("", "K1");
    record.units = {unit(0, UnitKind::Fridge, 60, "fridge"), unit(1, UnitKind::Freezer, 60, "freezer")};
    record.places = {place(record.units[0], 100), place(record.units[1], 30)};
    const Figure figure = kitchenFigure(record);
    ASSERT_EQ(figure.boxes.size(), 2u);
    EXPECT_DOUBLE_EQ(figure.boxes[0].x, figure.boxes[1].x);
    EXPECT_DOUBLE_EQ(figure.boxes[0].y + figure.boxes[0].height, figure.boxes[1].y);
}

TEST(KitchenFigure, saysWhatWasNotMeasured) {
    Case record = newCase("", "K1");
    record.units = {unit(0, UnitKind::Larder, {}, "larder")};
    EXPECT_THAT(kitchenFigure(record).words, HasSubstr("not measured"));
}

TEST(KitchenFigure, beginsANewStripWhenTheWallIsLong) {
    Case record = newCase("", "K1");
    for (int i = 0; i < 12; ++i)
        record.units.push_back(unit(i, UnitKind::BaseCupboard, 100, "cupboard"));
    const Figure figure = kitchenFigure(record);
    EXPECT_LE(figure.width, 159.2);
    EXPECT_GT(figure.boxes.back().y, figure.boxes.front().y);
}

TEST(KitchenFigure, isEmptyWithoutUnits) {
    EXPECT_TRUE(kitchenFigure(newCase("", "K1")).boxes.empty());
}

// The drawing from above.

class FloorFigure : public ::testing::TestWithParam<std::string> {};
INSTANTIATE_TEST_SUITE_P(Demo, FloorFigure, ::testing::Values("nora", "idris", "tilda"),
                         [](const auto &of) { return of.param; });

namespace {

/// Every box inside the drawing and none over another.
void expectApartAndInside(const Figure &figure) {
    for (std::size_t i = 0; i < figure.boxes.size(); ++i) {
        const auto &box = figure.boxes[i];
        EXPECT_GE(box.x, -1e-9);
        EXPECT_GE(box.y, -1e-9);
        EXPECT_LE(box.x + box.width, figure.width + 1e-9);
        EXPECT_LE(box.y + box.height, figure.height + 1e-9);
        for (std::size_t j = i + 1; j < figure.boxes.size(); ++j)
            EXPECT_FALSE(overlap(box, figure.boxes[j])) << i << " and " << j;
    }
    EXPECT_LE(figure.width, 159.2); // A4 less two margins of one inch
}

/// A kitchen whose walls hold these many cupboards each.
Case onWalls(const std::vector<int> &cupboards) {
    Case record = newCase("", "K1");
    for (const int here : cupboards)
        for (int i = 0; i < here; ++i) {
            record.units.push_back(unit(static_cast<int>(record.units.size()), UnitKind::BaseCupboard, 60,
                                        "cupboard " + std::to_string(record.units.size() + 1)));
            record.units.back().corner = i == 0 && record.units.size() > 1;
        }
    return record;
}

const Figure::Box &boxOf(const Figure &figure, const Unit &unit) {
    return *std::find_if(figure.boxes.begin(), figure.boxes.end(),
                         [&](const auto &box) { return box.of == unit.id.text; });
}

} // namespace

TEST_P(FloorFigure, drawsEveryUnitApartAndSaysIt) {
    const Case record = demo::byName(GetParam()).value();
    const Figure figure = floorFigure(record);
    expectApartAndInside(figure);
    for (const Unit &unit : record.units)
        EXPECT_THAT(figure.words, HasSubstr(unit.name));
    EXPECT_THAT(figure.words, HasSubstr("Corner."));
}

TEST(FloorFigure, goesClockwiseRoundTheRoom) {
    const Case record = onWalls({2, 3, 2, 1});
    const Figure figure = floorFigure(record);
    expectApartAndInside(figure);
    const auto &left = boxOf(figure, record.units[0]), &far = boxOf(figure, record.units[2]),
               &right = boxOf(figure, record.units[5]), &door = boxOf(figure, record.units[7]);
    EXPECT_LT(boxOf(figure, record.units[1]).y, left.y);  // away from the door
    EXPECT_GT(boxOf(figure, record.units[3]).x, far.x);   // to the right
    EXPECT_GT(boxOf(figure, record.units[6]).y, right.y); // and back
    EXPECT_LT(left.x, right.x);
    EXPECT_LT(far.y, left.y);
    EXPECT_GT(door.y, far.y);
}

TEST(FloorFigure, keepsWallsOfAnyLengthApart) {
    for (int first = 1; first < 6; ++first)
        for (int second = 1; second < 6; ++second)
            for (int third = 1; third < 6; ++third)
                expectApartAndInside(floorFigure(onWalls({first, second, third})));
}

TEST(FloorFigure, saysThatNoCornerIsRecorded) {
    const Figure figure = floorFigure(onWalls({3}));
    expectApartAndInside(figure);
    EXPECT_THAT(figure.words, HasSubstr("No corner is recorded"));
}

TEST(FloorFigure, namesTheUnitsOfAFifthWallInWords) {
    const Case record = onWalls({1, 1, 1, 1, 1});
    const Figure figure = floorFigure(record);
    EXPECT_THAT(figure.words, HasSubstr("Wall 5: 5, cupboard 5"));
    EXPECT_THAT(figure.words, HasSubstr("first four walls"));
}

// One unit.

TEST(UnitFigure, drawsShelvesAtTheirHeightsToScale) {
    Case record = newCase("", "K1");
    record.units = {unit(0, UnitKind::Larder, 60, "larder")};
    record.places = {place(record.units[0], 120), place(record.units[0], 60)};
    for (auto &one : record.places) {
        one.width = Length{{56}, "", Basis::Measured};
        one.depth = Length{{40}, "", Basis::Measured};
        one.clear = Length{{30}, "", Basis::Measured};
    }
    record.places[0].name = "top shelf";
    record.places[1].order = 1;
    const Figure figure = unitFigure(record, record.units[0].id);
    ASSERT_EQ(figure.boxes.size(), 3u);
    const auto &outline = figure.boxes[0], &top = figure.boxes[1], &low = figure.boxes[2];
    EXPECT_NEAR(top.width / outline.width, 56.0 / 60, 1e-9);
    EXPECT_NEAR((low.y - top.y) / top.height, 60.0 / 30, 1e-9);
    EXPECT_THAT(figure.words, HasSubstr("1, top shelf: 56 wide, 30 high, 40 deep, 120 above the floor"));
    EXPECT_THAT(figure.words, Not(HasSubstr("usual")));
    record.places[0].depth.reset();
    EXPECT_THAT(unitFigure(record, record.units[0].id).words, HasSubstr("usual size"));
}

TEST(UnitFigure, saysWhichPlacesCannotBothBeAsMeasured) {
    Case record = newCase("", "K1");
    record.units = {unit(0, UnitKind::Larder, 60, "larder")};
    record.places = {place(record.units[0], 70), place(record.units[0], 40)};
    record.places[1].order = 1;
    for (auto &one : record.places)
        one.clear = Length{{25}, "", Basis::Measured};
    EXPECT_THAT(unitFigure(record, record.units[0].id).words, Not(HasSubstr("overlap")));
    record.places[1].clear = Length{{31}, "", Basis::Measured};
    EXPECT_THAT(unitFigure(record, record.units[0].id).words,
                HasSubstr("By these sizes 1 and 2 overlap: check their heights."));
}

TEST(UnitFigure, drawsAUnitWithoutPlacesAndNoneThatIsNotThere) {
    Case record = newCase("", "K1");
    record.units = {unit(0, UnitKind::Larder, {}, "larder")};
    EXPECT_EQ(unitFigure(record, record.units[0].id).boxes.size(), 1u);
    EXPECT_TRUE(unitFigure(record, newId()).boxes.empty());
}
