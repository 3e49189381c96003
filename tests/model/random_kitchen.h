#pragma once
#include "model/problem.h"
#include <cstdint>

namespace model::fixtures {

/// An invented kitchen that looks like a real one: cupboards, drawers, a larder, fridge and freezer with
/// about a third of their width to spare, and `items` things. The same for the same seed on every machine.
[[nodiscard]] Problem randomKitchen(std::uint64_t seed, int items);

/// A kitchen small enough to try every placement: two or three shelves, `items` look-alike things, two
/// markers.
[[nodiscard]] Problem tinyKitchen(std::uint64_t seed, int items);

} // namespace model::fixtures
