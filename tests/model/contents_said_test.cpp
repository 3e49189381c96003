#include "model/contents.h"
#include <gmock/gmock.h>

namespace {

using namespace model;

/// A line as it is said beside an open cupboard, and what its first thing is. `match` "": none.
struct Said {
    const char *line, *name;
    std::optional<int> count;
    const char *match, *doubt;
};

class ContentsSaid : public testing::TestWithParam<Said> {};

TEST_P(ContentsSaid, isUnderstoodOrAsked) {
    const auto items = parseContents(GetParam().line);
    ASSERT_TRUE(items);
    const ContentsItem &item = items->front();
    EXPECT_EQ(item.thing.name, GetParam().name);
    EXPECT_EQ(item.thing.count, GetParam().count);
    EXPECT_EQ(item.matched, GetParam().match);
    EXPECT_EQ(item.doubt, GetParam().doubt);
}

// Lines and readings are this program's own; how therapists speak of shelves is common practice.
INSTANTIATE_TEST_SUITE_P(
    AsSpoken, ContentsSaid,
    testing::Values(
        Said{"um two tins of tuna in brine", "tuna in brine", 2, "tuna", ""},
        Said{"there are about six tins of soup", "soup", 6, "soup", ""},
        Said{"half empty bottle of ketchup", "ketchup", {}, "ketchup", ""},
        Said{"an open jar of jam", "jam", 1, "jam", ""}, Said{"a few onions", "onions", {}, "onions", ""},
        Said{"tomatoes tinned chopped 400g 4", "tomatoes tinned chopped", 4, "chopped-tomatoes", ""},
        Said{"flour plain 1.5kg", "flour plain", {}, "flour", ""},
        Said{"beans (baked) x4", "baked beans", 4, "baked-beans", ""},
        Said{"stock cubes (chicken) 2 boxes", "chicken stock cubes", 2, "chicken-stock-cubes", ""},
        Said{"chick peas 400 g tin x 2 no salt", "chick peas no salt", 2, "chickpeas", ""},
        Said{"GF bread", "gluten free bread", {}, "gluten-free-bread", ""},
        Said{"twelve eggs free range", "eggs free range", 12, "eggs", ""},
        Said{"a hundred and sixty tea bags", "tea bags", 160, "tea", ""},
        Said{"bacon smoked 8 rashers", "bacon smoked", 8, "bacon", ""},
        Said{"dog biscuits 2kg bag", "dog biscuits", {}, "cat-biscuits", ""},
        Said{"insulin in the door of the fridge", "insulin", {}, "insulin", ""},
        Said{"tom pur", "tomato puree", {}, "tomato-puree", ""},
        Said{"milk frother", "milk frother", {}, "", "milk frother: a kind of milk?"},
        Said{"rice cooker", "rice cooker", {}, "slow-cooker", ""},
        Said{"milk rice", "milk rice", {}, "rice-milk", "milk rice: rice milk?"},
        Said{"beans", "beans", {}, "baked-beans", "beans: baked beans?"},
        Said{"tomato source", "tomato source", {}, "ketchup", "tomato source: tomato sauce?"},
        Said{"serial", "serial", {}, "corn-flakes", "serial: cereal?"},
        Said{"peanut buter", "peanut buter", {}, "peanut-butter", "peanut buter: peanut butter?"},
        Said{"2 chopped tomatos", "chopped tomatos", 2, "chopped-tomatoes",
             "chopped tomatos: chopped tomatoes?"},
        Said{"potato's", "potato's", {}, "potatoes", "potato's: potatoes?"},
        Said{"glace cherrys", "glace cherrys", {}, "glace-cherries", "glace cherrys: glace cherries?"},
        Said{"avocados", "avocados", {}, "avocados", ""},
        Said{"bay leaves", "bay leaves", {}, "bay-leaves", ""},
        Said{"tea often", "tea", {}, "tea", "often: how often?"},
        Said{"large iron pot", "iron pot", {}, "", "iron pot: another thing than iron?"},
        Said{"2 knife tubs", "knife tubs", 2, "", "knife tubs: another thing than knife?"},
        Said{"knife block", "knife block", {}, "spoon-rest", ""},
        Said{"2 knife sets", "knife", 2, "knife", ""}, Said{"iron in a box", "iron", {}, "iron", ""},
        Said{"jam in a jar", "jam", {}, "jam", ""}, Said{"rice in its large jar", "rice", {}, "rice", ""},
        Said{"ajvar in a small jar", "ajvar", {}, "", ""}, Said{"box of knives", "knives", {}, "knife", ""},
        Said{"3 glass jars", "glass jars", 3, "storage-jars", ""},
        Said{"mustard pot", "mustard", {}, "mustard", ""},
        Said{"foil roll", "foil roll", {}, "kitchen-foil", ""},
        // before a word with which many names end, an unknown one may make it another thing
        Said{"hand cream", "hand cream", {}, "cream", "hand cream: the same as cream?"},
        Said{"bath salts", "bath salts", {}, "salt", "bath salts: the same as salt?"},
        Said{"our old kettle", "our old kettle", {}, "kettle", ""},
        Said{"blue mug", "blue mug", {}, "mugs", ""},
        Said{"a stack of plates", "stack of plates", 1, "dinner-plates", ""},
        // what stands behind "in" and "with" is not the thing
        Said{"pan with lid", "pan with lid", {}, "medium-saucepan", ""},
        Said{"mackerel in tomato sauce", "mackerel in tomato sauce", {}, "", "shape and size?"},
        Said{"weed killer in a milk bottle", "weed killer", {}, "slug-pellets", ""},
        Said{"glass jar of honey", "honey", {}, "honey", ""},
        // a tin comes from the cupboard
        Said{"2 tins of carrots", "carrots", 2, "tinned-carrots", ""},
        Said{"tin of oranges", "oranges", {}, "oranges", "oranges in a tin: kept in a cupboard?"},
        Said{"tea set", "tea set", {}, "", "tea set: another thing than tea?"},
        Said{"I can see rice", "rice", {}, "rice", ""},
        Said{"looks like flour", "looks like flour", {}, "flour", "looks like flour: the same as flour?"},
        Said{"12 fl oz soy sauce", "soy sauce", {}, "soy-sauce", ""},
        Said{"half gallon orange juice", "orange juice", {}, "orange-juice", ""},
        Said{"a kilo and a half of sugar", "sugar", 1, "sugar", ""},
        Said{"peaches 2018", "peaches", {}, "peaches", ""}, Said{"jam (opened 3/5/26)", "jam", {}, "jam", ""},
        Said{"ground turkey", "ground turkey", {}, "turkey-mince", ""},
        Said{"box of stuff", "stuff", {}, "stuffing", "stuff: stuffing?"},
        Said{"won jar of honey", "honey", {}, "honey", "won: 1 of them?"},
        Said{"cling film and foil",
             "cling film and foil",
             {},
             "cling-film",
             "cling film and foil: one thing, or two?"}));

TEST(ContentsSaid, packsOfSeveralSizesAreSeveralThings) {
    const auto items =
        parseContents("2 x 400 g and 1 x 200 g sweetcorn, two small and one large tin of tomatoes");
    ASSERT_EQ(items->size(), 4U);
    EXPECT_EQ(items->at(0).size, "400 g");
    EXPECT_EQ(items->at(0).thing.count, 2);
    EXPECT_EQ(items->at(1).size, "200 g");
    EXPECT_EQ(items->at(1).thing.name, "sweetcorn");
    EXPECT_EQ(items->at(2).thing.packSize, "small");
    EXPECT_EQ(items->at(3).thing.packSize, "large");
    EXPECT_LT(items->at(2).thing.weight->value, items->at(3).thing.weight->value);
}

TEST(ContentsSaid, oneThingMayBeLikeAnother) {
    const auto item = parseContents("2 ajvar like pesto")->front();
    EXPECT_EQ(item.thing.name, "ajvar");
    EXPECT_EQ(item.doubt, "");
    EXPECT_EQ(item.thing.shape, Shape::Jar);
    for (const auto &fact : item.thing.allergens)
        EXPECT_EQ(fact.state, AllergenState::MayContain)
            << "of another thing: perhaps, never surely, never cleared";
}

TEST(ContentsSaid, whereItStandsAndHowFullItIsAreNotes) {
    EXPECT_EQ(parseContents("bleach under the sink")->front().thing.note, "under the sink");
    EXPECT_EQ(parseContents("nearly full jar of honey")->front().thing.note, "nearly full");
    EXPECT_EQ(parseContents("mince beef 500g use by friday")->front().thing.note, "use by friday");
}

/// What behind a comma belongs to the thing before it, or has to be asked. `things`: how many are read.
struct Continued {
    const char *line;
    std::size_t things;
    const char *facts, *doubt;
};

class ContentsContinued : public testing::TestWithParam<Continued> {};

TEST_P(ContentsContinued, belongsToTheThingBefore) {
    const auto items = parseContents(GetParam().line);
    ASSERT_TRUE(items);
    EXPECT_EQ(items->size(), GetParam().things);
    std::string facts;
    for (const auto &fact : items->front().facts)
        facts += (facts.empty() ? "" : ", ") + fact;
    EXPECT_EQ(facts, GetParam().facts);
    EXPECT_EQ(items->front().doubt, GetParam().doubt);
}

// Lines and readings are this program's own.
INSTANTIATE_TEST_SUITE_P(
    AsSpoken, ContentsContinued,
    testing::Values(
        Continued{"cake nut free, egg free, dairy free", 1,
                  "claim nut-free, claim egg-free, claim dairy-free", ""},
        Continued{"pesto, contains nuts, 2; jam", 2, "nuts", ""},
        Continued{"chocolate may contain nuts, milk, soya", 1,
                  "may contain nuts, may contain milk, may contain soya", ""},
        Continued{"biscuits contains nuts, milk", 1, "nuts, milk",
                  "milk: in biscuits contains nuts, or by itself?"},
        Continued{"not gluten free bread", 1, "", "not gluten free: not taken as a claim. Keep it?"},
        Continued{"gluten free? bread", 1, "", "gluten free: not taken as a claim. Keep it?"},
        Continued{"maybe nut free muesli", 1, "", "maybe nut free: not taken as a claim. Keep it?"},
        Continued{"used to be gluten free bread", 1, "",
                  "used to be gluten free: not taken as a claim. Keep it?"},
        Continued{"nut free muesli?", 1, "", "nut free: not taken as a claim. Keep it?"},
        Continued{"chocolate may contain nuts, milk, and soya", 1,
                  "may contain nuts, may contain milk, may contain soya", ""},
        Continued{"biscuits contain milk", 1, "milk", ""},
        Continued{"muesli no nuts, milk", 1, "claim nut-free, claim milk-free",
                  "milk: in muesli no nuts, or by itself?"},
        Continued{"2 pints of milk, eggs, butter", 3, "2 pint", ""}, Continued{"milk, soya", 2, "", ""},
        Continued{"flour, gluten, 2", 1, "gluten", ""},
        Continued{"bread, in the freezer", 1, "in the freezer", ""},
        Continued{"soup, 2 cartons, opened yesterday", 1, "box, opened yesterday", ""},
        Continued{"mince frozen 3 dec", 1, "frozen, frozen 3 dec", ""},
        Continued{"Milk exp. 3 Dec. Eggs 6. Butter.", 3, "exp 3 Dec", ""},
        Continued{"2 Pkt. Rice", 1, "packet", ""}, Continued{"frying pan large, small", 2, "large", ""},
        Continued{"frying pan large small", 1, "large", "Two sizes: large or small?"},
        Continued{"2 tins of tuna, no 3", 1, "tin", "3 tuna (tin): instead of 2 tins of tuna?"},
        Continued{"rice, um, pasta, and, flour", 3, "", ""}, Continued{"a jar with rice in it", 1, "jar", ""},
        Continued{"milk bottle of bleach", 1, "bottle, milk bottle", ""},
        Continued{"four mugs, correction, six mugs", 1, "", "six mugs: instead of four mugs?"},
        Continued{"glutenfree crackers", 1, "claim gluten-free", ""},
        Continued{"bleach in milk carton", 1, "box, in milk carton", ""},
        Continued{"tomatoes, 4, beans", 2, "", ""}, Continued{"top shelf: 4 mugs, tea", 2, "top shelf", ""},
        Continued{"rice full stop pasta", 2, "", ""}, Continued{"Rice. Pasta.", 2, "", ""},
        Continued{"3 soup, make that 4 soup", 1, "", "4 soup: instead of 3 soup?"}));

TEST(ContentsContinued, eachAnswerIsALineThatAsksTheSameNoMore) {
    for (const char *line :
         {"biscuits contains nuts, milk", "3 soup, make that 4 soup", "not gluten free bread",
          "large iron pot", "tin of oranges", "hand cream", "gluten free? bread"}) {
        const auto asked = parseContents(line)->front();
        ASSERT_GE(asked.answers.size(), 2U) << line;
        for (const auto &answer : asked.answers) {
            const auto items = parseContents(answer.line);
            ASSERT_TRUE(items) << answer.line;
            EXPECT_NE(items->front().doubt, asked.doubt) << answer.line;
            EXPECT_THAT(items->front().doubt, testing::Not(testing::HasSubstr("not understood")))
                << answer.line;
        }
        EXPECT_EQ(parseContents(asked.thing.said)->front().doubt, asked.doubt) << "kept as it was said";
    }
}

TEST(ContentsContinued, countsBeforeAndNumbersOfAListAreTold) {
    const auto first = *parseContents("4, chopped tomatoes, 2, coconut milk");
    ASSERT_EQ(first.size(), 2U);
    EXPECT_EQ(first.at(0).thing.count, 4);
    EXPECT_EQ(first.at(1).thing.count, 2);
    const auto list = *parseContents("1. rice\n2. pasta\n3. flour");
    ASSERT_EQ(list.size(), 3U);
    for (const auto &item : list)
        EXPECT_EQ(item.thing.count, std::nullopt);
    EXPECT_EQ(parseContents("2 rice\n1 pasta")->front().thing.count, 2);
}

} // namespace
