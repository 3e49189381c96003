#include "model/appliance_marks.h"
#include "model/demo.h"
#include "model/kit.h"
#include "model/supplies.h"
#include "tests/model/fixtures.h"
#include <algorithm>
#include <gmock/gmock.h>
#include <set>

namespace {

using namespace model;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

constexpr Date on{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

const Supply *supplyNamed(const std::vector<Supply> &all, const std::string &name) {
    const auto found = std::ranges::find(all, name, &Supply::name);
    return found == all.end() ? nullptr : &*found;
}

Case withElevenBands() {
    Case record = demo::nora();
    record.plan = Plan{};
    for (std::size_t i = 0; i < 11; ++i) {
        Thing &thing = record.things[i];
        thing.shape = Shape::Bag;
        thing.count = 1;
        record.plan->lines.push_back({thing.id, record.places[0].id, 0, "ribbed-band", {}, ""});
    }
    return record;
}

TEST(Supplies, haveTenPercentSpareRoundedUp) {
    const auto list = supplies(withElevenBands(), findingsOf(withElevenBands(), on));
    ASSERT_NE(supplyNamed(list, "ribbed silicone band"), nullptr);
    EXPECT_EQ(supplyNamed(list, "ribbed silicone band")->count, 13); // 11 and 2 spare
}

TEST(Supplies, holdABinForOwnThingsWhereNoPlaceIsTheClientsOwn) {
    Case record = withElevenBands();
    const std::string bin = "bin for the client's own things, with its mark";
    EXPECT_EQ(supplyNamed(supplies(record, findingsOf(record, on)), bin), nullptr);
    record.things[0].own = record.things[1].own = true;
    record.things[0].storage = record.things[1].storage = Storage::Dry;
    record.things[2].own = true;
    record.things[2].storage = Storage::Fridge;
    const auto list = supplies(record, findingsOf(record, on));
    ASSERT_NE(supplyNamed(list, bin), nullptr);
    EXPECT_EQ(supplyNamed(list, bin)->count, 2);
    record.places[0].own = true;
    record.places[0].storage = Storage::Dry;
    const auto fewer = supplies(record, findingsOf(record, on));
    ASSERT_NE(supplyNamed(fewer, bin), nullptr);
    EXPECT_EQ(supplyNamed(fewer, bin)->count, 1) << "the one for the fridge";
}

TEST(Supplies, holdWhatCarriesTheMarksAtThePricesThatWereSet) {
    Case record = withElevenBands();
    record.upkeep = UpkeepWishes{.id = newId(), .currency = "pounds", .clipPrice = 0.5, .potPrice = 4};
    const auto list = supplies(record, findingsOf(record, on));
    const Supply *clip = supplyNamed(list, "clip for a bag, that carries its mark");
    ASSERT_NE(clip, nullptr);
    EXPECT_EQ(clip->count, 13);
    EXPECT_DOUBLE_EQ(clip->cost, 6.5);
    EXPECT_DOUBLE_EQ(supplyNamed(list, "pot for marks taken off empty packs")->cost, 4);
    const double bands = 13 * markerIn(record, "ribbed-band")->cost;
    const Supply *cards = supplyNamed(list, "large-print label for a section or shelf");
    ASSERT_NE(cards, nullptr);
    double controls = 0;
    for (const Supply &supply : list)
        if (supply.name != "ribbed silicone band" && &supply != clip && &supply != cards &&
            !supply.name.starts_with("pot"))
            controls += supply.cost;
    EXPECT_DOUBLE_EQ(totalCost(list), bands + cards->cost + controls + 6.5 + 4);
    EXPECT_EQ(priceInWords(10.5, record), "10.50 pounds");
    EXPECT_EQ(priceInWords(10.5, demo::nora()), "10.50");
}

TEST(Supplies, leaveOutWhatTheAnswersRuleOutToday) {
    Case record = demo::idris();
    record.plan = Plan{};
    for (const char *key : {"magnet", "one-band", "cord"})
        record.plan->lines.push_back({record.things[0].id, record.places[0].id, 0, key, {}, ""});
    const auto list = supplies(record, findingsOf(record, on));
    EXPECT_NE(supplyNamed(list, "knotted cord"), nullptr);
    for (const char *name : {"magnet strip", "rubber band"})
        EXPECT_EQ(supplyNamed(list, name), nullptr) << name;
}

TEST(Supplies, countTheLabelsOfSectionsAndTheMarksOfControls) {
    Case record = demo::idris(); // reads braille
    record.plan = Plan{};
    record.plan->lines.push_back({record.things[0].id, record.places[0].id, 0, "", {}, ""});
    const Findings findings = findingsOf(record, on);
    std::set<Id> units;
    for (const Place &place : record.places)
        units.insert(place.unit);
    int cards = static_cast<int>(record.places.size());
    for (const Id &unit : units)
        cards += std::ranges::count(record.places, unit, &Place::unit) > 1 ? 1 : 0;
    int controls = 0;
    for (const ApplianceMarks &appliance : applianceMarks(record, findings))
        controls += static_cast<int>(appliance.marks.size());
    const auto list = supplies(record, findings);
    const Supply *labels = supplyNamed(list, "braille label for a section or shelf");
    ASSERT_NE(labels, nullptr);
    EXPECT_EQ(labels->count, cards + (cards + 9) / 10);
    int marks = 0;
    for (const Supply &supply : list)
        if (&supply != labels && !supply.name.starts_with("pot"))
            marks += supply.count;
    EXPECT_GE(marks, controls);
    EXPECT_GT(controls, 0);
}

TEST(Supplies, areNoneWithoutAPlan) {
    EXPECT_THAT(supplies(demo::nora(), findingsOf(demo::nora(), on)), IsEmpty());
}

const BannedMaterial *bannedWith(const std::vector<BannedMaterial> &all, const std::string &words) {
    const auto found = std::ranges::find_if(
        all, [&](const BannedMaterial &one) { return one.material.find(words) != std::string::npos; });
    return found == all.end() ? nullptr : &*found;
}

TEST(BannedMaterials, haveAnAlternativeThatIsNotBannedItself) {
    const Case record = demo::idris(); // an implant; latex not asked
    const Findings findings = findingsOf(record, on);
    const auto all = bannedMaterials(record, findings);
    const BannedMaterial *rubber = bannedWith(all, "latex"), *magnet = bannedWith(all, "Magnets");
    ASSERT_TRUE(rubber != nullptr && magnet != nullptr);
    EXPECT_EQ(rubber->because, "latex allergy: not asked");
    EXPECT_EQ(magnet->because, "implant: answered yes");
    for (const BannedMaterial &one : all)
        for (const auto &[key, why] : findings.bannedMarks)
            EXPECT_THAT(one.instead, Not(HasSubstr(markerIn(record, key)->name))) << one.material;
    EXPECT_EQ(bannedWith(all, "Sticky"), nullptr); // asked, and no trouble
}

TEST(BannedMaterials, areNoneWhereNothingIsRuledOut) {
    const Case record = fixtures::unworried("Invented", "I");
    for (const auto &one : bannedMaterials(record, findingsOf(record, on)))
        ADD_FAILURE() << one.material << ": " << one.because;
}

TEST(BannedMaterials, namePlaceShapeAndHelpWhereNoMarkIsLeft) {
    Case record = newCase("Invented", "I"); // nothing asked
    for (const Marker &marker : markerKit())
        if (!marker.latex)
            record.kit.push_back({newId(), marker, false});
    const auto all = bannedMaterials(record, findingsOf(record, on));
    ASSERT_NE(bannedWith(all, "latex"), nullptr);
    EXPECT_THAT(bannedWith(all, "latex")->instead, HasSubstr("place, shape and help"));
}

} // namespace
