#include "model/marker_test.h"
#include "tests/simulation/made_up_clients.h"
#include <gmock/gmock.h>
#include <set>

namespace model {

namespace {

using testing::HasSubstr;
using testing::SizeIs;

MarkerTestSetup twelveMarks(std::uint64_t seed = 1) {
    return {.marks = simulation::nominalMarks(), .seed = seed};
}

std::vector<MarkerAnswer> wholeLog(const MarkerTestSetup &setup, const simulation::Group &group,
                                   std::uint64_t client) {
    simulation::MadeUpClient answers(group, client);
    MarkerTest test(setup);
    std::vector<MarkerAnswer> log;
    while (const auto next = test.state().next) {
        log.push_back({*next, answers.answer(*next)});
        test.add(log.back());
    }
    return log;
}

/// Answers every trial alike until the test ends.
MarkerTestState always(TouchAnswer pairs, TouchAnswer catches, MarkerTestSetup setup) {
    MarkerTest test(std::move(setup));
    for (MarkerTestState state = test.state(); state.next; state = test.state())
        test.add({*state.next, state.next->isCatch() ? catches : pairs});
    return test.state();
}

const MarkFeatures left{0, 0, 0}, middle{2, 1, 0}, right{5, 3, 1};

} // namespace

TEST(MarkerTest, replaysToTheSameResult) {
    for (const auto &group : simulation::groups()) {
        const auto setup = twelveMarks(5);
        const auto log = wholeLog(setup, group, 11);
        MarkerTest test(setup);
        for (const auto &answer : log) {
            ASSERT_EQ(test.state().next, answer.given);
            test.add(answer);
        }
        const auto replayed = replay(setup, log, false);
        ASSERT_TRUE(replayed);
        EXPECT_EQ(*replayed, test.state());
        EXPECT_TRUE(replayed->end);
    }
}

TEST(MarkerTest, takesBackByDroppingTheLastAnswer) {
    const auto setup = twelveMarks();
    auto log = wholeLog(setup, simulation::groups()[1], 3);
    log.resize(30);
    const auto before = replay(setup, log, false).value();
    log.push_back({*before.next, TouchAnswer::Same});
    EXPECT_NE(replay(setup, log, false).value(), before);
    log.pop_back();
    EXPECT_EQ(replay(setup, log, false).value(), before);
}

TEST(MarkerTest, goesOnAfterAPauseAsIfThereWereNone) {
    const auto setup = twelveMarks(9);
    const auto log = wholeLog(setup, simulation::groups()[0], 21);
    for (const std::size_t pause : {1U, 40U, 100U}) {
        const std::vector<MarkerAnswer> first(log.begin(), log.begin() + static_cast<std::ptrdiff_t>(pause));
        EXPECT_EQ(replay(setup, first, false).value().next, log[pause].given);
    }
}

TEST(MarkerTest, endsAtItsLimit) {
    auto setup = twelveMarks();
    setup.limit = 25;
    const auto log = wholeLog(setup, simulation::groups()[0], 2);
    EXPECT_THAT(log, SizeIs(25));
    EXPECT_EQ(replay(setup, log, false).value().end, MarkerTestEnd::Limit);
}

TEST(MarkerTest, endsWhenStopped) {
    const auto state = replay(twelveMarks(), {}, true).value();
    EXPECT_EQ(state.end, MarkerTestEnd::Stopped);
    EXPECT_FALSE(state.next);
    EXPECT_THAT(state.accepted, testing::ElementsAre(0));
    EXPECT_FALSE(state.weakest);
}

TEST(MarkerTest, endsWithAllInIfEveryPairIsAccepted) {
    const auto state = always(TouchAnswer::Different, TouchAnswer::Same, {.marks = {left, right}});
    EXPECT_EQ(state.end, MarkerTestEnd::AllIn);
    EXPECT_THAT(state.accepted, testing::ElementsAre(0, 1));
    ASSERT_TRUE(state.weakest);
    EXPECT_GE(state.weakest->good, state.credible);
    EXPECT_GE(state.weakest->trials, 2);
}

TEST(MarkerTest, endsWithNoPairForAFingerThatFeelsNothing) {
    const auto state = always(TouchAnswer::Same, TouchAnswer::Same, twelveMarks());
    EXPECT_EQ(state.end, MarkerTestEnd::NoLargerSet);
    EXPECT_THAT(state.accepted, SizeIs(1));
    EXPECT_FALSE(state.weakest);
    EXPECT_TRUE(state.raised);
    EXPECT_DOUBLE_EQ(state.credible, 0.95);
}

TEST(MarkerTest, acceptsNothingThatWasNotFeltTwice) {
    const auto setup = twelveMarks();
    for (std::uint64_t client = 0; client < 5; ++client) {
        const auto state = replay(setup, wholeLog(setup, simulation::groups()[0], client), false).value();
        EXPECT_GT(state.accepted.size(), 2U);
        for (const auto &pair : state.pairs) {
            EXPECT_EQ(pair.accepted, pair.trials >= 2 && pair.good >= state.credible);
        }
    }
}

TEST(MarkerTest, acceptsOnlySetsOfWhichEveryPairIsAccepted) {
    const auto setup = twelveMarks(3);
    const auto state = replay(setup, wholeLog(setup, simulation::groups()[0], 8), false).value();
    const std::set<std::size_t> in(state.accepted.begin(), state.accepted.end());
    for (const auto &pair : state.pairs) {
        if (in.contains(pair.first) && in.contains(pair.second)) {
            EXPECT_TRUE(pair.accepted);
            EXPECT_GE(pair.good, state.weakest->good);
        }
    }
}

TEST(MarkerTest, mixesFourCatchTrialsIntoTheFirstEightThenOneIntoEveryNine) {
    std::set<std::vector<bool>> firsts;
    for (std::uint64_t seed = 1; seed <= 50; ++seed) {
        std::vector<bool> first;
        for (int trial = 0; trial < 8; ++trial)
            first.push_back(isCatchTrial(seed, trial));
        EXPECT_EQ(std::count(first.begin(), first.end(), true), 4);
        firsts.insert(first);
        for (int block = 8; block < 160; block += 9) {
            int catches = 0;
            for (int trial = block; trial < block + 9; ++trial)
                catches += isCatchTrial(seed, trial) ? 1 : 0;
            EXPECT_EQ(catches, 1);
        }
    }
    EXPECT_GT(firsts.size(), 25U); // of 70
}

TEST(MarkerTest, drawsTheOrderWithinAPairFromTheSeed) {
    const auto setup = twelveMarks(4);
    int turned = 0;
    int pairs = 0;
    for (const auto &answer : wholeLog(setup, simulation::groups()[0], 6)) {
        pairs += answer.given.isCatch() ? 0 : 1;
        turned += answer.given.first > answer.given.second ? 1 : 0;
    }
    EXPECT_GT(turned, pairs / 3);
    EXPECT_LT(turned, 2 * pairs / 3);
}

TEST(MarkerTest, countsUnsureAsATrialThatSaysNothing) {
    const auto setup = twelveMarks();
    const auto before = replay(setup, {}, false).value();
    const auto after = replay(setup, {{*before.next, TouchAnswer::Unsure}}, false).value();
    EXPECT_EQ(after.trials, 1);
    EXPECT_EQ(after.pairs, before.pairs);
}

TEST(MarkerTest, repeatsTheTrialWithoutCountingIt) {
    const auto setup = twelveMarks();
    const auto before = replay(setup, {}, false).value();
    EXPECT_EQ(replay(setup, {{*before.next, TouchAnswer::Repeat}}, false).value(), before);
}

TEST(MarkerTest, endsEvenIfEveryAnswerIsUnsure) {
    const auto state = always(TouchAnswer::Unsure, TouchAnswer::Unsure, twelveMarks());
    EXPECT_EQ(state.end, MarkerTestEnd::Limit);
    EXPECT_EQ(state.trials, 160);
}

TEST(MarkerTest, goesOnToSixtyIfAnswersVary) {
    const auto state = always(TouchAnswer::Different, TouchAnswer::Different, {.marks = {left, right}});
    EXPECT_TRUE(state.answersVary);
    EXPECT_GE(state.trials, 60);
    EXPECT_TRUE(state.tellNothing);
    EXPECT_EQ(state.end, MarkerTestEnd::NoLargerSet);
    EXPECT_FALSE(state.weakest) << "whoever says different to everything tells nothing";
    for (const auto &group : simulation::groups()) { // nor does it touch one who feels the same as the same
        const auto setup = twelveMarks(2);
        EXPECT_FALSE(replay(setup, wholeLog(setup, group, 4), false).value().tellNothing);
    }
    const auto steady = always(TouchAnswer::Different, TouchAnswer::Same, {.marks = {left, right}});
    EXPECT_FALSE(steady.answersVary);
    EXPECT_LT(steady.trials, 60);
}

TEST(MarkerTest, isUndecidedAboutEveryPairBeforeTheFirstAnswer) {
    const MarkFeatures far{40, 40, 40};
    for (const auto &marks : {simulation::nominalMarks(), std::vector{left, left, middle, far}}) {
        const auto state = replay({.marks = marks}, {}, false).value();
        for (const auto &pair : state.pairs) {
            EXPECT_GT(pair.good, 0);
            EXPECT_LT(pair.good, 1);
        }
    }
}

TEST(MarkerTest, neverThinksLessOfAPairForOneMoreDifferent) {
    MarkerPosterior posterior(simulation::nominalMarks(), {});
    for (int trial = 0; trial < 12; ++trial) {
        MarkerPosterior more = posterior;
        more.answer(0, 3, false);
        const std::size_t pair = posterior.pairOf(0, 3);
        for (std::size_t cell = 0; cell < posterior.cells(); ++cell)
            EXPECT_GE(more.goodAt(pair, cell), posterior.goodAt(pair, cell) - 1e-12);
        posterior.answer(0, 3, trial % 3 != 0);
    }
}

TEST(MarkerTest, swapsTheResultWithTheLabelsOfTwoEqualMarks) {
    const MarkerTestSetup setup{.marks = {left, left, right, middle}};
    const std::vector<MarkerAnswer> log{{{0, 2}, TouchAnswer::Different},
                                        {{0, 3}, TouchAnswer::Same},
                                        {{1, 2}, TouchAnswer::Same},
                                        {{0, 1}, TouchAnswer::Different},
                                        {{0, 2}, TouchAnswer::Different}};
    std::vector<MarkerAnswer> swapped = log;
    const auto other = [](std::size_t mark) { return mark < 2 ? 1 - mark : mark; };
    for (auto &answer : swapped)
        answer.given = {other(answer.given.first), other(answer.given.second)};
    const auto a = replay(setup, log, false).value();
    const auto b = replay(setup, swapped, false).value();
    for (const auto &pair : a.pairs) {
        for (const auto &twin : b.pairs) {
            const auto ends = std::minmax({other(pair.first), other(pair.second)});
            if (ends.first == twin.first && ends.second == twin.second) {
                EXPECT_NEAR(pair.good, twin.good, 1e-12);
                EXPECT_NEAR(pair.confusion, twin.confusion, 1e-12);
            }
        }
    }
}

TEST(MarkerTest, doesNotRaiseWhatWasAskedForHigher) {
    auto setup = twelveMarks();
    setup.credible = 0.99;
    const auto state = always(TouchAnswer::Same, TouchAnswer::Same, setup);
    EXPECT_FALSE(state.raised);
    EXPECT_DOUBLE_EQ(state.credible, 0.99);
}

TEST(MarkerTest, refusesASetupThatCannotBe) {
    EXPECT_THAT(checkSetup({.marks = {left}}).error().sentence, HasSubstr("2 to 16 marks"));
    EXPECT_FALSE(checkSetup({.marks = std::vector<MarkFeatures>(17)}));
    EXPECT_FALSE(checkSetup({.marks = {left, {51, 0, 0}}}));
    EXPECT_FALSE(checkSetup({.marks = {left, right}, .limit = 0}));
    EXPECT_FALSE(checkSetup({.marks = {left, right}, .credible = 1}));
    EXPECT_TRUE(checkSetup({.marks = {left, right}}));
}

TEST(MarkerTest, refusesALogThatNamesAMarkThatIsNotThere) {
    const auto state = replay({.marks = {left, right}}, {{{0, 2}, TouchAnswer::Same}}, false);
    ASSERT_FALSE(state);
    EXPECT_EQ(state.error().code, ErrorCode::OutOfRange);
}

} // namespace model
