#include "model/contents.h"
#include "model/packs.h"
#include <algorithm>
#include <gmock/gmock.h>

namespace {

using namespace model;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

/// Lines as they are typed in a kitchen; names, kinds and contents of foods, medicines and cleaners are
/// common practice.
ContentsItem one(const std::string &line, std::size_t at = 0) {
    const auto items = parseContents(line);
    EXPECT_TRUE(items && items->size() > at) << line;
    return items->at(at);
}

bool hasFact(const Thing &thing, const std::string &key, AllergenState state, bool usual) {
    return std::any_of(thing.allergens.begin(), thing.allergens.end(), [&](const AllergenFact &fact) {
        return fact.allergen == key && fact.state == state &&
               thing.usual.contains("allergen:" + key) == usual;
    });
}

struct Named {
    const char *line, *name, *match;
};
class ContentsTyped : public testing::TestWithParam<Named> {};

TEST_P(ContentsTyped, keepsTheWordsOfItsName) {
    const auto item = one(GetParam().line);
    EXPECT_EQ(item.thing.name, GetParam().name);
    EXPECT_EQ(item.matched, GetParam().match);
}

INSTANTIATE_TEST_SUITE_P(
    Names, ContentsTyped,
    testing::Values(
        Named{"peanut oil", "peanut oil", "peanut-oil"}, Named{"walnut oil", "walnut oil", "walnut-oil"},
        Named{"Yorkshire pudding mix", "Yorkshire pudding mix", "pancake-mix"},
        Named{"egg fried rice", "egg fried rice", "rice"},
        Named{"non-stick frying pan", "non-stick frying pan", "frying-pan"},
        Named{"non stick pan", "non stick pan", "medium-saucepan"},
        Named{"non-stick wok", "non-stick wok", "wok"}, Named{"rice noodles", "rice noodles", "rice-noodles"},
        Named{"sugar bowl", "sugar bowl", "sugar-bowl"},
        Named{"my late husband's mug", "my late husband's mug", "mugs"}, Named{"my tea", "tea", "tea"},
        Named{"heavy-duty foil", "heavy-duty foil", ""},
        Named{"heavy-duty kitchen foil", "heavy-duty kitchen foil", "kitchen-foil"},
        Named{"two-tier steamer", "two-tier steamer", "steamer"}, Named{"sugar-free", "sugar-free", ""},
        Named{"free range eggs", "free range eggs", "eggs"}, Named{"tray of 30 eggs", "eggs", "eggs"},
        Named{"9 in cake tin", "cake tin", "cake-tin"},
        Named{"half fat creme fraiche", "half fat creme fraiche", "creme-fraiche"},
        Named{"egg whisk", "egg whisk", "whisk"}, Named{"flour in big tin", "flour", "flour"},
        Named{"30 x 20 cm baking tray", "baking tray", "baking-tray"},
        Named{"cashew milk", "cashew milk", "almond-milk"},
        Named{"cotton buds", "cotton buds", "cotton-buds"}, Named{"milk, use by tomorrow", "milk", "milk"},
        Named{"tuna in olive oil", "tuna in olive oil", "tuna"},
        Named{"sardines in tomato sauce", "sardines in tomato sauce", "sardines"}));

struct Denied {
    const char *line, *key, *claim;
};
class ContentsDenied : public testing::TestWithParam<Denied> {};

TEST_P(ContentsDenied, isAClaimAndNeverTheOpposite) {
    const auto item = one(GetParam().line);
    EXPECT_THAT(item.facts, Contains(std::string("claim ") + GetParam().claim));
    EXPECT_THAT(item.facts, Not(Contains(std::string(GetParam().key))));
    EXPECT_FALSE(hasFact(item.thing, GetParam().key, AllergenState::Contains, false))
        << "as if she had said so";
    EXPECT_FALSE(hasFact(item.thing, GetParam().key, AllergenState::ReadNoneListed, false)) << "no proof";
}

INSTANTIATE_TEST_SUITE_P(
    Claims, ContentsDenied,
    testing::Values(
        Denied{"non-dairy spread", "milk", "dairy-free"}, Denied{"non dairy creamer", "milk", "dairy-free"},
        Denied{"dairy-free spread", "milk", "dairy-free"}, Denied{"milk free biscuits", "milk", "milk-free"},
        Denied{"non-gluten bread", "gluten", "gluten-free"},
        Denied{"gluten-free crackers", "gluten", "gluten-free"}, Denied{"no nuts muesli", "nuts", "nut-free"},
        Denied{"muesli no nuts", "nuts", "nut-free"}, Denied{"muesli without nuts", "nuts", "nut-free"},
        Denied{"nut free muesli", "nuts", "nut-free"}, Denied{"egg-free mayonnaise", "eggs", "egg-free"},
        Denied{"muesli does not contain nuts", "nuts", "nut-free"},
        Denied{"muesli contains no nuts", "nuts", "nut-free"},
        Denied{"free from gluten crackers", "gluten", "gluten-free"},
        Denied{"vegan mayonnaise", "eggs", "vegan"}, Denied{"mayonnaise (vegan)", "eggs", "vegan"}));

struct Warned {
    const char *line, *key;
};
class ContentsWarned : public testing::TestWithParam<Warned> {};

TEST_P(ContentsWarned, hasTheAllergenOfItsName) {
    const auto &thing = one(GetParam().line).thing;
    EXPECT_TRUE(std::any_of(thing.allergens.begin(), thing.allergens.end(), [](const AllergenFact &fact) {
        return fact.allergen == GetParam().key &&
               (fact.state == AllergenState::Contains || fact.state == AllergenState::MayContain);
    }));
}

INSTANTIATE_TEST_SUITE_P(
    Allergens, ContentsWarned,
    testing::Values(Warned{"peanut oil", "peanuts"}, Warned{"groundnut oil", "peanuts"},
                    Warned{"walnut oil", "nuts"}, Warned{"almond oil", "nuts"},
                    Warned{"sesame oil", "sesame"}, Warned{"hazelnut spread", "nuts"},
                    Warned{"peanut sauce", "peanuts"}, Warned{"satay sauce", "peanuts"},
                    Warned{"crab paste", "crustaceans"}, Warned{"oyster sauce", "molluscs"},
                    Warned{"Yorkshire pudding mix", "gluten"}, Warned{"Yorkshire pudding mix", "eggs"},
                    Warned{"egg fried rice", "eggs"}, Warned{"quiche", "eggs"},
                    Warned{"walnut blorp", "nuts"}, Warned{"pistachio gelato", "nuts"},
                    Warned{"prawn blorp sauce", "crustaceans"}, Warned{"apple cheesecake blorp", "milk"}));

TEST(ContentsTypedAllergens, areUsualUntilThePackIsRead) {
    EXPECT_TRUE(hasFact(one("walnut blorp").thing, "nuts", AllergenState::Contains, true));
    EXPECT_TRUE(one("coconut milk").thing.allergens.empty()) << "no milk of a cow";
    EXPECT_TRUE(one("egg cups").thing.allergens.empty());
    EXPECT_TRUE(one("egg whisk").thing.allergens.empty());
}

struct Amount {
    const char *line;
    std::optional<int> count;
    int packs;
};
class ContentsPieces : public testing::TestWithParam<Amount> {};

TEST_P(ContentsPieces, areNotPacks) {
    const auto item = one(GetParam().line);
    EXPECT_EQ(item.thing.count, GetParam().count);
    EXPECT_EQ(packsOf(item.thing), GetParam().packs);
    EXPECT_EQ(item.doubt, "");
}

INSTANTIATE_TEST_SUITE_P(Packs, ContentsPieces,
                         testing::Values(Amount{"tea bags 80", 80, 1}, Amount{"80 tea bags", 80, 1},
                                         Amount{"tea bags box of 80", {}, 1},
                                         Amount{"a box of 80 tea bags", 1, 1},
                                         Amount{"box 80 tea bags", {}, 1}, Amount{"80 bags of tea", 80, 1},
                                         Amount{"2 boxes of 80 tea bags", 2, 2}, Amount{"2 tea bags", 2, 2},
                                         Amount{"160 tea bags", 160, 2}, // two boxes, or one as large as two
                                         Amount{"40 dishwasher tablets", 40, 1},
                                         Amount{"8 stock cubes", 8, 1}, Amount{"20 bin bags", 20, 1},
                                         Amount{"240 matches", 240, 1}, Amount{"300 sweeteners", 300, 1},
                                         Amount{"28 tablets", 28, 1}, Amount{"box of 6 eggs", {}, 1},
                                         Amount{"4 chopped tomatoes", 4, 4}));

struct Measured {
    const char *line, *name, *size;
    double width;
};
class ContentsLength : public testing::TestWithParam<Measured> {};

TEST_P(ContentsLength, isASizeAndNoCount) {
    const auto item = one(GetParam().line);
    EXPECT_EQ(item.thing.name, GetParam().name);
    EXPECT_EQ(item.size, GetParam().size);
    EXPECT_EQ(item.thing.count, std::nullopt);
    EXPECT_NEAR(item.thing.width->value.value, GetParam().width, 0.1);
}

// 1 inch is 2.54 cm (International yard and pound agreement, 1959).
INSTANTIATE_TEST_SUITE_P(Lengths, ContentsLength,
                         testing::Values(Measured{"12\" pan", "pan", "12 inch", 30.48},
                                         Measured{"20cm pan", "pan", "20 cm", 20},
                                         Measured{"10in frying pan", "frying pan", "10 inch", 25.4},
                                         Measured{"20 cm frying pan", "frying pan", "20 cm", 20}));

TEST(ContentsTypedAmounts, ofSeveralPacksOrThingsAreParted) {
    const auto packs = parseContents("1 tin 2 jars coconut milk");
    ASSERT_EQ(packs->size(), 2U);
    EXPECT_EQ(packs->at(0).thing.count, 1);
    EXPECT_EQ(packs->at(1).thing.shape, Shape::Jar);
    const auto each = parseContents("two tins each of peas and carrots");
    ASSERT_EQ(each->size(), 2U);
    EXPECT_EQ(each->at(0).thing.name, "peas");
    EXPECT_EQ(each->at(1).thing.count, 2);
    const auto two = one("2 pasta and 3 tuna");
    EXPECT_EQ(two.doubt, "pasta and tuna: one thing, or two?");
    const auto settled = parseContents(two.answers.front().line);
    ASSERT_EQ(settled->size(), 2U);
    EXPECT_EQ(settled->at(0).thing.count, 2);
    EXPECT_EQ(settled->at(1).thing.count, 3);
}

TEST(ContentsTypedClaims, ofWhatItIsNotAreNotMade) {
    EXPECT_EQ(one("not vegan sausages").claim, "");
    EXPECT_EQ(one("non-vegan cheese").claim, "");
}

TEST(ContentsTypedAmounts, aMinusIsTold) {
    EXPECT_EQ(one("-3 beans").doubt, "-3 of them?");
    EXPECT_EQ(one("-3 beans").answers.front().words, "3");
}

TEST(ContentsTypedDates, areNotesAndNoCounts) {
    for (const auto &[line, note] :
         {std::pair{"use by 3 dec milk", "use by 3 dec"},
          std::pair{"milk opened in March", "opened in March"},
          std::pair{"milk best before 12/3/26", "best before 12/3/26"},
          std::pair{"milk use by the end of next week", "use by the end of next week"}}) {
        const auto item = one(line);
        EXPECT_EQ(item.thing.name, "milk") << line;
        EXPECT_EQ(item.thing.note, note);
        EXPECT_EQ(item.thing.count, std::nullopt) << line;
        EXPECT_EQ(item.doubt, "") << line;
    }
    const auto dated = parseContents("milk, use by tomorrow");
    ASSERT_EQ(dated->size(), 1U) << "a date alone belongs to the thing before";
    EXPECT_EQ(dated->front().thing.note, "use by tomorrow");
    EXPECT_EQ(one("30 x 20 cm baking tray").thing.note, "30 x 20 cm");
    EXPECT_EQ(one("30 x 20 cm baking tray").thing.count, std::nullopt);
    EXPECT_EQ(one("rice opened may contain nuts").thing.note, "open");
}

TEST(ContentsTypedDoubts, askWhatItIsFirst) {
    EXPECT_EQ(one("2 l bottles of coke").doubt, "coke: cake?");
    EXPECT_EQ(one("pitta").doubt, "pitta: pitta bread?");
    EXPECT_EQ(one("porridge").doubt, "porridge: porridge oats?");
    EXPECT_EQ(one("crab blorp paste").doubt, "shape and size?") << "no pasta";
    EXPECT_THAT(one("apple pie filling mix").doubt, HasSubstr("?"));
}

TEST(ContentsTypedMedicines, areAskedOrKnown) {
    for (const char *line : {"insulin", "warfarin", "antihistamine", "antihistamine tablets", "inhaler",
                             "painkillers", "blood thinner", "adrenaline pen"})
        EXPECT_TRUE(one(line).thing.medicine) << line;
    for (const char *line :
         {"epipen", "ramipril", "steroid cream", "amoxicillin", "eye ointment", "nicotine patches"}) {
        const auto item = one(line);
        EXPECT_THAT(item.doubt, HasSubstr("is it a medicine?")) << line;
        for (std::size_t i = 0; i + 1 < item.answers.size(); ++i)
            EXPECT_TRUE(one(item.answers[i].line).thing.medicine) << item.answers[i].line;
        const auto no = one(item.answers.back().line);
        EXPECT_FALSE(no.thing.medicine) << line;
        EXPECT_THAT(no.doubt, Not(HasSubstr("medicine")));
    }
}

TEST(ContentsTypedPoisons, areAskedOrKnown) {
    for (const char *line : {"antifreeze", "weedkiller", "drain unblocker", "paint thinner",
                             "methylated spirits", "rat poison", "bleach", "nail varnish remover"}) {
        EXPECT_TRUE(one(line).thing.hazard) << line;
        EXPECT_EQ(one(line).thing.klass, Klass::Chemical) << line;
    }
    const auto item = one("wasp killer");
    EXPECT_THAT(item.doubt, HasSubstr("poison"));
    EXPECT_TRUE(one(item.answers.front().line).thing.hazard);
    EXPECT_EQ(one(item.answers.front().line).thing.klass, Klass::Chemical);
}

} // namespace
