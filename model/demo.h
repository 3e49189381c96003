#pragma once
#include "model/case.h"

/// Three invented clients with invented kitchens, for practice and for tests. No real person, home or brand.
namespace model::demo {

/// Low vision, reads large print, reduced feeling in the fingers; 25 things.
[[nodiscard]] Case nora();
/// Blind, reads contracted braille, has an implant; 80 things.
[[nodiscard]] Case idris();
/// Older, central loss, tremor, sighted household; 40 things; four visits of history.
[[nodiscard]] Case tilda();

[[nodiscard]] std::vector<Case> all();
/// Nullptr-free lookup by short name ("nora", "idris", "tilda"), case-insensitive.
[[nodiscard]] std::optional<Case> byName(const std::string &name);

} // namespace model::demo
