#pragma once
#include "model/result.h"
#include <chrono>
#include <string>

namespace model {

using Date = std::chrono::year_month_day;
using Time = std::chrono::sys_seconds; // UTC

/// "2026-11-25".
[[nodiscard]] std::string isoDate(Date date);
/// "25 November 2026".
[[nodiscard]] std::string dateInWords(Date date);
/// "2026-11-25T10:30:00Z".
[[nodiscard]] std::string isoTime(Time time);
/// Reads "2026-11-25", "25/11/2026" (day first) and "25 November 2026" or "25 Nov 2026".
/// Fails with NotUnderstood, or OutOfRange for a day that does not exist.
[[nodiscard]] Result<Date> parseDate(const std::string &text);
/// Reads what isoTime writes.
[[nodiscard]] Result<Time> parseTime(const std::string &text);
/// Today by the computer's clock, in UTC.
[[nodiscard]] Date today();
[[nodiscard]] Date addDays(Date date, int days);
/// Whole years from `born` to `on`.
[[nodiscard]] int ageInYears(Date born, Date on);

} // namespace model
