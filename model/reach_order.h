#pragma once
#include "model/case.h"
#include "model/measurement.h"
#include "model/result.h"

namespace model {

/// Whether a height of the reach goes with the others that stand: the lowest one reached below the shoulder
/// and below the highest one, the knuckle below the shoulder. A highest one below the shoulder is possible:
/// not every shoulder lifts. Fails with OutOfRange and names both heights; results of other tests and heights
/// that nobody can read pass.
[[nodiscard]] Result<void> goesWithOtherHeights(const Case &record, const Measurement &typed);

} // namespace model
