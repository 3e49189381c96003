#pragma once
#include "model/kitchen.h"

/// Usual sizes of kitchen units, offered and used where nothing was measured. Common practice.
namespace model {

/// Outer width of a unit.
[[nodiscard]] Centimetres usualUnitWidth(UnitKind kind);

struct UsualSize {
    Centimetres width, depth, clear, height; // inside run width, depth, clear height; above the floor
};
/// Of the place `order` (0 at the top) out of `count` in a unit that is `unitWidth` wide.
[[nodiscard]] UsualSize usualSize(UnitKind kind, Centimetres unitWidth, int order, int count);

/// The sizes of a place: measured, or usual where they were not.
[[nodiscard]] UsualSize sizeOf(const Place &place, const Unit &unit, int count);

} // namespace model
