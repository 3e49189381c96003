#include "model/evaluate.h"
#include "model/kit.h"
#include "model/planning.h"
#include "model/supplies.h"
#include "model/together.h"
#include "model/usable_marks.h"
#include "tests/model/fixtures.h"
#include "tests/model/visit_clients.h"
#include <algorithm>
#include <gmock/gmock.h>

/// Two clients in one kitchen. That the stricter rule of each holds is common practice.
namespace {

using namespace model;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

constexpr Date on{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

Case braille() {
    return fixtures::visitClients().at(4);
}

Case print() {
    return fixtures::visitClients().at(5);
}

Together couple() {
    return together(braille(), print(), on);
}

Case withPlan(const Together &both) {
    SolveOptions options;
    options.moves = 60'000;
    Case record = both.record;
    record.plan = makePlan(record, both.findings, options, on).value();
    return record;
}

TEST(Together, takesTheCautiousAnswerOfEach) {
    const Together both = couple();
    EXPECT_EQ(both.record.safety.answer(SafetyQuestion::MemoryDifficulty), Answer::Yes);
    EXPECT_THAT(both.record.diet.avoids, Contains("nuts"));
    EXPECT_TRUE(both.findings.children) << "dangers are locked away from an adult with memory loss";
    Case keeper = braille(), partner = print();
    partner.safety.answers.erase(SafetyQuestion::Implant);
    EXPECT_TRUE(together(keeper, partner, on).record.safety.cautious(SafetyQuestion::Implant));
    keeper.safety.answers[SafetyQuestion::LatexAllergy] = {Answer::Yes, "", std::nullopt};
    for (const Marker &marker :
         usableMarks(together(keeper, partner, on).record, together(keeper, partner, on).findings))
        EXPECT_FALSE(marker.latex || marker.magnetic) << marker.name;
}

TEST(Together, takesTheNarrowerReachAndTheLighterLoad) {
    Case keeper = braille(), partner = print();
    keeper.measurements.push_back(fixtures::result(model::Test::ReachHigh, "190 cm", Side::NotStated));
    partner.measurements.push_back(fixtures::result(model::Test::ReachHigh, "150 cm", Side::NotStated));
    keeper.measurements.push_back(fixtures::result(model::Test::SafeLift, "1 kg", Side::NotStated));
    const Findings both = together(keeper, partner, on).findings;
    EXPECT_EQ(both.reachHigh.value, Centimetres{150});
    EXPECT_EQ(both.heavyLimit, Kilograms{1});
}

TEST(Together, hasOneLegalPlanWithEachLabelInTwoMedia) {
    const Together both = couple();
    const Case record = withPlan(both);
    ASSERT_EQ(record.plan->lines.size(), record.things.size());
    const auto built = planProblem(record, both.findings).value();
    EXPECT_TRUE(brokenRules(built.problem, shownPlacement(built, *record.plan).value()).empty());
    const Case first = ownShare(braille(), findingsOf(braille(), on), record);
    const Case second = ownShare(print(), findingsOf(print(), on), record);
    int labels = 0;
    for (std::size_t k = 0; k < record.plan->lines.size(); ++k) {
        const PlanLine &a = first.plan->lines[k], &b = second.plan->lines[k];
        EXPECT_EQ(a.place, b.place);
        if (const Marker *marker = markerIn(first, a.marker);
            marker && marker->medium == MarkMedium::Braille) {
            ++labels;
            EXPECT_EQ(markerIn(second, b.marker)->medium, MarkMedium::LargePrint);
        } else {
            EXPECT_EQ(a.marker, b.marker);
        }
    }
    EXPECT_GT(labels, 0);
    EXPECT_EQ(second.client.name, print().client.name);
    EXPECT_EQ(second.safety.answers, print().safety.answers) << "records stay apart";
}

TEST(Together, buysBothLabelsAndCountsBothInMinutes) {
    const Together both = couple();
    const Case record = withPlan(both);
    std::vector<std::string> names;
    for (const Supply &supply : supplies(record, both.findings))
        names.push_back(supply.name);
    EXPECT_THAT(names, Contains("braille label and large-print label"));
    const Marker *label = markerIn(record, "braille");
    EXPECT_DOUBLE_EQ(label->fixMinutes,
                     markerOf("braille")->fixMinutes + markerOf("large-print")->fixMinutes);
}

TEST(Together, namesWhatClashes) {
    const auto &clashes = couple().clashes;
    EXPECT_THAT(clashes, Contains(HasSubstr("reads braille, Invented Partner Two large print")));
    EXPECT_THAT(clashes, Contains(HasSubstr("Invented Partner One must avoid tree nuts")));
    EXPECT_THAT(clashes, Contains(HasSubstr("none in the house, if both agree")));
    EXPECT_THAT(clashes, Contains(HasSubstr("at most 3 for both")));
    EXPECT_THAT(clashes, Contains(HasSubstr("lock that opens by touch")));
}

TEST(Together, namesHeightsThatSuitOnlyOne) {
    Case keeper = braille(), partner = print();
    keeper.measurements.push_back(fixtures::result(model::Test::ReachLow, "120 cm", Side::NotStated));
    partner.measurements.push_back(fixtures::result(model::Test::ReachHigh, "110 cm", Side::NotStated));
    EXPECT_THAT(together(keeper, partner, on).clashes, Contains(HasSubstr("No height is in reach of both")));
}

TEST(Together, clashesAreToldWithoutAllergyWhereBothAvoidTheSame) {
    Case partner = print();
    partner.diet.avoids = {"nuts"};
    EXPECT_THAT(together(braille(), partner, on).clashes, Not(Contains(HasSubstr("must avoid"))));
}

TEST(Together, marksAreThoseThatBothTellApart) {
    Case keeper = braille(), partner = print();
    keeper.measurements.push_back(fixtures::result(model::Test::AcceptedMarks,
                                                   "small bump, large bump, knotted cord", Side::NotStated));
    partner.measurements.push_back(fixtures::result(model::Test::AcceptedMarks, "none", Side::NotStated));
    const Together both = together(keeper, partner, on);
    EXPECT_TRUE(both.findings.acceptedMarks.empty());
    EXPECT_THAT(both.clashes, Contains(HasSubstr("No pair of touch marks is told apart by both")));
    EXPECT_EQ(withPlan(both).plan->lines.size(), both.record.things.size());
}

} // namespace
