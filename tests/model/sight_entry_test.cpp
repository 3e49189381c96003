#include "model/contrast.h"
#include "model/field_loss.h"
#include "model/findings.h"
#include "model/notations.h"
#include "model/print_size.h"
#include "model/read_measurement.h"
#include "model/reading_trial.h"
#include "model/shelf_reach.h"
#include "model/typed.h"
#include "tests/model/fixtures.h"
#include "tests/model/found.h"
#include <cmath>
#include <gmock/gmock.h>

/// The entry of sight and reach: notations, the reading trial, parts of the field, contradictions, shelves.
namespace model {

namespace {

using fixtures::about;
using fixtures::Kind;
using fixtures::result;
using fixtures::with;
using testing::HasSubstr;

Measurement at40(Kind test, const std::string &typed) {
    Measurement one = result(test, typed);
    one.distanceTyped = "40 cm";
    return one;
}

double read(const std::string &typed, Centimetres distance) {
    const auto acuity = parseAcuity(typed, distance);
    EXPECT_TRUE(acuity && acuity->logMar) << typed;
    return acuity && acuity->logMar ? acuity->logMar->value : NAN;
}

} // namespace

TEST(Notations, roundTripToAThousandthOfALogMar) {
    for (int hundredths = -30; hundredths <= 200; ++hundredths) {
        const LogMar value{hundredths / 100.0};
        EXPECT_NEAR(read(snellenOf(value, 6), {40}), value.value, 1e-3);
        EXPECT_NEAR(read(snellenOf(value, 20), {40}), value.value, 1e-3);
        EXPECT_NEAR(read(typed::words(decimalOf(value), 6), {40}), value.value, 1e-3);
        EXPECT_NEAR(read(typed::words(value.value, 2) + " logMAR", {40}), value.value, 1e-3);
        for (const double distance : {25.0, 40.0, 100.0}) {
            EXPECT_NEAR(read(typed::words(mUnitsAt(value, {distance}), 5) + " M", {distance}), value.value,
                        1e-3);
            EXPECT_NEAR(read("N" + typed::words(nPointsAt(value, {distance}), 5), {distance}), value.value,
                        1e-3);
        }
        const auto letters = letterScoreOf(value);
        if (letters && *letters >= 1) {
            EXPECT_NEAR(read(typed::words(std::round(*letters), 0) + " letters", {40}), value.value, 0.0101);
        }
    }
}

TEST(Notations, sayOneAcuityInAllOfThem) {
    // 6/24 = 20/80 = 0.25 = 0.60 logMAR, 1.6 M at 40 cm: Bach, acuity cheat sheet. 55 letters: 85 - 50 logMAR
    // (from memory).
    EXPECT_EQ(allNotations(*parseAcuity("6/24", {}), Centimetres{40}),
              "6/24, 20/80, decimal 0.25, logMAR 0.60, 55 letters; at 40 cm 1.6 M, N13");
    EXPECT_EQ(allNotations(*parseAcuity("CF at 1 m", {}), Centimetres{40}), "counting fingers");
}

TEST(Notations, meanIsInLogMarAndNeverOfACategory) {
    // Bach, acuity cheat sheet: average logMAR. 6/6 and 6/60: 0.5, not the 0.26 of the mean decimal.
    const auto mean = meanAcuity({*parseAcuity("6/6", {}), *parseAcuity("6/60", {})});
    ASSERT_TRUE(mean);
    EXPECT_NEAR(mean->value, 0.5, 1e-9);
    EXPECT_FALSE(meanAcuity({*parseAcuity("6/6", {}), *parseAcuity("CF", {})}));
    EXPECT_FALSE(meanAcuity({}));
}

TEST(Print, isNeverSmallerForAWorseAcuity) {
    for (const double reserve : {1.0, 2.0, 3.0})
        for (const double distance : {25.0, 40.0, 60.0, 100.0}) {
            double before = 0;
            for (int hundredths = -30; hundredths <= 300; ++hundredths) {
                const auto size = printFor({hundredths / 100.0}, {distance}, reserve);
                const double points = size ? size->value : 1000; // none: more than any print
                EXPECT_GE(points, before) << hundredths;
                before = points;
            }
        }
}

TEST(Field, partsAreReadAndGiveASideToFavour) {
    EXPECT_EQ(*parseFieldLoss("Left half"), (FieldLoss{.left = true}));
    EXPECT_EQ(*parseFieldLoss("right and lower"), (FieldLoss{.right = true, .lower = true}));
    EXPECT_EQ(*parseFieldLoss("central loss"), (FieldLoss{.centre = true}));
    EXPECT_EQ(*parseFieldLoss("all round"), (FieldLoss{.around = true}));
    EXPECT_EQ(*parseFieldLoss("none"), FieldLoss{});
    EXPECT_FALSE(parseFieldLoss("leftovers"));
    EXPECT_THAT(adviceFor({.left = true}), HasSubstr("right, the seeing side"));
    EXPECT_THAT(adviceFor({.left = true}), HasSubstr("Stand a step left"));
    EXPECT_THAT(adviceFor({.right = true}), HasSubstr("left, the seeing side"));
    EXPECT_EQ(adviceFor({}), "");
}

TEST(Sight, flagsWhatCannotBothBeSoAndAdjustsNeither) {
    const Findings far = with({result(Kind::DistanceAcuity, "6/60"), at40(Kind::NearAcuity, "N5")});
    EXPECT_THAT(about(far, "Contradiction").answer, HasSubstr("more than three lines"));
    EXPECT_THAT(about(far, "Contradiction").because, HasSubstr("6/60"));
    EXPECT_THAT(about(far, "Contradiction").because, HasSubstr("N5"));
    const Findings print = with({result(Kind::DistanceAcuity, "6/360"), at40(Kind::PreferredPrint, "18")});
    EXPECT_THAT(about(print, "Contradiction").answer, HasSubstr("smaller than the acuity allows"));
    EXPECT_EQ(print.paperSize.value, 18);
}

namespace {

/// What a reader with these limits needs for each line, by the published curve.
std::vector<ReadSentence> readBy(double threshold, double critical, double maximum) {
    std::vector<ReadSentence> sentences;
    for (int tenths = 13; tenths >= 0; --tenths) {
        const double size = tenths / 10.0;
        const double speed =
            speedAt(std::pow(10.0, size), std::pow(10.0, threshold), std::pow(10.0, critical), maximum);
        if (speed <= 0) {
            sentences.push_back({{size}, 0, 10});
            break;
        }
        sentences.push_back({{size}, 600 / speed, 0});
    }
    return sentences;
}

} // namespace

TEST(ReadingTrial, findsTheLimitsFromWhichItsTimesWereMade) {
    // Curve of ARVO meeting abstract 2413112. The threshold lies on a line, as the acuity of whole sentences.
    for (const double critical : {0.5, 0.7, 0.9, 1.1})
        for (const double maximum : {45.0, 120.0, 210.0}) {
            const auto result = readingResult(readBy(0.3, critical, maximum));
            ASSERT_TRUE(result);
            EXPECT_NEAR(result->acuity.value, 0.4, 1e-9); // the last line that was read
            EXPECT_NEAR(result->critical->value, critical, 0.06);
            EXPECT_NEAR(*result->maximum / maximum, 1, 0.04);
            EXPECT_FALSE(result->stillRising);
        }
}

TEST(ReadingTrial, keepsItsLimitsWhenTimesVary) {
    auto sentences = readBy(0.3, 0.8, 120);
    double way = 1;
    for (ReadSentence &sentence : sentences)
        sentence.seconds *= 1 + 0.08 * (way = -way);
    const auto result = readingResult(sentences);
    EXPECT_NEAR(result->critical->value, 0.8, 0.1);
    EXPECT_NEAR(*result->maximum, 120, 10);
}

TEST(ReadingTrial, saysWhenItsPrintWasTooSmall) {
    auto sentences = readBy(0.3, 1.5, 100);
    EXPECT_TRUE(readingResult(sentences)->stillRising);
    const std::vector<ReadSentence> few{{{1.3}, 30, 5}, {{1.2}, 0, 10}};
    const auto result = readingResult(few);
    EXPECT_FALSE(result->critical);
    EXPECT_THAT(result->why, HasSubstr("Fewer than three"));
    EXPECT_NEAR(result->acuity.value, 1.35, 1e-9); // 1.4 - 0.1 x 2 + 0.01 x 15
}

TEST(ReadingTrial, readsItsLinesAndRefusesWhatCannotBe) {
    EXPECT_EQ(*parseReadLine({1.0}, "4.2"), (ReadSentence{{1.0}, 4.2, 0}));
    EXPECT_EQ(*parseReadLine({1.0}, "4,2 s, 1 wrong"), (ReadSentence{{1.0}, 4.2, 1}));
    EXPECT_EQ(*parseReadLine({1.0}, "4.2 3"), (ReadSentence{{1.0}, 4.2, 3}));
    EXPECT_EQ(*parseReadLine({1.0}, "not read"), (ReadSentence{{1.0}, 0, 10}));
    for (const char *wrong : {"", "slow", "4.2 cm", "4.2 s, many"})
        EXPECT_EQ(parseReadLine({1.0}, wrong).error().code, ErrorCode::NotUnderstood) << wrong;
    for (const char *wrong : {"0", "-4", "700", "4.2, 11", "4.2, 1.5"})
        EXPECT_EQ(parseReadLine({1.0}, wrong).error().code, ErrorCode::OutOfRange) << wrong;
    const auto sentences = readBy(0.3, 0.8, 120);
    const auto again = parseTrial(trialText(sentences));
    ASSERT_TRUE(again);
    ASSERT_EQ(again->size(), sentences.size());
    for (std::size_t i = 0; i < sentences.size(); ++i)
        EXPECT_NEAR((*again)[i].seconds, sentences[i].seconds, 0.0051);
    EXPECT_EQ(readingResult({{{1.3}, 4, 0}, {{1.1}, 4, 0}}).error().code, ErrorCode::NotUnderstood);
    EXPECT_EQ(readingResult({}).error().code, ErrorCode::Missing);
}

TEST(ReadingTrial, setsThePrintOfAllPapers) {
    const std::string trial = trialText(readBy(0.3, 0.9, 120));
    const Findings findings = with({at40(Kind::ReadingTrial, trial)});
    // 0.9 logMAR at 40 cm is 4.62 mm high (h = 2 d tan(angle / 2)); 0.536 em at 25.4/72 mm: 24.4 point.
    EXPECT_NEAR(findings.paperSize.value, 25, 1);
    EXPECT_TRUE(findings.readsLargePrint);
    EXPECT_THAT(about(findings, "Maximum reading speed").answer, HasSubstr("words a minute"));
    EXPECT_THAT(about(findings, "Print size of papers").because, HasSubstr("critical print size"));
    const Findings noDistance = with({result(Kind::ReadingTrial, trial)});
    EXPECT_THAT(about(noDistance, "Reading trial").because, HasSubstr("No distance"));
}

TEST(ReadingTrial, isNotSilentAboutASmallerSizeThatWasChosen) {
    Case record = newCase("made up", "X");
    record.measurements = {at40(Kind::ReadingTrial, trialText(readBy(0.5, 1.1, 120)))};
    record.client.media.printSize = Points{20};
    const Findings findings = findingsOf(record, *parseDate("2026-11-25"));
    EXPECT_EQ(findings.paperSize.value, 20);
    EXPECT_THAT(about(findings, "Contradiction").answer, HasSubstr("smaller than the reading trial"));
}

TEST(Shelves, areEasyAStretchOrOutOfReachWithTheReason) {
    Case record = newCase("made up", "X");
    record.measurements = {result(Kind::Stature, "160 cm")};
    Unit cupboard;
    cupboard.id = {"u"};
    cupboard.kind = UnitKind::WallCupboard;
    record.units = {cupboard};
    for (const double height : {10.0, 50.0, 100.0, 150.0, 200.0}) {
        Place place;
        place.id = {"p" + typed::words(height, 0)};
        place.unit = cupboard.id;
        place.height = Length{{height}, "", Basis::Measured};
        record.places.push_back(place);
    }
    const auto on = *parseDate("2026-11-25");
    const auto standing = shelfReaches(record, findingsOf(record, on));
    ASSERT_EQ(standing.size(), 5u);
    const ReachEase expected[] = {ReachEase::Out, ReachEase::Stretch, ReachEase::Easy, ReachEase::Stretch,
                                  ReachEase::Out};
    for (std::size_t i = 0; i < 5; ++i)
        EXPECT_EQ(standing[i].ease, expected[i]) << standing[i].because;
    EXPECT_THAT(standing[3].because, HasSubstr("shoulder (131 cm, estimated)"));
    // HSE, INDG143 rev 4: elbow to shoulder, arms out, women 7 kg; half of it for a frail person.
    EXPECT_THAT(standing[2].because, HasSubstr("kg with two hands"));
    // ADA 2010, 308.2.2: 112 cm over a worktop 60 cm deep.
    record.measurements = {result(Kind::Posture, "seated")};
    const auto seated = shelfReaches(record, findingsOf(record, on));
    EXPECT_EQ(seated[3].ease, ReachEase::Out);
    EXPECT_THAT(seated[3].because, HasSubstr("112 cm"));
}

TEST(Reach, addsTheSolesThatAreWornAtHome) {
    const Findings barefoot = with({result(Kind::Stature, "160 cm")});
    const Findings shod = with({result(Kind::Stature, "160 cm"), result(Kind::Soles, "3 cm")});
    EXPECT_NEAR(shod.shoulder.value.value - barefoot.shoulder.value.value, 3, 1e-9);
    EXPECT_NEAR(shod.reachHigh.value.value - barefoot.reachHigh.value.value, 3, 1e-9);
    EXPECT_NEAR(barefoot.eye.value.value, 160 * 0.936, 1e-9); // Drillis & Contini 1966
    EXPECT_EQ(readSoles("40 cm").error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(readPosture("lying").error().code, ErrorCode::NotUnderstood);
}

} // namespace model
