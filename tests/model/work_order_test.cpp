#include "model/demo.h"
#include "model/planning.h"
#include "model/work_order.h"
#include <algorithm>
#include <gmock/gmock.h>
#include <set>

namespace {

using namespace model;
using testing::HasSubstr;

constexpr Date on{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

const Case &idris() {
    static const Case record = [] {
        Case made = demo::idris();
        SolveOptions options;
        options.moves = 40'000;
        options.seeds = 1;
        made.plan = makePlan(made, findingsOf(made, on), options, on).value();
        return made;
    }();
    return record;
}

std::vector<WorkStep> orderOf(const Case &record) {
    return workOrder(record, findingsOf(record, on), on);
}

const Place &placeOf(const Case &record, const Id &id) {
    return *std::ranges::find(record.places, id, &Place::id);
}

bool isDanger(const Case &record, const Id &id) {
    return std::ranges::any_of(record.things, [&](const Thing &thing) {
        return thing.id == id && (thing.hazard || thing.medicine);
    });
}

TEST(WorkOrder, putsEachThingInItsPlaceOnce) {
    std::set<Id> seen;
    std::set<Id> places;
    for (const auto &step : orderOf(idris())) {
        EXPECT_GT(step.minutes, 0);
        if (step.place) {
            EXPECT_TRUE(places.insert(*step.place).second);
        }
        for (const auto &thing : step.things)
            EXPECT_TRUE(seen.insert(thing).second);
    }
    EXPECT_EQ(seen.size(), idris().things.size());
}

TEST(WorkOrder, finishesAUnitBeforeTheNextAndBeginsWithHazards) {
    const auto steps = orderOf(idris());
    std::vector<Id> units;
    for (const auto &step : steps) {
        if (!step.place)
            continue;
        const Id unit = placeOf(idris(), *step.place).unit;
        if (units.empty() || units.back() != unit) {
            EXPECT_EQ(std::ranges::count(units, unit), 0) << step.step;
            units.push_back(unit);
        }
    }
    const auto first =
        std::ranges::find_if(steps, [](const WorkStep &step) { return step.place.has_value(); });
    EXPECT_TRUE(std::ranges::any_of(first->things, [](const Id &id) { return isDanger(idris(), id); }));
}

TEST(WorkOrder, restsAfterAnHourAtMost) {
    int minutes = 0;
    for (const auto &step : orderOf(idris())) {
        minutes += step.minutes;
        EXPECT_LE(minutes, 60 + 15); // the last round through the kitchen comes on top
        if (!step.pause.empty())
            minutes = 0;
    }
}

/// At a pause each thing stands at its old place, at its new one, or is named as waiting on the tray.
TEST(WorkOrder, namesWhatWaitsOnTheTrayAtEachPause) {
    std::set<Id> done;
    int pauses = 0;
    for (const auto &step : orderOf(idris())) {
        if (step.place)
            done.insert(*step.place);
        if (step.pause.empty() || step.pause == "The kitchen is in use.")
            continue;
        ++pauses;
        for (const PlanLine &line : idris().plan->lines) {
            const Thing &thing = *std::ranges::find(idris().things, line.thing, &Thing::id);
            if (done.contains(*thing.place) && !done.contains(line.place)) {
                EXPECT_THAT(step.pause, HasSubstr(thing.name));
            }
        }
    }
    EXPECT_GT(pauses, 0);
}

/// True if the words at each step say that somebody else reaches above the shoulder, `unsteady` or not.
void expectHelp(const Case &record, bool unsteady) {
    const Findings findings = findingsOf(record, on);
    for (const auto &step : orderOf(record)) {
        if (!step.place)
            continue;
        const bool high = placeOf(record, *step.place).height->value > findings.shoulder.value;
        EXPECT_EQ(step.help.find("above the shoulder") != std::string::npos, unsteady && high) << step.step;
        for (const Id &id : step.things)
            if (isDanger(record, id)) {
                EXPECT_THAT(step.help, HasSubstr("Set down by the therapist"));
            }
    }
}

TEST(WorkOrder, saysWhoLiftsWhatIsHighOrHarmful) {
    expectHelp(idris(), false);
    Case record = idris();
    record.safety.answers[SafetyQuestion::Falls].answer = Answer::Yes;
    expectHelp(record, true);
}

TEST(WorkOrder, saysWhoLiftsWhatIsHeavy) {
    const Findings findings = findingsOf(idris(), on);
    int heavy = 0;
    Case record = idris();
    record.things.front().weight = Kilograms{findings.heavyLimit.value};
    for (const auto &step : orderOf(record))
        if (std::ranges::count(step.things, record.things.front().id) > 0) {
            EXPECT_THAT(step.help, HasSubstr("Heavy, lifted by a helper or the therapist: "));
            EXPECT_THAT(step.help, HasSubstr(record.things.front().name));
            ++heavy;
        }
    EXPECT_EQ(heavy, 1);
}

TEST(WorkOrder, sortsOutByDateFirstAndAsks) {
    Case record = idris();
    EXPECT_THAT(orderOf(record).front().step, HasSubstr("without the client's consent"));
    Thing &butter = *std::ranges::find(record.things, std::string("butter"), &Thing::name);
    butter.dateKind = DateKind::UseBy;
    butter.bestBefore = addDays(on, -1);
    const WorkStep second = orderOf(record).at(1);
    EXPECT_THAT(second.step, HasSubstr("ask about each before it goes"));
    EXPECT_EQ(second.who, Doer::Therapist);
    ASSERT_FALSE(second.first.empty());
    EXPECT_THAT(second.first.front(), HasSubstr("Butter: use by 24 November 2026"));
}

TEST(WorkOrder, isEmptyWithoutAPlan) {
    EXPECT_TRUE(orderOf(demo::nora()).empty());
}

} // namespace
