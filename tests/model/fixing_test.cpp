#include "model/fixing.h"
#include <gmock/gmock.h>

namespace model {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;

Thing pack(Shape shape, Surface surface) {
    Thing thing;
    thing.shape = shape;
    thing.surface = surface;
    return thing;
}

Fixing fixed(const Thing &thing, const std::string &key, MarkRole role = MarkRole::Code) {
    return fixingOf(thing, *markerOf(key), role);
}

struct Spot {
    Shape shape;
    Surface surface;
    const char *marker;
    const char *where;
};

/// Spots: common practice, as the trade describes the visit: upright on boxes above the flap so that it does
/// not stick out, on top of tins, on the lid or round a jar's neck, on the clip of a bag, on the canister.
const std::vector<Spot> spots{
    {Shape::Box, Surface::Card, "large-bump", "upright at the front, above the flap"},
    {Shape::Box, Surface::Card, "large-print", "on a card upright at the front, above the flap"},
    {Shape::Can, Surface::Metal, "large-bump", "on top"},
    {Shape::Can, Surface::Metal, "magnet", "on top"},
    {Shape::Can, Surface::Metal, "two-bands", "round the upper third"},
    {Shape::Can, Surface::Metal, "braille", "along the side, from the bottom up"},
    {Shape::Can, Surface::Metal, "spoken-tag", "on a card under a band, clear of the metal"},
    {Shape::Jar, Surface::Glass, "ribbed-band", "round the neck, under the lid"},
    {Shape::Jar, Surface::Glass, "large-bump", "on the lid"},
    {Shape::Bottle, Surface::Glass, "cord", "round the neck"},
    {Shape::Bag, Surface::Plastic, "large-bump", "on the clip that closes it"},
    {Shape::Packet, Surface::Paper, "cord", "round the clip that closes it"},
    {Shape::Canister, Surface::Metal, "large-bump", "at the front of the canister, not on its lid"},
    {Shape::Pan, Surface::Metal, "ribbed-band", "round the end of the handle"},
    {Shape::Plate, Surface::Ceramic, "large-bump", "on the edge of the shelf, in front of the pile"}};

class FixingSpot : public testing::TestWithParam<Spot> {};
INSTANTIATE_TEST_SUITE_P(CommonPractice, FixingSpot, testing::ValuesIn(spots));

TEST_P(FixingSpot, followsFromTheShapeOfThePack) {
    const Spot &spot = GetParam();
    const Fixing fixing = fixed(pack(spot.shape, spot.surface), spot.marker);
    EXPECT_EQ(fixing.where, spot.where);
    EXPECT_THAT(fixing.instead, IsEmpty());
}

TEST(Fixing, ofAMarkThatTheSurfaceDoesNotTakeIsTheSameMarkOnATag) {
    const Fixing stuck = fixed(pack(Shape::Other, Surface::Foil), "large-bump", MarkRole::Meaning);
    EXPECT_EQ(stuck.where, "on a card tag, tied or clipped on at the front");
    EXPECT_THAT(stuck.instead, HasSubstr("does not hold on foil, so the same mark goes on a tag"));
    const Fixing tied = fixed(pack(Shape::Box, Surface::Card), "disc-tag", MarkRole::Meaning);
    EXPECT_EQ(tied.where, "on a card tag, upright at the front above the flap");
    Thing cutlery = pack(Shape::Tool, Surface::Metal);
    cutlery.sub = "cutlery";
    EXPECT_EQ(fixed(cutlery, "ribbed-band").where, "on the front of its tray, block or pot");
    EXPECT_THAT(tied.instead, HasSubstr("the same mark goes on a tag"));
}

TEST(Fixing, ofWhatWarnsIsNotOnALidThatCanChangeItsJar) {
    const Fixing meaning = fixed(pack(Shape::Jar, Surface::Glass), "bump-row", MarkRole::Meaning);
    EXPECT_EQ(meaning.where, "at the front, just under the lid");
    EXPECT_THAT(fixed(pack(Shape::Jar, Surface::Glass), "bump-row").notes,
                Contains(HasSubstr("Close one jar before you open the next")));
    EXPECT_EQ(fixed(pack(Shape::Can, Surface::Metal), "bump-row", MarkRole::Meaning).where,
              "at the front, just under the top rim");
}

struct Empty {
    Shape shape;
    Surface surface;
    const char *marker;
    bool toThePot;
    const char *words;
};

/// Common practice: what can be taken off whole goes back to the return pot; the refilled container keeps its
/// mark, the refill pack never gets one.
const std::vector<Empty> empties{
    {Shape::Jar, Surface::Glass, "ribbed-band", true, "into the return pot"},
    {Shape::Can, Surface::Metal, "magnet", true, "into the return pot"},
    {Shape::Can, Surface::Metal, "large-print", true, "into the return pot"},
    {Shape::Bag, Surface::Plastic, "large-bump", true, "the clip with its mark goes into the return pot"},
    {Shape::Can, Surface::Metal, "large-bump", false, "goes out with the empty pack"},
    {Shape::Canister, Surface::Metal, "ribbed-band", false, "never on the refill pack"}};

class EmptyPack : public testing::TestWithParam<Empty> {};
INSTANTIATE_TEST_SUITE_P(CommonPractice, EmptyPack, testing::ValuesIn(empties));

TEST_P(EmptyPack, tellsWhatBecomesOfTheMark) {
    const Fixing fixing = fixed(pack(GetParam().shape, GetParam().surface), GetParam().marker);
    EXPECT_EQ(fixing.toThePot, GetParam().toThePot);
    EXPECT_THAT(fixing.whenEmpty, HasSubstr(GetParam().words));
}

TEST(Fixing, ofWhatIsNotUsedUpTellsNothingOfAnEmptyPack) {
    Thing pan = pack(Shape::Pan, Surface::Metal);
    pan.klass = Klass::Neither;
    EXPECT_THAT(fixed(pan, "ribbed-band").whenEmpty, IsEmpty());
}

/// Limits of materials: common practice; 24 hours before the cold likewise.
TEST(Fixing, namesHeatColdAndWet) {
    Thing pan = pack(Shape::Pan, Surface::Metal);
    pan.klass = Klass::Neither;
    pan.hotUse = true;
    EXPECT_THAT(fixed(pan, "one-band").notes, Contains(HasSubstr("does not stand more than 70 C")));
    EXPECT_THAT(fixed(pan, "ribbed-band").notes, Contains(HasSubstr("How much heat it stands is not known")));
    Thing peas = pack(Shape::Tub, Surface::Plastic);
    peas.storage = Storage::Freezer;
    EXPECT_THAT(fixed(peas, "one-band").notes, Contains(HasSubstr("does not last in the freezer")));
    EXPECT_THAT(fixed(peas, "bump-row").notes, Contains(HasSubstr("24 hours before it goes into the cold")));
    Thing bleach = pack(Shape::Bottle, Surface::Plastic);
    bleach.klass = Klass::Chemical;
    bleach.hazard = true;
    EXPECT_THAT(fixed(bleach, "disc-tag").notes, Contains(HasSubstr("does not stand wet")));
    EXPECT_THAT(fixed(bleach, "disc-tag").notes, Contains(HasSubstr("Do not cover the warnings")));
}

TEST(Fixing, keepsMarksOffFoodBladesAndThePharmacysLabel) {
    Thing spoon = pack(Shape::Tool, Surface::Wood);
    spoon.klass = Klass::Neither;
    EXPECT_THAT(fixed(spoon, "large-bump").notes, Contains(HasSubstr("Never where food or a lip touches")));
    Thing knife = pack(Shape::Tool, Surface::Metal);
    knife.klass = Klass::Neither;
    knife.sharp = true;
    EXPECT_THAT(fixed(knife, "ribbed-band").notes, Contains(HasSubstr("keep the mark off the blade")));
    Thing tablets = pack(Shape::Box, Surface::Card);
    tablets.medicine = true;
    EXPECT_THAT(fixed(tablets, "large-bump").notes, Contains(HasSubstr("ask the pharmacist")));
}

TEST(Fixing, inWordsBeginsWithTheMarkAndItsSpot) {
    const Thing jar = pack(Shape::Jar, Surface::Glass);
    EXPECT_EQ(fixingWords(fixed(jar, "ribbed-band"), *markerOf("ribbed-band")),
              "Ribbed silicone band, round the neck, under the lid. When it is empty, take the mark off and "
              "put it into the return pot.");
    EXPECT_THAT(fixingWords(fixed(jar, "large-print"), *markerOf("large-print")),
                HasSubstr("It faces outward."));
}

TEST(BrailleFace, isLengthwiseInOneLineOnACurve) {
    Thing tin = pack(Shape::Can, Surface::Metal);
    tin.height = Length{{11}, "11 cm", Basis::Measured};
    const BrailleFace face = brailleFace(tin);
    EXPECT_TRUE(face.oneLine);
    EXPECT_DOUBLE_EQ(face.width.value, 88);
}

} // namespace
} // namespace model
