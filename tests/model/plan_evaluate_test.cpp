#include "model/coefficients.h"
#include "model/evaluate.h"
#include "tests/check/json_field.h"
#include "tests/check/plan_files.h"
#include "tests/model/worked_kitchen.h"
#include <gmock/gmock.h>

namespace {

using namespace model;
using namespace model::fixtures;
using testing::ElementsAre;
using testing::IsEmpty;

struct AlikeCase {
    const char *name;
    const char *shape;
    double width, height, weight, measure;
};
class Alike : public testing::TestWithParam<AlikeCase> {};

TEST_P(Alike, agreesWithTheComputedChecks) {
    ProblemItem jar = workedKitchen().items[salt];
    ProblemItem other = jar;
    other.shape = GetParam().shape;
    other.widthCm = GetParam().width;
    other.heightCm = GetParam().height;
    other.weightKg = GetParam().weight;
    EXPECT_NEAR(alike(jar, other), GetParam().measure, 0.00005);
    EXPECT_DOUBLE_EQ(alike(jar, other), alike(other, jar));
}

// Computed apart from this program, against a jar 7 cm wide, 10 cm high, 0.4 kg, sound 0.5.
INSTANTIATE_TEST_SUITE_P(Checks, Alike,
                         testing::Values(AlikeCase{"same", "jar", 7, 10, 0.4, 1.0},
                                         AlikeCase{"wider", "jar", 8, 10, 0.4, 0.6065},
                                         AlikeCase{"higher", "jar", 7, 12, 0.4, 0.6065},
                                         AlikeCase{"heavier", "jar", 7, 10, 0.8, 0.1407},
                                         AlikeCase{"can", "can", 7, 10, 0.4, 0.25},
                                         AlikeCase{"bottle", "bottle", 8, 12, 0.4, 0.1104},
                                         AlikeCase{"other shape", "box", 7, 10, 0.4, 0.0}),
                         [](const auto &param) {
                             std::string name = param.param.name;
                             std::erase(name, ' ');
                             return name;
                         });

TEST(AlikeMeasure, isNothingInAnotherStorageAndBelowOneTwentieth) {
    const ProblemItem jar = workedKitchen().items[salt];
    ProblemItem cold = jar;
    cold.storage = ProblemStorage::Fridge;
    EXPECT_EQ(alike(jar, cold), 0.0);
    ProblemItem wide = jar;
    wide.widthCm = 9.44; // exp(-0.5 * 2.44^2) = 0.0510, computed
    EXPECT_GT(alike(jar, wide), 0.05);
    wide.widthCm = 9.45; // 0.0497
    EXPECT_EQ(alike(jar, wide), 0.0);
}

// Coefficients of the worked examples, mmin a week; computed apart from this program.
TEST(Coefficients, areThoseOfTheWorkedExamples) {
    const Problem problem = workedKitchen();
    EXPECT_EQ(itemPlaceCost(problem, salt, shelfA), 350);
    EXPECT_EQ(itemPlaceCost(problem, salt, shelfB), 1400);
    EXPECT_EQ(itemPlaceCost(problem, vinegar, shelfA), 50);
    EXPECT_EQ(itemPlaceCost(problem, vinegar, shelfB), 200);
    EXPECT_EQ(pairCost(problem, salt, sugar), 14000);
    EXPECT_EQ(markCost(problem, salt, dot), 222);
    EXPECT_EQ(markCost(problem, salt, band), 152);
    EXPECT_EQ(typeCost(problem, dot), 1500);
    Problem breakable = problem;
    breakable.items[salt].glass = true;
    EXPECT_EQ(itemPlaceCost(breakable, salt, shelfB), 2450);
}

TEST(Coefficients, areRoundedOnceForAllPartsOfAPlace) {
    Problem problem = workedKitchen();
    problem.client.usableVision = true;
    problem.places[shelfA].lit = false;
    problem.items[salt].usesPerWeek = 0.01;
    problem.places[shelfA].x = 1.1; // 0.55 walked and 0.5 in the dark: 1.05; apart 1 and 1
    EXPECT_EQ(itemPlaceCost(problem, salt, shelfA), 1);
}

TEST(Coefficients, countAPairThatDiffersInMeaningByWhatTheMeaningMarkLeaves) {
    Problem problem = workedKitchen();
    problem.items[sugar].hazard = true; // 14000 / 5 * 30 * 0.03
    EXPECT_EQ(pairCost(problem, salt, sugar), 2520);
    problem.items[sugar].hazard = false;
    problem.items[sugar].allergen = true;
    EXPECT_EQ(pairCost(problem, salt, sugar), 14000) << "not an allergen that this client avoids";
    problem.client.avoidsAllergen = true;
    EXPECT_EQ(pairCost(problem, salt, sugar), 2520);
}

TEST(Near, isTheNextShelfOfTheBayByHeight) {
    Problem problem = workedKitchen();
    ProblemPlace between = problem.places[shelfA];
    between.heightCm = 140;
    ProblemPlace elsewhere = between;
    elsewhere.bay = 7;
    problem.places.push_back(between);
    problem.places.push_back(elsewhere);
    EXPECT_THAT(nearQuarters(problem), ElementsAre(ElementsAre(4, 0, 1, 0), ElementsAre(0, 4, 1, 0),
                                                   ElementsAre(1, 1, 4, 0), ElementsAre(0, 0, 0, 4)));
}

class Practice : public testing::TestWithParam<const char *> {};

// The five invented kitchens and plans: see data/plan-cases/README.md.
TEST_P(Practice, evaluatesTheBestKnownPlanToTheSameTerms) {
    const std::string stem = std::string(FELTMARK_TEST_DATA "/plan-cases/kitchen-") + GetParam();
    const check::PlanCase planCase = check::readPlanCase(stem + ".json");
    const Placement best = check::readPlacement(stem + ".best.json", planCase);
    const nlohmann::json expected = check::readJson(stem + ".best.json");
    const nlohmann::json &terms = expected["terms"];
    EXPECT_EQ(evaluate(planCase.problem, best), (Terms{terms["unary"], terms["bay"], terms["place"],
                                                       terms["type"], terms["mark"], terms["risk"]}));
    EXPECT_EQ(evaluate(planCase.problem, best).total(), expected["objective"].get<MilliMinutes>());
    EXPECT_THAT(brokenRules(planCase.problem, best), IsEmpty());
}

INSTANTIATE_TEST_SUITE_P(Kitchens, Practice, testing::Values("25-11", "25-12", "80-21", "80-22", "200-31"),
                         [](const auto &param) {
                             std::string name = param.param;
                             name.replace(name.find('-'), 1, "_");
                             return name;
                         });

TEST(NaturalFigures, countUsesMetresAndMarks) {
    Problem problem = workedKitchen();
    problem.items[sugar].current = shelfB;
    const NaturalFigures figures =
        naturalFigures(problem, {{shelfA, shelfA, shelfB}, {none, band, none}}); // by hand
    EXPECT_NEAR(figures.wrongPicksPerWeek, 0.10 * 14 * 0.02, 1e-9);
    EXPECT_DOUBLE_EQ(figures.awkwardReachesPerWeek, 1);
    EXPECT_DOUBLE_EQ(figures.metresPerWeek, 30);
    EXPECT_EQ(figures.moved, 1);
    EXPECT_EQ(figures.markerTypes, 1);
    EXPECT_EQ(figures.marked, 1);
    EXPECT_DOUBLE_EQ(figures.baysPerGroup, 1);
}

TEST(NaturalFigures, showNoMoreWrongPicksThanUses) {
    Problem problem = workedKitchen();
    problem.places[shelfA].widthCm = 200;
    problem.items.assign(20, problem.items[salt]); // the sum over pairs would give 1.9 wrong picks a use
    const NaturalFigures figures =
        naturalFigures(problem, {std::vector<int>(20, shelfA), std::vector<int>(20, none)});
    EXPECT_NEAR(figures.wrongPicksPerWeek, 20 * 7, 1e-9);
}

} // namespace
