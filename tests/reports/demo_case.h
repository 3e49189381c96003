#pragma once
#include "model/demo.h"
#include "model/findings.h"
#include "model/planning.h"

/// The invented clients with a plan, on a fixed day.
namespace demo_case {

inline constexpr model::Date day{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

/// The client with a plan, worked out once in a test program.
[[nodiscard]] const model::Case &planned(const std::string &name);
/// The client with a plan made by hand: things stay, but one moves, and marks go round. It does not change
/// when the search for plans does.
[[nodiscard]] model::Case asItStands(const std::string &name);
[[nodiscard]] model::Findings findings(const model::Case &record);

} // namespace demo_case
