#pragma once
#include "model/case.h"
#include "reports/document.h"

/// Drawings of a kitchen from the facts of its units and places, each with the words that say the same.
namespace reports {

/// The units seen from the front in the order of the walk, to scale, each with its number, and the words that
/// say the same. A size that was not measured is drawn with the usual one of its kind, and the words say so.
/// Empty for a kitchen without units.
[[nodiscard]] Figure kitchenFigure(const model::Case &record);

/// The units seen from above, along the walls from the door clockwise; a unit that begins a new wall turns
/// the corner. Against the wall is drawn what hangs, then the worktop, then what stands under it. Widths to
/// scale, depths not. Four walls at most: the words name the units of any more. Empty for a kitchen without
/// units.
[[nodiscard]] Figure floorFigure(const model::Case &record);

/// One unit from the front: its shelves or drawers, numbered from the top, at their heights and to scale.
/// Empty if the unit is not there.
[[nodiscard]] Figure unitFigure(const model::Case &record, const model::Id &unit);

} // namespace reports
