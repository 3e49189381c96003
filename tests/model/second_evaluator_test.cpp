#include "model/evaluate.h"
#include "model/solve.h"
#include "tests/check/plan_files.h"
#include "tests/model/random_kitchen.h"
#include "tests/model/second_evaluator.h"
#include "tests/model/worked_kitchen.h"
#include <algorithm>
#include <fstream>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>
#include <random>
#include <set>

/// The two counts of the objective held against each other, and the second against published totals.
namespace model::fixtures {

namespace {

using testing::IsEmpty;

const std::string kitchens = FELTMARK_TEST_DATA "/plan-cases/";

/// What evaluate.h says, in the words of the second count.
std::vector<std::string> firstBroken(const Problem &problem, const Placement &placement) {
    std::vector<std::string> words;
    for (const BrokenRule &rule : brokenRules(problem, placement)) {
        const bool ofPlace = rule.rule == "width" || rule.rule == "chemical";
        std::string line = rule.rule;
        for (const int index : ofPlace ? rule.places : rule.items)
            line += " " + std::to_string(index);
        words.push_back(line);
    }
    std::sort(words.begin(), words.end());
    return words;
}

void expectTheSame(const Problem &problem, const Placement &placement) {
    const SecondCount second = secondCount(problem, placement);
    const Terms first = evaluate(problem, placement);
    EXPECT_EQ(first.unary, second.terms.unary);
    EXPECT_EQ(first.bay, second.terms.bay);
    EXPECT_EQ(first.place, second.terms.place);
    EXPECT_EQ(first.type, second.terms.type);
    EXPECT_EQ(first.mark, second.terms.mark);
    EXPECT_EQ(first.risk, second.terms.risk);
    EXPECT_EQ(firstBroken(problem, placement), second.broken);
}

int below(std::mt19937_64 &dice, std::size_t count) {
    return static_cast<int>(dice() % count);
}

/// Everything anywhere, a third of it marked anyhow: breaks most rules.
Placement thrown(const Problem &problem, std::mt19937_64 &dice) {
    Placement placement;
    for (std::size_t i = 0; i < problem.items.size(); ++i) {
        placement.place.push_back(below(dice, problem.places.size()));
        placement.code.push_back(below(dice, 3) > 0 ? 0 : below(dice, problem.markers.size() + 1));
    }
    return placement;
}

/// A plan with a few things put elsewhere or marked otherwise.
Placement disturbed(Placement placement, const Problem &problem, std::mt19937_64 &dice, int changes) {
    for (int change = 0; change < changes; ++change) {
        placement.place[below(dice, problem.items.size())] = below(dice, problem.places.size());
        placement.code[below(dice, problem.items.size())] = below(dice, problem.markers.size() + 1);
    }
    return placement;
}

/// A generated kitchen with things that the therapist has ruled out or pinned, packs side by side, and pairs
/// kept apart.
Problem withOverrules(Problem problem, std::mt19937_64 &dice) {
    for (ProblemItem &item : problem.items) {
        if (below(dice, 12) == 0)
            item.forbidden = {below(dice, problem.places.size())};
        if (below(dice, 20) == 0)
            item.runCm = 2 * item.widthCm;
        if (below(dice, 20) == 0)
            item.keep = 3;
        if (below(dice, 20) == 0)
            item.depthCm = 70;
    }
    std::set<std::pair<int, int>> apart;
    for (int pair = 0; pair < 5; ++pair) {
        const int i = below(dice, problem.items.size());
        const int j = below(dice, problem.items.size());
        if (i != j)
            apart.emplace(std::min(i, j), std::max(i, j));
    }
    problem.apart.assign(apart.begin(), apart.end());
    return problem;
}

Placement placed(int saltPlace, int sugarPlace, int vinegarPlace, int saltCode, int sugarCode) {
    return {{saltPlace, sugarPlace, vinegarPlace}, {saltCode, sugarCode, none}};
}

} // namespace

// Worked examples of the model of the objective, computed by full enumeration.

TEST(SecondCount, givesTheTermsOfTheFirstWorkedExample) {
    const Terms terms = secondCount(workedKitchen(), placed(shelfA, shelfA, shelfB, none, band)).terms;
    EXPECT_EQ(terms, (Terms{900, 0, 0, 1500, 152, 280}));
    EXPECT_EQ(terms.total(), 2832);
}

TEST(SecondCount, givesTheTermsOfRareUse) {
    Problem problem = workedKitchen();
    problem.items[salt].usesPerWeek = problem.items[sugar].usesPerWeek = 1;
    const Terms terms = secondCount(problem, placed(shelfA, shelfB, shelfA, none, none)).terms;
    EXPECT_EQ(terms, (Terms{300, 0, 0, 0, 0, 500}));
}

TEST(SecondCount, givesTheTermsWithoutMarkers) {
    const Terms terms = secondCount(workedKitchen(), placed(shelfA, shelfB, shelfA, none, none)).terms;
    EXPECT_EQ(terms, (Terms{1800, 0, 0, 0, 0, 3500}));
}

TEST(SecondCount, givesTheTermsOfAThingThatStaysPut) {
    Problem problem = workedKitchen();
    problem.items[sugar].current = shelfB;
    problem.items[sugar].keep = 2;
    const Terms terms = secondCount(problem, placed(shelfA, shelfB, shelfA, none, band)).terms;
    EXPECT_EQ(terms, (Terms{1800, 0, 0, 1500, 152, 70}));
}

TEST(SecondCount, findsTheShelfTooNarrow) {
    Problem problem = workedKitchen();
    problem.places[shelfA].widthCm = 15;
    EXPECT_EQ(secondCount(problem, placed(shelfA, shelfA, shelfA, none, none)).broken,
              std::vector<std::string>{"width 0"});
}

// The five practice kitchens: invented, with totals that were computed apart from this program.

class PracticeKitchen : public testing::TestWithParam<const char *> {};

TEST_P(PracticeKitchen, hasThePublishedTermsByBothCounts) {
    const auto planCase = check::readPlanCase(kitchens + GetParam() + ".json");
    const Placement best = check::readPlacement(kitchens + GetParam() + ".best.json", planCase);
    std::ifstream file(kitchens + GetParam() + ".best.json");
    const auto known = nlohmann::json::parse(file);
    const auto term = [&](const char *name) { return known.at("terms").at(name).get<MilliMinutes>(); };
    const SecondCount second = secondCount(planCase.problem, best);
    EXPECT_EQ(second.terms,
              (Terms{term("unary"), term("bay"), term("place"), term("type"), term("mark"), term("risk")}));
    EXPECT_EQ(second.terms.total(), known.at("objective").get<MilliMinutes>());
    EXPECT_THAT(second.broken, IsEmpty());
    expectTheSame(planCase.problem, best);
}

TEST_P(PracticeKitchen, isCountedAlikeInDisorder) {
    const auto planCase = check::readPlanCase(kitchens + GetParam() + ".json");
    const Placement best = check::readPlacement(kitchens + GetParam() + ".best.json", planCase);
    std::mt19937_64 dice(7);
    for (int round = 0; round < 5; ++round) {
        expectTheSame(planCase.problem, disturbed(best, planCase.problem, dice, 3));
        expectTheSame(planCase.problem, thrown(planCase.problem, dice));
    }
}

INSTANTIATE_TEST_SUITE_P(Five, PracticeKitchen,
                         testing::Values("kitchen-25-11", "kitchen-25-12", "kitchen-80-21", "kitchen-80-22",
                                         "kitchen-200-31"));

// Twenty generated kitchens.

struct Generated {
    std::uint64_t seed;
    int items;
};

class GeneratedKitchen : public testing::TestWithParam<Generated> {};

TEST_P(GeneratedKitchen, isCountedAlikeLegalOrNot) {
    std::mt19937_64 dice(GetParam().seed);
    const Problem plain = randomKitchen(GetParam().seed, GetParam().items);
    for (int round = 0; round < 4; ++round)
        expectTheSame(plain, thrown(plain, dice));
    const Problem overruled = withOverrules(plain, dice);
    for (int round = 0; round < 4; ++round)
        expectTheSame(overruled, thrown(overruled, dice));

    SolveOptions options;
    options.moves = 20'000;
    options.seeds = 1;
    options.threads = 1;
    const Solution solution = solve(plain, options);
    ASSERT_TRUE(solution.placement) << "the generator should leave room";
    EXPECT_THAT(secondCount(plain, *solution.placement).broken, IsEmpty());
    EXPECT_EQ(secondCount(plain, *solution.placement).terms, solution.terms);
    for (int changes : {0, 1, 2, 5, 10})
        expectTheSame(plain, disturbed(*solution.placement, plain, dice, changes));
    for (int changes : {1, 5})
        expectTheSame(overruled, disturbed(*solution.placement, overruled, dice, changes));
}

std::vector<Generated> twenty() {
    std::vector<Generated> all;
    for (std::uint64_t seed = 1; seed <= 20; ++seed)
        all.push_back({900 + seed, seed <= 8 ? 25 : seed <= 16 ? 80 : 200});
    return all;
}

INSTANTIATE_TEST_SUITE_P(Twenty, GeneratedKitchen, testing::ValuesIn(twenty()));

} // namespace model::fixtures
