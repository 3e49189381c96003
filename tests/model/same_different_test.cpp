#include "model/same_different.h"
#include <gtest/gtest.h>

namespace model {

namespace {

struct SameRow {
    double criterion, distance, without, withLapse, confusion;
};

// Computed from Thurstone's formula and the differencing rule (Macmillan and Creelman, "Detection theory",
// 2005, chapter 9) in a second program with Phi by erfc; lapse 0 and 0.035.
const SameRow sameRows[] = {
    {0.7, 0, 0.3794, 0.3836, 0.5},       {0.7, 3.29, 0.0311, 0.0475, 0.0500},
    {1.2, 0, 0.6039, 0.6002, 0.5},       {1.2, 1, 0.4963, 0.4965, 0.3085},
    {1.2, 2, 0.2740, 0.2819, 0.1587},    {1.2, 3.29, 0.0690, 0.0841, 0.0500},
    {1.2, 4, 0.0237, 0.0404, 0.0228},    {1.7, 0, 0.7707, 0.7612, 0.5},
    {1.7, 3.29, 0.1302, 0.1432, 0.0500},
};

class SameAnswer : public testing::TestWithParam<SameRow> {};

struct AloneRow {
    double limit, prior;
    int same, trials;
};

// Regularised incomplete beta function, computed in a second program: fewest trials of one pair by itself for
// P(confusion < limit) >= 0.90.
const AloneRow aloneRows[] = {
    {0.05, 0.5, 0, 27}, {0.05, 0.5, 1, 62}, {0.05, 0.5, 2, 91}, {0.05, 1, 0, 44},
    {0.05, 1, 1, 76},   {0.05, 1, 2, 104},  {0.10, 0.5, 0, 13}, {0.10, 0.5, 1, 30},
    {0.10, 0.5, 2, 45}, {0.10, 1, 0, 21},   {0.10, 1, 1, 37},   {0.10, 1, 2, 51},
};

class PairAlone : public testing::TestWithParam<AloneRow> {};

} // namespace

TEST_P(SameAnswer, hasItsChance) {
    const SameRow &row = GetParam();
    EXPECT_NEAR(sameAnswer(row.distance, row.criterion, 0), row.without, 0.00005);
    EXPECT_NEAR(sameAnswer(row.distance, row.criterion, 0.035), row.withLapse, 0.00005);
    EXPECT_NEAR(confusionAt(row.distance), row.confusion, 0.00005);
}
INSTANTIATE_TEST_SUITE_P(DifferencingRule, SameAnswer, testing::ValuesIn(sameRows));

TEST_P(PairAlone, needsSoManyTrials) {
    const AloneRow &row = GetParam();
    EXPECT_EQ(fewestAlone(row.limit, row.prior, row.same, 0.90), row.trials);
}
INSTANTIATE_TEST_SUITE_P(IncompleteBeta, PairAlone, testing::ValuesIn(aloneRows));

TEST(PairAlone, reachesTheCertaintyWithTheLastTrialOnly) {
    EXPECT_NEAR(betaBelow(0.05, 0.5, 27.5), 0.9055, 0.00005);
    EXPECT_NEAR(betaBelow(0.05, 0.5, 26.5), 0.8992, 0.00005);
    EXPECT_NEAR(betaBelow(0.05, 1, 45), 0.9006, 0.00005);
    EXPECT_NEAR(betaBelow(0.10, 0.5, 13.5), 0.9053, 0.00005);
    EXPECT_NEAR(betaBelow(0.10, 1, 22), 0.9015, 0.00005);
}

TEST(Confusion, fallsBelowFivePercentAtTheDistanceOfTheFormula) {
    EXPECT_GT(confusionAt(3.2897), 0.05 - 1e-5);
    EXPECT_LT(confusionAt(3.2898), 0.05);
}

} // namespace model
