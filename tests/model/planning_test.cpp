#include "model/demo.h"
#include "model/evaluate.h"
#include "model/planning.h"
#include "model/supplies.h"
#include "model/usable_marks.h"
#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>

namespace {

using namespace model;
using testing::HasSubstr;

constexpr Date on{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

/// A small fixed budget: enough for a legal plan, quick in a debug build.
SolveOptions little() {
    SolveOptions options;
    options.moves = 150'000;
    options.seeds = 2;
    return options;
}

Case planned(Case record) {
    auto plan = makePlan(record, findingsOf(record, on), little(), on);
    EXPECT_TRUE(plan.has_value()) << (plan ? "" : plan.error().sentence);
    if (plan && plan->lines.empty()) {
        ADD_FAILURE() << record.client.name << ": " << plan->shortages.front().sentence;
    }
    if (plan)
        record.plan = *plan;
    return record;
}

const Case &plannedDemo(const std::string &name) {
    static const Case nora = planned(demo::nora());
    static const Case idris = planned(demo::idris());
    static const Case tilda = planned(demo::tilda());
    return name == "nora" ? nora : name == "idris" ? idris : tilda;
}

const Thing &named(const Case &record, const std::string &name) {
    const auto found = std::find_if(record.things.begin(), record.things.end(),
                                    [&](const Thing &thing) { return thing.name == name; });
    EXPECT_NE(found, record.things.end()) << name;
    return *found;
}

const PlanLine &lineOf(const Case &record, const Id &thing) {
    const auto found = std::find_if(record.plan->lines.begin(), record.plan->lines.end(),
                                    [&](const PlanLine &line) { return line.thing == thing; });
    EXPECT_NE(found, record.plan->lines.end());
    return *found;
}

class PlanOfDemo : public testing::TestWithParam<std::string> {};

TEST_P(PlanOfDemo, breaksNoRuleAndCostsWhatItSays) {
    const Case &record = plannedDemo(GetParam());
    const auto built = planProblem(record, findingsOf(record, on));
    ASSERT_TRUE(built.has_value());
    const auto shown = shownPlacement(*built, *record.plan);
    ASSERT_TRUE(shown.has_value());
    for (const auto &broken : brokenRules(built->problem, *shown))
        ADD_FAILURE() << broken.rule << " " << built->problem.items[broken.items[0]].name;
    EXPECT_EQ(evaluate(built->problem, *shown), record.plan->terms);
    EXPECT_EQ(record.plan->lines.size(), record.things.size());
}

TEST_P(PlanOfDemo, thingsOfAShelfAreNumberedFromTheLeft) {
    const Case &record = plannedDemo(GetParam());
    std::map<Id, std::set<int>> orders;
    std::map<Id, int> count;
    for (const auto &line : record.plan->lines) {
        orders[line.place].insert(line.order);
        ++count[line.place];
    }
    for (const auto &[place, numbers] : orders) {
        EXPECT_EQ(static_cast<int>(numbers.size()), count[place]);
        EXPECT_EQ(*numbers.begin(), 0);
        EXPECT_EQ(*numbers.rbegin(), count[place] - 1);
    }
}

TEST_P(PlanOfDemo, hazardsAndAllergensCarryOneMeaningMarkEach) {
    const Case &record = plannedDemo(GetParam());
    std::set<std::string> reserved;
    for (const auto &mark : record.plan->meaningMarks)
        EXPECT_TRUE(reserved.insert(mark.marker).second);
    for (const auto &line : record.plan->lines) {
        const auto thing = std::find_if(record.things.begin(), record.things.end(),
                                        [&](const Thing &t) { return t.id == line.thing; });
        EXPECT_EQ(line.meanings, meaningsOf(*thing, record.diet)) << thing->name;
        EXPECT_FALSE(reserved.contains(line.marker)) << thing->name;
        EXPECT_FALSE(line.labelText.empty());
    }
}

TEST_P(PlanOfDemo, planningAgainWithNothingChangedChangesNothing) {
    const Case &record = plannedDemo(GetParam());
    const auto again = revisePlan(record, findingsOf(record, on), little(), on);
    ASSERT_TRUE(again.has_value());
    EXPECT_EQ(*again, *record.plan);
    Case after = record;
    after.plan = *again;
    EXPECT_THAT(planChanges(record, after), testing::IsEmpty());
}

TEST_P(PlanOfDemo, everyLineHasAReason) {
    const Case &record = plannedDemo(GetParam());
    const auto findings = findingsOf(record, on);
    for (const auto &line : record.plan->lines) {
        const auto why = whyLine(record, findings, line.thing);
        ASSERT_TRUE(why.has_value());
        EXPECT_THAT(why->because, HasSubstr("se"));
        EXPECT_FALSE(why->runnerUp.empty());
        EXPECT_EQ(why->because.back(), '.');
        EXPECT_EQ(why->runnerUp.back(), '.');
    }
}

/// For every thing one other place: either a rule refuses it in words, or the price is the difference of the
/// totals.
TEST_P(PlanOfDemo, aPriceIsTheDifferenceOfTheObjectives) {
    const Case &record = plannedDemo(GetParam());
    const auto findings = findingsOf(record, on);
    int priced = 0;
    for (std::size_t i = 0; i < record.things.size() && priced < 6; i += 3) {
        const Thing &thing = record.things[i];
        const Place &place = record.places[i % record.places.size()];
        if (lineOf(record, thing.id).place == place.id)
            continue;
        const auto price = priceOf(record, findings, thing.id, place.id);
        if (!price) {
            EXPECT_EQ(price.error().code, ErrorCode::Refused);
            EXPECT_GT(price.error().sentence.size(), 30U);
            continue;
        }
        Case after = record;
        after.overrules.push_back({{"overrule"}, thing.id, place.id, false, "her wish", on});
        const auto plan = revisePlan(after, findings, revisionOptions(), on);
        ASSERT_TRUE(plan.has_value());
        after.plan = *plan;
        EXPECT_EQ(lineOf(after, thing.id).place, place.id);
        EXPECT_EQ(std::llround(*price * 1000), plan->terms.total() - record.plan->terms.total());
        ++priced;
    }
    EXPECT_GT(priced, 0);
}

TEST_P(PlanOfDemo, noSupplyIsMagneticOrRubberUnlessAskedAndSafe) {
    const Case &record = plannedDemo(GetParam());
    const auto list = supplies(record, findingsOf(record, on));
    EXPECT_FALSE(list.empty());
    for (const auto &supply : list) {
        EXPECT_GT(supply.count, 0);
        for (const auto &marker : markerKit()) {
            if (marker.name != supply.name)
                continue;
            EXPECT_FALSE(marker.magnetic && record.safety.cautious(SafetyQuestion::Implant)) << supply.name;
            EXPECT_FALSE(marker.latex && record.safety.cautious(SafetyQuestion::LatexAllergy)) << supply.name;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(All, PlanOfDemo, testing::Values("nora", "idris", "tilda"),
                         [](const auto &row) { return row.param; });

TEST(Plan, isTheSameForTheSameBudget) {
    const Case record = demo::nora();
    auto one = makePlan(record, findingsOf(record, on), little(), on);
    auto other = makePlan(record, findingsOf(record, on), little(), on);
    other->id = one->id;
    EXPECT_EQ(*one, *other);
}

TEST(Plan, keepsAnOverruleThroughEveryNewPlan) {
    Case record = plannedDemo("nora");
    const Thing &rice = named(record, "rice");
    const auto findings = findingsOf(record, on);
    std::optional<Id> other;
    for (const auto &place : record.places) {
        if (place.id != lineOf(record, rice.id).place && priceOf(record, findings, rice.id, place.id))
            other = place.id;
    }
    ASSERT_TRUE(other.has_value());
    record.overrules.push_back({{"o1"}, rice.id, *other, false, "within her husband's reach", on});
    record.plan = *revisePlan(record, findings, little(), on);
    EXPECT_EQ(lineOf(record, rice.id).place, *other);
    std::find_if(record.things.begin(), record.things.end(), [](const Thing &t) {
        return t.name == "jam";
    })->usesPerWeek = 14;
    record.plan = *revisePlan(record, findings, little(), on);
    EXPECT_EQ(lineOf(record, rice.id).place, *other);
    record.plan = *makePlan(record, findings, little(), on);
    EXPECT_EQ(lineOf(record, rice.id).place, *other);
}

TEST(Plan, keepsAThingOutOfAForbiddenPlace) {
    Case record = plannedDemo("tilda");
    const Thing &tea = named(record, "tea");
    const Id there = lineOf(record, tea.id).place;
    record.overrules.push_back({{"o1"}, tea.id, there, true, "the shelf is damp", on});
    record.plan = *revisePlan(record, findingsOf(record, on), little(), on);
    ASSERT_FALSE(record.plan->lines.empty());
    EXPECT_NE(lineOf(record, tea.id).place, there);
}

TEST(Plan, changesLittleWhenOneThingComes) {
    Case record = plannedDemo("idris");
    record.plan =
        makePlan(record, findingsOf(record, on), SolveOptions{}, on).value(); // as the program plans
    const Case before = record;
    Thing more = named(record, "chickpeas");
    more.id = {"demo-idris-thing-81"};
    more.name = "butter beans";
    more.place.reset();
    record.things.push_back(more);
    const auto plan = revisePlan(record, findingsOf(record, on), little(), on);
    ASSERT_TRUE(plan.has_value());
    record.plan = *plan;
    const auto changes = planChanges(before, record);
    EXPECT_GE(changes.size(), 1U);
    EXPECT_LE(changes.size(), 12U); // of 81 lines
    EXPECT_THAT(changes, testing::Contains(HasSubstr("Butter beans: new,")));
}

TEST(Plan, neverSeparatesAHarmfulLookAlikeByAMarkAlone) {
    const Case &record = plannedDemo("nora"); // reduced feeling, avoids gluten
    const auto built = planProblem(record, findingsOf(record, on));
    const auto flour = std::find(built->things.begin(), built->things.end(), named(record, "flour").id);
    ASSERT_NE(flour, built->things.end());
    EXPECT_FALSE(built->problem.apart.empty());
    EXPECT_THAT(meaningsOf(named(record, "flour"), record.diet), testing::ElementsAre("allergen"));
    EXPECT_THAT(meaningsOf(named(record, "rice flour"), record.diet), testing::IsEmpty());
    EXPECT_NE(lineOf(record, named(record, "flour").id).place,
              lineOf(record, named(record, "rice flour").id).place);
}

TEST(Plan, dailyThingsOfADizzyClientAreNeitherHighNorLow) {
    const Case &record = plannedDemo("tilda");
    for (const auto &line : record.plan->lines) {
        const auto thing = std::find_if(record.things.begin(), record.things.end(),
                                        [&](const Thing &t) { return t.id == line.thing; });
        const auto place = std::find_if(record.places.begin(), record.places.end(),
                                        [&](const Place &p) { return p.id == line.place; });
        const bool daily = *thing->usesPerWeek >= 5 && !thing->medicine;
        EXPECT_TRUE(!daily || place->height->value.value <= 121) << thing->name; // her shoulder
    }
}

TEST(Plan, medicineStaysInItsAgreedPlace) {
    const Case &record = plannedDemo("tilda");
    EXPECT_EQ(lineOf(record, named(record, "tablets").id).place, named(record, "tablets").place);
    for (const auto &line : record.plan->lines) { // and nothing new is put beside it
        const bool there = line.place == *named(record, "tablets").place;
        EXPECT_TRUE(!there || line.labelText == "Tablets" || line.labelText == "Sharp knives")
            << line.labelText;
    }
}

TEST(Plan, saysInWordsWhatIsShort) {
    Case record = demo::nora();
    for (int k = 0; k < 6; ++k) { // more milk than the fridge is wide
        Thing milk = named(record, "milk");
        milk.id = {"extra-milk-" + std::to_string(k)};
        milk.name = "milk " + std::to_string(k);
        milk.width = Length{{15}, "15 cm", Basis::Measured};
        record.things.push_back(milk);
    }
    const auto plan = makePlan(record, findingsOf(record, on), little(), on);
    ASSERT_TRUE(plan.has_value());
    EXPECT_TRUE(plan->lines.empty());
    ASSERT_FALSE(plan->shortages.empty());
    EXPECT_GT(plan->shortages.front().sentence.size(), 20U);
    EXPECT_FALSE(plan->shortages.front().things.empty());
}

TEST(Plan, aThingWithoutSizeIsNamed) {
    Case record = demo::nora();
    record.things.front().width.reset();
    const auto plan = makePlan(record, findingsOf(record, on), little(), on);
    ASSERT_FALSE(plan.has_value());
    EXPECT_EQ(plan.error().code, ErrorCode::Missing);
    EXPECT_THAT(plan.error().sentence, HasSubstr(record.things.front().name));
}

TEST(Plan, anEmptyKitchenIsAskedFor) {
    Case record = demo::nora();
    record.places.clear();
    EXPECT_EQ(makePlan(record, findingsOf(record, on), little(), on).error().code, ErrorCode::Missing);
    record = demo::nora();
    record.things.clear();
    EXPECT_EQ(makePlan(record, findingsOf(record, on), little(), on).error().code, ErrorCode::Missing);
}

TEST(PlanPrice, aRuleOfSafetyIsRefusedWithTheFactToCorrect) {
    Case record = plannedDemo("idris");
    const auto findings = findingsOf(record, on);
    const Id rice = lineOf(record, named(record, "rice").id).place;
    for (Thing &thing : record.things)
        if (thing.name == "rice") {
            thing.place = rice;
            thing.keep = 3; // else it would make room
        }
    const auto price = priceOf(record, findings, named(record, "bleach").id, rice);
    ASSERT_FALSE(price.has_value());
    EXPECT_EQ(price.error().code, ErrorCode::Refused);
    EXPECT_THAT(price.error().sentence, HasSubstr("not overruled: "));
    EXPECT_THAT(price.error().sentence, HasSubstr("correct the fact itself"));
    const auto frozen = priceOf(record, findings, named(record, "frozen peas").id, rice);
    ASSERT_FALSE(frozen.has_value());
    EXPECT_THAT(frozen.error().sentence, HasSubstr("belongs in the freezer"));
}

TEST(PlanPrice, stayingCostsNothing) {
    const Case &record = plannedDemo("nora");
    const Thing &jam = named(record, "jam");
    EXPECT_EQ(priceOf(record, findingsOf(record, on), jam.id, lineOf(record, jam.id).place).value_or(-1), 0);
}

TEST(UsableMarks, followTheClient) {
    const auto has = [](const std::vector<Marker> &marks, const std::string &key) {
        return std::any_of(marks.begin(), marks.end(), [&](const Marker &mark) { return mark.key == key; });
    };
    Case record = demo::idris();
    const auto marks = [&] { return usableMarks(record, findingsOf(record, on)); };
    EXPECT_TRUE(has(marks(), "braille"));
    EXPECT_TRUE(has(marks(), "spoken-tag"));
    EXPECT_FALSE(has(marks(), "large-print"));
    EXPECT_FALSE(has(marks(), "magnet"));
    EXPECT_FALSE(has(marks(), "one-band"));
    record.client.hasTagReader = false;
    EXPECT_FALSE(has(marks(), "spoken-tag"));
    record.client.hasTagReader = true;
    record.safety.answers[SafetyQuestion::HearsSpeech].answer = Answer::NotAsked;
    EXPECT_FALSE(has(marks(), "spoken-tag"));
}

TEST(UsableMarks, noMarkIsToldApartMeansNoTouchMark) {
    Case record = demo::idris();
    for (auto &result : record.measurements) {
        if (result.test == model::Test::AcceptedMarks)
            result.typed = "none";
    }
    for (const auto &mark : usableMarks(record, findingsOf(record, on)))
        EXPECT_NE(mark.medium, MarkMedium::Touch) << mark.key;
    EXPECT_FALSE(planned(record).plan->lines.empty());
}

TEST(MeaningMarks, areLeastConfusedAndStay) {
    Case record = demo::idris();
    const Findings findings = findingsOf(record, on);
    const auto usable = usableMarks(record, findings);
    const auto marks = reservedMarks(record, usable, findings);
    ASSERT_EQ(marks.size(), 2U);
    EXPECT_EQ(marks[0].meaning, "hazard");
    EXPECT_EQ(marks[1].meaning, "allergen");
    EXPECT_NE(marks[0].marker, marks[1].marker);
    record.plan = Plan{};
    record.plan->meaningMarks = {{"hazard", "cord"}};
    EXPECT_EQ(reservedMarks(record, usable, findings).front(), (MeaningMark{"hazard", "cord"}));
}

TEST(PlaceWords, sayUnitAndShelf) {
    const Case record = demo::nora();
    EXPECT_EQ(placeWords(record, record.places[4].id), "wall cupboard left of the cooker, top shelf");
    EXPECT_EQ(placeWords(record, record.places[3].id), "worktop left of the cooker");
}

/// Mixed case in print; in braille a capital costs a cell [common practice].
TEST(LabelText, isTheWholeNameAndNeverCut) {
    Thing thing;
    thing.name = "chopped tomatoes";
    EXPECT_EQ(labelText(thing, MarkMedium::Braille), "chopped tomatoes");
    thing.name = "organic wholemeal self-raising flour";
    EXPECT_EQ(labelText(thing, MarkMedium::LargePrint), "Organic wholemeal self-raising flour");
    thing.allergens = {{"gluten", AllergenState::Contains, ""}};
    EXPECT_THAT(labelText(thing, MarkMedium::SpokenTag), HasSubstr("Contains cereals containing gluten."));
}

} // namespace
