#include "model/date.h"
#include <gtest/gtest.h>

namespace model {
namespace {

using namespace std::chrono_literals;
using std::chrono::year;

Date on(int y, unsigned m, unsigned d) {
    return Date{year{y}, std::chrono::month{m}, std::chrono::day{d}};
}

TEST(Date, readsTheFormsThatPeopleWrite) {
    for (const char *text :
         {"2026-11-25", "25/11/2026", "25.11.2026", "25 November 2026", "25 nov 2026", "25Nov2026"})
        EXPECT_EQ(parseDate(text), on(2026, 11, 25)) << text;
}

TEST(Date, refusesDaysThatDoNotExist) {
    for (const char *text : {"2025-02-29", "31/04/2026", "2026-13-01", "0/1/2026"})
        EXPECT_EQ(parseDate(text).error().code, ErrorCode::OutOfRange) << text;
}

TEST(Date, saysWhatToWriteWhenItDoesNotUnderstand) {
    for (const char *text : {"", "tomorrow", "25/11/26", "2026", "2026-11-25-1"}) {
        const auto date = parseDate(text);
        ASSERT_FALSE(date) << text;
        EXPECT_EQ(date.error().code, ErrorCode::NotUnderstood) << text;
        EXPECT_NE(date.error().sentence.find("25 November 2026"), std::string::npos);
    }
}

TEST(Date, countsLeapDays) // Gregorian calendar: 2028 is a leap year, 2100 is not
{
    EXPECT_EQ(addDays(on(2028, 2, 28), 1), on(2028, 2, 29));
    EXPECT_EQ(addDays(on(2100, 2, 28), 1), on(2100, 3, 1));
    EXPECT_EQ(addDays(on(2026, 12, 31), 1), on(2027, 1, 1));
}

TEST(Date, agesOnTheBirthdayAndNotBefore) {
    EXPECT_EQ(ageInYears(on(1950, 11, 25), on(2026, 11, 24)), 75);
    EXPECT_EQ(ageInYears(on(1950, 11, 25), on(2026, 11, 25)), 76);
}

TEST(Date, timeGoesThereAndBack) {
    const Time time = std::chrono::sys_days{on(2026, 11, 25)} + 10h + 5min + 9s;
    EXPECT_EQ(isoTime(time), "2026-11-25T10:05:09Z");
    EXPECT_EQ(parseTime(isoTime(time)), time);
    EXPECT_FALSE(parseTime("2026-11-25T25:00:00Z"));
}

TEST(Date, saysADateInWords) {
    EXPECT_EQ(dateInWords(on(2026, 11, 5)), "5 November 2026");
}

} // namespace
} // namespace model
