#include "model/contents.h"
#include <algorithm>
#include <gmock/gmock.h>
#include <set>

namespace {

using namespace model;
using testing::HasSubstr;

ContentsItem one(const std::string &line, std::size_t at = 0) {
    const auto items = parseContents(line);
    EXPECT_TRUE(items.has_value()) << line;
    EXPECT_LT(at, items->size()) << line;
    return items->at(at);
}

std::optional<AllergenState> state(const Thing &thing, const std::string &key) {
    for (const auto &fact : thing.allergens) {
        if (fact.allergen == key)
            return fact.state;
    }
    return std::nullopt;
}

struct Row {
    std::string line;
    std::vector<std::string> names;
    std::vector<std::optional<int>> counts;
};
class ContentsLine : public testing::TestWithParam<Row> {};

TEST_P(ContentsLine, namesAndCountsAreUnderstood) {
    const auto items = parseContents(GetParam().line);
    ASSERT_TRUE(items.has_value());
    ASSERT_EQ(items->size(), GetParam().names.size());
    for (std::size_t i = 0; i < items->size(); ++i) {
        EXPECT_EQ(items->at(i).thing.name, GetParam().names[i]);
        EXPECT_EQ(items->at(i).thing.count, GetParam().counts[i]) << GetParam().names[i];
        EXPECT_EQ(items->at(i).doubt, "") << GetParam().names[i];
    }
}

// The grammar of the entry line is this program's own; the lines are its agreed examples (common practice).
INSTANTIATE_TEST_SUITE_P(
    Examples, ContentsLine,
    testing::Values(
        Row{"4 chopped tomatoes, 2 coconut milk; rice daily",
            {"chopped tomatoes", "coconut milk", "rice"},
            {4, 2, {}}},
        Row{"four chopped tomatoes comma two coconut milk semicolon rice daily",
            {"chopped tomatoes", "coconut milk", "rice"},
            {4, 2, {}}},
        Row{"two 400 gram tins of kidney beans", {"kidney beans"}, {2}},
        Row{"flour (gluten) 2", {"flour"}, {2}}, Row{"milk dairy, milk daily", {"milk", "milk"}, {{}, {}}},
        Row{"nut free muesli", {"muesli"}, {{}}},
        Row{"hot chocolate, 3 glass noodles", {"hot chocolate", "glass noodles"}, {{}, 3}},
        Row{"tea 3/week, three times a week coffee", {"tea", "coffee"}, {{}, {}}},
        Row{"1,5 l squash,2 peas", {"squash", "peas"}, {{}, 2}},
        Row{"Chickpeas x3\nrice 2\n\n", {"Chickpeas", "rice"}, {3, 2}},
        Row{"half a dozen eggs, a dozen mugs, an ice cream.", {"eggs", "mugs", "ice cream"}, {6, 12, 1}},
        Row{"3x tuna; flour (gluten, milk) x 2", {"tuna", "flour"}, {3, 2}},
        Row{"6 kidney bean, kidney beans 6", {"kidney bean", "kidney beans"}, {6, 6}},
        Row{"organic chopped tomatoes 2", {"organic chopped tomatoes"}, {2}}));

TEST(ContentsFrequency, isTakenAsUsesAWeek) {
    EXPECT_EQ(one("rice daily").thing.usesPerWeek, 7);
    EXPECT_EQ(one("weekly soup").thing.usesPerWeek, 1);
    EXPECT_DOUBLE_EQ(*one("icing sugar monthly").thing.usesPerWeek, 12.0 / 52);
    EXPECT_EQ(one("tea 3/week").thing.usesPerWeek, 3);
    EXPECT_EQ(one("three times a week coffee").thing.usesPerWeek, 3);
    EXPECT_EQ(one("coffee 2 per day").thing.usesPerWeek, 14);
    EXPECT_EQ(one("coffee twice a day").thing.usesPerWeek, 14);
    EXPECT_LT(*one("fish fingers rarely").thing.usesPerWeek, 12.0 / 52);
    EXPECT_FALSE(one("rice daily").thing.usual.contains("uses"));
    EXPECT_TRUE(one("rice").thing.usual.contains("uses"));
}

TEST(ContentsFrequency, dailyAndDairyAreNeverSwapped) {
    const auto dairy = one("oat milk dairy");
    EXPECT_EQ(state(dairy.thing, "milk"), AllergenState::Contains);
    EXPECT_TRUE(dairy.thing.usual.contains("uses"));
    const auto daily = one("oat milk daily");
    EXPECT_EQ(state(daily.thing, "milk"), std::nullopt);
    EXPECT_EQ(daily.thing.usesPerWeek, 7);
}

TEST(ContentsFacts, materialHeatAndWeightAreTaken) {
    const auto oil = one("olive oil glass daily");
    EXPECT_EQ(oil.matched, "olive-oil");
    EXPECT_EQ(oil.thing.surface, Surface::Glass);
    EXPECT_TRUE(oil.thing.glass);
    EXPECT_EQ(oil.thing.usesPerWeek, 7);
    EXPECT_TRUE(one("milk hot").thing.hotUse);
    EXPECT_FALSE(one("hot chocolate").thing.hotUse);
    EXPECT_FALSE(one("3 glass noodles").thing.glass);
    EXPECT_GE(one("rice heavy").thing.weight->value, 2.0);
}

TEST(ContentsFacts, sizeAndPackAreTaken) {
    const auto beans = one("two 400 gram tins of kidney beans");
    EXPECT_EQ(beans.size, "400 g");
    EXPECT_EQ(beans.thing.shape, Shape::Can);
    const auto squash = one("1,5 l squash");
    EXPECT_EQ(squash.size, "1.5 l");
    EXPECT_NEAR(squash.thing.weight->value, 1.65, 0.001); // 1.1 kg for 1 l, times 1.5
    EXPECT_NEAR(squash.thing.height->value.value, 28 * std::cbrt(1.5),
                0.06); // same form, 1.5 times the volume
    EXPECT_EQ(one("500g pasta").size, "500 g");
}

TEST(ContentsAllergens, aClaimNeverClears) {
    const auto muesli = one("nut free muesli");
    EXPECT_EQ(state(muesli.thing, "nuts"), AllergenState::Contains); // the catalogue's own warning stays
    EXPECT_EQ(muesli.claim, "nut free");
    const auto biscuits = one("milk free biscuits");
    EXPECT_NE(state(biscuits.thing, "milk"), AllergenState::ReadNoneListed);
    const auto rice = one("gluten free rice");
    EXPECT_EQ(state(rice.thing, "gluten"), AllergenState::NotChecked);
    EXPECT_EQ(state(one("may contain nuts rice").thing, "nuts"), AllergenState::MayContain);
}

TEST(ContentsDoubt, isAskedAndNothingIsSwappedInSilence) {
    EXPECT_EQ(one("for tuna, to sweetcorn").doubt, "for: 4 of them?");
    EXPECT_EQ(one("for tuna, to sweetcorn").thing.count, std::nullopt);
    EXPECT_EQ(one("for tuna, to sweetcorn", 1).doubt, "to: 2 of them?");
    EXPECT_EQ(one("2400 g tins chickpeas").doubt, "2400 g: 2 of 400 g, or one of 2400 g?");
    EXPECT_EQ(one("salt and pepper").doubt, "salt and pepper: one thing, or two?");
    EXPECT_EQ(one("flower").doubt, "flower: flour?");
    EXPECT_EQ(one("chickpaes, chickpes", 1).doubt, "chickpes: chickpeas?");
    EXPECT_EQ(one("ajvar 2").doubt, "shape and size?");
    EXPECT_EQ(one("ajvar 2").thing.name, "ajvar");
    EXPECT_EQ(one("ajvar 2").thing.count, 2);
    EXPECT_EQ(one("2 rice 3").doubt, "Two counts: 2 or 3?");
    EXPECT_EQ(one("rice (blorp)").doubt, "blorp: not understood. What is it?");
}

TEST(ContentsDoubt, anUnknownNameKeepsItsFacts) {
    const auto item = one("Grandma's relish (mustard) glass 3 weekly");
    EXPECT_EQ(item.thing.name, "Grandma's relish");
    EXPECT_EQ(item.thing.count, 3);
    EXPECT_EQ(item.thing.usesPerWeek, 1);
    EXPECT_EQ(item.thing.surface, Surface::Glass);
    EXPECT_EQ(state(item.thing, "mustard"), AllergenState::Contains);
    EXPECT_FALSE(item.thing.width.has_value());
}

TEST(ContentsError, anEmptyLineIsRefusedWithASentence) {
    for (const char *line : {"", "  ", ",;,", "\n"}) {
        const auto items = parseContents(line);
        ASSERT_FALSE(items.has_value());
        EXPECT_EQ(items.error().code, ErrorCode::NotUnderstood);
        EXPECT_THAT(items.error().sentence, HasSubstr("for example"));
    }
}

TEST(ContentsReadBack, saysWhatWasUnderstood) {
    EXPECT_EQ(readContentsBack(*parseContents("4 chopped tomatoes, rice daily")),
              "4 chopped tomatoes, usual tin 400 grams. Rice, daily, count not given.");
    EXPECT_EQ(readContentsBack(*parseContents("2 flour (milk)")),
              "2 flour, usual bag 1.5 kilograms, contains milk.");
    EXPECT_EQ(readContentsBack(*parseContents("3 ajvar")), "3 ajvar. shape and size?");
}

TEST(ContentsNoise, neverFailsOnAnyText) {
    unsigned state = 7;
    const std::string signs = "a1,;.()\"x/ \nof half glass daily 400g nut free ";
    for (int round = 0; round < 3000; ++round) {
        std::string line;
        for (int i = 0; i < 24; ++i) {
            state = state * 1664525U + 1013904223U;
            line += signs[(state >> 16) % signs.size()];
        }
        const auto items = parseContents(line);
        if (items) {
            for (const auto &item : *items)
                EXPECT_FALSE(item.thing.name.empty()) << line;
        }
    }
}

TEST(Catalogue, holdsCommonThingsWithUsualFactsOnly) {
    EXPECT_GE(catalogue().size(), 90U);
    std::set<std::string> ids;
    std::set<std::string> keys;
    for (const auto &name : allergens())
        keys.insert(name.key);
    for (const auto &entry : catalogue()) {
        EXPECT_TRUE(ids.insert(entry.id).second) << entry.id;
        EXPECT_EQ(findInCatalogue(entry.name), &entry) << entry.name;
        for (const auto &other : entry.others)
            EXPECT_EQ(findInCatalogue(other), &entry) << other;
        const Thing &thing = entry.usual;
        EXPECT_GT(thing.width->value.value, 0) << entry.name;
        EXPECT_EQ(thing.width->basis, Basis::Usual);
        EXPECT_GT(thing.weight->value, 0) << entry.name;
        EXPECT_TRUE(thing.usual.contains("width") && thing.usual.contains("uses") &&
                    thing.usual.contains("hazards"));
        for (const auto &fact : thing.allergens) {
            EXPECT_TRUE(keys.contains(fact.allergen)) << entry.name << " " << fact.allergen;
            EXPECT_NE(fact.state, AllergenState::ReadNoneListed) << entry.name;
        }
        EXPECT_FALSE(thing.klass == Klass::Chemical && thing.group != "cleaning") << entry.name;
    }
}

TEST(Catalogue, everyNameReadsBackToItself) {
    for (const auto &entry : catalogue()) {
        const auto items = parseContents(entry.name);
        ASSERT_TRUE(items.has_value());
        EXPECT_EQ(items->front().matched, entry.id);
        EXPECT_EQ(items->front().doubt, "") << entry.name;
        EXPECT_EQ(items->front().thing.count, std::nullopt) << entry.name;
    }
}

} // namespace
