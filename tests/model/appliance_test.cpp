#include "model/appliance_line.h"
#include "model/appliance_marks.h"
#include "model/demo.h"
#include "model/usable_marks.h"
#include <algorithm>
#include <gmock/gmock.h>

namespace model {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

constexpr Date on{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

Case withAppliance(const std::string &line, std::optional<Celsius> heat) {
    Case record = demo::idris();
    auto appliance = parseAppliance(line).value();
    appliance.id = {"appliance"};
    appliance.heat = heat;
    record.appliances = {appliance};
    return record;
}

/// A client who tells every mark of the kit apart.
Findings tellsAllApart(const Case &record) {
    Findings findings = findingsOf(record, on);
    for (const Marker &marker : markerKit())
        findings.acceptedMarks.push_back(marker.key);
    return findings;
}

ApplianceMarks marksOf(const Case &record) {
    return applianceMarks(record, tellsAllApart(record)).at(0);
}

TEST(ApplianceLine, isReadWithOneControlOrMore) {
    const auto oven = parseAppliance("oven: off, 180, 200");
    ASSERT_TRUE(oven);
    EXPECT_EQ(oven->name, "oven");
    ASSERT_EQ(oven->controls.size(), 1U);
    EXPECT_THAT(oven->controls[0].settings, ElementsAre("off", "180", "200"));
    const auto cooker = parseAppliance("cooker: left front ring: off, 3, 6; oven: off, 180");
    ASSERT_TRUE(cooker);
    ASSERT_EQ(cooker->controls.size(), 2U);
    EXPECT_EQ(cooker->controls[0].name, "left front ring");
    EXPECT_EQ(applianceLine(*cooker), "cooker: left front ring: off, 3, 6; oven: off, 180");
    EXPECT_EQ(parseAppliance(applianceLine(*cooker)), cooker);
}

struct Wrong {
    const char *line;
    const char *says;
};
class WrongAppliance : public testing::TestWithParam<Wrong> {};
INSTANTIATE_TEST_SUITE_P(Lines, WrongAppliance,
                         testing::Values(Wrong{"oven", "First the name, then a colon"},
                                         Wrong{": off", "First the name"}, Wrong{"oven:", "Which settings"},
                                         Wrong{"oven: off, OFF", "stands there twice"},
                                         Wrong{"cooker: off, 3; off, 180", "Two controls"},
                                         Wrong{"cooker: ring: ; oven: off", "No setting for ring"}));

TEST_P(WrongAppliance, isASentenceThatSaysWhatIsMissing) {
    const auto read = parseAppliance(GetParam().line);
    ASSERT_FALSE(read);
    EXPECT_THAT(read.error().sentence, HasSubstr(GetParam().says));
}

TEST(Heat, isReadInEitherScaleAndNeverGuessed) {
    EXPECT_DOUBLE_EQ(readHeat("65")->value().value, 65);
    EXPECT_NEAR(readHeat("167 F")->value().value, 75, 1e-9);
    EXPECT_FALSE(readHeat("").value().has_value());
    EXPECT_EQ(readHeat("hot").error().code, ErrorCode::NotUnderstood);
    EXPECT_EQ(readHeat("900 C").error().code, ErrorCode::OutOfRange);
}

/// Off and the two most used are marked [common practice].
TEST(ApplianceMarks, areOnOffAndTheFirstTwoOthers) {
    const ApplianceMarks marks = marksOf(withAppliance("oven: off, 180, 200, 220", Celsius{30}));
    ASSERT_EQ(marks.marks.size(), 3U);
    EXPECT_EQ(marks.marks[0].setting, "off");
    EXPECT_EQ(marks.marks[1].marker, marks.marks[2].marker);
    EXPECT_NE(marks.marks[0].marker, marks.marks[1].marker);
    EXPECT_THAT(marks.unmarked, ElementsAre("220"));
    EXPECT_THAT(marks.told, Contains(HasSubstr("At most three marks on one control")));
}

TEST(ApplianceMarks, offIsTheSameEverywhereAndNothingWithAMeaning) {
    Case record = withAppliance("oven: off, 180", Celsius{30});
    auto second = parseAppliance("washing machine: 30, stop").value();
    second.id = {"second"};
    record.appliances.push_back(second);
    const Findings findings = tellsAllApart(record);
    const auto all = applianceMarks(record, findings);
    EXPECT_EQ(all[0].marks[0].marker, all[1].marks[0].marker); // stop comes first
    EXPECT_EQ(all[1].marks[0].setting, "stop");
    for (const MeaningMark &mark : reservedMarks(record, usableMarks(record, findings), findings))
        for (const SettingMark &setting : all[0].marks)
            EXPECT_NE(setting.marker, mark.marker);
}

/// Raised dots soften above 70 C, paint and tape at 60 C [common practice].
TEST(ApplianceMarks, neverGoWhereItIsHotterThanTheyStand) {
    for (const double heat : {61.0, 69.0, 71.0, 120.0}) {
        const Case record = withAppliance("oven: off, 180", Celsius{heat});
        for (const SettingMark &mark : marksOf(record).marks)
            EXPECT_GT(markerOf(mark.marker)->heatLimit->value, heat);
    }
    const ApplianceMarks hot = marksOf(withAppliance("oven: off, 180", Celsius{120}));
    EXPECT_THAT(hot.marks, IsEmpty());
    EXPECT_THAT(hot.unmarked, ElementsAre("off", "180"));
    EXPECT_THAT(hot.told, Contains(HasSubstr("120 C was measured")));
}

TEST(ApplianceMarks, onWhatMayGetHotWaitForAThermometer) {
    EXPECT_THAT(marksOf(withAppliance("oven: off, 180", {})).told,
                Contains(HasSubstr("only where a thermometer shows less than 70 C")));
    EXPECT_THAT(marksOf(withAppliance("washing machine: off, 40", {})).told,
                Not(Contains(HasSubstr("thermometer"))));
}

TEST(ApplianceMarks, withNoMarkThatSticksSayWhatElseWillDo) {
    Case record = withAppliance("oven: off, 180", Celsius{30});
    Findings findings = findingsOf(record, on);
    findings.acceptedMarks.clear();
    const auto marks = applianceMarks(record, findings).at(0);
    EXPECT_THAT(marks.marks, IsEmpty());
    EXPECT_THAT(marks.told, Contains(HasSubstr("ask for help")));
    record.safety.answers.erase(SafetyQuestion::AdhesiveReaction);
    EXPECT_THAT(applianceMarks(record, findings).at(0).told, Contains(HasSubstr("was not asked about")));
}

TEST(ApplianceCautions, nameTheGasFitterUnlessThereIsNoGas) {
    Case record = demo::nora();
    EXPECT_THAT(applianceCautions(record), Contains(HasSubstr("electrician")));
    EXPECT_THAT(applianceCautions(record), Not(Contains(HasSubstr("gas fitter"))));
    record.safety.answers.erase(SafetyQuestion::GasHob);
    EXPECT_THAT(applianceCautions(record), Contains(HasSubstr("gas fitter")));
}

} // namespace
} // namespace model
