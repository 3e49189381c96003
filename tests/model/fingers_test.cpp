#include "model/codec.h"
#include "model/fingers.h"
#include "model/touch_test_result.h"
#include "tests/model/fixtures.h"
#include "tests/model/found.h"

namespace model::fixtures {

namespace {

using testing::HasSubstr;
using testing::Not;

Measurement at(Side hand, const std::string &finger, Kind test, const std::string &typed) {
    Measurement one = result(test, typed, hand);
    one.finger = finger;
    return one;
}

} // namespace

TEST(Fingers, areNamedInFewWords) {
    EXPECT_EQ(fingerNamed("Index finger"), "index");
    EXPECT_EQ(fingerNamed(" thumb "), "thumb");
    EXPECT_EQ(fingerNamed("index, with a plaster"), "index, with a plaster");
    EXPECT_EQ(wordsOf(HandFinger{Side::Left, "ring"}), "left hand, ring");
    EXPECT_EQ(wordsOf(HandFinger{}), "hand not stated");
}

TEST(Fingers, theOneThatReadsIsOneFingerOfOneHand) {
    EXPECT_EQ(parseReadingFinger("Right index").value(), (HandFinger{Side::Right, "index"}));
    EXPECT_EQ(parseReadingFinger("thumb of the left hand").value(), (HandFinger{Side::Left, "thumb"}));
    EXPECT_EQ(parseReadingFinger("middle finger, right").value(), (HandFinger{Side::Right, "middle"}));
    for (const char *typed : {"", "right", "index", "right left index", "right index middle", "right toe"})
        EXPECT_EQ(parseReadingFinger(typed).error().code, ErrorCode::NotUnderstood) << typed;
    EXPECT_EQ(parseReadingFinger("toe").error().sentence,
              "Not one finger of one hand: toe. Try right index. Kept.");
}

TEST(Fingers, eachHasItsOwnFinding) {
    const Findings found = with({at(Side::Right, "index", Kind::Monofilament, "4.31"),
                                 at(Side::Right, "Thumb", Kind::Monofilament, "2.83")});
    EXPECT_EQ(about(found, "Feeling, right hand, index").answer, "diminished protective sensation");
    EXPECT_EQ(about(found, "Feeling, right hand, thumb").answer, "normal");
    EXPECT_EQ(about(found, "Protective feeling").answer, "reduced") << "in any finger";
}

TEST(Fingers, theBestOneCarriesTheMarksAndIsNamed) {
    const Findings found = with({at(Side::Right, "index", Kind::Monofilament, "4.31"),
                                 at(Side::Left, "middle", Kind::Monofilament, "2.83"),
                                 at(Side::Left, "middle", Kind::TwoPointStatic, "4 mm")});
    EXPECT_EQ(found.touchSensitivity, 1.0);
    EXPECT_THAT(about(found, "Sensitivity").because,
                HasSubstr("Of the best that was tested: left hand, middle."));
    EXPECT_EQ(about(found, "Sensitivity").from.size(), 2u);
}

TEST(Fingers, theOneThatReadsStandsBeforeTheBest) {
    std::vector<Measurement> results{at(Side::Right, "index", Kind::Monofilament, "4.31"),
                                     at(Side::Left, "middle", Kind::Monofilament, "2.83"),
                                     result(Kind::ReadingFinger, "right index")};
    EXPECT_EQ(with(results).touchSensitivity, 0.5);
    EXPECT_THAT(about(with(results), "Sensitivity").because,
                HasSubstr("Of the finger that reads: right hand, index."));
    results.back().typed = "right ring";
    EXPECT_EQ(with(results).touchSensitivity, 1.0);
    EXPECT_THAT(about(with(results), "Sensitivity").because,
                HasSubstr("The finger that reads (right hand, ring) was not tested."));
}

TEST(Fingers, brailleIsWarnedOfByTheFingerThatReads) {
    Case record = deafblindReader();
    record.measurements.push_back(at(Side::Right, "index", Kind::TwoPointStatic, "7"));
    record.measurements.push_back(at(Side::Left, "index", Kind::TwoPointStatic, "3"));
    const auto braille = [&] { return about(findingsOf(record, visitDay), "Braille").because; };
    EXPECT_THAT(braille(), Not(HasSubstr("5 mm"))) << "the best finger reads it";
    record.measurements.push_back(result(Kind::ReadingFinger, "right index"));
    EXPECT_THAT(braille(), HasSubstr("only above 5 mm (right hand, index)"));
}

TEST(Fingers, aMarkerTestBeginsWithTheOneThatReads) {
    Case record = unworried("Invented", "I0");
    EXPECT_EQ(newTouchTest(record, {"ridge", "grit"}, false, 1).finger, "");
    record.measurements.push_back(result(Kind::ReadingFinger, "left middle"));
    const TouchTestRecord test = newTouchTest(record, {"ridge", "grit"}, false, 1);
    EXPECT_EQ(test.finger, "middle");
    EXPECT_EQ(test.hand, Side::Left);
}

TEST(Chart, isKeptWithItsAcuityAndSaid) {
    Measurement acuity = result(Kind::DistanceAcuity, "6/24", Side::Both);
    EXPECT_THAT(about(with({acuity}), "Distance acuity").because, HasSubstr("The chart was not said."));
    acuity.chart = "tumbling E, single";
    const std::string because = about(with({acuity}), "Distance acuity").because;
    EXPECT_THAT(because, HasSubstr("Chart: tumbling E, single."));
    EXPECT_THAT(because, HasSubstr("Single signs can be read smaller"));
    acuity.chart = "letters in rows";
    EXPECT_THAT(about(with({acuity}), "Distance acuity").because, Not(HasSubstr("Single signs")));
    Case record = unworried("Invented", "I0");
    record.measurements = {acuity};
    EXPECT_EQ(fromRecords(toRecords(record)).value(), record);
}

} // namespace model::fixtures
