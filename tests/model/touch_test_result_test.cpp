#include "model/codec.h"
#include "model/demo.h"
#include "model/findings.h"
#include "model/kit.h"
#include "model/touch_test_result.h"
#include <gmock/gmock.h>
#include <map>
#include <set>

namespace model {

namespace {

using testing::HasSubstr;
using testing::Not;

const Date on = parseDate("2026-11-25").value();

TouchTrial trialOf(const GivenPair &given, TouchAnswer answer) {
    return {given, answer, "2026-11-25T10:00:00", Side::Right, "index"};
}

/// An own mark; its key comes from its name.
Marker markCalled(const std::string &name) {
    Marker marker;
    marker.name = name;
    return marker;
}

Measurement typedIn(model::Test test, const std::string &typed, Date date) {
    Measurement result;
    result.id = newId();
    result.test = test;
    result.side = Side::Right;
    result.typed = typed;
    result.date = date;
    return result;
}

/// A client with good fingers who tells every mark from every other, and the same from itself.
void finish(TouchTestRecord &test) {
    while (const auto next = stateOf(test).value().next)
        test.trials.push_back(trialOf(*next, next->isCatch() ? TouchAnswer::Same : TouchAnswer::Different));
}

Case tested(const std::vector<std::string> &keys, bool withBlank = true) {
    Case record = newCase("Invented", "T1");
    for (const auto &question : safetyQuestions())
        record.safety.answers[question.question].answer =
            question.cautious == Answer::Yes ? Answer::No : Answer::Yes;
    record.household.children = record.household.adultWithMemoryLoss = record.household.pets = Answer::No;
    TouchTestRecord test = newTouchTest(record, keys, withBlank, 7);
    test.begun = on;
    finish(test);
    record.touchTests.push_back(std::move(test));
    return record;
}

Findings findings(const Case &record) {
    return findingsOf(record, on);
}

const Finding &topic(const Findings &all, const std::string &name) {
    return *std::ranges::find(all.all, name, &Finding::topic);
}

} // namespace

TEST(TouchTest, comesBackFromTheStoreAndReplays) {
    Case record = tested({"ridge", "large-bump"});
    record.touchTests[0].recheck = {trialOf({0, 1}, TouchAnswer::Different)};
    Marker cork = markCalled("Cork disc");
    cork.surfaces = {Surface::Glass, Surface::Wood};
    cork.heatLimit = Celsius{90};
    ASSERT_TRUE(keepMark(record, cork, true));
    const Case back = fromRecords(toRecords(record)).value();
    EXPECT_EQ(back, record);
    EXPECT_EQ(stateOf(back.touchTests[0]).value(), stateOf(record.touchTests[0]).value());
}

TEST(TouchTest, asksForMoreCertaintyWhereFeelingIsReducedOrNotAskedAbout) {
    Case record = tested({"ridge", "grit"});
    EXPECT_DOUBLE_EQ(newTouchTest(record, {"ridge", "grit"}, false, 1).credible, 0.90);
    record.safety.answers[SafetyQuestion::ReducedProtectiveFeeling].answer = Answer::NotAsked;
    EXPECT_DOUBLE_EQ(newTouchTest(record, {"ridge", "grit"}, false, 1).credible, 0.95);
    record.safety.answers[SafetyQuestion::ReducedProtectiveFeeling].answer = Answer::No;
    record.measurements.push_back(typedIn(model::Test::Monofilament, "4.31", on));
    EXPECT_DOUBLE_EQ(newTouchTest(record, {"ridge", "grit"}, false, 1).credible, 0.95);
}

TEST(TouchTest, setsWhichMarksArePlannedAndHowOftenTheyAreConfused) {
    const Case record = tested({"ridge", "large-bump", "ribbed-band"});
    const Findings found = findings(record);
    EXPECT_THAT(found.acceptedMarks,
                testing::IsSupersetOf(std::vector<std::string>{"large-bump", "ribbed-band"}));
    const auto state = stateOf(record.touchTests[0]).value();
    const Marker &bump = *markerOf("large-bump");
    const Marker &band = *markerOf("ribbed-band");
    for (const auto &pair : state.pairs) {
        if (pair.first == 1 && pair.second == 2) {
            EXPECT_DOUBLE_EQ(confusion(bump, band, 1, found.measuredConfusion), pair.confusion);
            EXPECT_DOUBLE_EQ(confusion(band, bump, 1, found.measuredConfusion), pair.confusion);
        }
        if (pair.first == 1 && pair.second == 3) {
            EXPECT_DOUBLE_EQ(missed(bump, 1, found.measuredConfusion), pair.confusion);
        }
    }
    EXPECT_DOUBLE_EQ(confusion(bump, *markerOf("grit"), 0.8, found.measuredConfusion),
                     confusion(bump, *markerOf("grit"), 0.8));
    const Finding &marks = topic(found, "Marks told apart");
    EXPECT_EQ(marks.sureness, Sureness::Measured);
    EXPECT_THAT(marks.because, HasSubstr("Weakest pair: "));
    EXPECT_THAT(marks.because, HasSubstr(wordsOf(*state.end)));
    EXPECT_THAT(marks.because, HasSubstr("Not rechecked on real containers yet."));
}

TEST(TouchTest, leavesOutWhatSafetyForbids) {
    Case record = tested({"large-bump", "hooks"});
    record.safety.answers[SafetyQuestion::FragileSkin].answer = Answer::Yes;
    const Findings found = findings(record);
    EXPECT_THAT(found.acceptedMarks, Not(testing::Contains("hooks")));
    EXPECT_THAT(topic(found, "Marks told apart").because, HasSubstr("Left out for safety: hook patch."));
}

TEST(TouchTest, withNoPairIsAResult) {
    Case record = tested({"ridge", "felt", "one-band"}, false);
    TouchTestRecord &test = record.touchTests[0];
    test.trials.clear();
    while (const auto next = stateOf(test).value().next)
        test.trials.push_back(trialOf(*next, TouchAnswer::Same));
    const Findings found = findings(record);
    EXPECT_TRUE(found.acceptedMarks.empty());
    EXPECT_EQ(topic(found, "Marks told apart").answer, "no pair");
    EXPECT_EQ(topic(found, "Marks told apart").sureness, Sureness::Measured);
    const auto state = stateOf(test).value();
    EXPECT_THAT(resultInWords(record, test, state), HasSubstr("No two marks are safe to tell apart"));
    EXPECT_THAT(resultInWords(record, test, state), HasSubstr("0.95"));
    EXPECT_FALSE(nextRecheck(test, state));
}

TEST(TouchTest, underWayHasNoResultYet) {
    Case record = tested({"ridge", "large-bump"});
    record.touchTests[0].trials.resize(5);
    const Findings found = findings(record);
    EXPECT_EQ(topic(found, "Marker test").answer, "under way, 5 trials");
    EXPECT_EQ(topic(found, "Marks told apart").sureness, Sureness::NotMeasured);
    EXPECT_TRUE(openTouchTest(record));
    record.touchTests[0].stopped = true;
    EXPECT_FALSE(openTouchTest(record));
    EXPECT_EQ(endedTouchTest(record), &record.touchTests[0]);
}

TEST(TouchTest, giveWayToANewerResultThatWasTypedIn) {
    Case record = tested({"ridge", "large-bump"});
    record.measurements.push_back(typedIn(model::Test::AcceptedMarks, "none", on));
    EXPECT_FALSE(findings(record).acceptedMarks.empty());
    record.measurements.back().date = parseDate("2026-11-26").value();
    EXPECT_TRUE(findings(record).acceptedMarks.empty());
}

TEST(TouchTest, recheckGivesTenTrialsWithTheSameMarkTwiceInThreeOfThem) {
    Case record = tested({"ridge", "large-bump", "ribbed-band"}, false);
    TouchTestRecord &test = record.touchTests[0];
    const auto state = stateOf(test).value();
    int catches = 0;
    while (const auto next = nextRecheck(test, state)) {
        catches += next->isCatch() ? 1 : 0;
        test.recheck.push_back(trialOf(*next, next->isCatch() ? TouchAnswer::Same : TouchAnswer::Different));
    }
    EXPECT_EQ(test.recheck.size(), 10U);
    EXPECT_GE(catches, 3);
    EXPECT_LE(catches, 4);
    EXPECT_EQ(recheckInWords(test), "10 of 10 right on real containers. The set holds on containers.");
    test.recheck[0].answer = test.recheck[1].answer = TouchAnswer::Unsure;
    EXPECT_THAT(recheckInWords(test), HasSubstr("8 of 10 right"));
    EXPECT_THAT(recheckInWords(test), HasSubstr("leave out the mark"));
}

TEST(Slots, holdEachMarkTwiceInAnOrderThatSaysNothing) {
    TouchTestRecord test;
    test.marks.resize(12);
    std::set<std::vector<std::size_t>> orders;
    for (test.seed = 1; test.seed <= 20; ++test.seed) {
        const Slots slots(test);
        std::vector<std::size_t> order;
        std::map<std::size_t, int> count;
        for (int slot = 1; slot <= slots.count(); ++slot) {
            order.push_back(slots.markIn(slot));
            ++count[order.back()];
        }
        EXPECT_EQ(slots.count(), 24);
        for (const auto &[mark, times] : count)
            EXPECT_EQ(times, 2) << mark;
        orders.insert(order);
    }
    EXPECT_EQ(orders.size(), 20U);
}

TEST(Slots, ofATrialHoldItsMarksAndNeverTheSameSlotTwice) {
    TouchTestRecord test;
    test.marks.resize(5);
    const Slots slots(test);
    std::set<std::pair<int, int>> seen;
    for (int trial = 0; trial < 40; ++trial) {
        for (const GivenPair given : {GivenPair{1, 3}, GivenPair{2, 2}}) {
            const auto [first, second] = slots.forTrial(given, trial);
            EXPECT_NE(first, second);
            EXPECT_EQ(slots.markIn(first), given.first);
            EXPECT_EQ(slots.markIn(second), given.second);
            if (!given.isCatch())
                seen.insert({first, second});
        }
    }
    EXPECT_EQ(seen.size(), 4U); // two twins of each mark
}

TEST(Kit, takesOwnMarksAndChangesOfTheUsualOnes) {
    Case record = newCase("Invented", "T2");
    const std::size_t usual = kitOf(record).size();
    EXPECT_EQ(usual, markerKit().size());
    ASSERT_TRUE(keepMark(record, markCalled("Cork disc"), true));
    EXPECT_EQ(kitOf(record).size(), usual + 1);
    EXPECT_EQ(kitOf(record).back().key, "own-cork-disc");
    Marker ridge = *markerOf("ridge");
    ridge.relief = 4;
    ASSERT_TRUE(keepMark(record, ridge, true));
    EXPECT_EQ(markerIn(record, "ridge")->relief, 4);
    ASSERT_TRUE(keepMark(record, ridge, false));
    EXPECT_EQ(kitOf(record).size(), usual);
    EXPECT_THAT(findings(record).acceptedMarks, Not(testing::Contains("ridge")));
    forgetMark(record, "ridge");
    EXPECT_EQ(*markerIn(record, "ridge"), *markerOf("ridge"));
}

TEST(Kit, refusesAMarkThatCannotBe) {
    Case record = newCase("Invented", "T3");
    EXPECT_THAT(keepMark(record, markCalled(" "), true).error().sentence, HasSubstr("name"));
    EXPECT_THAT(keepMark(record, markCalled("Felt square"), true).error().sentence,
                HasSubstr("Another mark of the kit is called felt square"));
    Marker huge = markCalled("huge");
    huge.size = 51;
    EXPECT_THAT(keepMark(record, huge, true).error().sentence, HasSubstr("0 to 50"));
    Marker gift = markCalled("gift");
    gift.cost = -1;
    EXPECT_THAT(keepMark(record, gift, true).error().sentence, HasSubstr("price"));
    EXPECT_TRUE(record.kit.empty());
}

TEST(Kit, bansOwnMarksByTheirFeatures) {
    Case record = newCase("Invented", "T4");
    Marker bead = markCalled("Steel bead");
    bead.magnetic = true;
    ASSERT_TRUE(keepMark(record, bead, true));
    EXPECT_THAT(findings(record).bannedMarks.at("own-steel-bead"), HasSubstr("implant: not asked"));
}

} // namespace model
