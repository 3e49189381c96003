#pragma once
#include "model/evaluate.h"
#include <optional>

namespace model::fixtures {

/// The outcome of trying every placement of a small problem with the recount alone.
struct Exhausted {
    int legal = 0;
    std::optional<Placement> best; // of equals the smallest (places, codes) vector
    MilliMinutes total = 0;
};
[[nodiscard]] Exhausted tryEverything(const Problem &problem);

} // namespace model::fixtures
