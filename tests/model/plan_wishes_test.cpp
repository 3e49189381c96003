#include "model/demo.h"
#include "model/evaluate.h"
#include "model/plan_safety.h"
#include "model/plan_wishes.h"
#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>

namespace {

using namespace model;
using testing::AllOf;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::SizeIs;

constexpr Date on{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

SolveOptions little() {
    SolveOptions options;
    options.moves = 60'000;
    options.seeds = 2;
    return options;
}

Case planned(Case record) {
    const auto plan = makePlan(record, findingsOf(record, on), little(), on);
    EXPECT_TRUE(plan.has_value()) << (plan ? "" : plan.error().sentence);
    if (plan)
        record.plan = *plan;
    return record;
}

const Case &nora() {
    static const Case record = planned(demo::nora());
    return record;
}

const Thing &named(const Case &record, const std::string &name) {
    const auto found = std::find_if(record.things.begin(), record.things.end(),
                                    [&](const Thing &t) { return t.name == name; });
    EXPECT_NE(found, record.things.end()) << name;
    return *found;
}

const PlanLine &lineOf(const Case &record, const Id &thing) {
    const auto found = std::find_if(record.plan->lines.begin(), record.plan->lines.end(),
                                    [&](const PlanLine &line) { return line.thing == thing; });
    EXPECT_NE(found, record.plan->lines.end());
    return *found;
}

Overrule pin(const Id &thing, const Id &place) {
    return {newId(), thing, place, false, "the client wants it there", on};
}

Overrule ban(const Id &thing, const Id &place) {
    return {newId(), thing, place, true, "", on};
}

Overrule marked(const Id &thing, const std::string &marker) {
    Overrule wish{newId(), thing, {}, false, "", on};
    wish.marker = marker;
    return wish;
}

Overrule worded(const Id &thing, const std::string &wording) {
    Overrule wish{newId(), thing, {}, false, "", on};
    wish.wording = wording;
    return wish;
}

/// Places where the thing could go by a pin, other than its own.
std::vector<Id> otherPlaces(const Case &record, const Id &thing) {
    std::vector<Id> out;
    for (const Place &place : record.places)
        if (place.id != lineOf(record, thing).place &&
            priceOf(record, findingsOf(record, on), thing, place.id).has_value())
            out.push_back(place.id);
    return out;
}

TEST(Wish, isPricedAndKept) {
    const Id thing = named(nora(), "rice").id;
    const std::vector<Id> places = otherPlaces(nora(), thing);
    ASSERT_FALSE(places.empty());
    const auto outcome = tryWish(nora(), findingsOf(nora(), on), pin(thing, places.front()), on);
    ASSERT_TRUE(outcome.has_value());
    EXPECT_EQ(lineOf(outcome->record, thing).place, places.front());
    EXPECT_EQ(std::llround(outcome->price * 1000),
              outcome->record.plan->terms.total() - nora().plan->terms.total());
    ASSERT_THAT(outcome->record.overrules, SizeIs(1));
    EXPECT_THAT(wishInWords(outcome->record, outcome->record.overrules.front()),
                AllOf(HasSubstr("Rice: to stand in "), HasSubstr(", since the client wants it there.")));
}

TEST(Wish, takesThePlaceOfAnEarlierOneAboutTheSame) {
    const Id thing = named(nora(), "rice").id;
    Case record = withWish(nora(), pin(thing, {"a"}));
    record = withWish(record, pin(thing, {"b"}));
    EXPECT_THAT(record.overrules, SizeIs(1));
    record = withWish(record, marked(thing, ""));
    record = withWish(record, worded(thing, "Long rice"));
    EXPECT_THAT(record.overrules, SizeIs(3));
    record = withWish(record, ban(thing, {"c"}));
    EXPECT_THAT(record.overrules, SizeIs(4));
    record = withWish(record, pin(thing, {"c"}));
    EXPECT_THAT(record.overrules, SizeIs(3)) << "not in c goes with: to stand in c; so does the older place";
}

TEST(Wish, ofAWordingIsOnTheLabel) {
    const Id thing = named(nora(), "rice").id;
    const auto outcome = tryWish(nora(), findingsOf(nora(), on), worded(thing, "Long rice"), on);
    ASSERT_TRUE(outcome.has_value());
    EXPECT_EQ(lineOf(outcome->record, thing).labelText, "Long rice");
    EXPECT_EQ(outcome->changed, 0);
    EXPECT_DOUBLE_EQ(outcome->price, 0);
}

TEST(Wish, ofAMarkIsKeptOrRefusedWithItsReason) {
    const Case &record = nora();
    const auto findings = findingsOf(record, on);
    int kept = 0;
    for (const auto &marker : markerKit()) {
        const Overrule wish = marked(named(record, "rice").id, marker.key);
        const auto outcome = tryWish(record, findings, wish, on);
        if (outcome) {
            EXPECT_EQ(lineOf(outcome->record, wish.thing).marker, marker.key);
            ++kept;
        } else {
            EXPECT_THAT(outcome.error().sentence, HasSubstr("."));
            EXPECT_EQ(outcome.error().code, ErrorCode::Refused) << marker.key;
            if (findings.bannedMarks.contains(marker.key)) {
                EXPECT_THAT(outcome.error().sentence, HasSubstr("not overruled")) << marker.key;
            }
        }
    }
    EXPECT_GT(kept, 0);
}

/// Two things that each fill more than half of one shelf, both wished there.
TEST(Wish, thatClashesWithAnotherIsToldWithBoth) {
    Case record = nora();
    Id place;
    for (const Place &one : record.places)
        if (one.storage == Storage::Dry && one.width && one.name == "top shelf")
            place = one.id;
    ASSERT_FALSE(place.text.empty());
    for (Thing &thing : record.things)
        if (thing.name == "rice" || thing.name == "rice flour") {
            thing.width = Length{{30}, "30 cm", Basis::Measured};
            thing.count = 1;
        }
    record = planned(record);
    ASSERT_FALSE(record.plan->lines.empty());
    record.overrules = {pin(named(record, "rice").id, place),
                        pin(named(record, "rice flour").id, place),
                        {newId(), named(record, "milk").id, record.places.front().id, true, "", on}};
    const std::vector<Overrule> clash = clashingWishes(record, findingsOf(record, on));
    ASSERT_THAT(clash, SizeIs(2));
    EXPECT_THAT(clashInWords(record, clash),
                AllOf(HasSubstr("These decisions clash: "), HasSubstr("Rice: to stand in"),
                      HasSubstr("Rice flour"), Not(HasSubstr("Milk")), HasSubstr("Take one of them back.")));
    const auto plan = revisePlan(record, findingsOf(record, on), little(), on);
    ASSERT_TRUE(plan.has_value());
    ASSERT_FALSE(plan->shortages.empty());
    EXPECT_EQ(plan->shortages.front().rule, "wishes");
}

TEST(Wish, doesNotClashWhereAPlanIsPossible) {
    const Case record =
        withWish(nora(), pin(named(nora(), "rice").id, lineOf(nora(), named(nora(), "rice").id).place));
    EXPECT_THAT(clashingWishes(record, findingsOf(record, on)), IsEmpty());
}

TEST(Figures, areNamedAndCounted) {
    const auto figures = figuresOf(nora(), findingsOf(nora(), on));
    ASSERT_TRUE(figures.has_value());
    EXPECT_THAT(*figures, SizeIs(7));
    const auto marked = std::count_if(nora().plan->lines.begin(), nora().plan->lines.end(),
                                      [](const PlanLine &line) { return !line.marker.empty(); });
    EXPECT_EQ((*figures)[4].words(), std::to_string(marked));
    EXPECT_FALSE(figuresOf(demo::nora(), findingsOf(demo::nora(), on)).has_value());
}

TEST(Weights, thatDoubleLearningNeedNoMoreMarks) {
    PlanWeights dear;
    dear.learning = 20;
    const auto compared = compareWeights(nora(), findingsOf(nora(), on), dear, on);
    ASSERT_TRUE(compared.has_value());
    ASSERT_EQ(compared->now.size(), compared->then.size());
    EXPECT_LE(compared->then[3].value, compared->now[3].value);
}

TEST(Weights, ofZeroStillMakeALegalPlanAndAbsurdOnesAreNamed) {
    Case record = demo::nora();
    record.wishes = PlanWishes{newId(), {0, 0, 0, 0, 0, 0, 0, 0, 0, 0}, std::nullopt};
    const auto plan = makePlan(record, findingsOf(record, on), little(), on);
    ASSERT_TRUE(plan.has_value());
    EXPECT_THAT(plan->lines, SizeIs(record.things.size()));
    for (const double absurd : {-1.0, 1e9, std::nan("")}) {
        record.wishes->weights = {};
        record.wishes->weights.walk = absurd;
        const auto refused = makePlan(record, findingsOf(record, on), little(), on);
        ASSERT_FALSE(refused.has_value());
        EXPECT_THAT(refused.error().sentence, HasSubstr("A metre of walking"));
    }
    EXPECT_FALSE(readPlanWeight("-1").has_value());
    EXPECT_FALSE(readPlanWeight("much").has_value());
    EXPECT_DOUBLE_EQ(*readPlanWeight("0.5"), 0.5);
}

TEST(Weights, haveWordsAndWhatTheyRestOn) {
    EXPECT_THAT(weightInfos(), SizeIs(10));
    for (const WeightInfo &info : weightInfos()) {
        EXPECT_FALSE(info.asked.empty() || info.unit.empty() || info.restsOn.empty()) << info.key;
        EXPECT_NE(info.value, nullptr);
    }
}

// What safety facts forbid (rules of the trade: common practice).

TEST(SafetyRule, chemicalsShareNoPlaceWithFoodOrTableware) {
    const Case record = planned(demo::idris());
    const auto built = planProblem(record, findingsOf(record, on));
    std::map<Id, std::set<char>> kinds;
    for (const auto &line : record.plan->lines) {
        const auto thing = std::find_if(record.things.begin(), record.things.end(),
                                        [&](const Thing &t) { return t.id == line.thing; });
        kinds[line.place].insert(thing->klass == Klass::Chemical ? 'C' : touchesFood(*thing) ? 'T' : 'o');
    }
    for (const auto &[place, here] : kinds)
        EXPECT_FALSE(here.contains('C') && here.contains('T')) << placeWords(record, place);
}

TEST(SafetyRule, foodWithTheAvoidedAllergenSharesNoPlaceWithOtherFoodOrBareTools) {
    for (const Case &record : {planned(demo::nora()), planned(demo::idris()), planned(demo::tilda())}) {
        std::map<Id, std::set<bool>> avoided;
        for (const auto &line : record.plan->lines) {
            const auto thing = std::find_if(record.things.begin(), record.things.end(),
                                            [&](const Thing &t) { return t.id == line.thing; });
            const std::set bare{Shape::Tool, Shape::Pan, Shape::Plate, Shape::Bowl, Shape::Mug};
            if (thing->klass == Klass::Food || (touchesFood(*thing) && bare.contains(thing->shape)))
                avoided[line.place].insert(hasAvoidedAllergen(*thing, record.diet));
        }
        for (const auto &[place, here] : avoided)
            EXPECT_LE(here.size(), 1U) << record.client.name << ": " << placeWords(record, place);
    }
}

TEST(SafetyRule, dailyThingsOfAClientWithWeakHandsAreNotHigh) {
    Case record = demo::nora();
    using enum SafetyQuestion;
    for (const auto question : {DizzyLookingUpOrBending, Falls, WeakOrShakyHands})
        record.safety.answers[question].answer = Answer::No;
    const auto highOnes = [&] {
        const auto built = planProblem(record, findingsOf(record, on));
        std::size_t high = 0, low = 0;
        for (const auto &item : built->problem.items)
            for (const int p : item.forbidden)
                ++(built->problem.places[p].heightCm > built->problem.client.shoulderCm ? high : low);
        return std::pair{high, low};
    };
    const auto strong = highOnes();
    record.safety.answers[WeakOrShakyHands].answer = Answer::Yes;
    const auto weak = highOnes();
    EXPECT_GT(weak.first, strong.first);
    EXPECT_EQ(weak.second, strong.second) << "bending is no matter of the hands";
}

/// A label that cannot be read where it is stuck is no mark; her own choice of it stands, on a card perhaps.
TEST(SafetyRule, printThatHasNoRoomOnTheThingIsNotItsMark) {
    Case record = demo::tilda();
    Findings findings = findingsOf(record, on);
    ASSERT_TRUE(findings.readsLargePrint && findings.printAcuity);
    Thing &thing = record.things.front();
    thing.name = "bicarbonate";
    const auto printOf = [&] {
        const auto built = planProblem(record, findings);
        const auto print = std::ranges::find_if(built->markers, [](const std::string &key) {
            return markerOf(key)->medium == MarkMedium::LargePrint;
        });
        EXPECT_NE(print, built->markers.end());
        const int code = static_cast<int>(print - built->markers.begin()) + 1;
        return std::ranges::count(built->problem.items.front().unreadable, code);
    };
    for (auto *size : {&thing.width, &thing.depth, &thing.height})
        *size = Length{{40}, "40", Basis::Measured};
    EXPECT_EQ(printOf(), 0);
    for (auto *size : {&thing.width, &thing.depth, &thing.height})
        *size = Length{{3}, "3", Basis::Measured};
    EXPECT_EQ(printOf(), 1);
    findings.printAcuity.reset();
    EXPECT_EQ(printOf(), 0) << "no acuity, no size";
}

TEST(SafetyRule, memoryNotAskedAboutLimitsTheKindsOfMarks) {
    Case record = demo::idris();
    record.safety.answers.erase(SafetyQuestion::MemoryDifficulty);
    EXPECT_EQ(mostKindsOfMarks(record), 3);
    record.safety.answers[SafetyQuestion::MemoryDifficulty].answer = Answer::No;
    EXPECT_EQ(mostKindsOfMarks(record), std::nullopt);
    record.wishes = PlanWishes{newId(), {}, 2};
    record = planned(record);
    std::set<std::string> kinds; // that are not in use already
    for (const auto &mark : record.plan->meaningMarks)
        kinds.insert(mark.marker);
    const auto inUse = [&](const std::string &key) {
        return std::any_of(record.things.begin(), record.things.end(),
                           [&](const Thing &thing) { return thing.markInUse == key; });
    };
    for (const auto &line : record.plan->lines)
        if (const Marker *marker = markerOf(line.marker);
            marker != nullptr && marker->medium == MarkMedium::Touch && !inUse(line.marker))
            kinds.insert(line.marker);
    EXPECT_LE(kinds.size(), 2U);
}

TEST(SafetyRule, dailyThingsOfAClientWhoFallsAreNeitherHighNorLow) {
    Case record = demo::nora();
    record.safety.answers[SafetyQuestion::DizzyLookingUpOrBending].answer = Answer::No;
    record.safety.answers[SafetyQuestion::Falls].answer = Answer::No;
    const auto steady = planProblem(record, findingsOf(record, on));
    record.safety.answers.erase(SafetyQuestion::Falls);
    const auto unsteady = planProblem(record, findingsOf(record, on));
    std::size_t before = 0, after = 0;
    for (const auto &item : steady->problem.items)
        before += item.forbidden.size();
    for (const auto &item : unsteady->problem.items)
        after += item.forbidden.size();
    EXPECT_GT(after, before);
}

// A plan or a sentence, whatever is entered.

TEST(BadInput, thingsOfTheSameNameAreTwoThings) {
    Case record = demo::nora();
    Thing twin = named(record, "rice");
    twin.id = newId();
    record.things.push_back(twin);
    record = planned(record);
    EXPECT_THAT(record.plan->lines, SizeIs(record.things.size()));
}

TEST(BadInput, aKitOfNoMarksAndNoMediumStillMakeAPlan) {
    Case record = demo::nora();
    for (const Marker &marker : markerKit())
        record.kit.push_back({newId(), marker, false});
    record.client.readsBraille = false;
    record.client.hasTagReader = false;
    const auto findings = findingsOf(record, on);
    const auto plan = makePlan(record, findings, little(), on);
    ASSERT_TRUE(plan.has_value()) << plan.error().sentence;
    EXPECT_THAT(plan->lines, SizeIs(record.things.size()));
    EXPECT_THAT(plan->meaningMarks, IsEmpty());
    for (const PlanLine &line : plan->lines)
        EXPECT_TRUE(line.marker.empty());
}

TEST(BadInput, contradictoryPinsOfOneThingTakeTheLast) {
    Case record = nora();
    const Id thing = named(record, "rice").id;
    const std::vector<Id> places = otherPlaces(record, thing);
    ASSERT_GE(places.size(), 2U);
    record.overrules = {pin(thing, places[0]), pin(thing, places[1])};
    const auto plan = revisePlan(record, findingsOf(record, on), little(), on);
    ASSERT_TRUE(plan.has_value());
    record.plan = *plan;
    EXPECT_EQ(lineOf(record, thing).place, places[1]);
}

} // namespace
