#pragma once
#include "model/case.h"
#include "reports/document.h"

namespace reports {

/// The units seen from the front in the order of the walk, to scale, each with its number, and the words that
/// say the same. A size that was not measured is drawn with the usual one of its kind, and the words say so.
/// Empty for a kitchen without units.
[[nodiscard]] Figure kitchenFigure(const model::Case &record);

} // namespace reports
