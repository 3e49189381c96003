#include "model/codec.h"
#include "model/demo.h"
#include "model/keep_by.h"
#include <gmock/gmock.h>

namespace {

using namespace model;
using testing::HasSubstr;
using enum DateRegion;

constexpr Date day(int y, unsigned m, unsigned d) {
    return Date{std::chrono::year{y}, std::chrono::month{m}, std::chrono::day{d}};
}

Thing food(const std::string &name, int row, Storage storage, DateKind kind) {
    Thing thing;
    thing.id = newId();
    thing.name = name;
    thing.keepingRow = row;
    thing.storage = storage;
    thing.dateKind = kind;
    return thing;
}

Thing ham() {
    return food("ham", 372, Storage::Fridge, DateKind::UseBy);
}

struct Meaning {
    std::string name;
    DateKind kind{};
    DateRegion region{};
    int row = 372;
    bool safety = false;
};
class PrintedDate : public testing::TestWithParam<Meaning> {};

TEST_P(PrintedDate, meansWhatItMeansWhereTheFoodIsSold) {
    Thing thing = food(GetParam().name, GetParam().row, Storage::Dry, GetParam().kind);
    thing.bestBefore = day(2026, 12, 1);
    const auto by = keepBy(thing, GetParam().region);
    ASSERT_TRUE(by.has_value());
    EXPECT_EQ(by->safety, GetParam().safety);
    EXPECT_EQ(by->last, day(2026, 12, 1));
    EXPECT_EQ(by->rule, GetParam().safety ? KeepRule::PrintedSafety : KeepRule::PrintedQuality);
}

// Regulation (EU) No 1169/2011, article 24, and UK Food Standards Agency: use by is safety, best before
// quality. U.S. Department of Agriculture, Food Safety and Inspection Service: all dates are quality but that
// of infant formula. Eggs: the older UK rule, the stricter. Not asked counts as the stricter.
INSTANTIATE_TEST_SUITE_P(Regions, PrintedDate,
                         testing::Values(Meaning{"ham", DateKind::UseBy, EuropeOrUk, 372, true},
                                         Meaning{"ham", DateKind::UseBy, NotAsked, 372, true},
                                         Meaning{"ham", DateKind::UseBy, UnitedStates, 372, false},
                                         Meaning{"baby formula", DateKind::UseBy, UnitedStates, 372, true},
                                         Meaning{"rice", DateKind::BestBefore, EuropeOrUk, 338, false},
                                         Meaning{"rice", DateKind::BestBefore, NotAsked, 338, false},
                                         Meaning{"eggs", DateKind::BestBefore, EuropeOrUk, 21, true},
                                         Meaning{"eggs", DateKind::BestBefore, UnitedStates, 21, false},
                                         Meaning{"words not read", DateKind::None, EuropeOrUk, 372, true},
                                         Meaning{"words not read", DateKind::None, NotAsked, 372, true}));

// Times: U.S. Department of Agriculture, Food Safety and Inspection Service, FoodKeeper, version 128: row 1
// butter, in the fridge 1 to 2 months; row 372 tins of low acid, opened in the fridge 3 to 4 days; row 468
// salt, indefinitely; row 27 milk, the package's use-by date.
TEST(KeepBy, countsFromThePurchaseWhereOnlyThatIsKnown) {
    Thing butter = food("butter", 1, Storage::Fridge, DateKind::BestBefore);
    EXPECT_FALSE(keepBy(butter, EuropeOrUk).has_value());
    butter.recorded = day(2026, 3, 1);
    EXPECT_EQ(keepBy(butter, EuropeOrUk)->rule, KeepRule::Recorded);
    EXPECT_THAT(keepBy(butter, EuropeOrUk)->words, HasSubstr("recorded on 1 March 2026"));
    butter.bought = day(2026, 1, 31);
    const auto by = keepBy(butter, EuropeOrUk);
    EXPECT_EQ(by->rule, KeepRule::Bought);
    EXPECT_EQ(by->first, day(2026, 2, 28));
    EXPECT_EQ(by->last, day(2026, 3, 31));
    butter.bestBefore = day(2026, 2, 10);
    EXPECT_EQ(keepBy(butter, EuropeOrUk)->last, day(2026, 2, 10));
}

TEST(KeepBy, openingNeverCarriesAPackBeyondItsPrintedDate) {
    Thing tin = food("soup", 372, Storage::Dry, DateKind::BestBefore);
    tin.bestBefore = day(2027, 5, 1);
    tin.opened = day(2026, 11, 20);
    EXPECT_EQ(keepBy(tin, EuropeOrUk)->rule, KeepRule::Opened);
    EXPECT_EQ(keepBy(tin, EuropeOrUk)->last, day(2026, 11, 24)); // 4 days
    tin.bestBefore = day(2026, 11, 22);
    EXPECT_EQ(keepBy(tin, EuropeOrUk)->rule, KeepRule::PrintedQuality);
    EXPECT_EQ(keepBy(tin, EuropeOrUk)->last, day(2026, 11, 22));
}

TEST(KeepBy, aDateOfSafetyThatNobodyReadIsNotKnownWheneverItWasBought) {
    Thing pack = food("chicken", 113, Storage::Fridge, DateKind::UseBy); // row 113: 1 to 2 days
    pack.bought = day(2026, 11, 20);
    EXPECT_EQ(keepBy(pack, EuropeOrUk)->rule, KeepRule::NotKnown);
    EXPECT_EQ(keepBy(pack, NotAsked)->rule, KeepRule::NotKnown);
    EXPECT_EQ(keepBy(pack, UnitedStates)->last, day(2026, 11, 22));
    const Thing milk = food("milk", 27, Storage::Fridge, DateKind::BestBefore);
    EXPECT_EQ(keepBy(milk, UnitedStates)->rule, KeepRule::NotKnown);
    EXPECT_EQ(keepBy(food("salt", 468, Storage::Dry, DateKind::BestBefore), EuropeOrUk)->rule,
              KeepRule::Word);
}

TEST(KeepBy, saysNothingOfMedicinesAndOfWhatIsNoFood) {
    Thing insulin = food("insulin", 372, Storage::Fridge, DateKind::UseBy);
    insulin.medicine = true;
    Thing bleach = food("bleach", 372, Storage::Dry, DateKind::BestBefore);
    bleach.klass = Klass::Chemical;
    EXPECT_FALSE(keepBy(insulin, NotAsked).has_value());
    EXPECT_FALSE(keepBy(bleach, NotAsked).has_value());
}

DateState stateOn(const Thing &thing, Date on) {
    Case record = newCase("Invented", "I");
    record.things = {thing};
    return datedThings(record, on).front().state;
}

TEST(DatedThings, aDayIsWholeAndAWeekAheadIsSoon) {
    Thing thing = ham();
    thing.bestBefore = day(2026, 11, 28);
    EXPECT_EQ(stateOn(thing, day(2026, 11, 20)), DateState::Later);
    EXPECT_EQ(stateOn(thing, day(2026, 11, 21)), DateState::Soon);
    EXPECT_EQ(stateOn(thing, day(2026, 11, 28)), DateState::Soon); // by the end of that day
    EXPECT_EQ(stateOn(thing, day(2026, 11, 29)), DateState::PastSafety);
}

TEST(DatedThings, comeWithWhatIsPastFirstAndTellSafetyFromQuality) {
    Case record = newCase("Invented", "I");
    Thing safe = ham(), stale = food("rice", 338, Storage::Dry, DateKind::BestBefore),
          unread = food("chicken", 113, Storage::Fridge, DateKind::UseBy),
          open = food("soup", 372, Storage::Dry, DateKind::BestBefore);
    safe.bestBefore = stale.bestBefore = day(2026, 11, 1);
    open.opened = day(2026, 11, 1);
    record.things = {unread, stale, open, safe, food("salt", 468, Storage::Dry, DateKind::BestBefore)};
    const auto all = datedThings(record, day(2026, 11, 25));
    ASSERT_EQ(all.size(), 5U);
    EXPECT_EQ(all[0].thing, safe.id);
    EXPECT_THAT(all[0].sentence, HasSubstr("do not eat it, even if it looks and smells fine"));
    EXPECT_EQ(all[1].thing, open.id);
    EXPECT_THAT(all[1].sentence, HasSubstr("when in doubt, throw it out"));
    EXPECT_EQ(all[2].thing, stale.id);
    EXPECT_THAT(all[2].sentence, HasSubstr("The client decides"));
    EXPECT_EQ(all[3].state, DateState::AskReader);
    EXPECT_THAT(all[3].sentence, HasSubstr("ask a reader"));
    EXPECT_EQ(toSortOut(record, day(2026, 11, 25)).size(), 4U);
    for (const auto &one : toSortOut(record, day(2026, 11, 25))) {
        const bool asks = one.sentence.find("agrees") != std::string::npos ||
                          one.sentence.find("client decides") != std::string::npos;
        EXPECT_TRUE(asks || one.state == DateState::AskReader) << one.sentence;
    }
}

TEST(PrintedDate, isReadWithItsWords) {
    Thing thing = ham();
    thing.usual = {"dateKind"};
    ASSERT_TRUE(readPrintedDate(thing, "Best before end 30 April 2027"));
    EXPECT_EQ(thing.bestBefore, day(2027, 4, 30));
    EXPECT_EQ(thing.dateKind, DateKind::BestBefore);
    EXPECT_FALSE(thing.usual.contains("dateKind"));
    ASSERT_TRUE(readPrintedDate(thing, "use by 28/11/2026"));
    EXPECT_EQ(printedDateInWords(thing), "use by 28 November 2026");
    ASSERT_TRUE(readPrintedDate(thing, "2026-12-03"));
    EXPECT_EQ(thing.dateKind, DateKind::UseBy);
    EXPECT_FALSE(readPrintedDate(thing, "use by 31/2/2027").has_value());
    EXPECT_FALSE(readPrintedDate(thing, "use by soon").has_value());
    EXPECT_EQ(thing.bestBefore, day(2026, 12, 3));
    ASSERT_TRUE(readPrintedDate(thing, " "));
    EXPECT_FALSE(thing.bestBefore.has_value());
}

TEST(NewPack, hasNoDateOfTheOldOne) {
    Thing thing = ham();
    thing.bestBefore = thing.opened = day(2026, 11, 1);
    markNewPack(thing, day(2026, 11, 25));
    EXPECT_FALSE(thing.bestBefore.has_value() || thing.opened.has_value());
    EXPECT_EQ(thing.bought, day(2026, 11, 25));
}

/// The first one opened goes off first: common practice.
TEST(SeveralPacks, haveTheDatesOfTheOldest) {
    Thing thing = ham();
    thing.count = 3;
    markOpened(thing, day(2026, 11, 20));
    markOpened(thing, day(2026, 11, 24));
    EXPECT_EQ(thing.opened, day(2026, 11, 20));
    markOpened(thing, day(2026, 11, 19)); // told later
    EXPECT_EQ(thing.opened, day(2026, 11, 19));
    EXPECT_THAT(keepBy(thing, EuropeOrUk)->words, HasSubstr("the first of 3 packs"));
    thing.bought = thing.bestBefore = day(2026, 11, 18);
    markNewPack(thing, day(2026, 11, 25));
    EXPECT_EQ(thing.bought, day(2026, 11, 18));
    EXPECT_EQ(thing.opened, day(2026, 11, 19));
    EXPECT_EQ(thing.bestBefore, day(2026, 11, 18));
}

TEST(UpkeepFacts, areKeptInTheRecords) {
    Case record = demo::nora();
    record.things[0].bought = day(2026, 11, 1);
    record.things[0].opened = day(2026, 11, 2);
    record.things[0].recorded = day(2026, 11, 3);
    record.upkeep = UpkeepWishes{.id = newId(),
                                 .region = EuropeOrUk,
                                 .fridgeWeekday = 3,
                                 .roundDay = 31,
                                 .roundWeekday = 6,
                                 .fridgeDone = day(2026, 11, 4),
                                 .roundDone = day(2026, 11, 5),
                                 .currency = "pounds",
                                 .clipPrice = 0.5,
                                 .potPrice = 3};
    EXPECT_EQ(fromRecords(toRecords(record)).value(), record);
}

} // namespace
