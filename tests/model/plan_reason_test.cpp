#include "model/solve.h"
#include "tests/model/random_kitchen.h"
#include "tests/model/worked_kitchen.h"
#include <gmock/gmock.h>

namespace {

using namespace model;
using namespace model::fixtures;
using testing::ElementsAre;
using testing::Optional;
using testing::Pair;

const Placement best{{shelfA, shelfA, shelfB},
                     {none, band, none}}; // of the worked kitchen, see plan_search_test

TEST(Reason, namesTheTermsThatDecideLargestFirst) {
    Problem problem = workedKitchen();
    problem.places[shelfA].widthCm = 30; // room for all three: the vinegar may come down
    problem.items[vinegar].current = shelfA;
    const LineReason why = reason(problem, {{shelfA, shelfA, shelfA}, {none, band, none}}, vinegar);
    EXPECT_THAT(why.runnerUpPlace, Optional(shelfB));
    EXPECT_EQ(why.price, 650) << "reach 150, move 500; by hand";
    ASSERT_EQ(why.terms.size(), 2U);
    EXPECT_EQ(why.terms[0].name, "move");
    EXPECT_EQ(why.terms[0].difference, 500);
    EXPECT_EQ(why.terms[1].name, "reach");
    EXPECT_EQ(why.terms[1].difference, 150);
}

TEST(Reason, saysWhyAPlaceIsNotPossible) {
    Problem problem = workedKitchen();
    problem.items[vinegar].heightCm = 60;
    const LineReason full = reason(problem, best, vinegar);
    EXPECT_THAT(full.impossible, ElementsAre(Pair(shelfA, ElementsAre("height"))));
    const LineReason narrow = reason(workedKitchen(), best, vinegar);
    EXPECT_THAT(narrow.impossible, ElementsAre(Pair(shelfA, ElementsAre("width"))));
    problem = workedKitchen();
    problem.places[shelfA].widthCm = 30;
    problem.items[vinegar].klass = 'C';
    EXPECT_THAT(reason(problem, best, vinegar).impossible,
                ElementsAre(Pair(shelfA, ElementsAre("chemical"))));
}

TEST(Reason, findsTheOtherCodeWhereNoOtherPlaceIsBetter) {
    const LineReason why = reason(workedKitchen(), best, sugar);
    EXPECT_THAT(why.runnerUpPlace, Optional(shelfA));
    EXPECT_THAT(why.runnerUpCode, Optional(dot));
    EXPECT_EQ(why.price, 70) << "222 instead of 152";
    ASSERT_EQ(why.terms.size(), 1U);
    EXPECT_EQ(why.terms[0].name, "marking");
}

TEST(Reason, findsTheCheapestExchange) {
    const LineReason why = reason(workedKitchen(), best, sugar); // sugar up, vinegar down
    EXPECT_THAT(why.swapWith, Optional(vinegar));
    EXPECT_EQ(why.swapPrice, (350 + 1400 + 50 + 70) - (900 + 280));
}

TEST(Reason, knowsOfNothingElseWhereNothingElseIsPossible) {
    Problem problem = workedKitchen();
    problem.markers.clear();
    const LineReason why = reason(problem, {{shelfA, shelfA, shelfB}, {none, none, none}}, vinegar);
    EXPECT_EQ(why.runnerUpPlace, std::nullopt);
    EXPECT_EQ(why.runnerUpCode, std::nullopt);
}

TEST(Reason, pricesTheRunnerUpAsARecountDoesAndNeverBelowASolvedPlan) {
    const Problem problem = randomKitchen(5, 80);
    SolveOptions options;
    options.moves = 60'000;
    options.seeds = 2;
    const Placement placement = *solve(problem, options).placement;
    for (int i = 0; i < 80; i += 4) {
        const LineReason why = reason(problem, placement, i);
        if (!why.runnerUpPlace)
            continue;
        Placement other = placement;
        other.place[i] = *why.runnerUpPlace;
        other.code[i] = *why.runnerUpCode;
        EXPECT_EQ(why.price, evaluate(problem, other).total() - evaluate(problem, placement).total())
            << "item " << i;
        EXPECT_GE(why.price, 0) << "item " << i;
        EXPECT_TRUE(brokenRules(problem, other).empty()) << "item " << i;
    }
}

} // namespace
