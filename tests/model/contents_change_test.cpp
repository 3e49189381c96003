#include "model/contents_change.h"
#include "model/own_things.h"
#include <gmock/gmock.h>

namespace {

using namespace model;
using testing::HasSubstr;

std::vector<Thing> shelf(const std::string &line) {
    std::vector<Thing> out;
    const auto items = parseContents(line);
    for (const auto &item : *items) {
        out.push_back(item.thing);
        out.back().id = Id{"thing-" + std::to_string(out.size())};
    }
    return out;
}

TEST(ContentsChange, aThingThatStandsThereIsCorrected) {
    const auto here = shelf("4 chopped tomatoes daily, rice");
    const auto change =
        changeBy("3 chopped tomatoes (milk), 2 rice weekly, pasta", here, Lexicon::standard());
    ASSERT_TRUE(change);
    ASSERT_EQ(change->changed.size(), 2U);
    EXPECT_EQ(change->changed[0].id, here[0].id);
    EXPECT_EQ(change->changed[0].count, 3);
    EXPECT_EQ(change->changed[0].usesPerWeek, 7) << "what the line does not say stays";
    EXPECT_EQ(change->changed[0].allergens.front().allergen, "milk");
    EXPECT_EQ(change->changed[1].usesPerWeek, 1);
    ASSERT_EQ(change->added.size(), 1U);
    EXPECT_EQ(change->added[0].thing.name, "pasta");
}

TEST(ContentsChange, anotherSizeIsAnotherThing) {
    const auto change =
        changeBy("2 800 g chopped tomatoes", shelf("4 chopped tomatoes"), Lexicon::standard());
    EXPECT_EQ(change->added.size(), 1U);
    EXPECT_TRUE(change->changed.empty());
}

TEST(ContentsChange, aLineTakesThingsAway) {
    const auto here = shelf("4 chopped tomatoes, rice");
    const auto change = changeBy("remove the rice, delete honey", here, Lexicon::standard());
    ASSERT_TRUE(change);
    ASSERT_EQ(change->removed.size(), 1U);
    EXPECT_EQ(change->removed[0].id, here[1].id);
    EXPECT_THAT(change->notFound, testing::ElementsAre("honey"));
    EXPECT_FALSE(changeBy("  ", here, Lexicon::standard()));
}

TEST(OwnThings, areKnownOnceTheyWereDescribed) {
    const auto unknown = parseContents("ajvar");
    EXPECT_EQ(unknown->front().doubt, "shape and size?");
    Thing thing = parseContents("2 small jar of ajvar glass (celery) weekly")->front().thing;
    thing.place = Id{"shelf"};
    ASSERT_TRUE(isNewWord(thing, Lexicon::standard()));
    std::vector<CatalogueThing> own;
    addOwnThing(own, ownThing(thing));
    addOwnThing(own, ownThing(thing));
    ASSERT_EQ(own.size(), 1U);
    const auto kept = ownThingsFrom(ownThingsText(own));
    ASSERT_TRUE(kept);
    const Lexicon lexicon(*kept);
    const auto known = parseContents("3 ajvar", lexicon);
    EXPECT_EQ(known->front().doubt, "");
    EXPECT_EQ(known->front().thing.count, 3);
    EXPECT_EQ(known->front().thing.shape, Shape::Jar);
    EXPECT_EQ(known->front().thing.width, thing.width);
    EXPECT_TRUE(known->front().thing.usual.contains("allergen:celery")) << "to be confirmed on the next pack";
    EXPECT_FALSE(known->front().thing.place);
    EXPECT_FALSE(isNewWord(known->front().thing, lexicon));
    EXPECT_FALSE(isNewWord(unknown->front().thing, Lexicon::standard())) << "nothing is known of it yet";
}

TEST(OwnThings, thatCannotBeReadAreAnErrorAndNoneIsNone) {
    EXPECT_FALSE(ownThingsFrom("[{\"pack\": 3}]"));
    EXPECT_FALSE(ownThingsFrom("nonsense"));
    EXPECT_TRUE(ownThingsFrom("")->empty());
}

TEST(ContentsList, namesPlacesAndTellsProblemsByLine) {
    const auto lines =
        readList("top shelf:\n- 4 chopped tomatoes\n2. rice daily\n\nfridge:\nmilk, butter\n?!\n",
                 Lexicon::standard());
    ASSERT_EQ(lines.size(), 4U);
    EXPECT_EQ(lines[0].place, "top shelf");
    EXPECT_EQ(lines[0].number, 2);
    EXPECT_EQ(lines[0].items.front().thing.count, 4);
    EXPECT_EQ(lines[1].items.front().thing.count, std::nullopt) << "2. is the number of the line";
    EXPECT_EQ(lines[2].place, "fridge");
    EXPECT_EQ(lines[2].items.size(), 2U);
    EXPECT_THAT(lines[3].problem, HasSubstr("Line 7: nothing"));
}

TEST(ContentsList, readsATableByTheNamesOfItsColumns) {
    const auto lines = readList("Place;Name;Count;Size;How often;Note\n"
                                "larder;Chopped tomatoes;4;400 g;daily;\n"
                                "larder;\"Beans; baked\";many;;;\n"
                                "larder;;3;;;\n"
                                "worktop;Tea;1;;3;green lid\n",
                                Lexicon::standard());
    ASSERT_EQ(lines.size(), 4U);
    EXPECT_EQ(lines[0].place, "larder");
    EXPECT_EQ(lines[0].items.front().size, "400 g");
    EXPECT_EQ(lines[0].items.front().thing.usesPerWeek, 7);
    EXPECT_EQ(lines[1].problem, "Line 3: not a count: many.");
    EXPECT_EQ(lines[1].items.size(), 1U) << "the rest of it is not lost";
    EXPECT_EQ(lines[2].problem, "Line 4: no name in it.");
    EXPECT_EQ(lines[3].items.front().thing.usesPerWeek, 3);
    EXPECT_EQ(lines[3].items.front().thing.note, "green lid");
    EXPECT_EQ(readList("name,count\nrice,2\n", Lexicon::standard()).front().items.front().thing.count, 2);
}

} // namespace
