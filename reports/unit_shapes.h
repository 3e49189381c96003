#pragma once
#include "model/case.h"

/// How kinds of units stand, for the drawings of a kitchen. Common practice.
namespace reports {

enum Row { Above, Worktop, Below, FullHeight };

/// Where a kind of unit stands on the wall, in cm above the floor, and its usual width.
struct Shape {
    Row row;
    double bottomCm, topCm, widthCm;
};
[[nodiscard]] Shape shapeOf(model::UnitKind kind);

/// A fridge and a freezer in one tall case: every place of `lower` is measured below every place of `upper`.
[[nodiscard]] bool standsUnder(const model::Case &record, const model::Unit &lower, const model::Unit &upper);

} // namespace reports
