#include "model/short_name.h"
#include <gmock/gmock.h>

namespace model {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

/// Things on shelves "a" and "b", as "shelf name".
Case kitchen(const std::vector<std::pair<std::string, Thing>> &things) {
    Case record = newCase("Invented Person", "Z9");
    for (const std::string shelf : {"a", "b"}) {
        Place place;
        place.id = {shelf};
        record.places.push_back(place);
    }
    Plan plan;
    for (const auto &[shelf, usual] : things) {
        Thing thing = usual;
        thing.id = {"thing-" + std::to_string(record.things.size())};
        record.things.push_back(thing);
        PlanLine line;
        line.thing = thing.id;
        line.place = {shelf};
        line.order = static_cast<int>(plan.lines.size());
        plan.lines.push_back(line);
    }
    record.plan = plan;
    return record;
}

Thing thing(const std::string &name, Shape shape = Shape::Can, const std::string &size = {}) {
    Thing made;
    made.name = name;
    made.shape = shape;
    made.packSize = size;
    return made;
}

std::vector<std::string> names(const Case &record) {
    std::vector<std::string> out;
    for (const ShortName &name : shortNames(record))
        out.push_back(name.name);
    return out;
}

TEST(ShortNames, areTheNamesWhereTheyDiffer) {
    EXPECT_THAT(names(kitchen({{"a", thing("rice")}, {"a", thing("tea")}})), ElementsAre("rice", "tea"));
}

TEST(ShortNames, mayBeTheSameOnTwoShelves) {
    EXPECT_THAT(names(kitchen({{"a", thing("rice")}, {"b", thing("rice")}})), ElementsAre("rice", "rice"));
}

TEST(ShortNames, addTheSizeElseTheShapeElseANumber) {
    EXPECT_THAT(
        names(kitchen({{"a", thing("tuna", Shape::Can, "80 g")}, {"a", thing("Tuna", Shape::Can, "400 g")}})),
        ElementsAre("tuna 80 g", "Tuna 400 g"));
    EXPECT_THAT(names(kitchen({{"a", thing("olives", Shape::Jar)}, {"a", thing("olives", Shape::Can)}})),
                ElementsAre("olives jar", "olives tin"));
    EXPECT_THAT(names(kitchen({{"a", thing("soup")}, {"a", thing("soup")}})),
                ElementsAre("soup 1", "soup 2"));
}

TEST(ShortNames, keepHerWordingAndTellIfItIsThereTwice) {
    Case record = kitchen({{"a", thing("kidney beans")}, {"a", thing("beans")}});
    Overrule wish;
    wish.thing = record.things[0].id;
    wish.wording = "beans";
    record.overrules = {wish};
    const auto made = shortNames(record);
    EXPECT_EQ(made[0].name, "beans");
    EXPECT_TRUE(made[0].hers);
    EXPECT_THAT(made[0].told, HasSubstr("Choose other words"));
    EXPECT_EQ(made[1].name, "beans 2");
}

TEST(ShorterNames, leaveOutWholeWordsFromTheFront) {
    EXPECT_THAT(shorterNames("organic tin of chopped tomatoes (Italy)"),
                ElementsAre("organic tin chopped tomatoes", "chopped tomatoes", "tomatoes"));
    EXPECT_THAT(shorterNames("bicarbonate"), IsEmpty());
    for (const std::string &shorter : shorterNames("washing-up liquid for delicate wool"))
        EXPECT_THAT(std::string(" washing-up liquid for delicate wool "), HasSubstr(shorter.substr(0, 4)));
}

/// The order of what a tag says: name, date, how to prepare, allergens [common practice].
TEST(TagText, saysNameDateDirectionsAndThenAllergens) {
    Thing soup = thing("tomato soup");
    soup.bestBefore = Date{std::chrono::year{2026}, std::chrono::month{12}, std::chrono::day{3}};
    soup.dateKind = DateKind::UseBy;
    soup.directions = "Heat until it boils.";
    soup.allergens = {{"celery", AllergenState::Contains, ""},
                      {"milk", AllergenState::MayContain, ""},
                      {"eggs", AllergenState::NotChecked, ""}};
    EXPECT_EQ(tagText(soup, soup.name),
              "Tomato soup. Use by 3 December 2026. To prepare: Heat until it boils. "
              "Contains celery. May contain milk. Not checked for eggs.");
}

TEST(TagText, neverClearsAnAllergen) {
    Thing oats = thing("oats");
    oats.allergens = {{"milk", AllergenState::ReadNoneListed, "sister"}};
    EXPECT_EQ(tagText(oats, oats.name), "Oats.");
}

} // namespace
} // namespace model
