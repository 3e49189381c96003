#include "model/demo.h"
#include "model/progress.h"
#include <gmock/gmock.h>

namespace {

using namespace model;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

constexpr Date on{std::chrono::year{2026}, std::chrono::month{12}, std::chrono::day{2}};
constexpr double usual = 0.3;

struct Score {
    std::vector<int> levels;
    std::vector<double> weights; // empty: equal
    double t;
};
class AttainmentT : public testing::TestWithParam<Score> {};

TEST_P(AttainmentT, isThatOfTheFormula) {
    std::vector<std::pair<double, int>> goals;
    for (std::size_t k = 0; k < GetParam().levels.size(); ++k)
        goals.emplace_back(GetParam().weights.empty() ? 1 : GetParam().weights[k], GetParam().levels[k]);
    EXPECT_NEAR(*attainmentT(goals, usual), GetParam().t, 0.00005);
}

// Kiresuk & Sherman 1968, T = 50 + 10 sum(w x) / sqrt((1 - rho) sum(w^2) + rho (sum w)^2), worked by hand.
// The row with six weights takes the published example of the R package gasr.
INSTANTIATE_TEST_SUITE_P(
    Formula, AttainmentT,
    testing::Values(Score{{0}, {}, 50.0}, Score{{1}, {}, 60.0}, Score{{-2}, {}, 30.0},
                    Score{{0, 0, 0}, {}, 50.0}, Score{{1, 1}, {}, 62.4035}, Score{{1, 1, 1}, {}, 63.6931},
                    Score{{-1, -1, -1}, {}, 36.3069}, Score{{2, 1, 0}, {}, 63.6931},
                    Score{{1, 0, -1}, {}, 50.0}, Score{{0, 0, 0, 0, 1}, {}, 53.0151},
                    Score{{-1, -1, -1}, {1, 2, 3}, 36.7804}, Score{{0, 1, 2}, {1, 2, 3}, 67.6261},
                    Score{{2, 1, 0}, {1, 2, 3}, 58.8131}, Score{{1, -1}, {9, 1}, 58.5573},
                    Score{{-1, 0, 1}, {20, 30, 50}, 53.9876},
                    Score{{-2, 0, -1, 2, 0, 1}, {3, 5, 1, 4, 2, 6}, 55.0}, Score{{2, 2, 2, 2}, {}, 79.0191},
                    Score{{-1, -2}, {}, 31.3948}));

// Published medians and quartiles of 243 patients (PubMed 20026573, 2010) that equal weights reproduce.
TEST(AttainmentTPublished, medianBaselinesAreReproduced) {
    const auto allAt = [](int goals, int level) {
        return *attainmentT(std::vector<std::pair<double, int>>(static_cast<std::size_t>(goals), {1, level}),
                            usual);
    };
    EXPECT_NEAR(allAt(4, -2), 21.0, 0.05);
    EXPECT_NEAR(allAt(3, -2), 22.6, 0.05);
    EXPECT_NEAR(allAt(5, -2), 19.8, 0.06);
    EXPECT_NEAR(allAt(5, -1), 34.9, 0.05);
    EXPECT_NEAR(allAt(4, -1), 35.5, 0.05);
}

struct Equal {
    int goals;
    double allMinusTwo, allPlusOne;
};
class EqualWeights : public testing::TestWithParam<Equal> {};

TEST_P(EqualWeights, dependOnTheNumberOfGoals) {
    const auto allAt = [](int level) {
        return std::vector<std::pair<double, int>>(static_cast<std::size_t>(GetParam().goals), {1, level});
    };
    EXPECT_NEAR(*attainmentT(allAt(-2), usual), GetParam().allMinusTwo, 0.005);
    EXPECT_NEAR(*attainmentT(allAt(1), usual), GetParam().allPlusOne, 0.005);
}

// The same formula with equal weights: 50 + x n 10 / sqrt(0.7 n + 0.3 n^2), worked by hand.
INSTANTIATE_TEST_SUITE_P(Formula, EqualWeights,
                         testing::Values(Equal{1, 30.00, 60.00}, Equal{2, 25.19, 62.40},
                                         Equal{3, 22.61, 63.69}, Equal{4, 20.98, 64.51},
                                         Equal{5, 19.85, 65.08}, Equal{6, 19.02, 65.49},
                                         Equal{7, 18.38, 65.81}, Equal{8, 17.87, 66.06},
                                         Equal{9, 17.46, 66.27}, Equal{10, 17.12, 66.44}));

TEST(AttainmentTEdge, weightsThatAreAllZeroCountAsOne) { // as in the R package gasr
    EXPECT_NEAR(*attainmentT({{0, 1}, {0, 1}}, usual), 62.4035, 0.00005);
    EXPECT_FALSE(attainmentT({}, usual).has_value());
}

TEST(AttainmentTEdge, onlyRatiosOfWeightsMatter) {
    EXPECT_NEAR(*attainmentT({{1, 2}, {3, -1}}, usual), *attainmentT({{10, 2}, {30, -1}}, usual), 1e-12);
}

TEST(GoalProgress, showsInTheDemoWithFourVisits) {
    const Case record = demo::tilda();
    const auto progress = goalProgress(record);
    ASSERT_EQ(progress.size(), 3U);
    EXPECT_EQ(progress[0].levels.size(), 4U);
    EXPECT_EQ(progress[0].sentence, "Two levels below what was expected at first, one above it now.");
    EXPECT_EQ(progress[1].sentence, "One level below what was expected at first, at it now.");
    // Levels 1, 0, 0 of three goals of equal weight, by the formula: 50 + 4.5644.
    EXPECT_NEAR(*attainmentNow(record), 54.5644, 0.00005);
}

TEST(GoalProgress, oneRatingIsNoChange) {
    const auto progress = goalProgress(demo::idris());
    EXPECT_THAT(progress.front().sentence, HasSubstr("One rating"));
    Case record = demo::idris();
    record.ratings.clear();
    EXPECT_EQ(goalProgress(record).front().sentence, "Not rated yet.");
    EXPECT_FALSE(attainmentNow(record).has_value());
}

TEST(OpenItems, nameWhatWasNotAskedNotTestedAndIsDue) {
    const auto nora = openItems(demo::nora(), on);
    EXPECT_THAT(nora, Contains("Carried over: Marker test; practice with the hob."));
    EXPECT_THAT(nora, Contains(HasSubstr("Not asked: Allergy to latex")));
    EXPECT_THAT(nora, Contains(HasSubstr("Not tested: Marks told apart")));
    EXPECT_THAT(nora, Contains(HasSubstr("again, given at an earlier visit")));
    EXPECT_THAT(nora, Contains("No plan yet."));
    const auto tilda = openItems(demo::tilda(), on); // her review was on 1 December
    EXPECT_THAT(tilda, Contains(HasSubstr("Goal due since 1 December 2026: By 1 December Tilda takes")));
}

TEST(OpenItems, sayWhenNoMarkIsLeftForADanger) {
    Case record = demo::idris();
    record.plan = Plan{};
    record.plan->lines.emplace_back();
    record.plan->meaningMarks = {{"allergen", "cord"}};
    EXPECT_THAT(openItems(record, on), Contains(HasSubstr("No mark is left that means hazard.")));
    EXPECT_THAT(openItems(record, on), Not(Contains(HasSubstr("means allergen"))));
}

TEST(OpenItems, areFewOnceAllIsDone) {
    Case record = demo::tilda();
    record.visits.back().carriedOver.clear();
    record.plan = Plan{};
    record.plan->lines.emplace_back();
    record.plan->meaningMarks = {{"hazard", "ridge"}, {"allergen", "cord"}, {"diet:no sugar", "bump-row"}};
    for (auto &[question, answer] : record.safety.answers)
        answer.asked = on;
    for (auto &goal : record.goals)
        goal.review = addDays(on, 30);
    EXPECT_THAT(openItems(record, on), testing::ElementsAre(HasSubstr("Not tested: Stature")));
}

} // namespace
