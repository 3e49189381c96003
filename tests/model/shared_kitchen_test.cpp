#include "model/plan_holds.h"
#include "model/planning.h"
#include "model/shared_kitchen.h"
#include "model/together.h"
#include "tests/model/visit_clients.h"
#include <gmock/gmock.h>

namespace {

using namespace model;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr Date on{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

TEST(SharedKitchen, isReadBackAsWrittenAndWhatIsNoPairIsLeftOut) {
    const std::vector<SharedKitchen> all{{{"a1"}, {"b2"}}, {{"c3"}, {"d4"}}};
    EXPECT_EQ(sharedKitchensFrom(sharedKitchensText(all)), all);
    EXPECT_THAT(sharedKitchensFrom("a1\n\n  \na1 a1\nx y z\nc3 d4"),
                ElementsAre(SharedKitchen{{"c3"}, {"d4"}}));
    EXPECT_THAT(sharedKitchensFrom(""), IsEmpty());
}

TEST(SharedKitchen, isKeptWhereMoreIsRecorded) {
    Case full = fixtures::visitClients().at(4), empty = newCase("Invented Partner", "I0");
    EXPECT_EQ(keptByTheFuller(empty, full).keeper, full.client.id);
    EXPECT_EQ(keptByTheFuller(full, empty).keeper, full.client.id);
    EXPECT_EQ(keptByTheFuller(full, full).keeper, full.client.id);
    EXPECT_EQ(keptByTheFuller(full, empty).otherThan(full.client.id), empty.client.id);
}

TEST(SharedKitchen, takesAllOfTheKitchenAndNothingOfThePerson) {
    const Case keeper = fixtures::visitClients().at(4);
    Case partner = newCase("Invented Partner", "I0");
    partner.client.contact = "by telephone";
    partner.visits.emplace_back().id = newId();
    const Case before = partner;
    takeKitchen(partner, keeper);
    EXPECT_EQ(partner.things, keeper.things);
    EXPECT_EQ(partner.places, keeper.places);
    takeKitchen(partner, before);
    EXPECT_EQ(partner, before);
}

/// A plan made before it was known that another lives there, whom something harms.
TEST(BrokenToday, namesWhatThePlanOfOneBreaksForBoth) {
    Case keeper = fixtures::visitClients().at(4);
    const Case partner = fixtures::visitClients().at(5);
    keeper.diet.avoids.clear();
    SolveOptions options;
    options.moves = 60'000;
    keeper.plan = makePlan(keeper, findingsOf(keeper, on), options, on).value();
    ASSERT_THAT(brokenToday(keeper, findingsOf(keeper, on)), IsEmpty());
    Case allergic = partner;
    allergic.diet.asked = true;
    allergic.diet.avoids = {"nuts", "gluten", "milk"};
    const Together both = together(keeper, allergic, on);
    Case shown = both.record;
    for (PlanLine &line : shown.plan->lines)
        line.marker.clear(); // which marks they share is no matter here
    EXPECT_THAT(brokenToday(shown, both.findings), Contains(HasSubstr("avoided allergen")));
}

TEST(BrokenToday, saysNothingWithoutAPlan) {
    const Case record = fixtures::visitClients().at(4);
    EXPECT_THAT(brokenToday(record, findingsOf(record, on)), IsEmpty());
}

} // namespace
