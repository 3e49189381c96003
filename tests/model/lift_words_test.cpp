#include "model/demo.h"
#include "model/lift_words.h"
#include "model/shelf_reach.h"
#include "tests/model/fixtures.h"
#include "tests/model/found.h"

namespace model::fixtures {

namespace {

using testing::HasSubstr;

Case withStature(const std::string &typed) {
    Case record = unworried("Invented", "I0");
    record.measurements.push_back(result(Kind::Stature, typed));
    return record;
}

std::string wordsAt(const Case &record, double height, double depth, bool seated = false) {
    return liftWords(record, findingsOf(record, visitDay), {height}, {depth}, seated);
}

} // namespace

// Filter: HSE, INDG143 rev 4; zones of a stature of 160 cm: 22.4, 70.4, 100.8, 131.2 cm. NIOSH 94-110: 23 kg
// times the multipliers, worked out by hand in each comment. Half of the lower one: common practice.

TEST(LiftWords, takeHalfOfTheLowerRule) {
    // 115 cm, elbow to shoulder, close: filter 13. NIOSH: H 25, V 115 -> 0.88, D 24 -> 1: 20.24.
    EXPECT_EQ(
        wordsAt(withStature("160 cm"), 115, 25),
        " At most 6.5 kg with two hands: half of the lifting filter (13 kg) or of the NIOSH limit (20.2 kg), "
        "whichever is less.");
    // 90 cm, knuckle to elbow, 45 cm deep: filter, arms out, 10. NIOSH: H 50 -> 0.5, V 90 -> 0.955, D
    // 1: 11.0.
    EXPECT_THAT(wordsAt(withStature("160 cm"), 90, 45), HasSubstr("At most 5 kg"));
}

TEST(LiftWords, goByTheFiguresThatWereAskedFor) {
    Case record = withStature("160 cm");
    record.measurements.push_back(result(Kind::LiftFigures, "men's"));
    // Men, elbow to shoulder, close: 20; NIOSH 20.24 as above.
    EXPECT_THAT(wordsAt(record, 115, 25), HasSubstr("At most 10 kg with two hands"));
    // Knuckle to elbow, close: men 25. NIOSH: V 80 -> 0.985, D 25 -> 1: 22.66 is the lower one.
    EXPECT_THAT(wordsAt(record, 80, 25), HasSubstr("At most 11.3 kg with two hands"));
    EXPECT_EQ(liftFiguresSaid(record), Sex::Male);
    EXPECT_FALSE(liftFiguresSaid(withStature("160 cm")));
}

TEST(LiftWords, leaveTheFilterOutWithoutAStature) {
    EXPECT_EQ(
        wordsAt(unworried("Invented", "I0"), 115, 25),
        " At most 10.1 kg with two hands: half of the NIOSH limit (20.2 kg); the lifting filter needs a "
        "stature.");
}

TEST(LiftWords, letWhatWasLiftedSafelyStandFirst) {
    Case record = withStature("160 cm");
    record.measurements.push_back(result(Kind::SafeLift, "2.5 kg"));
    EXPECT_EQ(wordsAt(record, 115, 25), " At most 2.5 kg: what was lifted safely.");
    record.measurements.back().typed = "8 kg";
    EXPECT_THAT(wordsAt(record, 115, 25), HasSubstr("At most 6.5 kg"));
}

TEST(LiftWords, seatedKnowOnlyTheSeatedFilter) {
    // Seated, hands close: women 3 kg, men 5 kg (from memory).
    Case record = withStature("160 cm");
    EXPECT_EQ(wordsAt(record, 100, 25, true),
              " At most 1.5 kg seated, hands close: half of the lifting filter (3 kg).");
    record.measurements.push_back(result(Kind::LiftFigures, "men's"));
    EXPECT_THAT(wordsAt(record, 100, 25, true), HasSubstr("At most 2.5 kg seated"));
}

TEST(LiftWords, sayWhatStandsAboveTheEquation) {
    // NIOSH ends at 175 cm. Filter above the shoulder, close: women 7.
    EXPECT_EQ(wordsAt(unworried("Invented", "I0"), 180, 25),
              " Light things only: the NIOSH equation does not reach so high.");
    EXPECT_THAT(wordsAt(withStature("160 cm"), 180, 25),
                HasSubstr("At most 3.5 kg with two hands: half of the lifting filter (7 kg); the NIOSH"));
}

TEST(LiftRules, areToldWithTheirLimits) {
    const Findings untold = with({});
    const Finding rules = about(untold, "Two rules of lifting");
    EXPECT_THAT(rules.because, HasSubstr("since it was not said"));
    for (const char *limit : {"healthy workers", "one hand", "frail people", "NIOSH not for sitting"})
        EXPECT_THAT(rules.because, HasSubstr(limit));
    EXPECT_THAT(rules.source, HasSubstr("94-110"));
    const Measurement said = result(Kind::LiftFigures, "Men's");
    EXPECT_THAT(about(with({said}), "Two rules of lifting").because, HasSubstr("men's figures."));
    EXPECT_EQ(about(with({said}), "Two rules of lifting").from, std::vector<Id>{said.id});
    EXPECT_TRUE(mentions(with({result(Kind::LiftFigures, "whose?")}), "Weights safe to lift"));
}

TEST(Shelves, eachIsToldWithItsReasonAndWhatMayBeLifted) {
    for (const Case &record : demo::all()) {
        const auto shelves = shelfReaches(record, findingsOf(record, visitDay));
        EXPECT_EQ(shelves.size(), record.places.size());
        for (const ShelfReach &shelf : shelves) {
            EXPECT_THAT(shelf.because, HasSubstr(" cm"));
            if (shelf.ease != ReachEase::Out) {
                EXPECT_THAT(shelf.because, HasSubstr("kg")) << shelf.because;
            }
        }
    }
}

} // namespace model::fixtures
