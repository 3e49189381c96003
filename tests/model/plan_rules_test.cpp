#include "model/evaluate.h"
#include "tests/model/worked_kitchen.h"
#include <functional>
#include <gmock/gmock.h>

namespace {

using namespace model;
using namespace model::fixtures;
using testing::ElementsAre;
using testing::IsEmpty;

struct RuleCase {
    const char *rule;
    std::function<void(Problem &)> breaks;  // keeps salt out of A
    std::function<void(Problem &)> allowed; // the nearest problem in which it may stand there
};
class PlaceRule : public testing::TestWithParam<RuleCase> {};

TEST_P(PlaceRule, keepsTheThingOutAndNothingElseDoes) {
    Problem broken = workedKitchen(), sound = workedKitchen();
    GetParam().breaks(broken);
    GetParam().allowed(sound);
    EXPECT_THAT(placeRules(broken, salt, shelfA), ElementsAre(GetParam().rule));
    EXPECT_THAT(placeRules(sound, salt, shelfA), IsEmpty());
}

INSTANTIATE_TEST_SUITE_P(
    Rules, PlaceRule,
    testing::Values(RuleCase{"storage", [](Problem &p) { p.items[salt].storage = ProblemStorage::Fridge; },
                             [](Problem &p) {
                                 p.items[salt].storage = p.places[shelfA].storage = ProblemStorage::Fridge;
                             }},
                    RuleCase{"height", [](Problem &p) { p.places[shelfA].clearCm = 10.99; },
                             [](Problem &p) { p.places[shelfA].clearCm = 11; }},
                    RuleCase{"depth", [](Problem &p) { p.places[shelfA].depthCm = 6.99; },
                             [](Problem &p) { p.places[shelfA].depthCm = 7; }},
                    RuleCase{"width", [](Problem &p) { p.places[shelfA].widthCm = 7.99; },
                             [](Problem &p) { p.places[shelfA].widthCm = 8; }},
                    RuleCase{"reach", [](Problem &p) { p.client.reachHighCm = 119; },
                             [](Problem &p) { p.client.reachHighCm = 120; }},
                    RuleCase{"heavy",
                             [](Problem &p) {
                                 p.items[salt].weightKg = 2;
                                 p.client.shoulderCm = 119;
                             },
                             [](Problem &p) {
                                 p.items[salt].weightKg = 1.99;
                                 p.client.shoulderCm = 119;
                             }},
                    RuleCase{"hot",
                             [](Problem &p) {
                                 p.items[salt].hotUse = true;
                                 p.client.shoulderCm = 119;
                             },
                             [](Problem &p) {
                                 p.items[salt].hotUse = true;
                                 p.client.shoulderCm = 120;
                             }},
                    RuleCase{"hazard",
                             [](Problem &p) {
                                 p.items[salt].hazard = true;
                                 p.client.children = true;
                             },
                             [](Problem &p) {
                                 p.items[salt].hazard = p.client.children = true;
                                 p.places[shelfA].secure = true;
                             }},
                    RuleCase{"keep",
                             [](Problem &p) {
                                 p.items[salt].keep = 3;
                                 p.items[salt].current = shelfB;
                             },
                             [](Problem &p) {
                                 p.items[salt].keep = 2;
                                 p.items[salt].current = shelfB;
                             }},
                    RuleCase{"overruled", [](Problem &p) { p.items[salt].forbidden = {shelfA}; },
                             [](Problem &p) { p.items[salt].forbidden = {shelfB}; }}),
    [](const auto &param) { return std::string(param.param.rule); });

TEST(PlaceRules, setNoLimitOfHeightOnACounter) {
    Problem problem = workedKitchen();
    problem.places[shelfA].clearCm = 1;
    problem.places[shelfA].counter = true;
    EXPECT_THAT(placeRules(problem, salt, shelfA), IsEmpty());
}

TEST(CodeFits, dependsOnSurfaceFreezerAndWet) {
    Problem problem = workedKitchen();
    EXPECT_TRUE(codeFits(problem, salt, shelfA, band));
    problem.markers[band - 1].survivesWet = false;
    EXPECT_TRUE(codeFits(problem, salt, shelfA, band)) << "food stays dry";
    problem.items[salt].klass = 'N';
    EXPECT_FALSE(codeFits(problem, salt, shelfA, band));
    EXPECT_TRUE(codeFits(problem, salt, shelfA, none));
    problem.markers[dot - 1].survivesFreezer = false;
    EXPECT_TRUE(codeFits(problem, salt, shelfA, dot));
    problem.places[shelfA].storage = ProblemStorage::Freezer;
    EXPECT_FALSE(codeFits(problem, salt, shelfA, dot));
    problem.items[sugar].surface = "card";
    EXPECT_FALSE(codeFits(problem, sugar, shelfB, dot));
}

TEST(BrokenRules, nameTheOverfullPlace) {
    const Problem problem = workedKitchen();
    EXPECT_THAT(brokenRules(problem, {{0, 0, 0}, {0, 0, 0}}),
                ElementsAre(BrokenRule{"width", {salt, sugar, vinegar}, {shelfA}}));
}

TEST(BrokenRules, keepChemicalsFromFood) {
    Problem problem = workedKitchen();
    problem.items[vinegar].klass = 'C';
    EXPECT_THAT(brokenRules(problem, {{0, 1, 1}, {0, 0, 0}}),
                ElementsAre(BrokenRule{"chemical", {sugar, vinegar}, {shelfB}}));
    problem.items[sugar].klass = 'N';
    EXPECT_THAT(brokenRules(problem, {{0, 1, 1}, {0, 0, 0}}), IsEmpty());
}

TEST(BrokenRules, forbidTheSameCodeOnLookAlikesNearEachOther) {
    Problem problem = workedKitchen();
    const Placement sameCode{{shelfA, shelfB, shelfA}, {band, band, none}};
    EXPECT_THAT(brokenRules(problem, sameCode),
                ElementsAre(BrokenRule{"alike", {salt, sugar}, {shelfA, shelfB}}));
    problem.places[shelfB].bay = 1;
    EXPECT_THAT(brokenRules(problem, sameCode), IsEmpty());
    problem.places[shelfB].bay = 0;
    problem.markers[band - 1].ownText = true;
    EXPECT_THAT(brokenRules(problem, sameCode), IsEmpty()) << "each has a text of its own";
}

TEST(BrokenRules, letAMarkStandForOneThingOfItsShapeInAPlace) {
    Problem problem = workedKitchen();
    problem.items[sugar].weightKg = 0.8; // alike 0.1407 then, less than a half
    const Placement oneShelf{{shelfA, shelfA, shelfB}, {band, band, none}};
    EXPECT_THAT(brokenRules(problem, oneShelf), IsEmpty());
    problem.oneThingPerMark = true;
    EXPECT_THAT(brokenRules(problem, oneShelf), ElementsAre(BrokenRule{"once", {salt, sugar}, {shelfA}}));
    EXPECT_THAT(brokenRules(problem, {{shelfA, shelfB, shelfA}, {band, band, none}}), IsEmpty());
    EXPECT_THAT(brokenRules(problem, {{shelfB, shelfA, shelfA}, {none, band, band}}), IsEmpty())
        << "a jar and a bottle";
    problem.markers[band - 1].ownText = true;
    EXPECT_THAT(brokenRules(problem, oneShelf), IsEmpty()) << "each has a text of its own";
}

TEST(BrokenRules, nameAMarkThatDoesNotFit) {
    Problem problem = workedKitchen();
    problem.items[sugar].surface = "card";
    EXPECT_THAT(brokenRules(problem, {{0, 0, 1}, {0, dot, 0}}),
                ElementsAre(BrokenRule{"marker", {sugar}, {shelfA}}));
}

TEST(BrokenRules, keepApartWhatWouldDoHarm) {
    Problem problem = workedKitchen();
    problem.apart = {{salt, vinegar}};
    EXPECT_THAT(brokenRules(problem, {{shelfA, shelfA, shelfB}, {none, none, none}}),
                ElementsAre(BrokenRule{"apart", {salt, vinegar}, {shelfA, shelfB}}));
    problem.places[shelfB].bay = 1;
    EXPECT_THAT(brokenRules(problem, {{shelfA, shelfA, shelfB}, {none, none, none}}), IsEmpty());
}

TEST(BrokenRules, countTheRunOfSeveralPacks) {
    Problem problem = workedKitchen();
    problem.items[salt].runCm = 12; // with the gap 13, and 8 for the sugar: 21 of 20
    EXPECT_THAT(brokenRules(problem, {{shelfA, shelfA, shelfB}, {none, none, none}}),
                ElementsAre(BrokenRule{"width", {salt, sugar}, {shelfA}}));
    problem.items[salt].runCm = 11;
    EXPECT_THAT(brokenRules(problem, {{shelfA, shelfA, shelfB}, {none, none, none}}), IsEmpty());
}

} // namespace
