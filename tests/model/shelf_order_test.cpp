#include "model/shelf_order.h"
#include "model/solve.h"
#include "tests/model/random_kitchen.h"
#include <algorithm>
#include <gmock/gmock.h>

namespace {

using namespace model;
using namespace model::fixtures;

/// All on one shelf, unmarked.
Placement together(const Problem &problem) {
    return {std::vector<int>(problem.items.size(), 0), std::vector<int>(problem.items.size(), 0)};
}

/// By trying every row.
MilliMinutes leastByTrying(const Problem &problem, const Placement &placement) {
    std::vector<int> row(problem.items.size());
    for (std::size_t k = 0; k < row.size(); ++k)
        row[k] = static_cast<int>(k);
    MilliMinutes least = rowCost(problem, placement, 0, row);
    while (std::next_permutation(row.begin(), row.end()))
        least = std::min(least, rowCost(problem, placement, 0, row));
    return least;
}

TEST(ShelfRow, isTheCheapestOfAllRows) {
    for (std::uint64_t seed = 1; seed <= 8; ++seed) {
        const Problem problem = tinyKitchen(seed, 6);
        const Placement placement = together(problem);
        const std::vector<int> row = shelfRow(problem, placement, 0);
        EXPECT_EQ(rowCost(problem, placement, 0, row), leastByTrying(problem, placement))
            << "kitchen " << seed;
        std::vector<int> sorted = row;
        std::sort(sorted.begin(), sorted.end());
        EXPECT_THAT(sorted, testing::ElementsAre(0, 1, 2, 3, 4, 5));
    }
}

/// Fourteen things are more than are tried out; no worse than in the order of their names.
TEST(ShelfRow, ofManyThingsIsNoWorseThanByName) {
    const Problem problem = tinyKitchen(4, 14);
    const Placement placement = together(problem);
    const std::vector<int> row = shelfRow(problem, placement, 0);
    ASSERT_EQ(row.size(), 14U);
    std::vector<int> byName = row;
    std::sort(byName.begin(), byName.end(), [&](int a, int b) {
        const auto &one = problem.items[a], &other = problem.items[b];
        return std::tie(one.group, one.sub, one.name) < std::tie(other.group, other.sub, other.name);
    });
    EXPECT_LE(rowCost(problem, placement, 0, row), rowCost(problem, placement, 0, byName));
}

Problem threeJars() {
    Problem problem = tinyKitchen(1, 3);
    for (ProblemItem &item : problem.items) {
        item.group = "one";
        item.sub = "a";
        item.usesPerWeek = 0;
        item.areaX = problem.places[0].x - 2;
    }
    return problem;
}

TEST(ShelfRow, putsWhatIsUsedMostTowardsTheWork) {
    Problem problem = threeJars();
    for (ProblemItem &item : problem.items)
        item.shape = item.name; // nothing alike
    problem.items[2].usesPerWeek = 14;
    EXPECT_EQ(shelfRow(problem, together(problem), 0).front(), 2);
    for (ProblemItem &item : problem.items)
        item.areaX = problem.places[0].x + 2;
    EXPECT_EQ(shelfRow(problem, together(problem), 0).back(), 2);
}

/// Two look-alikes with another thing that can stand between them.
TEST(ShelfRow, putsAnotherThingBetweenLookAlikes) {
    Problem problem = threeJars();
    problem.items[1] = problem.items[0];
    problem.items[1].name = "twin";
    problem.items[2].shape = "box";
    problem.items[0].usesPerWeek = problem.items[1].usesPerWeek = 3;
    EXPECT_EQ(shelfRow(problem, together(problem), 0)[1], 2);
}

} // namespace
