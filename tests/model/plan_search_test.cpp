#include "model/construct.h"
#include "model/search_random.h"
#include "model/search_state.h"
#include "model/solve.h"
#include "tests/model/exhaustive.h"
#include "tests/model/random_kitchen.h"
#include "tests/model/sound_plan.h"
#include "tests/model/worked_kitchen.h"
#include <atomic>
#include <gmock/gmock.h>

namespace {

using namespace model;
using namespace model::fixtures;
using testing::IsEmpty;
using testing::Optional;

SolveOptions quick(std::int64_t moves = 20'000) {
    SolveOptions options;
    options.moves = moves;
    options.seeds = 2;
    return options;
}

struct Example {
    const char *name;
    std::function<void(Problem &)> change;
    Placement plan;
    Terms terms;
    int legal;
};
class WorkedExample : public testing::TestWithParam<Example> {};

// Best plans and totals: computed by full enumeration of the model, apart from this program.
TEST_P(WorkedExample, isSolvedToTheEnumeratedPlan) {
    Problem problem = workedKitchen();
    GetParam().change(problem);
    const Solution solution = solve(problem, quick());
    EXPECT_THAT(solution.placement, Optional(GetParam().plan));
    EXPECT_EQ(solution.terms, GetParam().terms);
}

TEST_P(WorkedExample, isEnumeratedToTheSamePlan) {
    Problem problem = workedKitchen();
    GetParam().change(problem);
    const Exhausted exhausted = tryEverything(problem);
    EXPECT_THAT(exhausted.best, Optional(GetParam().plan));
    EXPECT_EQ(exhausted.total, GetParam().terms.total());
    EXPECT_EQ(exhausted.legal, GetParam().legal);
}

INSTANTIATE_TEST_SUITE_P(Examples, WorkedExample,
                         testing::Values(Example{"1",
                                                 [](Problem &) {},
                                                 {{shelfA, shelfA, shelfB}, {none, band, none}},
                                                 {900, 0, 0, 1500, 152, 280},
                                                 126},
                                         Example{"2",
                                                 [](Problem &p) {
                                                     p.items[salt].usesPerWeek = p.items[sugar].usesPerWeek =
                                                         1;
                                                 },
                                                 {{shelfA, shelfB, shelfA}, {none, none, none}},
                                                 {300, 0, 0, 0, 0, 500},
                                                 126},
                                         Example{"3",
                                                 [](Problem &p) {
                                                     p.markers.clear();
                                                     p.confusion.clear();
                                                     p.miss.clear();
                                                 },
                                                 {{shelfA, shelfB, shelfA}, {none, none, none}},
                                                 {1800, 0, 0, 0, 0, 3500},
                                                 6},
                                         Example{"4",
                                                 [](Problem &p) {
                                                     p.items[sugar].current = shelfB;
                                                     p.items[sugar].keep = 2;
                                                 },
                                                 {{shelfA, shelfB, shelfA}, {none, band, none}},
                                                 {1800, 0, 0, 1500, 152, 70},
                                                 126}),
                         [](const auto &param) { return std::string(param.param.name); });

/// A move of a random kind; its delta must be what the total then says.
void moveAtRandom(SearchState &state, SearchRandom &random) {
    const SearchTables &tables = state.tables();
    const int i = random.below(tables.items);
    const SearchCost before = state.total();
    if (random.below(2) == 0) {
        const int p = random.below(tables.places); // legal or not
        const SearchCost delta = state.moveDelta(i, p);
        state.put(i, p);
        ASSERT_EQ(state.total() - before, delta);
    } else {
        const int c = random.below(tables.codes);
        const SearchCost delta = state.codeDelta(i, c);
        state.setCode(i, c);
        ASSERT_EQ(state.total() - before, delta);
    }
}

/// One mark to learn at most, two foods with the avoided allergen, and one thing that food touches.
void withSafetyRules(Problem &problem) {
    problem.mostToLearn = 1;
    problem.allergenApart = true;
    for (std::size_t i = 0; i < problem.items.size(); ++i) {
        problem.items[i].klass = i == 0 ? 'C' : i == 1 ? 'N' : 'F';
        problem.items[i].allergen = i == 2 || i == 3;
        problem.items[i].touchesFood = i == 1;
        problem.items[i].shape = i == 1 ? "tool" : problem.items[i].shape;
    }
}

bool breaksBetweenThings(const Problem &problem, const Placement &placement) {
    for (const BrokenRule &broken : brokenRules(problem, placement))
        if (broken.rule == "width" || broken.rule == "chemical" || broken.rule == "alike" ||
            broken.rule == "apart" || broken.rule == "allergen" || broken.rule == "once" ||
            broken.rule == "kinds")
            return true;
    return false;
}

TEST(SearchState, countsTheSameAsARecountAfterAHundredThousandMoves) {
    const Problem problem = randomKitchen(3, 12);
    const SearchTables tables(problem);
    SearchState state(tables);
    construct(state);
    SearchRandom random(1);
    for (int move = 0; move < 100'000; ++move) {
        moveAtRandom(state, random);
        ASSERT_EQ(state.total().cost, evaluate(problem, state.placement()).total()) << "after move " << move;
        if (move % 50 != 0)
            continue;
        SearchState fresh(tables);
        fresh.load(state.placement());
        ASSERT_EQ(state.total(), fresh.total()) << "after move " << move;
    }
}

/// Moves at random between legal placements and others; how many were legal.
int legalAsTheRecountSays(const Problem &problem, int moves) {
    const SearchTables tables(problem);
    SearchState state(tables);
    construct(state);
    SearchRandom random(1);
    int legal = 0;
    for (int move = 0; move < moves; ++move) {
        moveAtRandom(state, random);
        EXPECT_EQ(state.legal(), !breaksBetweenThings(problem, state.placement())) << "after move " << move;
        legal += state.legal();
    }
    return legal;
}

TEST(SearchState, isLegalWhereTheRecountFindsNoRuleBrokenBetweenThings) {
    Problem problem = tinyKitchen(2, 5);
    problem.apart = {{0, 3}};
    const int legal = legalAsTheRecountSays(problem, 5'000);
    EXPECT_GT(legal, 100);
    EXPECT_LT(legal, 4'900);
}

TEST(SearchState, isLegalWhereTheRecountFindsNoRuleOfSafetyBroken) {
    Problem problem = tinyKitchen(2, 5);
    withSafetyRules(problem);
    const int legal = legalAsTheRecountSays(problem, 20'000);
    EXPECT_GT(legal, 20);
    EXPECT_LT(legal, 19'900);
}

TEST(Solve, findsTheBestPlanOfKitchensSmallEnoughToTryEverything) {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const Problem problem = tinyKitchen(seed, 4);
        const Exhausted exhausted = tryEverything(problem);
        const Solution solution = solve(problem, quick());
        ASSERT_EQ(solution.placement.has_value(), exhausted.best.has_value()) << "kitchen " << seed;
        if (!exhausted.best)
            continue;
        expectSound(problem, solution);
        EXPECT_EQ(solution.terms.total(), exhausted.total) << "kitchen " << seed;
        EXPECT_THAT(solution.placement, Optional(*exhausted.best)) << "kitchen " << seed;
    }
}

TEST(Solve, keepsApartWhatMustStandApart) {
    for (std::uint64_t seed = 1; seed <= 8; ++seed) {
        Problem problem = tinyKitchen(seed, 4);
        problem.apart = {{1, 2}};
        const Exhausted exhausted = tryEverything(problem);
        const Solution solution = solve(problem, quick());
        EXPECT_EQ(solution.placement, exhausted.best) << "kitchen " << seed;
        EXPECT_EQ(shortages(problem).empty(), exhausted.best.has_value()) << "kitchen " << seed;
    }
}

TEST(Solve, obeysTheRulesOfSafetyAsTryingEverythingDoes) {
    int possible = 0;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        Problem problem = tinyKitchen(seed, 4);
        withSafetyRules(problem);
        if (seed % 3 == 0)
            problem.items[3].pinnedCode = 2;
        const Exhausted exhausted = tryEverything(problem);
        const Solution solution = solve(problem, quick(100'000));
        EXPECT_EQ(solution.placement.has_value(), exhausted.best.has_value()) << "kitchen " << seed;
        EXPECT_EQ(shortages(problem).empty(), exhausted.best.has_value()) << "kitchen " << seed;
        possible += exhausted.best.has_value();
        if (exhausted.best) {
            SCOPED_TRACE(seed);
            expectSound(problem, solution);
            EXPECT_EQ(solution.terms.total(), exhausted.total);
        }
    }
    EXPECT_GT(possible, 2);
}

TEST(Solve, breaksNoRuleAndCountsWhatTheRecountCounts) {
    int solved = 0;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const Problem problem = randomKitchen(seed, seed % 3 == 0 ? 80 : 25);
        const Solution solution = solve(problem, quick(60'000));
        if (!solution.placement) {
            EXPECT_THAT(shortages(problem), testing::Not(IsEmpty())) << "kitchen " << seed;
            continue;
        }
        ++solved;
        SCOPED_TRACE(seed);
        expectSound(problem, solution);
    }
    EXPECT_GE(solved, 8);
}

TEST(Solve, isNoWorseThanItsOwnStart) {
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        const Problem problem = randomKitchen(seed, 25);
        const SearchTables tables(problem);
        SearchState start(tables);
        construct(start);
        const Solution solution = solve(problem, quick(2'000));
        if (!start.legal())
            continue;
        ASSERT_TRUE(solution.placement) << "kitchen " << seed;
        EXPECT_LE(solution.terms.total(), start.total().cost) << "kitchen " << seed;
    }
}

TEST(Solve, givesTheSamePlanOnEveryRunAndAnyNumberOfThreads) {
    const Problem problem = randomKitchen(5, 80);
    SolveOptions options;
    options.moves = 30'000;
    options.threads = 1;
    const Solution once = solve(problem, options);
    ASSERT_TRUE(once.placement);
    for (const int threads : {1, 2, 4}) {
        options.threads = threads;
        EXPECT_EQ(solve(problem, options).placement, once.placement) << threads << " threads";
    }
}

TEST(Solve, doesNotDependOnTheOrderOfEqualSeeds) {
    const Problem problem = randomKitchen(5, 25);
    SolveOptions options = quick();
    const Solution one = solve(problem, options);
    options.seed = 99;
    const Solution other = solve(problem, options);
    ASSERT_TRUE(one.placement && other.placement);
    expectSound(problem, other);
}

TEST(Solve, stopsWhenAskedAndSaysSo) {
    const Problem problem = randomKitchen(5, 80);
    SolveOptions options;
    options.moves = 1'000'000'000;
    options.stop = [] { return true; };
    const Solution solution = solve(problem, options);
    EXPECT_TRUE(solution.stopped);
}

TEST(Solve, givesTheBestSoFarWhenItIsStopped) {
    const Problem problem = randomKitchen(5, 80);
    SolveOptions options;
    options.moves = 1'000'000'000;
    std::atomic<int> asked{0};
    options.stop = [&] { return ++asked > 200; };
    const Solution solution = solve(problem, options);
    EXPECT_TRUE(solution.stopped);
    expectSound(problem, solution);
}

TEST(Solve, plansFifteenHundredThingsWithFewMoves) {
    const Problem problem = randomKitchen(5, 1500);
    SolveOptions options;
    options.moves = 10'000;
    const Solution solution = solve(problem, options);
    ASSERT_TRUE(solution.placement);
    EXPECT_THAT(brokenRules(problem, *solution.placement), IsEmpty());
}

TEST(Solve, reportsProgressUpToTheWhole) {
    SolveOptions options = quick();
    options.threads = 1;
    double last = 0;
    options.progress = [&](double share) {
        EXPECT_GE(share, last);
        last = share;
    };
    (void)solve(randomKitchen(5, 25), options);
    EXPECT_NEAR(last, 1.0, 0.01);
}

/// The cheapest legal placement by trying everything in the tables; of equals the first.
Placement bestInTables(const SearchTables &tables) {
    std::vector<Placement> candidates{{std::vector<int>(tables.items, 0), std::vector<int>(tables.items, 0)}};
    for (int i = 0; i < tables.items; ++i) {
        std::vector<Placement> longer;
        for (const Placement &placement : candidates)
            for (const int p : tables.allowedPlaces[i])
                for (const int c : tables.allowedCodes[i]) {
                    longer.push_back(placement);
                    longer.back().place[i] = p;
                    longer.back().code[i] = c;
                }
        candidates = std::move(longer);
    }
    std::optional<std::int64_t> least;
    Placement best;
    SearchState state(tables);
    for (const Placement &placement : candidates) {
        state.load(placement);
        if (!state.legal() || (least && state.total().cost >= *least))
            continue;
        least = state.total().cost;
        best = placement;
    }
    return best;
}

SearchTables doubled(const SearchTables &tables) {
    SearchTables twice = tables.withPairCosts(2, 1);
    for (std::vector<std::int64_t> *costs : {&twice.itemPlace, &twice.markCost, &twice.typeCost})
        for (std::int64_t &cost : *costs)
            cost *= 2;
    twice.bayCost *= 2;
    twice.placeCost *= 2;
    return twice;
}

TEST(Solve, decidesTheSameWhenEveryCoefficientIsDoubled) {
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        const SearchTables tables(tinyKitchen(seed, 4));
        EXPECT_EQ(bestInTables(doubled(tables)), bestInTables(tables)) << "kitchen " << seed;
    }
}

} // namespace
