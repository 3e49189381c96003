#include "demo_case.h"
#include "reports/kitchen_figure.h"
#include <gmock/gmock.h>

using namespace model;
using namespace reports;
using ::testing::HasSubstr;

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
