#pragma once
#include "model/demo.h"
#include "model/findings.h"
#include "model/planning.h"

/// The invented clients with a plan, on a fixed day.
namespace demo_case {

inline constexpr model::Date day{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

/// The client with a plan, worked out once in a test program.
[[nodiscard]] const model::Case &planned(const std::string &name);
[[nodiscard]] model::Findings findings(const model::Case &record);

} // namespace demo_case
