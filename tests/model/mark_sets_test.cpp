#include "model/mark_sets.h"
#include <gmock/gmock.h>
#include <random>

namespace model {

namespace {

using testing::ElementsAre;

using Pairs = std::vector<std::pair<std::size_t, std::size_t>>;

std::vector<MarkSet> allBut(std::size_t marks, const Pairs &refused) {
    std::vector<MarkSet> accepted(marks, (MarkSet{1} << marks) - 1);
    for (std::size_t a = 0; a < marks; ++a)
        accepted[a] &= ~(MarkSet{1} << a);
    for (const auto &[a, b] : refused) {
        accepted[a] &= ~(MarkSet{1} << b);
        accepted[b] &= ~(MarkSet{1} << a);
    }
    return accepted;
}

/// The largest set by growing each set mark by mark, smallest indices first.
void grow(const std::vector<MarkSet> &accepted, MarkSet set, std::size_t from, MarkSet &best) {
    if (sizeOf(set) > sizeOf(best))
        best = set;
    for (std::size_t mark = from; mark < accepted.size(); ++mark)
        if ((set & ~accepted[mark]) == 0)
            grow(accepted, set | (MarkSet{1} << mark), mark + 1, best);
}

} // namespace

TEST(LargestSet, takesTheSmallestIndicesOfEqualSets) {
    EXPECT_THAT(marksOf(largestSet(allBut(5, {{0, 1}, {2, 3}}))), ElementsAre(0, 2, 4));
}

TEST(LargestSet, isTheFirstMarkAloneIfNoPairIsAccepted) {
    EXPECT_THAT(marksOf(largestSet(std::vector<MarkSet>(4, 0))), ElementsAre(0));
}

TEST(LargestSet, isAllIfEveryPairIsAccepted) {
    EXPECT_EQ(sizeOf(largestSet(allBut(12, {}))), 12U);
}

TEST(LargestSet, isTheOneFoundByGrowingSets) {
    std::mt19937 random(7);
    for (int round = 0; round < 200; ++round) {
        Pairs refused;
        for (std::size_t a = 0; a < 9; ++a)
            for (std::size_t b = a + 1; b < 9; ++b)
                if (random() % 3 == 0)
                    refused.emplace_back(a, b);
        const auto accepted = allBut(9, refused);
        MarkSet grown = 0;
        grow(accepted, 0, 0, grown);
        EXPECT_EQ(largestSet(accepted), grown);
    }
}

TEST(LikeliestSet, hasTheLargestProductOfItsOpenPairs) {
    std::vector<MarkSet> accepted(3, 0);
    std::vector<std::vector<double>> good{{0, 0.5, 0.6}, {0.5, 0, 0.7}, {0.6, 0.7, 0}};
    EXPECT_THAT(marksOf(likeliestSet(accepted, good, 2).marks), ElementsAre(1, 2));
    EXPECT_NEAR(likeliestSet(accepted, good, 2).mostProbable, 0.7, 1e-12);
    EXPECT_NEAR(likeliestSet(accepted, good, 3).mostProbable, 0.5 * 0.6 * 0.7, 1e-12);
    accepted = {0b010, 0b001, 0};
    EXPECT_NEAR(likeliestSet(accepted, good, 3).mostProbable, 0.6 * 0.7, 1e-12);
}

TEST(LikeliestSet, looksOneMarkAheadIfAskedTo) {
    const std::vector<MarkSet> accepted(4, 0);
    // 0 and 1 are the surest pair, but no third mark goes with them; 1, 2, 3 go together.
    const std::vector<std::vector<double>> good{
        {0, 0.8, 0.1, 0.1}, {0.8, 0, 0.7, 0.7}, {0.1, 0.7, 0, 0.7}, {0.1, 0.7, 0.7, 0}};
    EXPECT_THAT(marksOf(likeliestSet(accepted, good, 2).marks), ElementsAre(0, 1));
    const LikelySet ahead = likeliestSet(accepted, good, 2, 1);
    EXPECT_THAT(marksOf(ahead.marks), ElementsAre(1, 2));
    EXPECT_NEAR(ahead.mostProbable, 0.8, 1e-12);
}

TEST(SurestLargestSet, takesTheSurestOfEquallyLargeSets) {
    const auto accepted = allBut(4, {{0, 1}, {2, 3}});
    std::vector<std::vector<double>> good(4, std::vector<double>(4, 0.95));
    EXPECT_THAT(marksOf(surestLargestSet(accepted, good)), ElementsAre(0, 2));
    good[1][3] = good[3][1] = 0.99;
    EXPECT_THAT(marksOf(surestLargestSet(accepted, good)), ElementsAre(1, 3));
}

TEST(LikeliestSet, takesTheSmallestIndicesOfEqualSets) {
    const std::vector<std::vector<double>> good(4, std::vector<double>(4, 0.5));
    EXPECT_THAT(marksOf(likeliestSet(std::vector<MarkSet>(4, 0), good, 2).marks), ElementsAre(0, 1));
}

} // namespace model
