#include "model/demo.h"
#include "model/planning.h"
#include "model/work_order.h"
#include <gmock/gmock.h>
#include <set>

namespace {

using namespace model;

constexpr Date on{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

Case planned(Case record) {
    SolveOptions options;
    options.moves = 40'000;
    options.seeds = 1;
    record.plan = makePlan(record, findingsOf(record, on), options, on).value();
    return record;
}

TEST(WorkOrder, putsEachThingInItsPlaceOnce) {
    const Case record = planned(demo::idris());
    std::set<Id> seen;
    std::set<Id> places;
    for (const auto &step : workOrder(record)) {
        EXPECT_GT(step.minutes, 0);
        if (step.place) {
            EXPECT_TRUE(places.insert(*step.place).second);
        }
        for (const auto &thing : step.things)
            EXPECT_TRUE(seen.insert(thing).second);
    }
    EXPECT_EQ(seen.size(), record.things.size());
}

TEST(WorkOrder, startsWithHazardsAndCanStopAfterEveryHour) {
    const Case record = planned(demo::idris());
    const auto steps = workOrder(record);
    ASSERT_GT(steps.size(), 3U);
    EXPECT_FALSE(steps[0].place.has_value());
    const auto isDanger = [&](const Id &id) {
        return std::any_of(record.things.begin(), record.things.end(), [&](const Thing &thing) {
            return thing.id == id && (thing.hazard || thing.medicine);
        });
    };
    bool dangers = true; // until the first step without any
    for (std::size_t k = 1; k + 1 < steps.size(); ++k) {
        const bool here = std::any_of(steps[k].things.begin(), steps[k].things.end(), isDanger);
        EXPECT_TRUE(dangers || !here) << steps[k].step;
        dangers = here;
    }
    EXPECT_TRUE(std::any_of(steps[1].things.begin(), steps[1].things.end(), isDanger));
    int minutes = 0;
    for (const auto &step : steps) {
        minutes = minutes + step.minutes;
        EXPECT_LE(minutes, 75);
        if (!step.pause.empty())
            minutes = 0;
    }
}

TEST(WorkOrder, isEmptyWithoutAPlan) {
    EXPECT_TRUE(workOrder(demo::nora()).empty());
}

} // namespace
