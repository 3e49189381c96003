#include "model/legible.h"
#include "tests/model/fixtures.h"
#include "tests/model/found.h"
#include <cmath>
#include <gmock/gmock.h>

/// Whether a label can be read where it stands: geometry, room, light, contrast, and the sentence.
namespace model {

namespace {

using fixtures::Kind;
using fixtures::result;
using testing::HasSubstr;

/// One shelf at a height with one jar of flour on it.
Case oneShelf(double heightCm, Light light) {
    Case record = newCase("made up", "X");
    Unit unit;
    unit.id = {"u"};
    unit.kind = UnitKind::WallCupboard;
    record.units = {unit};
    Place place;
    place.id = {"p"};
    place.unit = unit.id;
    place.name = "shelf";
    place.height = Length{{heightCm}, "", Basis::Measured};
    place.light = light;
    record.places = {place};
    Thing jar;
    jar.id = {"t"};
    jar.name = "Flour";
    jar.shape = Shape::Jar;
    jar.width = jar.depth = Length{{10}, "", Basis::Measured};
    jar.height = Length{{18}, "", Basis::Measured};
    jar.place = place.id;
    record.things = {jar};
    return record;
}

LabelRow rowWith(Case record, const std::vector<Measurement> &results, const LabelColours &colours = {}) {
    record.measurements = results;
    record.measurements.push_back(result(Kind::EyeHeight, "150 cm"));
    const Findings findings = findingsOf(record, fixtures::visitDay);
    return legibleHere(record, findings, colours).at(0);
}

} // namespace

TEST(Sightline, isPlainGeometry) {
    // 30-40-50 triangle: 40 cm ahead, 30 cm down.
    const Sightline line = sightline({150}, {120}, {40});
    EXPECT_NEAR(line.distance.value, 50, 1e-9);
    EXPECT_NEAR(line.degrees, 36.87, 0.01);
    EXPECT_NEAR(line.seen, 0.8, 1e-9); // cosine of the slant
    EXPECT_FALSE(line.onTop);
    const Sightline low = sightline({150}, {120 - 23.33}, {40}); // 40 ahead, 53.33 down: 3-4-5 turned
    EXPECT_TRUE(low.onTop);
    EXPECT_NEAR(low.seen, 0.8, 1e-3);
    EXPECT_FALSE(sightline({150}, {200}).onTop); // no lid is seen from below
    EXPECT_NEAR(sightline({150}, {150}).seen, 1, 1e-9);
}

TEST(LargestFitting, breaksWordsOverLinesAndNeverInside) {
    // 5 letters of 0.6 em across 60 mm: 20 mm an em, 56.7 point; 25 mm an em down on 31.25 mm.
    EXPECT_NEAR(largestFitting("Flour", {60}, {31.25}).value, 56.7, 0.1);
    // Two lines of 5 letters: 31.25 mm for 2.5 em leave 12.5 mm, 35.4 point.
    EXPECT_NEAR(largestFitting("Plain flour", {60}, {31.25}).value, 35.4, 0.1);
    EXPECT_GT(largestFitting("Salt", {60}, {30}).value, largestFitting("Bicarbonate", {60}, {30}).value);
    EXPECT_EQ(largestFitting("", {60}, {30}).value, 0);
    EXPECT_EQ(largestFitting("Salt", {0}, {30}).value, 0);
}

TEST(LegibleHere, worksInGoodLightAtEyeHeight) {
    const LabelRow row = rowWith(oneShelf(145, Light::Bright), {result(Kind::DistanceAcuity, "6/30")});
    EXPECT_EQ(row.verdict, Legible::Works);
    EXPECT_THAT(row.because, HasSubstr("Seen from 35 cm"));
    EXPECT_THAT(row.because, HasSubstr("point fits"));
    EXPECT_THAT(row.because, HasSubstr("not measured"));
}

TEST(LegibleHere, needsALampWhereItIsDim) {
    // 6/36 at 35 cm: 3.05 mm, twice 32.3 point, three times 48.4 point (h = 2 d tan(angle / 2), 0.536 em).
    Case record = oneShelf(145, Light::Dim);
    record.things[0].name = "Rice flour";
    record.things[0].height = Length{{14}, "", Basis::Measured};
    record.things[0].width = Length{{7}, "", Basis::Measured};
    const LabelRow row = rowWith(record, {result(Kind::DistanceAcuity, "6/36")});
    EXPECT_EQ(row.verdict, Legible::WithLamp) << row.because;
    EXPECT_NEAR(row.needed->value, 49, 1);
    EXPECT_NEAR(row.withLamp->value, 33, 1);
    EXPECT_THAT(row.because, HasSubstr("With a lamp"));
}

TEST(LegibleHere, saysThatLargePrintDoesNotFitASpiceJar) {
    Case record = oneShelf(145, Light::Bright);
    record.things[0].name = "Cinnamon";
    record.things[0].width = record.things[0].depth = Length{{4}, "", Basis::Measured};
    record.things[0].height = Length{{9}, "", Basis::Measured};
    const LabelRow row = rowWith(record, {result(Kind::DistanceAcuity, "6/60")});
    EXPECT_EQ(row.verdict, Legible::No);
    EXPECT_THAT(row.because, HasSubstr("touch, sound or braille"));
    EXPECT_LT(row.fits.value, 24); // 32 mm for 8 letters of 0.6 em: 18.9 point
}

TEST(LegibleHere, neverOffersPrintBelowTheChartOrWithoutContrast) {
    for (const char *typed : {"CF", "HM", "LP", "NLP"}) {
        const LabelRow row = rowWith(oneShelf(145, Light::Bright), {result(Kind::DistanceAcuity, typed)});
        EXPECT_EQ(row.verdict, Legible::No) << typed;
        EXPECT_FALSE(row.needed) << typed;
    }
    EXPECT_EQ(rowWith(oneShelf(145, Light::Bright), {}).verdict, Legible::NotKnown);
    const std::vector<Measurement> dimSeen{result(Kind::DistanceAcuity, "6/24"),
                                           result(Kind::ContrastSensitivity, "0.60")};
    const LabelColours faint{{128, 128, 128}, {255, 255, 255}};
    EXPECT_EQ(rowWith(oneShelf(145, Light::Bright), dimSeen, faint).verdict, Legible::No);
    EXPECT_NE(rowWith(oneShelf(145, Light::Bright), dimSeen).verdict,
              Legible::No); // black on white: 3.8 times
}

TEST(LegibleHere, worseSightOrLightNeverHelps) {
    for (const Light light : {Light::Bright, Light::Fair, Light::Dim, Light::NotAsked})
        for (const double height : {10.0, 60.0, 110.0, 150.0, 190.0}) {
            Legible before = Legible::Works;
            for (const char *typed : {"6/6", "6/12", "6/24", "6/36", "6/60", "3/60", "1/60", "CF"}) {
                const LabelRow row = rowWith(oneShelf(height, light), {result(Kind::DistanceAcuity, typed)});
                EXPECT_GE(row.verdict, before) << typed << " at " << height;
                before = row.verdict;
                const LabelRow bright =
                    rowWith(oneShelf(height, Light::Bright), {result(Kind::DistanceAcuity, typed)});
                EXPECT_LE(bright.verdict, row.verdict) << typed << " at " << height;
            }
        }
}

TEST(LegibleHere, hasARowForTheEdgeOfAnEmptyShelf) {
    Case record = oneShelf(145, Light::Bright);
    record.things.clear();
    const LabelRow row = rowWith(record, {result(Kind::DistanceAcuity, "6/18")});
    EXPECT_EQ(row.words, "shelf");
    EXPECT_TRUE(row.thing.text.empty());
    EXPECT_GT(row.fits.value, 0);
}

} // namespace model
