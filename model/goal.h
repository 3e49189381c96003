#pragma once
#include "model/date.h"
#include "model/id.h"
#include <array>
#include <optional>
#include <string>

namespace model {

/// Goal attainment scaling: five levels written before treatment. levels[0] is -2, levels[4] is +2.
struct Goal {
    Id id;
    std::string sentence;
    std::array<std::string, 5> levels;
    int importance = 1; // 0..3
    int difficulty = 1; // 0..3
    std::optional<Date> agreed;
    std::optional<Date> review;
    friend bool operator==(const Goal &, const Goal &) = default;
};

/// The level found at one visit, with what was seen.
struct Rating {
    Id id;
    Id goal;
    Id visit;
    int level = 0; // -2..2
    std::string evidence;
    std::optional<Date> date;
    friend bool operator==(const Rating &, const Rating &) = default;
};

} // namespace model
