#include "model/contents.h"
#include "model/demo.h"
#include "model/evaluate.h"
#include "model/kit.h"
#include "model/plan_wishes.h"
#include "tests/model/fixtures.h"
#include <algorithm>
#include <gmock/gmock.h>
#include <limits>
#include <set>

namespace {

using namespace model;
using testing::AllOf;
using testing::HasSubstr;
using testing::SizeIs;

constexpr Date on{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

SolveOptions little() {
    SolveOptions options;
    options.moves = 60'000;
    options.seeds = 2;
    return options;
}

Place shelf(const Id &unit, const std::string &name, double widthCm) {
    Place place;
    place.id = newId();
    place.unit = unit;
    place.name = name;
    if (widthCm > 0) {
        place.width = Length{{widthCm}, "", Basis::Measured};
        place.depth = Length{{30}, "", Basis::Measured};
        place.clear = Length{{40}, "", Basis::Measured};
        place.height = Length{{100}, "", Basis::Measured};
    }
    return place;
}

/// One cupboard with shelves of these widths; 0: nothing measured.
Case cupboard(const std::vector<double> &widthsCm) {
    Case record = fixtures::unworried("Invented Kitchen", "I9");
    Unit unit;
    unit.id = newId();
    unit.name = "cupboard";
    unit.kind = UnitKind::Larder;
    record.units = {unit};
    for (const double width : widthsCm) {
        record.places.push_back(shelf(unit.id, "shelf " + std::to_string(record.places.size() + 1), width));
        record.places.back().order = static_cast<int>(record.places.size()) - 1;
    }
    return record;
}

void add(Case &record, const std::string &line) {
    const auto items = parseContents(line);
    ASSERT_TRUE(items.has_value()) << line;
    for (const auto &item : *items) {
        record.things.push_back(item.thing);
        record.things.back().id = newId();
    }
}

Result<Plan> planOf(const Case &record) {
    return makePlan(record, findingsOf(record, on), little(), on);
}

TEST(BadInput, noPlacesAndNoThingsAreAskedForInASentence) {
    Case record = cupboard({});
    add(record, "rice");
    EXPECT_EQ(planOf(record).error().code, ErrorCode::Missing);
    EXPECT_THAT(planOf(record).error().sentence, HasSubstr("place"));
    const Case empty = cupboard({50});
    EXPECT_EQ(planOf(empty).error().code, ErrorCode::Missing);
    EXPECT_THAT(planOf(empty).error().sentence, HasSubstr("thing"));
}

TEST(BadInput, aUnitWithNoLightAndNoSizeTakesUsualOnes) {
    Case record = cupboard({0, 0});
    add(record, "rice, pasta, 2 chopped tomatoes");
    const auto plan = planOf(record);
    ASSERT_TRUE(plan.has_value()) << plan.error().sentence;
    EXPECT_THAT(plan->lines, SizeIs(3)) << (plan->shortages.empty() ? "" : plan->shortages[0].sentence);
}

TEST(BadInput, aThingWiderThanEveryPlaceIsNamedWithWhatWouldMendIt) {
    Case record = cupboard({20, 20});
    add(record, "rice");
    record.things[0].width = Length{{60}, "", Basis::Measured};
    const auto plan = planOf(record);
    ASSERT_TRUE(plan.has_value());
    ASSERT_FALSE(plan->shortages.empty());
    EXPECT_THAT(plan->shortages[0].sentence, HasSubstr("ice"));
}

Overrule pin(const Thing &thing, const Place &place) {
    return {newId(), thing.id, place.id, false, "the client wants it there", on};
}

TEST(BadInput, pinsThatContradictEachOtherAreToldAsTheSmallestSet) {
    Case record = cupboard({20, 60});
    add(record, "rice, pasta, sugar");
    for (Thing &thing : record.things)
        thing.width = Length{{12}, "", Basis::Measured};
    record.overrules = {pin(record.things[0], record.places[0]), pin(record.things[1], record.places[0]),
                        pin(record.things[2], record.places[1])};
    const auto clash = clashingWishes(record, findingsOf(record, on));
    ASSERT_THAT(clash, SizeIs(2));
    EXPECT_EQ(clash[0].thing, record.things[0].id);
    EXPECT_EQ(clash[1].thing, record.things[1].id);
    EXPECT_THAT(planOf(record)->shortages.front().sentence,
                AllOf(HasSubstr("Rice: to stand in"), HasSubstr("Pasta: to stand in")));
}

TEST(BadInput, whatMustStayStandsInTheSetThatClashes) {
    Case record = cupboard({20, 60});
    add(record, "rice, pasta");
    for (Thing &thing : record.things) {
        thing.width = Length{{12}, "", Basis::Measured};
        thing.place = record.places[0].id;
        thing.keep = 3;
    }
    const auto clash = clashingWishes(record, findingsOf(record, on));
    ASSERT_THAT(clash, SizeIs(2));
    EXPECT_THAT(clashInWords(record, clash), HasSubstr("since it must stay there"));
    record.things[1].keep = 0; // one may go, so there is a plan
    EXPECT_TRUE(clashingWishes(record, findingsOf(record, on)).empty());
    record.overrules = {pin(record.things[1], record.places[0])};
    const auto mixed = clashingWishes(record, findingsOf(record, on));
    ASSERT_THAT(mixed, SizeIs(2));
    EXPECT_THAT(clashInWords(record, mixed),
                AllOf(HasSubstr("since it must stay there"), HasSubstr("since the client wants it there")));
}

/// Bleach may stand where flour stands now, if flour can go elsewhere: that is tried before the pin is
/// refused.
TEST(BadInput, aPinIsRefusedOnlyIfTheOtherThingCannotMove) {
    Case record = cupboard({30, 30});
    add(record, "flour, bleach");
    record.things[0].place = record.places[0].id;
    record.things[1].place = record.places[1].id;
    record.plan = planOf(record).value();
    const auto where = [&](std::size_t k) {
        return std::ranges::find(record.plan->lines, record.things[k].id, &PlanLine::thing)->place;
    };
    ASSERT_NE(where(0), where(1)); // never together
    const Findings findings = findingsOf(record, on);
    const Id flourStands = where(0);
    const auto outcome =
        tryWish(record, findings, {newId(), record.things[1].id, flourStands, false, "", on}, on);
    ASSERT_TRUE(outcome.has_value()) << outcome.error().sentence;
    EXPECT_EQ(outcome->changed, 1); // flour moves
    EXPECT_TRUE(priceOf(record, findings, record.things[1].id, flourStands).has_value());
    Case fixed = record;
    fixed.things[0].keep = 3;
    fixed.things[0].place = flourStands;
    const auto refused =
        tryWish(fixed, findings, {newId(), record.things[1].id, flourStands, false, "", on}, on);
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().code, ErrorCode::Refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("This rule is not overruled"));
    EXPECT_EQ(priceOf(fixed, findings, record.things[1].id, flourStands).error().code, ErrorCode::Refused);
}

TEST(BadInput, thingsOfTheSameNameAreEachPlaced) {
    Case record = cupboard({60, 60});
    add(record, "salt, salt, salt");
    const auto plan = planOf(record);
    ASSERT_TRUE(plan.has_value()) << plan.error().sentence;
    std::set<Id> placed;
    for (const PlanLine &line : plan->lines)
        placed.insert(line.thing);
    EXPECT_THAT(placed, SizeIs(3));
}

TEST(BadInput, weightsOfZeroStillGiveAPlanAndAbsurdOnesASentence) {
    Case record = cupboard({60, 60});
    add(record, "rice, pasta, sugar");
    record.wishes = PlanWishes{newId(), {}, std::nullopt};
    for (const WeightInfo &info : weightInfos())
        record.wishes->weights.*info.value = 0;
    const auto plan = planOf(record);
    ASSERT_TRUE(plan.has_value()) << plan.error().sentence;
    EXPECT_THAT(plan->lines, SizeIs(3));
    for (const double absurd : {-1.0, 1e300, std::numeric_limits<double>::quiet_NaN()}) {
        record.wishes->weights.reach = absurd;
        ASSERT_FALSE(planOf(record).has_value()) << absurd;
        EXPECT_THAT(planOf(record).error().sentence, HasSubstr("not from 0 to 1000"));
    }
}

TEST(BadInput, aKitOfNoMarksLeavesPlacesAlone) {
    Case record = cupboard({60, 60});
    add(record, "rice, pasta, sugar, salt, 2 chopped tomatoes, kidney beans");
    for (const Marker &marker : wholeKitOf(record))
        ASSERT_TRUE(keepMark(record, marker, false));
    ASSERT_TRUE(kitOf(record).empty());
    const auto plan = planOf(record);
    ASSERT_TRUE(plan.has_value()) << plan.error().sentence;
    EXPECT_THAT(plan->lines, SizeIs(6));
    for (const PlanLine &line : plan->lines)
        EXPECT_TRUE(line.marker.empty());
}

TEST(BadInput, aClientWhoCanUseNoMediumStillGetsAPlanByPlaceAndShape) {
    Case record = cupboard({60, 60});
    add(record, "rice, pasta, sugar, salt, 2 chopped tomatoes, kidney beans");
    record.measurements = {fixtures::result(model::Test::DistanceAcuity, "NLP", Side::Both),
                           fixtures::result(model::Test::AcceptedMarks, "none")};
    const auto plan = planOf(record);
    ASSERT_TRUE(plan.has_value()) << plan.error().sentence;
    EXPECT_THAT(plan->lines, SizeIs(6));
    for (const PlanLine &line : plan->lines)
        EXPECT_TRUE(line.marker.empty());
}

} // namespace
