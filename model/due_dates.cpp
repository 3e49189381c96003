#include "model/due_dates.h"
#include <array>
#include <cassert>

namespace model {

Date addMonths(Date date, int months) {
    const Date moved = date + std::chrono::months{months};
    return moved.ok() ? moved : Date{moved.year() / moved.month() / std::chrono::last};
}

int weekdayOf(Date date) {
    return static_cast<int>(std::chrono::weekday{std::chrono::sys_days{date}}.iso_encoding());
}

Date weekdayOnOrAfter(Date from, int weekday) {
    constexpr int week = 7;
    return addDays(from, (weekday - weekdayOf(from) + week) % week);
}

std::string weekdayName(int weekday) {
    static const std::array<const char *, 7> names{"Monday", "Tuesday",  "Wednesday", "Thursday",
                                                   "Friday", "Saturday", "Sunday"};
    assert(weekday >= 1 && weekday <= 7);
    return names.at(static_cast<std::size_t>(weekday - 1));
}

std::vector<Date> everyMonths(Date start, int months, int count, std::optional<int> thenWeekday) {
    std::vector<Date> dates;
    for (int k = 0; k < count; ++k) {
        const Date date = addMonths(start, k * months);
        dates.push_back(thenWeekday ? weekdayOnOrAfter(date, *thenWeekday) : date);
    }
    return dates;
}

} // namespace model
