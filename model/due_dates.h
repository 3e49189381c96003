#pragma once
#include "model/date.h"
#include <optional>
#include <string>
#include <vector>

/// Dates that come again and again, counted by the calendar.
namespace model {

/// The same day `months` later, or the last day of that month.
[[nodiscard]] Date addMonths(Date date, int months);

/// 1 Monday .. 7 Sunday.
[[nodiscard]] int weekdayOf(Date date);
/// `from` itself if it is such a day, else the first one after it.
[[nodiscard]] Date weekdayOnOrAfter(Date from, int weekday);
/// "Monday".
[[nodiscard]] std::string weekdayName(int weekday);

/// Dates every `months` months, the start among them, each counted from the start, so that the 31st comes
/// back to the 31st; then moved on to `thenWeekday` where one is wanted.
[[nodiscard]] std::vector<Date> everyMonths(Date start, int months, int count,
                                            std::optional<int> thenWeekday);

} // namespace model
