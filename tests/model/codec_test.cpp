#include "model/codec.h"
#include "model/demo.h"
#include <algorithm>
#include <gmock/gmock.h>
#include <set>

namespace model {
namespace {

using ::testing::IsEmpty;
using ::testing::SizeIs;

Case withPlan(Case record) {
    Plan plan;
    plan.id = newId();
    plan.made = Date{std::chrono::year{2026}, std::chrono::November, std::chrono::day{25}};
    plan.lines = {{record.things.front().id, record.places.front().id, 2, "band-one", {"hazard"}, "Salt"}};
    plan.meaningMarks = {{"hazard", "ridge"}};
    plan.shortages = {{"width", 24.0, 15.0, {record.things.front().id}, {}, "24 cm needed, 15 cm there."}};
    plan.terms = {1, 2, 3, 4, 5, 6};
    record.plan = plan;
    record.overrules.push_back(
        {newId(), record.things.front().id, record.places.front().id, true, "asked for", plan.made});
    return record;
}

TEST(Codec, bringsBackEveryDemoCaseWhole) {
    for (const Case &demo : demo::all()) {
        const Case record = withPlan(demo);
        EXPECT_EQ(fromRecords(toRecords(record)), record) << demo.client.code;
    }
}

TEST(Codec, bringsBackAppliancesOwnPlacesAndDietFacts) {
    Case record = demo::nora();
    record.appliances.front().heat = Celsius{55};
    record.client.hasCodeReader = true;
    record.diet.facts = {"low salt"};
    record.places.front().own = true;
    record.things.front().own = true;
    record.things.front().dietFacts = {"low salt"};
    record.things.front().directions = "Warm through";
    EXPECT_EQ(fromRecords(toRecords(record)), record);
}

TEST(Codec, keepsTheOrderOfListsWhateverOrderTheRecordsCome) {
    const Case record = withPlan(demo::tilda());
    auto records = toRecords(record);
    std::reverse(records.begin(), records.end());
    EXPECT_EQ(fromRecords(records), record);
}

TEST(Codec, givesEveryRecordAnIdOfItsOwn) {
    std::set<Id> ids;
    const auto records = toRecords(withPlan(demo::nora()));
    for (const auto &record : records) {
        EXPECT_FALSE(record.id.empty()) << record.kind;
        EXPECT_TRUE(ids.insert(record.id).second) << record.kind << record.id.text;
    }
}

TEST(Codec, findsNoChangeInTheSameCase) {
    const auto changes = recordChanges(demo::nora(), demo::nora());
    EXPECT_THAT(changes.written, IsEmpty());
    EXPECT_THAT(changes.removed, IsEmpty());
}

TEST(Codec, writesOnlyTheRecordThatChanged) {
    const Case before = demo::nora();
    Case after = before;
    after.things[3].count = 17;
    const auto changes = recordChanges(before, after);
    ASSERT_THAT(changes.written, SizeIs(1));
    EXPECT_EQ(changes.written[0].id, before.things[3].id);
    EXPECT_THAT(changes.removed, IsEmpty());
}

TEST(Codec, namesWhatIsGone) {
    const Case before = demo::nora();
    Case after = before;
    after.things.pop_back();
    const auto changes = recordChanges(before, after);
    EXPECT_THAT(changes.written, IsEmpty());
    ASSERT_THAT(changes.removed, SizeIs(1));
    EXPECT_EQ(changes.removed[0].id, before.things.back().id);
}

class DamagedBody : public ::testing::TestWithParam<const char *> {};

TEST_P(DamagedBody, isAnErrorAndNotAGuess) {
    Case record = newCase("Invented Person", "Z9");
    auto records = toRecords(record);
    records.push_back({newId(), "unit", GetParam()});
    const auto read = fromRecords(records);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, ErrorCode::DamagedDatabase);
}

INSTANTIATE_TEST_SUITE_P(Codec, DamagedBody,
                         ::testing::Values("", "{", "[]", "null", R"({"colour": 3})", R"({"order": 1.5})",
                                           R"({"order": "1"})", R"({"kind": "castle"})",
                                           R"({"new-field": 1})", R"({"width": {"cm": "wide"}})"));

TEST(Codec, loadsAnOlderRecordThatLacksAField) {
    auto records = toRecords(newCase("Invented Person", "Z9"));
    records.push_back({{"u1"}, "unit", R"({"name": "larder"})"});
    const auto read = fromRecords(records);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->units.at(0).name, "larder");
    EXPECT_EQ(read->units.at(0).lockable, Answer::NotAsked);
}

TEST(Codec, refusesACaseWithoutItsClient) {
    auto records = toRecords(newCase("Invented Person", "Z9"));
    records.erase(records.begin());
    EXPECT_FALSE(fromRecords(records));
}

TEST(Codec, makesIdsThatDiffer) {
    std::set<Id> ids;
    for (int i = 0; i < 1000; ++i)
        ids.insert(newId());
    EXPECT_EQ(ids.size(), 1000U);
    EXPECT_EQ(ids.begin()->text.size(), 32U);
}

} // namespace
} // namespace model
