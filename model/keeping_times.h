#pragma once
#include "model/due_dates.h"
#include "model/kitchen.h"
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// How long food keeps, for quality and safety, as general guidance: the printed date and local guidance
/// always win. Data: U.S. Department of Agriculture, Food Safety and Inspection Service, FoodKeeper, version
/// 128.
namespace model {

/// The credit line that the publisher asks for.
inline constexpr const char *keepingTimesCredit =
    "U.S. Department of Agriculture, Food Safety and Inspection Service, FoodKeeper, version 128";

/// "1 to 2 months", or a word in place of a time: "Indefinitely", "Not Recommended". `most` 0 and no word: no
/// value.
struct KeepingSpan {
    enum class Unit { Days, Weeks, Months, Years };
    int least = 0, most = 0;
    Unit unit = Unit::Days;
    std::string word;
    [[nodiscard]] bool known() const { return most > 0; }
};

/// A time from the purchase, or one whose start the data do not say: then it counts from the purchase as
/// well, and is to be shown as general guidance.
struct FromPurchase {
    KeepingSpan span;
    bool statedFromPurchase = false;
};

struct KeepingTime {
    int row = 0; // number of the food in the data
    std::string name, subtitle;
    FromPurchase pantry, fridge, freezer;
    KeepingSpan pantryOpened, fridgeOpened; // from opening
};

/// The rows as text, written from the data by tests/keeping_times.py.
[[nodiscard]] std::string_view keepingTimesTable();
/// The foods that the catalogue links to, by row.
[[nodiscard]] const std::vector<KeepingTime> &keepingTimes();
[[nodiscard]] const KeepingTime *keepingTime(int row);

/// "1 to 2 months"; empty for no value.
[[nodiscard]] std::string spanInWords(const KeepingSpan &span);

/// First and last day, counted by the calendar: 31 January and 1 month is the last day of February.
struct KeepingDates {
    Date least, most;
    friend bool operator==(const KeepingDates &, const KeepingDates &) = default;
};
[[nodiscard]] std::optional<KeepingDates> keepUntil(const KeepingSpan &span, Date from);

} // namespace model
