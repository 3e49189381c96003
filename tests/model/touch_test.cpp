#include "model/marks.h"
#include "model/touch.h"
#include <gmock/gmock.h>
#include <set>

namespace model {

namespace {

using testing::HasSubstr;

struct FilamentRow {
    const char *marking, *grams;
    FeelingBand band;
};

// PMC7873561, table 1, after kit instructions of 2011. The band of 6.65 differs between scales: here deep
// pressure only.
const FilamentRow filamentRows[] = {
    {"1.65", "0.008 g", FeelingBand::Normal},
    {"2.36", "0.02 g", FeelingBand::Normal},
    {"2.44", "0.04 g", FeelingBand::Normal},
    {"2.83", "0.07 g", FeelingBand::Normal},
    {"3.22", "0.16 g", FeelingBand::DiminishedLightTouch},
    {"3.61", "0.4 g", FeelingBand::DiminishedLightTouch},
    {"3.84", "0.6 g", FeelingBand::DiminishedProtective},
    {"4.08", "1 g", FeelingBand::DiminishedProtective},
    {"4.17", "1.4 g", FeelingBand::DiminishedProtective},
    {"4.31", "2 g", FeelingBand::DiminishedProtective},
    {"4.56", "4 g", FeelingBand::LossOfProtective},
    {"4.74", "6 g", FeelingBand::LossOfProtective},
    {"4.93", "8 g", FeelingBand::LossOfProtective},
    {"5.07", "10 g", FeelingBand::LossOfProtective},
    {"5.18", "15 g", FeelingBand::LossOfProtective},
    {"5.46", "26 g", FeelingBand::LossOfProtective},
    {"5.88", "60 g", FeelingBand::LossOfProtective},
    {"6.10", "100 g", FeelingBand::LossOfProtective},
    {"6.45", "180 g", FeelingBand::LossOfProtective},
    {"6.65", "300 g", FeelingBand::DeepPressureOnly},
};

class FilamentTable : public testing::TestWithParam<FilamentRow> {};

} // namespace

TEST_P(FilamentTable, bandIsTheSameByMarkingAndByForce) {
    EXPECT_EQ(parseFilament(GetParam().marking).value(), GetParam().band);
    EXPECT_EQ(parseFilament(GetParam().grams).value(), GetParam().band);
}

INSTANTIATE_TEST_SUITE_P(KitOf2011, FilamentTable, testing::ValuesIn(filamentRows));

TEST(Filament, aboveTheHeaviestIsNotFelt) {
    for (const char *typed : {"> 6.65", "not felt", "none"})
        EXPECT_EQ(parseFilament(typed).value(), FeelingBand::NotFelt) << typed;
}

TEST(Filament, thatDoesNotExistIsRefusedWithTheNearest) {
    const auto band = parseFilament("3.60");
    ASSERT_FALSE(band);
    EXPECT_EQ(band.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(band.error().sentence, "No such filament in the kit: 3.60. Nearest is 3.61. Kept.");
    EXPECT_EQ(parseFilament("5 g").error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(parseFilament("thin one").error().code, ErrorCode::NotUnderstood);
    EXPECT_EQ(parseFilament("3.61 mm").error().code, ErrorCode::NotUnderstood);
}

TEST(Filament, protectionIsReducedFromThreePointEightFour) {
    EXPECT_FALSE(protectionReduced(parseFilament("3.61").value()));
    EXPECT_TRUE(protectionReduced(parseFilament("3.84").value()));
    EXPECT_TRUE(protectionReduced(FeelingBand::NotFelt));
}

TEST(TwoPoint, gradesFollowTheBoundaryRule) {
    // Grading as printed on a clinical test page, attributed to ASSH and ASHT (attribution from memory).
    const std::pair<const char *, TwoPointGrade> rows[] = {
        {"2.6", TwoPointGrade::Normal},
        {"5.9", TwoPointGrade::Normal},
        {"6", TwoPointGrade::Fair},
        {"10 mm", TwoPointGrade::Fair},
        {"10.1", TwoPointGrade::Poor},
        {"11", TwoPointGrade::Poor},
        {"15", TwoPointGrade::Poor},
        {"15.1", TwoPointGrade::Protective},
        {"one point only", TwoPointGrade::Protective},
        {"nothing felt", TwoPointGrade::Anaesthetic},
    };
    for (const auto &[typed, grade] : rows)
        EXPECT_EQ(parseTwoPoint(typed).value().grade, grade) << typed;
}

TEST(TwoPoint, refusesWhatNoDiscCanTest) {
    EXPECT_EQ(parseTwoPoint("0.1 mm").error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(parseTwoPoint("0").error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(parseTwoPoint("80").error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(parseTwoPoint("5 cm").error().code, ErrorCode::NotUnderstood);
    EXPECT_THAT(parseTwoPoint("5 cm").error().sentence, HasSubstr("5 cm"));
}

TEST(TwoPoint, gapIsOneAndAHalfTimesTheSpacingAndAtLeastThreeMillimetres) {
    // Common practice; arithmetic recomputed.
    EXPECT_DOUBLE_EQ(smallestGap({2.6}).value, 3.9);
    EXPECT_DOUBLE_EQ(smallestGap({1.5}).value, 3.0);
    EXPECT_NEAR(smallestGap({5.03}).value, 7.545, 1e-9);
}

TEST(Shapes, areACountOutOfACount) {
    EXPECT_EQ(parseShapes("4/5")->right, 4);
    EXPECT_EQ(parseShapes("4 of 5")->tried, 5);
    EXPECT_EQ(parseShapes("6/5").error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(parseShapes("4/0").error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(parseShapes("4.5/5").error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(parseShapes("most").error().code, ErrorCode::NotUnderstood);
}

TEST(Sensitivity, neverRisesWithWorseFeeling) {
    for (int band = 1; band <= static_cast<int>(FeelingBand::NotFelt); ++band)
        EXPECT_LE(sensitivityOf(static_cast<FeelingBand>(band)),
                  sensitivityOf(static_cast<FeelingBand>(band - 1)));
    for (int grade = 1; grade <= static_cast<int>(TwoPointGrade::Anaesthetic); ++grade)
        EXPECT_LE(sensitivityOf(static_cast<TwoPointGrade>(grade)),
                  sensitivityOf(static_cast<TwoPointGrade>(grade - 1)));
}

TEST(Kit, everyMarkIsWholeAndNamedOnce) {
    std::set<std::string> keys, names;
    for (const Marker &marker : markerKit()) {
        EXPECT_TRUE(keys.insert(marker.key).second) << marker.key;
        EXPECT_TRUE(names.insert(marker.name).second) << marker.name;
        EXPECT_EQ(markerOf(marker.key), &marker);
        EXPECT_FALSE(marker.feel.empty() || marker.howToFix.empty() || marker.caution.empty()) << marker.key;
        EXPECT_FALSE(marker.surfaces.empty()) << marker.key;
        EXPECT_GT(marker.fixMinutes, 0);
        EXPECT_EQ(marker.name.find(','), std::string::npos) << "names are listed with commas";
    }
    EXPECT_GE(keys.size(), 12u);
    EXPECT_LE(keys.size(), 16u);
    EXPECT_EQ(markerOf("no such mark"), nullptr);
}

TEST(Kit, hasSomethingForEverySafetyRuleToBan) {
    bool magnetic = false, latex = false, adhesive = false, sharp = false, choking = false, tag = false;
    for (const Marker &marker : markerKit()) {
        magnetic = magnetic || marker.magnetic;
        latex = latex || marker.latex;
        adhesive = adhesive || marker.adhesive;
        sharp = sharp || marker.sharp;
        choking = choking || marker.chokingSize;
        tag = tag || marker.medium == MarkMedium::SpokenTag;
    }
    EXPECT_TRUE(magnetic && latex && adhesive && sharp && choking && tag);
}

namespace {

Marker feature(double size) {
    Marker marker;
    marker.key = std::to_string(size);
    marker.size = size;
    return marker;
}

} // namespace

TEST(Confusion, isThurstonesOverlapOfTwoMarks) {
    // e(d) = Phi(-d/2), computed outside this program with erfc.
    const std::pair<double, double> rows[] = {{1, 0.3085}, {2, 0.1587}, {3.29, 0.0500}, {4, 0.0228}};
    for (const auto &[distance, expected] : rows) {
        EXPECT_NEAR(confusion(feature(0), feature(distance), 1.0), expected, 5.1e-5) << distance;
        EXPECT_NEAR(confusion(feature(0), feature(2 * distance), 0.5), expected, 5.1e-5) << distance;
        EXPECT_NEAR(missed(feature(distance), 1.0), expected, 5.1e-5) << distance;
    }
}

TEST(Confusion, isOneForTheSameMarkAndSmallForAMarkWithItsOwnText) {
    EXPECT_EQ(confusion(*markerOf("ridge"), *markerOf("ridge"), 1), 1.0);
    EXPECT_LT(confusion(*markerOf("braille"), *markerOf("braille"), 1), 0.1);
    EXPECT_LT(confusion(*markerOf("braille"), *markerOf("ridge"), 0.1), 0.1);
}

TEST(Confusion, isTheSameBothWaysAndGrowsAsFeelingFades) {
    for (const Marker &a : markerKit())
        for (const Marker &b : markerKit()) {
            EXPECT_DOUBLE_EQ(confusion(a, b, 0.7), confusion(b, a, 0.7));
            EXPECT_LE(confusion(a, b, 1.0), confusion(a, b, 0.5));
        }
}

TEST(Filament, isSaidWithItsForce) {
    EXPECT_EQ(wordsOf(*filamentOf("4.31")), "4.31, 2 g");
    EXPECT_EQ(wordsOf(*filamentOf("0.4 g")), "3.61, 0.4 g");
    EXPECT_FALSE(filamentOf("3.60"));
    EXPECT_FALSE(filamentOf("not felt"));
}

TEST(NamedAnswers, areComparedWithGuessing) {
    // Binomial tail: 8 of 10 by guessing 0.0547, 9 of 10 0.0107.
    EXPECT_TRUE(couldBeGuessing(parseNamed("8/10").value()));
    EXPECT_FALSE(couldBeGuessing(parseNamed("9 of 10").value()));
    EXPECT_TRUE(couldBeGuessing(parseNamed("4/4").value()));
    EXPECT_THAT(parseNamed("11/10").error().sentence, HasSubstr("Not a possible count: 11/10"));
    EXPECT_THAT(parseNamed("some").error().sentence, HasSubstr("a count of answers"));
}

TEST(Braille, isReadInWords) {
    EXPECT_EQ(wordsOf(parseBrailleReading("Reads contracted, 80 words a minute").value()),
              "reads contracted braille, 80 words a minute");
    EXPECT_EQ(wordsOf(parseBrailleReading("learning, jumbo, uncontracted").value()),
              "is learning jumbo uncontracted braille");
    EXPECT_EQ(wordsOf(parseBrailleReading("no").value()), "does not read braille");
}

TEST(Braille, refusesWhatCannotBe) {
    for (const char *typed :
         {"", "contracted", "reads fluently", "reads, 0 wpm", "reads, 900 wpm", "no, 60 wpm"})
        EXPECT_FALSE(parseBrailleReading(typed)) << typed;
    EXPECT_THAT(parseBrailleReading("reads, 900 wpm").error().sentence, HasSubstr("1 to 400"));
    EXPECT_THAT(parseBrailleReading("no, 60 wpm").error().sentence, HasSubstr("Contradictory"));
}

} // namespace model
