#pragma once
#include "model/result.h"
#include "model/units.h"
#include <optional>

namespace model {

/// Heights above the floor of a standing person, estimated from stature. A measurement replaces any of them.
/// Sources: knuckle 0.44, shoulder 0.82, lower leg 0.14 H: zones in common use, near Pheasant 1996 and
/// Drillis & Contini 1966 (0.818); eye 0.936 H: Drillis & Contini; overhead 1.18 H: Pheasant, grip reach by
/// stature.
struct BodyHeights {
    Centimetres lowerLeg, knuckle, elbow, shoulder, eye, overhead;
};
/// From 75 years on overhead reach is 10 cm less (common practice). `age` none: not known, no deduction.
[[nodiscard]] BodyHeights bodyHeights(Centimetres stature, std::optional<int> age);

/// Standing zones, from the floor up.
enum class ReachZone { Floor, Low, Best, High, Overhead };
/// Zone of a height for a person of this stature; a height on a boundary belongs to the zone above it.
[[nodiscard]] ReachZone reachZone(Centimetres height, Centimetres stature);

/// How a seated person comes to the shelf.
enum class Approach { Forward, Side };
/// Highest reach from a wheelchair over an obstruction `depth` deep; none if it is not allowed at all.
/// Source: ADA 2010 Standards, 308.2 and 308.3.
[[nodiscard]] std::optional<Centimetres> seatedHighReach(Approach approach, Centimetres depth,
                                                         Centimetres obstruction);
/// Lowest reach from a wheelchair: 38 cm (ADA 2010, 308.2.1).
inline constexpr Centimetres seatedLowReach{38};

} // namespace model
