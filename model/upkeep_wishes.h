#pragma once
#include "model/date.h"
#include "model/id.h"
#include <optional>
#include <string>

namespace model {

/// Where the client's food is sold: there the words printed beside a date have their meaning.
enum class DateRegion { NotAsked, EuropeOrUk, UnitedStates };

/// What the client chose for the upkeep of the plan, and what the supplies are priced in.
struct UpkeepWishes {
    Id id;
    DateRegion region = DateRegion::NotAsked; // not asked: the stricter meaning
    std::optional<int> fridgeWeekday{};       // 1 Monday .. 7 Sunday; none: counted from the plan
    std::optional<int> roundDay{};     // day of the month, the last one in a shorter month; none: the plan's
    std::optional<int> roundWeekday{}; // the round waits for the first such day; none: it does not wait
    std::optional<Date> fridgeDone{}, roundDone{}; // last time
    std::string currency{};                        // printed after prices; empty: none
    double clipPrice = 0.3, potPrice = 2;          // defaults of this program
    friend bool operator==(const UpkeepWishes &, const UpkeepWishes &) = default;
};

} // namespace model
