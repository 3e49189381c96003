#include "tests/model/fixtures.h"
#include "tests/model/found.h"
#include <algorithm>
#include <set>

namespace model::fixtures {

namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::StartsWith;

} // namespace

// The five clients who break a naive program.

TEST(FiveClients, tubeFieldIsSizedModeratelyAndCategorisedByItsField) {
    const Findings findings = findingsOf(tubeField(), visitDay);
    EXPECT_THAT(about(findings, "Category").answer, HasSubstr("category 3"));
    EXPECT_THAT(about(findings, "Category").because, HasSubstr("By the field"));
    EXPECT_THAT(about(findings, "Field").answer, StartsWith("8 degrees"));
    EXPECT_THAT(about(findings, "Field").because, HasSubstr("not huge print"));
    EXPECT_EQ(findings.paperSize, Points{18});
    EXPECT_TRUE(findings.usableVision);
    EXPECT_THAT(cautionWith(findings, "head height").because, HasSubstr("8 degrees"));
}

TEST(FiveClients, deafblindReaderGetsNoMagnetNoSpeechButBraille) {
    const Findings findings = findingsOf(deafblindReader(), visitDay);
    EXPECT_TRUE(findings.readsBraille);
    EXPECT_FALSE(findings.readsLargePrint);
    EXPECT_FALSE(findings.usableVision);
    EXPECT_THAT(findings.bannedMarks.at("magnet"), HasSubstr("implant"));
    EXPECT_THAT(findings.bannedMarks.at("spoken-tag"), HasSubstr("answered no"));
    EXPECT_THAT(findings.acceptedMarks, Not(Contains("magnet")));
    EXPECT_THAT(cautionWith(findings, "No magnets").because, HasSubstr("cochlear"));
    EXPECT_EQ(about(findings, "Label size at 40 cm").answer, "print will not do");
    EXPECT_FALSE(findings.bannedMarks.contains("braille"));
}

TEST(FiveClients, varyingSightIsSizedForTheWorstDayAndNoPairIsAResult) {
    const Findings findings = findingsOf(variesByDay(), visitDay);
    EXPECT_EQ(about(findings, "Distance acuity").answer, "logMAR 0.90"); // 6/48
    EXPECT_THAT(about(findings, "Distance acuity").because, HasSubstr("worst of 3 recorded days"));
    EXPECT_THAT(findings.acceptedMarks, IsEmpty());
    EXPECT_EQ(about(findings, "Marks told apart").answer, "no pair");
    EXPECT_EQ(about(findings, "Marks told apart").sureness, Sureness::Measured);
    EXPECT_THAT(about(findings, "Marks told apart").because, HasSubstr("Test again"));
    EXPECT_TRUE(findings.bannedMarks.contains("grit"));
    EXPECT_EQ(findings.touchSensitivity, 0.5);
    EXPECT_THAT(cautionWith(findings, "Emergency medicine is never moved").because, HasSubstr("low-sugar"));
    EXPECT_TRUE(cautions(findings, "heat is never tested by hand"));
    EXPECT_TRUE(cautions(findings, "dietitian"));
}

TEST(FiveClients, sideNotAttendedToIsNeverTakenFromTheField) {
    const Findings findings = findingsOf(leftNotAttended(), visitDay);
    EXPECT_THAT(cautionWith(findings, "side that is attended to").because, HasSubstr("left"));
    EXPECT_EQ(about(findings, "Field").sureness, Sureness::NotMeasured);
    EXPECT_EQ(findings.heavyLimit, Kilograms{1.0});
    EXPECT_TRUE(cautions(findings, "fiddly"));

    Case halfField = unworried("Invented Field", "I7");
    halfField.measurements = {result(Kind::FieldExtent, "80")};
    EXPECT_FALSE(cautions(findingsOf(halfField, visitDay), "side that is attended to"));
}

TEST(FiveClients, coupleEachGetsHisOwnMediumAndBothTheStricterHome) {
    const Findings braille = findingsOf(coupleBraille(), visitDay);
    EXPECT_TRUE(braille.readsBraille);
    EXPECT_TRUE(cautions(braille, "Must avoid tree nuts"));
    EXPECT_TRUE(braille.children) << "dangers are locked away from an adult with memory loss";
    EXPECT_GT(braille.childReach.value, 250) << "height alone keeps nothing from an adult";

    const Findings print = findingsOf(coupleLargePrint(), visitDay);
    EXPECT_TRUE(print.readsLargePrint);
    EXPECT_EQ(print.paperSize, Points{28});
    EXPECT_EQ(about(print, "Print size of papers").sureness, Sureness::Measured);
    EXPECT_TRUE(cautions(print, "one meaning each"));
}

// Nothing known.

TEST(NothingKnown, givesNoMeasuredFindingAndNoZero) {
    const Findings findings = findingsOf(newCase("Invented", "I0"), visitDay);
    for (const Finding &finding : findings.all) {
        EXPECT_NE(finding.sureness, Sureness::Measured) << finding.topic;
        EXPECT_THAT(finding.from, IsEmpty()) << finding.topic;
    }
    EXPECT_FALSE(findings.usableVision);
    EXPECT_FALSE(findings.readsLargePrint);
    EXPECT_EQ(findings.paperSize, Points{18});
    EXPECT_EQ(findings.knuckle, (ReachValue{{75}, Basis::Usual}));
    EXPECT_EQ(findings.reachHigh, (ReachValue{{185}, Basis::Usual}));
    EXPECT_EQ(findings.heavyLimitBasis, Basis::Usual);
    EXPECT_TRUE(findings.children) << "not asked counts as yes";
}

TEST(NothingKnown, bansWhatAnUnaskedFactMightForbidAndSaysSo) {
    const Findings findings = findingsOf(newCase("Invented", "I0"), visitDay);
    for (const char *key : {"magnet", "one-band", "two-bands", "small-bump", "grit", "hooks", "spoken-tag"}) {
        ASSERT_TRUE(findings.bannedMarks.contains(key)) << key;
        EXPECT_THAT(findings.bannedMarks.at(key), HasSubstr("not asked")) << key;
    }
    EXPECT_FALSE(findings.bannedMarks.contains("ribbed-band"));
    EXPECT_FALSE(findings.bannedMarks.contains("braille"));
}

TEST(NothingKnown, everyQuestionIsACautionThatSaysItWasNotAsked) {
    const Findings findings = findingsOf(newCase("Invented", "I0"), visitDay);
    EXPECT_EQ(findings.cautions.size(),
              safetyQuestions().size() + 4); // three of the household, one of the diet
    for (const Caution &caution : findings.cautions)
        EXPECT_EQ(caution.because, "not asked") << caution.sentence;
}

TEST(NothingUntoward, leavesNoCautionAndBansNothing) {
    const Findings findings = findingsOf(unworried("Invented", "I0"), visitDay);
    EXPECT_THAT(findings.cautions, IsEmpty());
    EXPECT_THAT(findings.bannedMarks, IsEmpty());
    EXPECT_FALSE(findings.children);
}

TEST(EveryFinding, namesTopicAnswerReasonAndSource) {
    for (const Case &record : {tubeField(), deafblindReader(), variesByDay(), leftNotAttended(),
                               coupleBraille(), coupleLargePrint(), newCase("Invented", "I0")}) {
        for (const Finding &finding : findingsOf(record, visitDay).all) {
            EXPECT_FALSE(finding.topic.empty());
            EXPECT_FALSE(finding.answer.empty()) << finding.topic;
            EXPECT_FALSE(finding.because.empty()) << finding.topic;
            EXPECT_FALSE(finding.source.empty()) << finding.topic;
            if (finding.sureness == Sureness::Measured) {
                EXPECT_FALSE(finding.from.empty())
                    << finding.topic << " is said to be measured, but from nothing";
            }
        }
    }
}

// Properties over every test: one unread entry never becomes a number.

class AnyTest : public testing::TestWithParam<Kind> {};

TEST_P(AnyTest, notTestedIsKeptAsAReasonAndNeverAsAMeasurement) {
    Measurement skipped = result(GetParam(), "");
    skipped.notTestedBecause = "too tired";
    const Findings findings = with({skipped});
    Findings without = with({});
    EXPECT_TRUE(std::none_of(findings.all.begin(), findings.all.end(),
                             [](const Finding &f) { return f.sureness == Sureness::Measured; }));
    EXPECT_EQ(findings.knuckle, without.knuckle);
    EXPECT_EQ(findings.paperSize, without.paperSize);
    EXPECT_EQ(findings.acceptedMarks, without.acceptedMarks);
    EXPECT_EQ(readBack(skipped).value(), "not tested: too tired");
}

TEST_P(AnyTest, nonsenseIsSaidAndUsedForNothing) {
    if (GetParam() == Kind::Glare || GetParam() == Kind::ColourVision || GetParam() == Kind::Adaptation)
        return; // words are never nonsense
    const Measurement nonsense = result(GetParam(), "4o blurbs");
    EXPECT_EQ(readBack(nonsense).error().code, ErrorCode::NotUnderstood);
    EXPECT_THAT(readBack(nonsense).error().sentence, HasSubstr("4o blurbs"));
    EXPECT_THAT(readBack(nonsense).error().sentence, HasSubstr("Kept."));
    const Findings findings = with({nonsense});
    EXPECT_TRUE(std::any_of(findings.all.begin(), findings.all.end(), [](const Finding &f) {
        return f.answer == "not understood, so not used" && f.sureness == Sureness::NotMeasured;
    }));
    EXPECT_TRUE(std::none_of(findings.all.begin(), findings.all.end(),
                             [](const Finding &f) { return f.sureness == Sureness::Measured; }));
}

INSTANTIATE_TEST_SUITE_P(EveryTest, AnyTest, testing::ValuesIn([] {
                             std::vector<Kind> tests;
                             for (const TestInfo &one : testInfos())
                                 tests.push_back(one.test);
                             return tests;
                         }()));

TEST(Home, childrenReachAsHighAsWasMeasured) {
    Case record = unworried("Invented", "I0");
    record.household.children = Answer::Yes;
    record.household.childReach = Length{{115}, "115 cm", Basis::Measured};
    const Findings findings = findingsOf(record, visitDay);
    EXPECT_TRUE(findings.children);
    EXPECT_EQ(findings.childReach.value, 115);
    EXPECT_THAT(findings.bannedMarks.at("small-bump"), HasSubstr("children: answered yes"));
}

TEST(Cautions, standWithTheUrgentOnesFirst) {
    Case record = unworried("Invented", "I0");
    for (const SafetyQuestion question : {SafetyQuestion::Falls, SafetyQuestion::UrgentEyeSigns})
        record.safety.answers[question].answer = Answer::Yes;
    record.safety.answers[SafetyQuestion::SmokeAlarm] = {Answer::No, "battery taken out", {}};
    record.diet.avoids = {"gluten"};
    const Findings findings = findingsOf(record, visitDay);
    ASSERT_EQ(findings.cautions.size(), 4u);
    EXPECT_THAT(findings.cautions[0].sentence, HasSubstr("local codes"));
    EXPECT_EQ(findings.cautions[0].because, "answered no: battery taken out");
    EXPECT_THAT(findings.cautions[1].sentence, HasSubstr("same day"));
    EXPECT_TRUE(findings.cautions[0].urgent && findings.cautions[1].urgent);
    EXPECT_FALSE(findings.cautions[2].urgent || findings.cautions[3].urgent);
}

TEST(Cautions, eachQuestionHasASentenceOfItsOwn) {
    std::set<std::string> sentences;
    for (const SafetyQuestionText &text : safetyQuestions()) {
        Case record = unworried("Invented", "I0");
        record.safety.answers[text.question].answer = text.cautious;
        const Findings findings = findingsOf(record, visitDay);
        ASSERT_EQ(findings.cautions.size(), 1u) << text.asked;
        EXPECT_TRUE(sentences.insert(findings.cautions[0].sentence).second) << text.asked;
        EXPECT_EQ(findings.cautions[0].sentence.back(), '.');
    }
}

} // namespace model::fixtures
