#include "model/demo.h"
#include "model/kit.h"
#include "model/supplies.h"
#include "tests/model/fixtures.h"
#include <algorithm>
#include <gmock/gmock.h>

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
    const auto list = supplies(withElevenBands());
    ASSERT_NE(supplyNamed(list, "ribbed silicone band"), nullptr);
    EXPECT_EQ(supplyNamed(list, "ribbed silicone band")->count, 13); // 11 and 2 spare
}

TEST(Supplies, holdWhatCarriesTheMarksAtThePricesThatWereSet) {
    Case record = withElevenBands();
    record.upkeep = UpkeepWishes{.id = newId(), .currency = "pounds", .clipPrice = 0.5, .potPrice = 4};
    const auto list = supplies(record);
    const Supply *clip = supplyNamed(list, "clip for a bag, that carries its mark");
    ASSERT_NE(clip, nullptr);
    EXPECT_EQ(clip->count, 13);
    EXPECT_DOUBLE_EQ(clip->cost, 6.5);
    EXPECT_DOUBLE_EQ(supplyNamed(list, "pot for marks taken off empty packs")->cost, 4);
    const double bands = 13 * markerIn(record, "ribbed-band")->cost;
    EXPECT_DOUBLE_EQ(totalCost(list), bands + 6.5 + 4);
    EXPECT_EQ(priceInWords(10.5, record), "10.50 pounds");
    EXPECT_EQ(priceInWords(10.5, demo::nora()), "10.50");
}

TEST(Supplies, leaveOutWhatTheAnswersRuleOutToday) {
    Case record = demo::idris();
    record.plan = Plan{};
    for (const char *key : {"magnet", "one-band", "cord"})
        record.plan->lines.push_back({record.things[0].id, record.places[0].id, 0, key, {}, ""});
    const auto list = supplies(record);
    EXPECT_NE(supplyNamed(list, "knotted cord"), nullptr);
    for (const char *name : {"magnet strip", "rubber band"})
        EXPECT_EQ(supplyNamed(list, name), nullptr) << name;
}

TEST(Supplies, areNoneWithoutAPlan) {
    EXPECT_THAT(supplies(demo::nora()), IsEmpty());
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
