#include "model/due_dates.h"
#include <gmock/gmock.h>

namespace {

using namespace model;
using testing::ElementsAre;

constexpr Date day(int y, unsigned m, unsigned d) {
    return Date{std::chrono::year{y}, std::chrono::month{m}, std::chrono::day{d}};
}

constexpr int saturday = 6;

struct FirstSaturday {
    Date from, strictlyAfter, onOrAfter;
};
class FirstSaturdayOf : public testing::TestWithParam<FirstSaturday> {};

TEST_P(FirstSaturdayOf, isThatOfTheCalendar) {
    EXPECT_EQ(weekdayOnOrAfter(GetParam().from, saturday), GetParam().onOrAfter);
    EXPECT_EQ(weekdayOnOrAfter(addDays(GetParam().from, 1), saturday), GetParam().strictlyAfter);
}

// Worked by the Gregorian calendar, year ends, month ends and a leap year among them.
INSTANTIATE_TEST_SUITE_P(Calendar, FirstSaturdayOf,
                         testing::Values(FirstSaturday{day(2026, 1, 15), day(2026, 1, 17), day(2026, 1, 17)},
                                         FirstSaturday{day(2026, 1, 17), day(2026, 1, 24), day(2026, 1, 17)},
                                         FirstSaturday{day(2026, 2, 28), day(2026, 3, 7), day(2026, 2, 28)},
                                         FirstSaturday{day(2026, 12, 31), day(2027, 1, 2), day(2027, 1, 2)},
                                         FirstSaturday{day(2027, 2, 27), day(2027, 3, 6), day(2027, 2, 27)},
                                         FirstSaturday{day(2024, 2, 28), day(2024, 3, 2), day(2024, 3, 2)}));

struct LaterMonth {
    Date start;
    int months;
    Date clamped, saturdayThen;
};
class MonthsLater : public testing::TestWithParam<LaterMonth> {};

TEST_P(MonthsLater, takeTheLastDayOfAShorterMonthThenWaitForTheSaturday) {
    const auto &[start, months, clamped, then] = GetParam();
    EXPECT_EQ(addMonths(start, months), clamped);
    EXPECT_EQ(everyMonths(start, months, 2, saturday).back(), then);
}

// Worked by the Gregorian calendar.
INSTANTIATE_TEST_SUITE_P(Calendar, MonthsLater,
                         testing::Values(LaterMonth{day(2026, 1, 31), 1, day(2026, 2, 28), day(2026, 2, 28)},
                                         LaterMonth{day(2026, 1, 31), 3, day(2026, 4, 30), day(2026, 5, 2)},
                                         LaterMonth{day(2026, 11, 30), 3, day(2027, 2, 28), day(2027, 3, 6)},
                                         LaterMonth{day(2024, 2, 29), 12, day(2025, 2, 28), day(2025, 3, 1)},
                                         LaterMonth{day(2026, 8, 31), 6, day(2027, 2, 28), day(2027, 3, 6)},
                                         LaterMonth{day(2026, 10, 15), 4, day(2027, 2, 15),
                                                    day(2027, 2, 20)}));

// The dates of RFC 5545 rules that no month end touches, worked by the calendar: every three and every four
// months from the 15th; and the last day of each third month (BYMONTHDAY=-1), which clamping gives from a
// 31st.
TEST(EveryMonths, countFromTheStartEachTime) {
    EXPECT_THAT(everyMonths(day(2026, 1, 15), 3, 5, {}),
                ElementsAre(day(2026, 1, 15), day(2026, 4, 15), day(2026, 7, 15), day(2026, 10, 15),
                            day(2027, 1, 15)));
    EXPECT_THAT(everyMonths(day(2026, 1, 15), 4, 4, {}),
                ElementsAre(day(2026, 1, 15), day(2026, 5, 15), day(2026, 9, 15), day(2027, 1, 15)));
    EXPECT_THAT(everyMonths(day(2026, 1, 31), 3, 6, {}),
                ElementsAre(day(2026, 1, 31), day(2026, 4, 30), day(2026, 7, 31), day(2026, 10, 31),
                            day(2027, 1, 31), day(2027, 4, 30)));
    EXPECT_THAT(everyMonths(day(2026, 1, 30), 1, 4, {}),
                ElementsAre(day(2026, 1, 30), day(2026, 2, 28), day(2026, 3, 30), day(2026, 4, 30)));
}

/// RFC 5545 leaves out a day that a month does not have (a rule from the 31st skips April, one from 29
/// February skips three years); upkeep must not be left out, so that here the last day of the month takes its
/// place.
TEST(EveryMonths, neverLeaveAMonthOutAsARuleOfRfc5545Does) {
    EXPECT_THAT(everyMonths(day(2026, 1, 31), 3, 3, {}),
                ElementsAre(day(2026, 1, 31), day(2026, 4, 30), day(2026, 7, 31))); // RRULE: 31 July is next
    EXPECT_THAT(everyMonths(day(2024, 2, 29), 12, 5, {}),
                ElementsAre(day(2024, 2, 29), day(2025, 2, 28), day(2026, 2, 28), day(2027, 2, 28),
                            day(2028, 2, 29))); // RRULE FREQ=YEARLY: 29 February 2028 is next
}

/// FREQ=MONTHLY;INTERVAL=3;BYDAY=1SA and INTERVAL=4, from a first Saturday, worked by the calendar: counted
/// from the first of the month, since the first Saturday is the first one on or after it.
TEST(EveryMonths, giveTheFirstSaturdayOfAMonthFromItsFirstDay) {
    EXPECT_THAT(
        everyMonths(day(2026, 2, 1), 3, 5, saturday),
        ElementsAre(day(2026, 2, 7), day(2026, 5, 2), day(2026, 8, 1), day(2026, 11, 7), day(2027, 2, 6)));
    EXPECT_THAT(
        everyMonths(day(2026, 1, 1), 4, 5, saturday),
        ElementsAre(day(2026, 1, 3), day(2026, 5, 2), day(2026, 9, 5), day(2027, 1, 2), day(2027, 5, 1)));
}

TEST(Weekday, hasItsNumberByIso8601AndItsName) {
    EXPECT_EQ(weekdayOf(day(2026, 1, 15)), 4); // a Thursday
    EXPECT_EQ(weekdayName(4), "Thursday");
    EXPECT_EQ(weekdayName(7), "Sunday");
}

} // namespace
