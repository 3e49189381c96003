#include "model/shelf_flow.h"
#include "model/shortage_words.h"
#include "model/solve.h"
#include "tests/model/exhaustive.h"
#include "tests/model/random_kitchen.h"
#include "tests/model/worked_kitchen.h"
#include <gmock/gmock.h>

namespace {

using namespace model;
using namespace model::fixtures;
using testing::AllOf;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::Optional;
using testing::SizeIs;

SolveOptions quick() {
    SolveOptions options;
    options.moves = 5'000;
    options.seeds = 2;
    return options;
}

TEST(Shortages, nameAUnitOnceForItsShelves) {
    Problem problem = workedKitchen();
    problem.places[shelfA].name = "larder by the door, top shelf";
    problem.places[shelfB].name = "larder by the door, bottom shelf";
    EXPECT_EQ(placeNames(problem, {shelfA, shelfB}), "larder by the door, top shelf and bottom shelf");
    problem.places[shelfB].name = "worktop";
    EXPECT_EQ(placeNames(problem, {shelfA, shelfB}), "larder by the door, top shelf and worktop");
}

// Worked example 5: 24 cm needed, 15 there; by hand.
TEST(Shortages, sayNeedAndHaveWhereOneShelfIsTooNarrow) {
    Problem problem = workedKitchen();
    problem.places[shelfA].widthCm = 15;
    problem.places[shelfB].heightCm = 190; // closed: out of reach
    EXPECT_FALSE(solve(problem, quick()).placement);
    const std::vector<ProblemShortage> all = shortages(problem);
    ASSERT_THAT(all, SizeIs(1));
    EXPECT_EQ(all[0].rule, "width");
    EXPECT_THAT(all[0].needCm, Optional(24.0));
    EXPECT_THAT(all[0].haveCm, Optional(15.0));
    EXPECT_THAT(all[0].items, ElementsAre(salt, sugar, vinegar));
    EXPECT_THAT(all[0].places, ElementsAre(shelfA));
    EXPECT_THAT(all[0].sentence, AllOf(HasSubstr("salt, sugar and vinegar"), HasSubstr("24 cm"),
                                       HasSubstr("15 cm"), HasSubstr("within reach"), HasSubstr("9 cm")));
}

TEST(Shortages, nameTheRulesThatExcludeEachPlace) {
    Problem problem = workedKitchen();
    problem.items[vinegar].heightCm = 60;
    problem.places[shelfB].heightCm = 190;
    const std::vector<ProblemShortage> all = shortages(problem);
    ASSERT_THAT(all, SizeIs(1));
    EXPECT_THAT(all[0].items, ElementsAre(vinegar));
    EXPECT_EQ(all[0].rule, "height");
    EXPECT_THAT(all[0].sentence,
                AllOf(HasSubstr("vinegar can stand nowhere"), HasSubstr("A: not high enough"),
                      HasSubstr("61 cm"), HasSubstr("out of reach"), HasSubstr("To mend it")));
}

TEST(Shortages, sayThatAStorageIsMissing) {
    Problem problem = workedKitchen();
    problem.items[salt].storage = ProblemStorage::Freezer;
    const std::vector<ProblemShortage> all = shortages(problem);
    ASSERT_THAT(all, SizeIs(1));
    EXPECT_EQ(all[0].rule, "storage");
    EXPECT_THAT(all[0].sentence, HasSubstr("no place is a freezer"));
}

TEST(Shortages, sayOnceWhatIsTrueOfSeveralThings) {
    Problem problem = workedKitchen();
    problem.places[shelfA].clearCm = problem.places[shelfB].clearCm = 10;
    const std::vector<ProblemShortage> all = shortages(problem);
    ASSERT_THAT(all, SizeIs(1));
    EXPECT_THAT(all[0].items, ElementsAre(salt, sugar, vinegar));
    EXPECT_THAT(all[0].places, ElementsAre(shelfA, shelfB));
    EXPECT_THAT(all[0].sentence, AllOf(HasSubstr("salt, sugar and vinegar can stand nowhere"),
                                       HasSubstr("up to 26 cm"), HasSubstr("leave them out")));
}

TEST(Shortages, sayWhatIsWrongWithTheOnlyPlaceThatIsNotRuledOut) {
    Problem problem = workedKitchen();
    problem.items[salt].forbidden = {shelfA};
    problem.client.reachHighCm = 150;
    const std::vector<ProblemShortage> all = shortages(problem);
    ASSERT_THAT(all, Not(IsEmpty()));
    EXPECT_EQ(all[0].rule, "reach");
    EXPECT_THAT(all[0].sentence, AllOf(HasSubstr("B, the only place not ruled out: out of reach"),
                                       HasSubstr("take back what you ruled out")));
}

TEST(Shortages, leaveOutTheRulesThatDoNotMatter) {
    Problem problem = workedKitchen();
    for (ProblemItem &item : problem.items)
        item.weightKg = 3; // heavy: not in B, which is above the shoulder
    const std::vector<ProblemShortage> all = shortages(problem);
    ASSERT_THAT(all, SizeIs(1));
    EXPECT_THAT(all[0].needCm, Optional(24.0));
    EXPECT_THAT(all[0].haveCm, Optional(20.0));
    EXPECT_THAT(all[0].sentence,
                AllOf(HasSubstr("between knuckle and shoulder (75 to 140 cm)"), Not(HasSubstr("reach"))));
}

TEST(Shortages, sayThatChemicalsWouldHaveToStandWithFood) {
    Problem problem = workedKitchen();
    problem.items[vinegar].klass = 'C';
    problem.places[shelfA].widthCm = 15; // salt and sugar need 16, and the vinegar the other shelf
    problem.places[shelfB].widthCm = 15;
    EXPECT_FALSE(solve(problem, quick()).placement);
    const std::vector<ProblemShortage> all = shortages(problem);
    ASSERT_THAT(all, SizeIs(1));
    EXPECT_EQ(all[0].rule, "chemical");
    EXPECT_THAT(all[0].needCm, Optional(16.0));
    EXPECT_THAT(all[0].haveCm, Optional(15.0));
    EXPECT_THAT(all[0].sentence, HasSubstr("chemicals never stand with food"));
}

TEST(Shortages, sayWhatOverflowsLeastWhereOnlyCuttingThingsUpWouldHelp) {
    Problem problem = workedKitchen();
    problem.places[shelfA].widthCm = problem.places[shelfB].widthCm = 15; // 30 for 24, but two never share
    EXPECT_FALSE(solve(problem, quick()).placement);
    const std::vector<ProblemShortage> all = shortages(problem);
    ASSERT_THAT(all, SizeIs(1));
    EXPECT_THAT(all[0].needCm, Optional(16.0));
    EXPECT_THAT(all[0].haveCm, Optional(15.0));
    EXPECT_THAT(all[0].sentence, AllOf(HasSubstr("No arrangement was found"), HasSubstr("1 cm")));
}

TEST(Shortages, answerExactlyTheTinyKitchensThatHaveNoPlan) {
    int without = 0;
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        Problem problem = tinyKitchen(seed, 4);
        problem.markers.clear();
        problem.places[0].widthCm -= 4; // make it tight
        const bool plan = tryEverything(problem).best.has_value();
        without += !plan;
        EXPECT_EQ(solve(problem, quick()).placement.has_value(), plan) << "kitchen " << seed;
        EXPECT_EQ(shortages(problem).empty(), plan) << "kitchen " << seed;
        for (const ProblemShortage &shortage : shortages(problem))
            if (shortage.needCm && shortage.haveCm) {
                EXPECT_GT(*shortage.needCm, *shortage.haveCm) << "kitchen " << seed;
            }
    }
    EXPECT_GT(without, 3);
    EXPECT_LT(without, 27);
}

TEST(Shortages, proveWhatTheyClaimInLargeKitchens) {
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        Problem problem = randomKitchen(seed, 80);
        for (ProblemPlace &place : problem.places)
            if (place.storage == ProblemStorage::Fridge)
                place.widthCm /= 2.2;
        const std::vector<ProblemShortage> all = shortages(problem);
        for (const ProblemShortage &shortage : all) {
            if (shortage.rule != "width" || !shortage.needCm)
                continue;
            double need = 0, have = 0;
            for (const int i : shortage.items)
                need += problem.items[i].widthCm + 1;
            for (const int p : shortage.places)
                have += problem.places[p].widthCm;
            EXPECT_NEAR(*shortage.needCm, need, 0.01);
            EXPECT_NEAR(*shortage.haveCm, have, 0.01);
            EXPECT_GT(need, have);
        }
        EXPECT_EQ(all.empty(), solve(problem, quick()).placement.has_value()) << "kitchen " << seed;
    }
}

TEST(ShelfFlow, fitsWhatFitsOnlyByMovingOthers) {
    // Thing 0 goes anywhere, thing 1 only on place 0: both fit if 0 makes room.
    const ShelfFlow flow({10, 10}, {10, 10}, [](int item, int place) { return item == 0 || place == 0; });
    EXPECT_EQ(flow.left(), 0);
    EXPECT_THAT(flow.shortPlaces(), IsEmpty());
}

TEST(ShelfFlow, namesThePlacesThatAreShort) {
    const ShelfFlow flow({10, 10, 10}, {15, 100},
                         [](int item, int place) { return item == 2 || place == 0; });
    EXPECT_EQ(flow.left(), 5);
    EXPECT_THAT(flow.shortPlaces(), ElementsAre(0));
}

} // namespace
