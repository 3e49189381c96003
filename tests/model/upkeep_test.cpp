#include "model/contents.h"
#include "model/demo.h"
#include "model/keeping_times.h"
#include "model/upkeep.h"
#include "tests/model/visit_clients.h"
#include <gmock/gmock.h>

namespace {

using namespace model;
using testing::HasSubstr;

constexpr Date day(int y, unsigned m, unsigned d) {
    return Date{std::chrono::year{y}, std::chrono::month{m}, std::chrono::day{d}};
}

struct Keeps {
    int row;
    std::string name, pantry, pantryOpened, fridge, fridgeOpened, freezer;
};
class KeepingTimes : public testing::TestWithParam<Keeps> {};

TEST_P(KeepingTimes, areThoseOfTheData) {
    const KeepingTime *time = keepingTime(GetParam().row);
    ASSERT_NE(time, nullptr);
    EXPECT_EQ(time->name, GetParam().name);
    EXPECT_EQ(spanInWords(time->pantry.span), GetParam().pantry);
    EXPECT_EQ(spanInWords(time->pantryOpened), GetParam().pantryOpened);
    EXPECT_EQ(spanInWords(time->fridge.span), GetParam().fridge);
    EXPECT_EQ(spanInWords(time->fridgeOpened), GetParam().fridgeOpened);
    EXPECT_EQ(spanInWords(time->freezer.span), GetParam().freezer);
}

// USDA FSIS, FoodKeeper, version 128 (2018): rows as published.
INSTANTIATE_TEST_SUITE_P(
    FoodKeeper, KeepingTimes,
    testing::Values(Keeps{1, "Butter", "", "", "1 to 2 months", "", "6 to 9 months"},
                    Keeps{21, "Eggs", "", "", "3 to 5 weeks", "", "Not Recommended"},
                    Keeps{27, "Milk", "", "", "Package use-by date", "", "3 months"},
                    Keeps{3, "Cheese", "", "", "6 months", "3 to 4 weeks", "6 months"},
                    Keeps{372, "Canned goods", "2 to 5 years", "Not Recommended", "", "3 to 4 days", ""},
                    Keeps{373, "Canned goods", "12 to 18 months", "Not Recommended", "", "5 to 7 days", ""},
                    Keeps{335, "Pasta", "2 years", "1 year", "", "", ""},
                    Keeps{338, "Rice", "2 years", "1 year", "", "6 months", ""},
                    Keeps{468, "Salt", "Indefinitely", "", "", "", ""},
                    Keeps{350, "Mayonnaise", "3 to 6 months", "", "", "2 months", ""},
                    Keeps{402, "Coffee", "1 year", "2 to 3 months", "", "", ""}));

TEST(KeepUntil, countsByTheCalendar) { // worked from the data rows above, month ends by the calendar
    const Date bought = day(2026, 1, 31);
    EXPECT_EQ(keepUntil(keepingTime(1)->fridge.span, bought),
              (KeepingDates{day(2026, 2, 28), day(2026, 3, 31)}));
    EXPECT_EQ(keepUntil(keepingTime(372)->pantry.span, bought),
              (KeepingDates{day(2028, 1, 31), day(2031, 1, 31)}));
    EXPECT_EQ(keepUntil(keepingTime(43)->fridge.span, bought),
              (KeepingDates{day(2026, 2, 1), day(2026, 2, 2)}));
    EXPECT_EQ(keepUntil(keepingTime(21)->fridge.span, bought),
              (KeepingDates{day(2026, 2, 21), day(2026, 3, 7)}));
    EXPECT_EQ(keepUntil(keepingTime(468)->pantry.span, bought), std::nullopt);
    EXPECT_EQ(keepUntil(keepingTime(27)->fridge.span, bought), std::nullopt);
}

TEST(KeepingTimes, everyRowOfTheCatalogueIsThere) {
    for (const auto &entry : catalogue()) {
        if (entry.usual.keepingRow) {
            EXPECT_NE(keepingTime(*entry.usual.keepingRow), nullptr) << entry.name;
        }
    }
}

const UpkeepTask *taskWith(const std::vector<UpkeepTask> &tasks, const std::string &words) {
    for (const auto &task : tasks) {
        if (task.task.find(words) != std::string::npos)
            return &task;
    }
    return nullptr;
}

TEST(Upkeep, roundsComeEveryWeekAndEveryQuarterFromThePlan) {
    Case record = demo::idris();
    record.plan = Plan{};
    record.plan->made = day(2026, 11, 30);
    const auto soon = upkeepTasks(record, day(2026, 12, 1));
    EXPECT_EQ(taskWith(soon, "Check the fridge")->due, day(2026, 12, 7));
    EXPECT_EQ(taskWith(soon, "Audit")->due, day(2027, 2, 28)); // 30 February is not a day
    const auto later = upkeepTasks(record, day(2027, 2, 28));
    EXPECT_EQ(taskWith(later, "Check the fridge")->due, day(2027, 3, 1));
    EXPECT_EQ(taskWith(later, "Audit")->due, day(2027, 5, 30));
    EXPECT_NE(taskWith(soon, "freezer"), nullptr);
}

TEST(Upkeep, roundsComeOnTheDaysThatTheClientChose) {
    Case record = demo::idris();
    record.plan = Plan{};
    record.plan->made = day(2026, 1, 31);
    record.upkeep = UpkeepWishes{.id = newId(), .fridgeWeekday = 6, .roundDay = 31, .roundWeekday = 6};
    // Worked by the calendar: the last day of April is a Thursday, 30 April 2026; the Saturday after it is 2
    // May.
    EXPECT_EQ(quarterRound(record, day(2026, 2, 1)).next, day(2026, 5, 2));
    EXPECT_FALSE(quarterRound(record, day(2026, 2, 1)).before.has_value());
    EXPECT_EQ(fridgeRound(record, day(2026, 2, 1)).next,
              day(2026, 2, 7)); // the first Saturday after the plan
    EXPECT_EQ(fridgeRound(record, day(2026, 2, 7)).before, day(2026, 2, 7));
    record.upkeep->roundWeekday.reset();
    record.upkeep->roundDay = 15;
    EXPECT_EQ(quarterRound(record, day(2026, 2, 1)).next, day(2026, 4, 15));
    EXPECT_EQ(quarterRound(record, day(2026, 4, 15)).next, day(2026, 7, 15));
}

TEST(Upkeep, aRoundThatWasNotNotedIsSaid) {
    Case record = demo::idris();
    record.plan = Plan{};
    record.plan->made = day(2026, 11, 1);
    const auto missedOn = [&](Date on) {
        return taskWith(upkeepTasks(record, on), "Check the fridge")->missed;
    };
    EXPECT_FALSE(missedOn(day(2026, 11, 7)).has_value());
    EXPECT_EQ(missedOn(day(2026, 11, 9)), day(2026, 11, 8));
    record.upkeep = UpkeepWishes{.id = newId(), .fridgeDone = day(2026, 11, 8)};
    EXPECT_FALSE(missedOn(day(2026, 11, 14)).has_value());
    EXPECT_EQ(missedOn(day(2026, 11, 20)), day(2026, 11, 15));
}

TEST(Upkeep, aDayOfTheMonthIsOneToThirtyOne) {
    EXPECT_EQ(readRoundDay("15").value(), 15);
    EXPECT_EQ(readRoundDay("").value(), std::nullopt);
    for (const char *wrong : {"0", "32", "1.5", "soon"})
        EXPECT_FALSE(readRoundDay(wrong).has_value()) << wrong;
}

TEST(Upkeep, helpersDoWhatNeedsEyesAndStrength) {
    const Case record = demo::tilda(); // with a plan of an earlier visit
    const auto tasks = helperTasks(record, findingsOf(record, day(2026, 11, 25)), day(2026, 11, 25));
    EXPECT_NE(taskWith(tasks, "Read out the dates in the fridge"), nullptr);
    EXPECT_NE(taskWith(tasks, "Read out the date on each pack"), nullptr);
    EXPECT_EQ(taskWith(tasks, "Mark the day of opening"), nullptr);
    for (const auto &task : tasks)
        EXPECT_EQ(task.who, Doer::Helper) << task.task;
}

// Food Standards Scotland: 0 to 5 degrees; U.S. Department of Agriculture: 4 degrees or below.
TEST(Upkeep, theFridgeIsAsColdAsTheRegionSaysAndTheStricterWhereItWasNotAsked) {
    Case record = demo::idris();
    const auto words = [&] {
        return taskWith(upkeepTasks(record, day(2026, 11, 25)), "Check the fridge")->task;
    };
    EXPECT_THAT(words(), HasSubstr("0 to 4 degrees"));
    record.upkeep = UpkeepWishes{.id = newId(), .region = DateRegion::EuropeOrUk};
    EXPECT_THAT(words(), HasSubstr("0 to 5 degrees"));
    record.upkeep->region = DateRegion::UnitedStates;
    EXPECT_THAT(words(), HasSubstr("(40 F)"));
}

TEST(Upkeep, spoilageIsNeverTasted) {
    Case record = demo::idris();
    const auto task = [&] {
        return taskWith(upkeepTasks(record, day(2026, 11, 25)), "Never taste it")->task;
    };
    EXPECT_THAT(task(), testing::Not(HasSubstr("not to be relied on")));
    record.safety.answers.erase(SafetyQuestion::Smells);
    EXPECT_THAT(task(), HasSubstr("smell is not to be relied on here"));
}

TEST(Upkeep, printedDatesComeInOrderAndSayWhatTheyMean) {
    const auto tasks = upkeepTasks(demo::tilda(), day(2026, 11, 25));
    const UpkeepTask *milk = taskWith(tasks, "Milk: use by");
    const UpkeepTask *pudding = taskWith(tasks, "Rice pudding: best before");
    ASSERT_TRUE(milk != nullptr && pudding != nullptr);
    EXPECT_EQ(milk->due, day(2026, 11, 28));
    EXPECT_LT(milk, pudding);
    EXPECT_THAT(milk->task, HasSubstr("do not eat"));
}

TEST(Upkeep, guidanceGivesWayToThePrintedDateAndNamesItsSource) {
    const auto tasks = upkeepTasks(demo::idris(), day(2026, 11, 25));
    const UpkeepTask *opened = taskWith(tasks, "Once opened");
    ASSERT_NE(opened, nullptr);
    EXPECT_FALSE(opened->due.has_value());
    EXPECT_THAT(opened->task, HasSubstr("the printed date and local guidance always win"));
    EXPECT_THAT(opened->source,
                HasSubstr("U.S. Department of Agriculture, Food Safety and Inspection Service"));
    EXPECT_THAT(opened->source, HasSubstr("version 128"));
    EXPECT_NE(taskWith(tasks, "never top up"), nullptr);
    EXPECT_THAT(taskWith(tasks, "nobody read is not known")->source, "common practice");
}

/// FoodKeeper, version 128: rice (row 338) opened keeps 1 year in the pantry and 6 months in the fridge;
/// olive oil (row 227) 3-5 months in the pantry; canned goods low in acid (row 372) opened only in the
/// fridge.
TEST(Upkeep, openedPacksKeepAsLongAsWhereTheyStand) {
    const auto tasks = upkeepTasks(fixtures::visitClients().front(), day(2026, 11, 25));
    const auto wordsOn = [&](const std::string &name) {
        for (const UpkeepTask &task : tasks)
            if (task.task.starts_with("Once opened") &&
                (task.task.find(": " + name) != std::string::npos ||
                 task.task.find(", " + name + ".") != std::string::npos ||
                 task.task.find(", " + name + ",") != std::string::npos))
                return task.task;
        return std::string();
    };
    EXPECT_THAT(wordsOn("rice"), HasSubstr("in the cupboard 1 year"));
    EXPECT_THAT(wordsOn("olive oil"), HasSubstr("in the cupboard 3 to 5 months"));
    EXPECT_THAT(wordsOn("chickpeas"), HasSubstr("in the fridge 3 to 4 days"));
}

TEST(Upkeep, newStockStandsBehindOnlyWhereOneSideMayGoUnnoticed) {
    Case record = demo::idris();
    EXPECT_THAT(taskWith(upkeepTasks(record, day(2026, 11, 25)), "new stock")->task, HasSubstr("right"));
    record.safety.answers.erase(SafetyQuestion::OneSideNotAttended);
    EXPECT_THAT(taskWith(upkeepTasks(record, day(2026, 11, 25)), "new stock")->task,
                testing::Not(HasSubstr("right")));
}

} // namespace
