#include "model/findings.h"
#include "tests/model/fixtures.h"
#include <gmock/gmock.h>

namespace model {

namespace {

using Kind = model::Test; // a test body has a Test of its own

struct LengthRow {
    const char *typed;
    double centimetres;
};

// 1 inch is 2.54 cm and 1 foot 30.48 cm by definition.
const LengthRow lengthRows[] = {
    {"40", 40},        {"40 cm", 40},    {"40cm", 40},         {"400 mm", 40},        {"1.4 m", 140},
    {"1,4 m", 140},    {"16 in", 40.64}, {"16 inches", 40.64}, {"5 ft 3 in", 160.02}, {"5 ft", 152.4},
    {"5'3\"", 160.02}, {"5' 3", 160.02}, {"5 feet 3", 160.02}, {"  62.5  CM ", 62.5}, {"300", 300},
};

} // namespace

TEST(Length, isReadWithItsUnit) {
    for (const LengthRow &row : lengthRows) {
        const auto length = parseLength(row.typed, {300});
        ASSERT_TRUE(length) << row.typed << ": " << length.error().sentence;
        EXPECT_NEAR(length->value.value, row.centimetres, 1e-9) << row.typed;
        EXPECT_EQ(length->typed, row.typed);
        EXPECT_EQ(length->basis, Basis::Measured);
    }
}

TEST(Length, isRefusedWithASentence) {
    for (const char *typed :
         {"", "4o", "40 apples", "cm", "1.2.3", "5 ft 13 in", "nan", "inf", "1e3", "5 ft 3 cm", "- 40"}) {
        const auto length = parseLength(typed, {300});
        ASSERT_FALSE(length) << typed;
        EXPECT_EQ(length.error().code, ErrorCode::NotUnderstood) << typed;
    }
    for (const char *typed : {"0", "0 cm", "-5", "300.1", "4 m"}) {
        const auto length = parseLength(typed, {300});
        ASSERT_FALSE(length) << typed;
        EXPECT_EQ(length.error().code, ErrorCode::OutOfRange) << typed;
    }
    EXPECT_EQ(parseLength("4o", {300}).error().sentence, "Not a length: 4o. Try 40 cm. Kept.");
    EXPECT_EQ(parseLength("4 m", {300}).error().sentence,
              "Too long: 4 m. The most here is 300 cm. Check the unit. Kept.");
}

namespace {

struct SaidRow {
    Kind test;
    const char *typed, *distance, *said;
};

const SaidRow saidRows[] = {
    {Kind::DistanceAcuity, "6/24", "", "logMAR 0.60"},
    {Kind::DistanceAcuity, "6/18", "", "logMAR 0.48"}, // 0.477, to the nearest 0.02
    {Kind::DistanceAcuity, "6/6", "", "logMAR 0.00"},
    {Kind::DistanceAcuity, "6/6+1", "", "logMAR -0.02"},
    {Kind::DistanceAcuity, "CF at 1 m", "", "counting fingers, below every chart: no print size follows"},
    {Kind::NearAcuity, "N12", "40 cm", "logMAR 0.58"}, // 0.574
    {Kind::ContrastSensitivity, "1.05", "", "log contrast sensitivity 1.05, moderate loss of contrast"},
    {Kind::FieldExtent, "8\u00b0", "", "8 degrees across"},
    {Kind::PreferredPrint, "24", "40", "24 point at 40 cm"},
    {Kind::PreferredPrint, "N24", "", "24 point, distance not given"},
    {Kind::Glare, "Sun on the worktop", "", "Sun on the worktop"},
    {Kind::UsableVision, "Yes", "", "yes"},
    {Kind::Monofilament, "3.61", "", "3.61, 0.4 g, diminished light touch"},
    {Kind::TwoPointStatic, "7", "", "7 mm, fair"},
    {Kind::TwoPointMoving, "4 mm", "", "4 mm"},
    {Kind::ShapeNaming, "4/5", "", "4 of 5 named"},
    {Kind::AcceptedMarks, "none", "", "no pair of marks told apart"},
    {Kind::AcceptedMarks, "ridge", "", "1 mark, so no pair"},
    {Kind::AcceptedMarks, "Ridge, felt square; felt", "", "2 marks told apart"},
    {Kind::Stature, "5 ft 4 in", "", "162.6 cm"},
    {Kind::ReachLow, "0", "", "0 cm"},
    {Kind::ReachLow, "floor", "", "0 cm"},
    {Kind::SafeLift, "1500 g", "", "1.5 kg"},
    {Kind::SafeLift, "3 lb", "", "1.36 kg"},
    {Kind::DistanceAcuity, "LP with accurate projection", "",
     "light perception, below every chart: no print size follows"},
    {Kind::ReadingFinger, "Left thumb", "", "left hand, thumb"},
    {Kind::LiftFigures, "Women's", "", "women's figures"},
};

} // namespace

TEST(ReadBack, saysWhatWasUnderstood) {
    for (const SaidRow &row : saidRows) {
        Measurement measurement = fixtures::result(row.test, row.typed);
        measurement.distanceTyped = row.distance;
        const auto said = readBack(measurement);
        ASSERT_TRUE(said) << row.typed << ": " << said.error().sentence;
        EXPECT_EQ(*said, row.said) << row.typed;
    }
}

TEST(ReadBack, saysWhatIsWrongWithAnExampleAndThatItIsKept) {
    const SaidRow wrong[] = {
        {Kind::DistanceAcuity, "6/", "", "Not an acuity: 6/. Try 6/24. Kept."},
        {Kind::NearAcuity, "about N", "40 cm", "Not an acuity: about N. Try N12 at 40 cm. Kept."},
        {Kind::NearAcuity, "N12", "4o", "Not a distance: 4o. Try 40 cm. Kept."},
        {Kind::NearAcuity, "N12", "",
         "No distance for N12. Enter how far away it was read, for example 40 cm. Kept."},
        {Kind::ContrastSensitivity, "9", "",
         "Out of range for a contrast sensitivity: 9. It goes from 0 to 2.4. Try 1.05. Kept."},
        {Kind::FieldExtent, "400", "",
         "Out of range for a field in degrees: 400. It goes from 0.5 to 180. Try 120. Kept."},
        {Kind::UsableVision, "maybe", "", "Not an answer: maybe. Try yes or no. Kept."},
        {Kind::TwoPointStatic, "0.1 mm", "",
         "Not a possible spacing: 0.1 mm. The test goes from 1 to 30 mm. Try 5. Kept."},
        {Kind::KnuckleHeight, "7", "", "Too low for this: 7. The least here is 20 cm. Try 72 cm. Kept."},
        {Kind::Stature, "16o", "", "Not a height: 16o. Try 162 cm. Kept."},
        {Kind::SafeLift, "0", "",
         "Not a weight lifted at home: 0. It is above 0 and at most 50 kg. Try 1.5 kg. Kept."},
        {Kind::ReadingFinger, "index", "", "Not one finger of one hand: index. Try right index. Kept."},
        {Kind::LiftFigures, "his", "",
         "Not a column of the lifting filter: his. Try women's or men's. Kept."},
        {Kind::AcceptedMarks, "ridge, blob", "",
         "No mark in the kit is called: blob. Try rubber band. Kept."},
    };
    for (const SaidRow &row : wrong) {
        Measurement measurement = fixtures::result(row.test, row.typed);
        measurement.distanceTyped = row.distance;
        const auto said = readBack(measurement);
        ASSERT_FALSE(said) << row.typed;
        EXPECT_EQ(said.error().sentence, row.said);
    }
}

} // namespace model
