#include "model/sight.h"
#include <cmath>
#include <gtest/gtest.h>
#include <ostream>

/// Acuity notations and letter sizes against published tables. Each row carries its source.
namespace model {

namespace {

// Rows of acuity conversions: exact logMAR of the printed Snellen value. Formula of Bach's acuity cheat
// sheet, logMAR = -log10(decimal acuity); recomputed outside this program. M at 40 cm by Sloan's definition
// (from memory).
struct ConversionRow {
    const char *six, *twenty, *decimal;
    double logMar;
    const char *mAt40;
};

const ConversionRow conversions[] = {
    {"6/3", "20/10", "2.0000", -0.3010, "0.200 M"},     {"6/3.75", "20/12.5", "1.6000", -0.2041, "0.250 M"},
    {"6/4.8", "20/16", "1.2500", -0.0969, "0.320 M"},   {"6/6", "20/20", "1.0000", 0.0000, "0.400 M"},
    {"6/7.5", "20/25", "0.8000", 0.0969, "0.500 M"},    {"6/9", "20/30", "0.6667", 0.1761, "0.600 M"},
    {"6/9.5", "20/31.67", "0.6316", 0.1996, "0.633 M"}, {"6/12", "20/40", "0.5000", 0.3010, "0.800 M"},
    {"6/15", "20/50", "0.4000", 0.3979, "1.000 M"},     {"6/18", "20/60", "0.3333", 0.4771, "1.200 M"},
    {"6/19", "20/63.33", "0.3158", 0.5006, "1.267 M"},  {"6/24", "20/80", "0.2500", 0.6021, "1.600 M"},
    {"6/30", "20/100", "0.2000", 0.6990, "2.000 M"},    {"6/36", "20/120", "0.1667", 0.7782, "2.400 M"},
    {"6/38", "20/126.7", "0.1579", 0.8016, "2.533 M"},  {"6/48", "20/160", "0.1250", 0.9031, "3.200 M"},
    {"6/60", "20/200", "0.1000", 1.0000, "4.000 M"},    {"6/75", "20/250", "0.0800", 1.0969, "5.000 M"},
    {"6/90", "20/300", "0.0667", 1.1761, "6.000 M"},    {"6/95", "20/316.7", "0.0632", 1.1996, "6.333 M"},
    {"6/120", "20/400", "0.0500", 1.3010, "8.000 M"},   {"6/150", "20/500", "0.0400", 1.3979, "10.000 M"},
    {"6/180", "20/600", "0.0333", 1.4771, "12.000 M"},  {"6/190", "20/633.3", "0.0316", 1.5006, "12.667 M"},
    {"6/240", "20/800", "0.0250", 1.6021, "16.000 M"},  {"6/300", "20/1000", "0.0200", 1.6990, "20.000 M"},
    {"6/360", "20/1200", "0.0167", 1.7782, "24.000 M"}, {"6/380", "20/1267", "0.0158", 1.8016, "25.333 M"},
    {"6/480", "20/1600", "0.0125", 1.9031, "32.000 M"}, {"6/600", "20/2000", "0.0100", 2.0000, "40.000 M"},
};

double logMarOf(const std::string &typed) {
    const auto acuity = parseAcuity(typed, Centimetres{40});
    EXPECT_TRUE(acuity && acuity->logMar) << typed;
    return acuity && acuity->logMar ? acuity->logMar->value : NAN;
}

class Conversion : public testing::TestWithParam<ConversionRow> {};

} // namespace

TEST_P(Conversion, givesTheLogMarOfSixMetreSnellen) {
    EXPECT_NEAR(logMarOf(GetParam().six), GetParam().logMar, 6e-5);
}

// The other three columns are printed rounded to four figures, which is worth up to 0.0015 logMAR.
TEST_P(Conversion, givesTheLogMarOfTwentyFootSnellen) {
    EXPECT_NEAR(logMarOf(GetParam().twenty), GetParam().logMar, 2e-4);
}

TEST_P(Conversion, givesTheLogMarOfDecimalAcuity) {
    EXPECT_NEAR(logMarOf(GetParam().decimal), GetParam().logMar, 1.5e-3);
}

TEST_P(Conversion, givesTheLogMarOfMUnitsAtFortyCentimetres) {
    EXPECT_NEAR(logMarOf(GetParam().mAt40), GetParam().logMar, 4e-4);
}

INSTANTIATE_TEST_SUITE_P(BachCheatSheetFormula, Conversion, testing::ValuesIn(conversions));

namespace {

// Height in mm of a letter of 5 minutes of arc times 10^logMAR: h = 2 d tan(angle / 2), Bach's acuity cheat
// sheet; recomputed outside this program.
constexpr double heightDistances[] = {25, 40, 50, 100, 400, 600};
struct HeightRow {
    double logMar;
    double millimetres[6];
};

const HeightRow heights[] = {
    {0.0, {0.36, 0.58, 0.73, 1.45, 5.82, 8.73}},
    {0.1, {0.46, 0.73, 0.92, 1.83, 7.32, 10.99}},
    {0.2, {0.58, 0.92, 1.15, 2.31, 9.22, 13.83}},
    {0.3, {0.73, 1.16, 1.45, 2.90, 11.61, 17.41}},
    {0.4, {0.91, 1.46, 1.83, 3.65, 14.61, 21.92}},
    {0.5, {1.15, 1.84, 2.30, 4.60, 18.40, 27.60}},
    {0.6, {1.45, 2.32, 2.90, 5.79, 23.16, 34.74}},
    {0.7, {1.82, 2.92, 3.64, 7.29, 29.16, 43.74}},
    {0.8, {2.29, 3.67, 4.59, 9.18, 36.71, 55.06}},
    {0.9, {2.89, 4.62, 5.78, 11.55, 46.21, 69.32}},
    {1.0, {3.64, 5.82, 7.27, 14.54, 58.18, 87.27}},
    {1.1, {4.58, 7.32, 9.16, 18.31, 73.24, 109.87}},
    {1.2, {5.76, 9.22, 11.53, 23.05, 92.21, 138.31}},
    {1.3, {7.26, 11.61, 14.51, 29.02, 116.09, 174.13}},
    {1.4, {9.13, 14.62, 18.27, 36.54, 146.15, 219.23}},
    {1.5, {11.50, 18.40, 23.00, 46.00, 184.01, 276.01}},
    {1.6, {14.48, 23.17, 28.96, 57.92, 231.67, 347.51}},
    {1.7, {18.23, 29.17, 36.46, 72.93, 291.71, 437.56}},
    {1.8, {22.96, 36.73, 45.92, 91.83, 367.33, 551.00}},
    {1.9, {28.91, 46.26, 57.83, 115.66, 462.64, 693.95}},
    {2.0, {36.43, 58.28, 72.85, 145.70, 582.80, 874.21}},
};

class LetterHeight : public testing::TestWithParam<HeightRow> {};

} // namespace

TEST_P(LetterHeight, isThePublishedOneAtEveryDistance) {
    for (int i = 0; i < 6; ++i) {
        const auto height = letterHeight({GetParam().logMar}, {heightDistances[i]}, 1);
        ASSERT_TRUE(height);
        EXPECT_NEAR(height->value, GetParam().millimetres[i], 0.0051) << heightDistances[i] << " cm";
    }
}

INSTANTIATE_TEST_SUITE_P(BachCheatSheetFormula, LetterHeight, testing::ValuesIn(heights));

namespace {

// x-heights of common faces. Ratios 0.519 (Arial), 0.448 (Times New Roman) and 0.716 (Arial capitals) are
// from memory; 1 point = 25.4/72 mm by definition; M by Sloan's definition; recomputed outside this program.
struct PointRow {
    double points, arial, arialM, times, timesM, capitals, capitalsM;
};

const PointRow pointRows[] = {
    {8, 1.46, 1.01, 1.26, 0.87, 2.02, 1.39},      {10, 1.83, 1.26, 1.58, 1.09, 2.53, 1.74},
    {12, 2.20, 1.51, 1.90, 1.30, 3.03, 2.08},     {14, 2.56, 1.76, 2.21, 1.52, 3.54, 2.43},
    {16, 2.93, 2.01, 2.53, 1.74, 4.04, 2.78},     {18, 3.30, 2.27, 2.84, 1.96, 4.55, 3.13},
    {20, 3.66, 2.52, 3.16, 2.17, 5.05, 3.47},     {22, 4.03, 2.77, 3.48, 2.39, 5.56, 3.82},
    {24, 4.39, 3.02, 3.79, 2.61, 6.06, 4.17},     {28, 5.13, 3.52, 4.43, 3.04, 7.07, 4.86},
    {36, 6.59, 4.53, 5.69, 3.91, 9.09, 6.25},     {48, 8.79, 6.04, 7.59, 5.22, 12.12, 8.34},
    {72, 13.18, 9.06, 11.38, 7.82, 18.19, 12.50},
};

class PointSizes : public testing::TestWithParam<PointRow> {};

void expectHeight(double points, double ratio, double millimetres, double m) {
    const auto height = xHeightOf({points}, ratio);
    ASSERT_TRUE(height);
    EXPECT_NEAR(height->value, millimetres, 0.0051);
    EXPECT_NEAR(mUnits(*height), m, 0.0051);
    const auto back = pointSize(*height, ratio);
    ASSERT_TRUE(back);
    EXPECT_NEAR(back->value, points, 1e-9);
}

} // namespace

TEST_P(PointSizes, giveThePrintedHeights) {
    const PointRow &row = GetParam();
    expectHeight(row.points, 0.519, row.arial, row.arialM);
    expectHeight(row.points, 0.448, row.times, row.timesM);
    expectHeight(row.points, 0.716, row.capitals, row.capitalsM);
}

INSTANTIATE_TEST_SUITE_P(PointDefinition, PointSizes, testing::ValuesIn(pointRows));

namespace {

struct SizeCheck {
    const char *source;
    double logMar, centimetres, reserve, ratio, millimetres, points, tolerance;
};

// Single check values, formula h = 2 d tan(angle / 2) and 1 point = 25.4/72 mm, recomputed outside this
// program.
const SizeCheck sizeChecks[] = {
    {"6/6 letter on a 6 m chart; published 8.8 to 8.9 mm rounded", 0.0, 600, 1, 0.519, 8.727, 0, 0.001},
    {"formula", 1.0, 40, 1, 0.519, 5.818, 31.8, 0.001},
    {"formula; near-equivalence card 1.15 mm", 0.3, 40, 1, 0.519, 1.161, 0, 0.001},
    {"formula", 1.3, 50, 1, 0.519, 14.511, 0, 0.001},
    {"label recipe, reserve 2", 0.5, 40, 2, 0.519, 0, 20.1, 0.05},
    {"label recipe, reserve 2", 0.7, 40, 2, 0.519, 0, 31.9, 0.05},
    {"label recipe, reserve 2", 1.0, 25, 2, 0.519, 0, 39.7, 0.05},
};

class SizeRecipe : public testing::TestWithParam<SizeCheck> {};

} // namespace

TEST_P(SizeRecipe, givesThePublishedValue) {
    const SizeCheck &row = GetParam();
    const auto height = letterHeight({row.logMar}, {row.centimetres}, row.reserve);
    ASSERT_TRUE(height);
    if (row.millimetres > 0) {
        EXPECT_NEAR(height->value, row.millimetres, row.tolerance) << row.source;
    }
    if (row.points > 0) {
        EXPECT_NEAR(pointSize(*height, row.ratio)->value, row.points, 0.05) << row.source;
    }
}

INSTANTIATE_TEST_SUITE_P(Labels, SizeRecipe, testing::ValuesIn(sizeChecks));

TEST(LetterHeight, refusesWhatHasNoSize) {
    EXPECT_EQ(letterHeight({0}, {0}, 2).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(letterHeight({0}, {-5}, 2).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(letterHeight({0}, {40}, 0.5).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(letterHeight({0}, {NAN}, 2).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(pointSize({1}, 0).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(pointSize({1}, 1).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(pointSize({-1}, 0.5).error().code, ErrorCode::OutOfRange);
}

} // namespace model
