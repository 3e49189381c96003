#include "model/sight.h"
#include <cmath>
#include <gmock/gmock.h>

namespace model {

namespace {

using testing::HasSubstr;

struct Notation {
    const char *typed;
    double distance; // cm, 0: none
    double logMar;
    double tolerance;
    const char *source;
};

const Notation notations[] = {
    // Bach, acuity cheat sheet: logMAR = -log10(decimal), decimal = the Snellen fraction. Recomputed.
    {"6/6", 0, 0.0, 1e-5, "Bach, acuity cheat sheet"},
    {"6/12", 0, 0.30103, 1e-5, "Bach, acuity cheat sheet"},
    {"6/18", 0, 0.47712, 1e-5, "Bach, acuity cheat sheet"},
    {"6/60", 0, 1.0, 1e-5, "Bach, acuity cheat sheet"},
    {"3/60", 0, 1.30103, 1e-5, "Bach, acuity cheat sheet"},
    {"1/60", 0, 1.77815, 1e-5, "Bach, acuity cheat sheet"},
    {"20/70", 0, 0.54407, 1e-5, "Bach, acuity cheat sheet"},
    {"20/200", 0, 1.0, 1e-5, "Bach, acuity cheat sheet"},
    {"20/1200", 0, 1.77815, 1e-5, "Bach, acuity cheat sheet"},
    {"5/300", 0, 1.77815, 1e-5, "WHO, ICD-10 H54: 5/300 is 20/1200"},
    {"0.014", 0, 1.85387, 1e-5, "Schulze-Bonsel 2006, mean decimal acuity of counting fingers"},
    {"0.005", 0, 2.30103, 1e-5, "Schulze-Bonsel 2006, mean decimal acuity of hand movement"},
    {"0,5", 0, 0.30103, 1e-5, "Bach, acuity cheat sheet; decimal comma"},
    {"1.0", 0, 0.0, 1e-5, "Bach, acuity cheat sheet"},
    // Letters: 5 a line, 0.02 each (Bach).
    {"6/9-2", 0, 0.21609, 1e-5, "Bach, acuity cheat sheet: one letter is 0.02"},
    {"6/9 -2", 0, 0.21609, 1e-5, "Bach, acuity cheat sheet: one letter is 0.02"},
    {"6/9 (-2)", 0, 0.21609, 1e-5, "Bach, acuity cheat sheet: one letter is 0.02"},
    {"6/9\u22122", 0, 0.21609, 1e-5, "Bach, acuity cheat sheet: one letter is 0.02"},
    {"20/40+1", 0, 0.28103, 1e-5, "Bach, acuity cheat sheet: one letter is 0.02"},
    {" 20 / 80 ", 0, 0.60206, 1e-5, "Bach, acuity cheat sheet"},
    {"0.6 logMAR", 0, 0.6, 1e-9, "as typed"},
    {"logMAR 0.6", 0, 0.6, 1e-9, "as typed"},
    {"-0.1 LogMAR", 0, -0.1, 1e-9, "as typed"},
    // Letter score: 85 - 50 logMAR (ETDRS; from memory).
    {"70 letters", 0, 0.3, 1e-9, "ETDRS letter score 85 - 50 logMAR, from memory"},
    {"85 letters", 0, 0.0, 1e-9, "ETDRS letter score 85 - 50 logMAR, from memory"},
    {"35 ETDRS letters", 0, 1.0, 1e-9, "ETDRS letter score 85 - 50 logMAR, from memory"},
    // Near: logMAR = log10(M / metres); 8 point is 1 M (near-equivalence card: 1 M = N8 = 6/15, 2 M = N16 =
    // 6/30,
    // 4 M = N32 at 40 cm).
    {"1 M", 40, 0.39794, 1e-5, "near-equivalence card: 1 M at 40 cm is 6/15"},
    {"4 M", 40, 1.0, 1e-5, "formula, M over metres"},
    {"0.4M", 40, 0.0, 1e-5, "near-equivalence card: 0.4 M at 40 cm is 6/6"},
    {"0.8 M", 40, 0.30103, 1e-5, "near-equivalence card: 0.8 M at 40 cm"},
    {"M 1.6", 40, 0.60206, 1e-5, "formula, M over metres"},
    {"1.6 M", 20, 0.90309, 1e-5, "formula, M over metres"},
    {"N8", 40, 0.39794, 1e-5, "near-equivalence card: N8 at 40 cm is 6/15"},
    {"N16", 40, 0.69897, 1e-5, "near-equivalence card: N16 at 40 cm is 6/30"},
    {"n 32", 40, 1.0, 1e-5, "near-equivalence card: N32 is 4 M"},
    {"N6", 40, 0.30103, 0.03, "near-equivalence card: N6 is 0.8 M; 8 point to the M gives 0.75 M"},
    {"12 point", 40, 0.57403, 1e-5, "rule of thumb: points of body text over 8 are M"},
    {"12 pt", 40, 0.57403, 1e-5, "rule of thumb: points of body text over 8 are M"},
};

class AcuityNotation : public testing::TestWithParam<Notation> {};

std::optional<Centimetres> at(double distance) {
    return distance > 0 ? std::optional(Centimetres{distance}) : std::nullopt;
}

} // namespace

TEST_P(AcuityNotation, isReadAsOnTheCard) {
    const Notation &row = GetParam();
    const auto acuity = parseAcuity(row.typed, at(row.distance));
    ASSERT_TRUE(acuity) << row.typed << ": " << acuity.error().sentence;
    ASSERT_TRUE(acuity->logMar) << row.typed;
    EXPECT_NEAR(acuity->logMar->value, row.logMar, row.tolerance) << row.typed << ", " << row.source;
    EXPECT_EQ(acuity->below, BelowChart::None);
}

INSTANTIATE_TEST_SUITE_P(Published, AcuityNotation, testing::ValuesIn(notations));

TEST(Acuity, belowTheChartStaysACategoryWithoutANumber) {
    const std::pair<const char *, BelowChart> rows[] = {
        {"CF", BelowChart::CountingFingers},
        {"cf at 1 m", BelowChart::CountingFingers},
        {"CF 30 cm", BelowChart::CountingFingers},
        {"CF @ 50cm", BelowChart::CountingFingers},
        {"counting fingers at 2 ft", BelowChart::CountingFingers},
        {"HM", BelowChart::HandMovement},
        {"hand movements", BelowChart::HandMovement},
        {"LP", BelowChart::LightPerception},
        {"PL with projection", BelowChart::LightPerception},
        {"lp without projection", BelowChart::LightPerception},
        {"NLP", BelowChart::NoLightPerception},
        {"npl", BelowChart::NoLightPerception},
        {"No light perception", BelowChart::NoLightPerception},
    };
    for (const auto &[typed, below] : rows) {
        const auto acuity = parseAcuity(typed, std::nullopt);
        ASSERT_TRUE(acuity) << typed;
        EXPECT_EQ(acuity->below, below) << typed;
        EXPECT_FALSE(acuity->logMar) << typed;
    }
}

namespace {

struct Refusal {
    const char *typed;
    double distance;
    ErrorCode code;
};

const Refusal refusals[] = {
    {"6/", 0, ErrorCode::NotUnderstood},
    {"/60", 0, ErrorCode::NotUnderstood},
    {"", 0, ErrorCode::NotUnderstood},
    {"1.2.3", 0, ErrorCode::NotUnderstood},
    {"6/6/6", 0, ErrorCode::NotUnderstood},
    {"six over sixty", 0, ErrorCode::NotUnderstood},
    {"6/9-12", 0, ErrorCode::NotUnderstood},
    {"CF somewhere", 0, ErrorCode::NotUnderstood},
    {"LP at 1 m", 0, ErrorCode::NotUnderstood},
    {"J5", 40, ErrorCode::NotUnderstood},
    {"nan", 0, ErrorCode::NotUnderstood},
    {"1e5", 0, ErrorCode::NotUnderstood},
    {"0x10", 0, ErrorCode::NotUnderstood},
    {"20/0", 0, ErrorCode::OutOfRange},
    {"0/20", 0, ErrorCode::OutOfRange},
    {"4 logMAR", 0, ErrorCode::OutOfRange},
    {"-1 logMAR", 0, ErrorCode::OutOfRange},
    {"0", 0, ErrorCode::OutOfRange},
    {"-0.5", 0, ErrorCode::OutOfRange},
    {"60", 0, ErrorCode::OutOfRange},
    {"0 letters", 0, ErrorCode::OutOfRange},
    {"120 letters", 0, ErrorCode::OutOfRange},
    {"60.5 letters", 0, ErrorCode::OutOfRange},
    {"0 M", 40, ErrorCode::OutOfRange},
    {"N0", 40, ErrorCode::OutOfRange},
    {"1.6 M", 0, ErrorCode::Missing},
    {"N12", 0, ErrorCode::Missing},
    {"12 point", 0, ErrorCode::Missing},
    {"6/99999999", 0, ErrorCode::OutOfRange},
};

} // namespace

TEST(Acuity, refusesWithASentenceThatKeepsWhatWasTyped) {
    for (const Refusal &row : refusals) {
        const auto acuity = parseAcuity(row.typed, at(row.distance));
        ASSERT_FALSE(acuity) << row.typed;
        EXPECT_EQ(acuity.error().code, row.code) << row.typed << ": " << acuity.error().sentence;
        EXPECT_THAT(acuity.error().sentence, HasSubstr(row.typed));
        EXPECT_THAT(acuity.error().sentence, HasSubstr("Kept."));
    }
}

TEST(Acuity, saysWhichDistanceIsMissing) {
    EXPECT_EQ(parseAcuity("N12", std::nullopt).error().sentence,
              "No distance for N12. Enter how far away it was read, for example 40 cm. Kept.");
    EXPECT_EQ(parseAcuity("6/", std::nullopt).error().sentence, "Not an acuity: 6/. Try 6/24. Kept.");
}

TEST(Acuity, roundTripsThroughLogMar) {
    for (int step = -29; step < 150; ++step) {
        const double logMar = step * 0.02;
        char typed[32];
        std::snprintf(typed, sizeof typed, "6/%.4f", 6 * std::pow(10, logMar));
        const auto acuity = parseAcuity(typed, std::nullopt);
        ASSERT_TRUE(acuity && acuity->logMar) << typed;
        EXPECT_NEAR(acuity->logMar->value, logMar, 1e-3) << typed;
    }
}

TEST(Acuity, everyCategoryBelowTheChartIsWorseThanTheWorstChart) {
    const Acuity chart{LogMar{3.0}, BelowChart::None};
    const Acuity fingers{std::nullopt, BelowChart::CountingFingers};
    const Acuity none{std::nullopt, BelowChart::NoLightPerception};
    EXPECT_TRUE(worse(fingers, chart));
    EXPECT_FALSE(worse(chart, fingers));
    EXPECT_TRUE(worse(none, fingers));
    EXPECT_FALSE(worse(fingers, fingers));
}

namespace {

struct CategoryRow {
    const char *typed;
    std::optional<double> field;
    VisionCategory category;
};

// WHO, ICD-10 (2010) H54 and ICD-11 (2018); the printed equivalents of 6/18 count as the boundary: common
// practice.
const CategoryRow categoryRows[] = {
    {"6/6", {}, VisionCategory::None},
    {"6/12", {}, VisionCategory::None},
    {"20/40", {}, VisionCategory::None},
    {"6/15", {}, VisionCategory::Mild},
    {"6/18", {}, VisionCategory::Mild},
    {"6/19", {}, VisionCategory::Mild},
    {"20/60", {}, VisionCategory::Mild},
    {"20/63", {}, VisionCategory::Mild},
    {"20/70", {}, VisionCategory::Mild},
    {"0.3", {}, VisionCategory::Mild},
    {"6/24", {}, VisionCategory::Moderate},
    {"6/60", {}, VisionCategory::Moderate},
    {"20/200", {}, VisionCategory::Moderate},
    {"6/61", {}, VisionCategory::Severe},
    {"3/60", {}, VisionCategory::Severe},
    {"20/400", {}, VisionCategory::Severe},
    {"1/60", {}, VisionCategory::Blindness3},
    {"5/300", {}, VisionCategory::Blindness3},
    {"CF at 1 m", {}, VisionCategory::Blindness3},
    {"CF at 30 cm", {}, VisionCategory::Blindness4},
    {"HM", {}, VisionCategory::Blindness4},
    {"LP", {}, VisionCategory::Blindness4},
    {"NLP", {}, VisionCategory::Blindness5},
    {"6/12", 16.0, VisionCategory::Blindness3},
    {"6/12", 20.0, VisionCategory::Blindness3},
    {"6/12", 21.0, VisionCategory::None},
    {"NLP", 5.0, VisionCategory::Blindness5},
};

} // namespace

TEST(VisionCategory, followsTheBoundariesOfTheWorldHealthOrganization) {
    for (const CategoryRow &row : categoryRows) {
        const auto acuity = parseAcuity(row.typed, std::nullopt);
        ASSERT_TRUE(acuity) << row.typed;
        EXPECT_EQ(visionCategory(*acuity, row.typed, row.field), row.category)
            << row.typed << " field " << row.field.value_or(0);
    }
}

namespace {

struct ContrastRow {
    double logUnits, percent;
    ContrastBand band;
};

// Threshold 10^-logCS, recomputed; bands: Leat, Legge & Bullimore 1999 (1.50, 1.05), review of reading and
// contrast (0.60), 1.65 from memory.
const ContrastRow contrastRows[] = {
    {2.00, 1.00, ContrastBand::Normal},    {1.80, 1.58, ContrastBand::Normal},
    {1.65, 2.24, ContrastBand::Normal},    {1.50, 3.16, ContrastBand::Borderline},
    {1.35, 4.47, ContrastBand::Impaired},  {1.20, 6.31, ContrastBand::Impaired},
    {1.05, 8.91, ContrastBand::Impaired},  {0.90, 12.59, ContrastBand::Severe},
    {0.75, 17.78, ContrastBand::Severe},   {0.60, 25.12, ContrastBand::Severe},
    {0.45, 35.48, ContrastBand::VeryPoor}, {0.30, 50.12, ContrastBand::VeryPoor},
    {0.15, 70.79, ContrastBand::VeryPoor}, {0.00, 100.0, ContrastBand::VeryPoor},
};

struct FieldRow {
    double across, at40, at60, at100;
};

// Width seen, 2 d tan(angle / 2); recomputed outside this program.
const FieldRow fieldRows[] = {
    {5, 35, 52, 87}, {10, 70, 105, 175}, {20, 141, 212, 353}, {40, 291, 437, 728}, {60, 462, 693, 1155}};

} // namespace

TEST(Contrast, hasTheThresholdAndBandOfTheTable) {
    for (const ContrastRow &row : contrastRows) {
        EXPECT_NEAR(100 * weberThreshold(row.logUnits), row.percent, 0.0051) << row.logUnits;
        EXPECT_EQ(contrastBand(row.logUnits), row.band) << row.logUnits;
    }
}

TEST(Field, widthIsTheOneOfTheTable) {
    for (const FieldRow &row : fieldRows) {
        EXPECT_NEAR(fieldWidth(row.across, {40}).value, row.at40, 0.51) << row.across;
        EXPECT_NEAR(fieldWidth(row.across, {60}).value, row.at60, 0.51) << row.across;
        EXPECT_NEAR(fieldWidth(row.across, {100}).value, row.at100, 0.51) << row.across;
    }
    EXPECT_NEAR(fieldWidth(20, {60}).value, 211.6, 0.1);
}

} // namespace model
