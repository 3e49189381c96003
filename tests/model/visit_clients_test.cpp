#include "model/evaluate.h"
#include "model/kit.h"
#include "model/meanings.h"
#include "model/planning.h"
#include "model/supplies.h"
#include "model/upkeep.h"
#include "model/usable_marks.h"
#include "model/work_order.h"
#include "tests/model/visit_clients.h"
#include <algorithm>
#include <gmock/gmock.h>
#include <set>

namespace {

using namespace model;
using testing::HasSubstr;
using testing::Not;

constexpr Date on{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

enum Who { Tube, Deafblind, Varying, Stroke, PartnerBraille, PartnerPrint };

const Case &planned(int who) {
    static const std::vector<Case> all = [] {
        std::vector<Case> records = fixtures::visitClients();
        SolveOptions options;
        options.moves = 60'000;
        options.seeds = 2;
        for (Case &record : records)
            if (auto plan = makePlan(record, findingsOf(record, on), options, on); plan)
                record.plan = *plan;
        return records;
    }();
    return all.at(static_cast<std::size_t>(who));
}

const Thing &thingOf(const Case &record, const Id &id) {
    return *std::ranges::find(record.things, id, &Thing::id);
}

const Place &placeOf(const Case &record, const Id &id) {
    return *std::ranges::find(record.places, id, &Place::id);
}

const PlanLine &lineOf(const Case &record, const std::string &name) {
    const auto thing = std::ranges::find(record.things, name, &Thing::name);
    EXPECT_NE(thing, record.things.end()) << name;
    return *std::ranges::find(record.plan->lines, thing->id, &PlanLine::thing);
}

bool uses(const Case &record, bool (*concerns)(const Marker &)) {
    const auto is = [&](const std::string &key) {
        const Marker *marker = markerIn(record, key);
        return marker != nullptr && concerns(*marker);
    };
    return std::ranges::any_of(record.plan->lines, [&](const PlanLine &line) { return is(line.marker); }) ||
           std::ranges::any_of(record.plan->meaningMarks,
                               [&](const MeaningMark &mark) { return is(mark.marker); });
}

class VisitClient : public testing::TestWithParam<int> {};
INSTANTIATE_TEST_SUITE_P(All, VisitClient,
                         testing::Values(Tube, Deafblind, Varying, Stroke, PartnerBraille, PartnerPrint));

TEST_P(VisitClient, hasALegalPlanOfAllThings) {
    const Case &record = planned(GetParam());
    ASSERT_TRUE(record.plan.has_value());
    ASSERT_EQ(record.plan->lines.size(), record.things.size())
        << (record.plan->shortages.empty() ? "" : record.plan->shortages.front().sentence);
    const auto built = planProblem(record, findingsOf(record, on)).value();
    EXPECT_TRUE(brokenRules(built.problem, shownPlacement(built, *record.plan).value()).empty());
}

/// Two things that feel alike and stand side by side never carry the same touch mark.
TEST_P(VisitClient, neverHasTheSameMarkOnLookAlikesOfOneShelf) {
    const Case &record = planned(GetParam());
    const auto built = planProblem(record, findingsOf(record, on)).value();
    const Placement shown = shownPlacement(built, *record.plan).value();
    for (int i = 0; i < static_cast<int>(built.things.size()); ++i)
        for (int j = 0; j < i; ++j) {
            const Marker *marker = markerIn(record, record.plan->lines[i].marker);
            const bool same = shown.place[i] == shown.place[j] && shown.code[i] == shown.code[j];
            if (same && marker != nullptr && marker->medium == MarkMedium::Touch) {
                EXPECT_NE(built.problem.items[i].shape, built.problem.items[j].shape)
                    << built.problem.items[i].name << ", " << built.problem.items[j].name;
            }
        }
}

TEST_P(VisitClient, buysNothingThatIsBannedAndKeepsChemicalsFromFood) {
    const Case &record = planned(GetParam());
    for (const Supply &supply : supplies(record, findingsOf(record, on)))
        for (const Marker &marker : wholeKitOf(record))
            EXPECT_FALSE(marker.name == supply.name && ruledOut(marker, record)) << supply.name;
    for (const PlanLine &a : record.plan->lines)
        for (const PlanLine &b : record.plan->lines)
            if (thingOf(record, a.thing).klass == Klass::Chemical &&
                thingOf(record, b.thing).klass == Klass::Food) {
                EXPECT_NE(a.place, b.place);
            }
}

TEST(VisitClients, deafblindReaderHasBrailleAndNeitherMagnetsNorSpokenTags) {
    const Case &record = planned(Deafblind);
    EXPECT_FALSE(
        uses(record, [](const Marker &m) { return m.magnetic || m.medium == MarkMedium::SpokenTag; }));
    for (const auto &banned : bannedMaterials(record, findingsOf(record, on)))
        EXPECT_THAT(banned.instead, Not(HasSubstr("spoken")));
}

TEST(VisitClients, whereNoPairIsToldApartNoTouchMarkIsPlannedAndTheMedicinesStay) {
    const Case &record = planned(Varying);
    EXPECT_FALSE(uses(record, [](const Marker &m) { return m.medium == MarkMedium::Touch; }));
    for (const PlanLine &line : record.plan->lines)
        if (thingOf(record, line.thing).medicine) {
            EXPECT_EQ(line.place, thingOf(record, line.thing).place) << thingOf(record, line.thing).name;
        }
}

TEST(VisitClients, whereNoMarkMeansDangerALabelSaysIt) {
    const Case &record = planned(Varying);
    for (const char *name : {"bleach", "kitchen spray"}) {
        const PlanLine &line = lineOf(record, name);
        const Marker *marker = markerIn(record, line.marker);
        ASSERT_NE(marker, nullptr) << name;
        EXPECT_EQ(marker->medium, MarkMedium::LargePrint);
        EXPECT_THAT(line.labelText, HasSubstr(", danger"));
    }
    EXPECT_EQ(lineOf(record, "insulin").marker, "") << "the label of a medicine is the pharmacist's";
    EXPECT_THAT(meaningsTold(record, record.plan->meaningMarks),
                testing::Contains(HasSubstr("A label in words tells it on: bleach")));
}

TEST(VisitClients, oneSideNotAttendedPutsNewStockOnlyBehind) {
    for (const auto &task : upkeepTasks(planned(Stroke), on))
        EXPECT_THAT(task.task, Not(HasSubstr("right"))) << task.task;
}

TEST(VisitClients, leftNotAttendedIsToldFromTheRight) {
    const auto told = [](const Case &record, const char *side) {
        const auto steps = workOrder(record, findingsOf(record, on), on);
        return std::ranges::count_if(
            steps, [&](const WorkStep &step) { return step.step.find(side) != std::string::npos; });
    };
    EXPECT_GT(told(planned(Stroke), "put in from the right: "), 0);
    EXPECT_EQ(told(planned(Stroke), "put in from the left: "), 0);
    EXPECT_GT(told(planned(Tube), "put in from the left: "), 0);
    EXPECT_EQ(told(planned(Tube), "put in from the right: "), 0);
}

TEST(VisitClients, coupleHasTheNutsApartAndFewKindsOfMarks) {
    const Case &braille = planned(PartnerBraille);
    for (const char *nut : {"peanut butter", "almonds"}) {
        if (hasAvoidedAllergen(thingOf(braille, lineOf(braille, nut).thing), braille.diet)) {
            for (const PlanLine &line : braille.plan->lines)
                if (line.place == lineOf(braille, nut).place &&
                    thingOf(braille, line.thing).klass == Klass::Food) {
                    EXPECT_TRUE(hasAvoidedAllergen(thingOf(braille, line.thing), braille.diet))
                        << thingOf(braille, line.thing).name << " beside " << nut;
                }
        }
    }
    const Case &print = planned(PartnerPrint);
    std::set<std::string> kinds;
    for (const MeaningMark &mark : print.plan->meaningMarks)
        kinds.insert(mark.marker);
    for (const PlanLine &line : print.plan->lines) {
        const Marker *marker = markerIn(print, line.marker);
        if (marker != nullptr && marker->medium == MarkMedium::Touch)
            kinds.insert(marker->key);
    }
    EXPECT_LE(kinds.size(), 3U);
}

/// The second step of height begins 20 cm above the shoulder (a default of this program).
TEST(VisitClients, nobodyReachesFarAboveTheShoulderForDailyThings) {
    constexpr double step = 20;
    for (int who = Tube; who <= PartnerPrint; ++who) {
        const Case &record = planned(who);
        const Findings findings = findingsOf(record, on);
        for (const PlanLine &line : record.plan->lines)
            if (thingOf(record, line.thing).usesPerWeek.value_or(0) >= 7 &&
                !hasAvoidedAllergen(thingOf(record, line.thing),
                                    record.diet)) { // what she must avoid is not hers
                EXPECT_LE(placeOf(record, line.place).height->value.value,
                          findings.shoulder.value.value + step)
                    << record.client.name << ": " << thingOf(record, line.thing).name;
            }
    }
}

} // namespace
