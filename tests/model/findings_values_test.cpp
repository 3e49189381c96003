#include "model/marks.h"
#include "model/print_size.h"
#include "model/usable_marks.h"
#include "tests/model/fixtures.h"
#include "tests/model/found.h"
#include <algorithm>

namespace model::fixtures {

namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

} // namespace

// Sight.

TEST(Sight, takesTheBetterEyeWithGlassesAndNotTheBestWithout) {
    Measurement right = result(Kind::DistanceAcuity, "6/60", Side::Right);
    Measurement left = result(Kind::DistanceAcuity, "6/24", Side::Left);
    const Measurement without = result(Kind::DistanceAcuity, "6/12", Side::Left);
    right.withGlasses = left.withGlasses = true;
    const Findings findings = with({right, left, without});
    EXPECT_EQ(about(findings, "Distance acuity").answer, "logMAR 0.60");
    EXPECT_THAT(about(findings, "Distance acuity").because, HasSubstr("left eye, with the usual glasses"));
}

TEST(Sight, saysTheLabelSizesOfAnAcuityAtOnce) {
    // 0.602 logMAR at 60 cm, twice: x-height 6.98 mm; / 0.536 / 0.35278 = 36.9 point. At 40 cm 24.6. Formula
    // as in the label recipe, recomputed outside this program.
    const Findings findings = with({result(Kind::DistanceAcuity, "6/24", Side::Both)});
    EXPECT_EQ(about(findings, "Label size at 60 cm").answer, "about 37 point");
    EXPECT_EQ(about(findings, "Label size at 40 cm").answer, "about 25 point");
    EXPECT_EQ(about(findings, "Label size at 40 cm").sureness, Sureness::Estimated);
    EXPECT_THAT(about(findings, "Label size at 40 cm").because, HasSubstr("estimate until it is read"));
    EXPECT_EQ(findings.paperSize, Points{25});
    EXPECT_EQ(about(findings, "Print size of papers").sureness, Sureness::Estimated);
}

TEST(Sight, prefersTheNearAcuityForPrint) {
    Measurement nearby = result(Kind::NearAcuity, "4 M", Side::Both);
    nearby.distanceTyped = "40 cm";
    const Findings findings = with({result(Kind::DistanceAcuity, "6/6", Side::Both), nearby});
    EXPECT_EQ(findings.paperSize, Points{62}); // logMAR 1.0 at 40 cm, twice: 11.64 mm, 61.5 point
}

TEST(Sight, saysThatPrintWillNotDoAboveSeventyTwoPoint) {
    const Findings findings = with({result(Kind::DistanceAcuity, "3/60", Side::Both)});
    EXPECT_EQ(about(findings, "Print size of papers").answer, "print will not do");
    EXPECT_EQ(about(findings, "Label size at 60 cm").answer, "print will not do");
    EXPECT_FALSE(findings.readsLargePrint);
}

TEST(Sight, neverMakesPrintSmallerForAWorseAcuity) {
    double before = 0;
    bool stopped = false;
    for (int step = -30; step <= 150; ++step) {
        const auto size = printFor({step * 0.02}, {40}, 2);
        if (!size) {
            stopped = true;
            continue;
        }
        EXPECT_FALSE(stopped) << "print came back at a worse acuity";
        EXPECT_GE(size->value, before);
        EXPECT_LE(size->value, 72);
        before = size->value;
    }
    EXPECT_TRUE(stopped);
}

TEST(Sight, neverSizesPrintFromBelowTheChart) {
    for (const char *typed : {"CF at 1 m", "HM", "LP", "NLP"}) {
        const Findings findings = with({result(Kind::DistanceAcuity, typed, Side::Both)});
        for (const char *topic : {"Label size at 40 cm", "Label size at 60 cm", "Print size of papers"})
            EXPECT_EQ(about(findings, topic).answer, "print will not do") << typed;
        EXPECT_FALSE(findings.readsLargePrint) << typed;
    }
}

TEST(Sight, categorisesCountedFingersByTheDistanceBesideThem) {
    // WHO, ICD-10 (2010) H54: category 3 down to 1/60, or fingers counted at 1 m; 4 below.
    Measurement fingers = result(Kind::DistanceAcuity, "CF", Side::Both);
    fingers.distanceTyped = "30 cm";
    EXPECT_THAT(about(with({fingers}), "Category").answer, HasSubstr("category 4"));
    fingers.distanceTyped = "1 m";
    EXPECT_THAT(about(with({fingers}), "Category").answer, HasSubstr("category 3"));
    fingers.distanceTyped.clear();
    EXPECT_THAT(about(with({fingers}), "Category").answer, HasSubstr("category 3"));
}

TEST(Sight, takesThePrintThatWasReadInATrialBeforeTheAcuity) {
    Measurement trial = result(Kind::PreferredPrint, "32 point");
    trial.distanceTyped = "30 cm";
    const Findings findings = with({result(Kind::DistanceAcuity, "6/24", Side::Both), trial});
    EXPECT_EQ(findings.paperSize, Points{32});
    EXPECT_EQ(about(findings, "Print size of papers").from, std::vector<Id>{trial.id});
    EXPECT_FALSE(mentions(findings, "Contradiction"));
    EXPECT_EQ(with({result(Kind::PreferredPrint, "12")}).paperSize, Points{18});
}

TEST(Sight, keepsAndFlagsPrintThatTheAcuityCannotRead) {
    const Findings findings =
        with({result(Kind::DistanceAcuity, "6/120", Side::Both), result(Kind::PreferredPrint, "18 point")});
    EXPECT_THAT(about(findings, "Contradiction").because, HasSubstr("Check both"));
    EXPECT_EQ(findings.paperSize, Points{18});
    EXPECT_TRUE(mentions(with({result(Kind::DistanceAcuity, "HM"), result(Kind::PreferredPrint, "18")}),
                         "Contradiction"));
}

TEST(Sight, veryPoorContrastAsksForTouchOrSoundFirst) {
    const Findings findings =
        with({result(Kind::DistanceAcuity, "6/18", Side::Both), result(Kind::ContrastSensitivity, "0.45")});
    EXPECT_EQ(about(findings, "Contrast").answer, "very poor contrast");
    EXPECT_FALSE(findings.readsLargePrint);
    const Findings severe =
        with({result(Kind::DistanceAcuity, "6/18", Side::Both), result(Kind::ContrastSensitivity, "0.90")});
    EXPECT_THAT(about(severe, "Label size at 40 cm").because, HasSubstr("3 times"));
}

TEST(Sight, usesWhatWasToldOfSightBeforeTheAcuity) {
    EXPECT_FALSE(with({result(Kind::DistanceAcuity, "6/24"), result(Kind::UsableVision, "no")}).usableVision);
    EXPECT_TRUE(with({result(Kind::DistanceAcuity, "HM")}).usableVision);
    EXPECT_FALSE(with({result(Kind::DistanceAcuity, "LP")}).usableVision);
}

TEST(Sight, leavesOutResultsOlderThanAYear) {
    Measurement old = result(Kind::DistanceAcuity, "6/60", Side::Both);
    Measurement now = result(Kind::DistanceAcuity, "6/18", Side::Both);
    old.date = Date{std::chrono::year{2024}, std::chrono::month{1}, std::chrono::day{5}};
    now.date = visitDay;
    EXPECT_EQ(about(with({old, now}), "Distance acuity").answer, "logMAR 0.48");
}

// Touch.

TEST(Touch, reducedFeelingLowersSensitivityAndBansSharpAndRough) {
    const Findings findings = with(
        {result(Kind::Monofilament, "4.56", Side::Right), result(Kind::Monofilament, "4.31", Side::Left)});
    EXPECT_EQ(findings.touchSensitivity, 0.5);
    EXPECT_THAT(about(findings, "Sensitivity").because, HasSubstr("left"));
    EXPECT_THAT(findings.bannedMarks.at("grit"), HasSubstr("measured by filament"));
    EXPECT_EQ(about(findings, "Protective feeling").answer, "reduced");
    EXPECT_THAT(cautionWith(findings, "heat is never tested by hand").because,
                HasSubstr("although the answer was no"));
    EXPECT_LT(findings.acceptedMarks.size(), with({}).acceptedMarks.size());
}

TEST(Touch, normalFingersBanNothing) {
    const Findings findings = with(
        {result(Kind::Monofilament, "2.83", Side::Right), result(Kind::TwoPointStatic, "3", Side::Right)});
    EXPECT_EQ(findings.touchSensitivity, 1.0);
    EXPECT_THAT(findings.bannedMarks, IsEmpty());
    EXPECT_GE(findings.acceptedMarks.size(), 4u);
}

TEST(Touch, expectedMarksAreToldApartPairByPair) {
    for (const char *filament : {"2.83", "3.61", "4.31", "4.56"}) {
        const Findings findings = with({result(Kind::Monofilament, filament, Side::Right)});
        for (const std::string &a : findings.acceptedMarks)
            for (const std::string &b : findings.acceptedMarks)
                if (a != b) {
                    EXPECT_LT(confusion(*markerOf(a), *markerOf(b), findings.touchSensitivity), 0.05)
                        << a << " " << b;
                }
        EXPECT_EQ(about(findings, "Marks told apart").sureness, Sureness::NotMeasured);
    }
}

TEST(Touch, worseFeelingNeverLeavesMoreMarks) {
    std::size_t before = markerKit().size();
    for (const char *filament : {"2.83", "3.61", "4.31", "4.56", "6.65"}) {
        Case record = unworried("Invented", "I0");
        record.measurements = {result(Kind::Monofilament, filament, Side::Right)};
        const Findings findings = findingsOf(record, visitDay);
        EXPECT_LE(findings.acceptedMarks.size(), before) << filament;
        before = findings.acceptedMarks.size();
        const auto usable = usableMarks(record, findings);
        const auto touch = std::count_if(usable.begin(), usable.end(),
                                         [](const Marker &m) { return m.medium == MarkMedium::Touch; });
        EXPECT_EQ(static_cast<std::size_t>(touch), before) << "the plan uses what the findings expect";
    }
    EXPECT_LE(before, 1u);
}

TEST(Touch, acceptedMarksComeFromTheTestWithoutTheBannedOnes) {
    Case record = unworried("Invented", "I0");
    record.safety.answers[SafetyQuestion::Implant].answer = Answer::Yes;
    record.measurements = {result(Kind::AcceptedMarks, "Felt square, magnet strip, ribbed silicone band")};
    const Findings findings = findingsOf(record, visitDay);
    EXPECT_EQ(findings.acceptedMarks, (std::vector<std::string>{"felt", "ribbed-band"}));
    EXPECT_THAT(about(findings, "Marks told apart").because, HasSubstr("Left out for safety: magnet strip"));
}

TEST(Touch, wideTwoPointsWarnABrailleReader) {
    Case record = deafblindReader();
    EXPECT_THAT(about(findingsOf(record, visitDay), "Braille").because, Not(HasSubstr("5 mm")));
    record.measurements.push_back(result(Kind::TwoPointStatic, "7", Side::Right));
    EXPECT_THAT(about(findingsOf(record, visitDay), "Braille").because, HasSubstr("5 mm"));
}

// Reach.

TEST(Reach, isMeasuredBeforeItIsEstimatedAndEstimatedBeforeItIsUsual) {
    const Findings findings = with({result(Kind::Stature, "160 cm"), result(Kind::KnuckleHeight, "68 cm")});
    EXPECT_EQ(findings.knuckle, (ReachValue{{68}, Basis::Measured}));
    EXPECT_EQ(findings.shoulder.basis, Basis::Estimated);
    EXPECT_NEAR(findings.shoulder.value.value, 131.2, 1e-9);
    EXPECT_NEAR(findings.reachHigh.value.value, 188.8, 1e-9);
    EXPECT_NEAR(findings.reachLow.value.value, 22.4, 1e-9);
    EXPECT_EQ(about(findings, "Shoulder").sureness, Sureness::Estimated);
}

TEST(Reach, isSeatedIfANoteTellsOfAWheelchair) {
    Case record = unworried("Invented", "I0");
    record.safety.answers[SafetyQuestion::HandsFreeWalking] = {Answer::No, "Uses a wheelchair indoors", {}};
    Findings findings = findingsOf(record, visitDay);
    EXPECT_EQ(findings.reachHigh.value.value, 122); // ADA 2010 Standards, 308.3.1
    EXPECT_EQ(findings.reachLow.value.value, 38);
    record.safety.answers[SafetyQuestion::HandsFreeWalking].note = "no wheelchair";
    findings = findingsOf(record, visitDay);
    EXPECT_EQ(findings.reachHigh.value.value, 185);
}

TEST(Reach, staysWithinTheStretchZonesIfLookingUpMakesDizzy) {
    Case record = unworried("Invented", "I0");
    record.safety.answers[SafetyQuestion::DizzyLookingUpOrBending].answer = Answer::Yes;
    const Findings findings = findingsOf(record, visitDay);
    EXPECT_EQ(findings.reachLow.value.value, 40);
    EXPECT_EQ(findings.reachHigh.value.value, 160);
}

TEST(Reach, takesTheMeasuredLiftBeforeTheUsualLimit) {
    const Findings findings = with({result(Kind::SafeLift, "1.5")});
    EXPECT_EQ(findings.heavyLimit, Kilograms{1.5});
    EXPECT_EQ(findings.heavyLimitBasis, Basis::Measured);
    const Findings usual = with({});
    EXPECT_EQ(usual.heavyLimit, Kilograms{2.0});
    EXPECT_EQ(usual.heavyLimitBasis, Basis::Usual);
    EXPECT_THAT(about(usual, "Heavy things").source, HasSubstr("usual judgement"));
}

TEST(Reach, flagsHeightsThatContradictEachOther) {
    const Findings findings =
        with({result(Kind::KnuckleHeight, "100 cm"), result(Kind::ShoulderHeight, "90 cm")});
    EXPECT_THAT(about(findings, "Contradiction").answer, HasSubstr("knuckle"));
    EXPECT_EQ(findings.knuckle.value.value, 100) << "kept as typed";
}

} // namespace model::fixtures
