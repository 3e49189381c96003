#include "model/reach.h"

namespace model {

BodyHeights bodyHeights(Centimetres stature, std::optional<int> age) {
    const Centimetres lost{age && *age >= 75 ? 10.0 : 0.0};
    return {stature * 0.14, stature * 0.44,  stature * 0.63,
            stature * 0.82, stature * 0.936, stature * 1.18 - lost};
}

ReachZone reachZone(Centimetres height, Centimetres stature) {
    constexpr Centimetres hair{1e-6}; // a boundary is not missed by rounding
    const BodyHeights body = bodyHeights(stature, std::nullopt);
    height = height + hair;
    if (height < body.lowerLeg)
        return ReachZone::Floor;
    if (height < body.knuckle)
        return ReachZone::Low;
    if (height < body.elbow)
        return ReachZone::Best;
    return height < body.shoulder ? ReachZone::High : ReachZone::Overhead;
}

std::optional<Centimetres> seatedHighReach(Approach approach, Centimetres depth, Centimetres obstruction) {
    switch (approach) {
    case Approach::Forward:
        if (depth.value <= 51.0)
            return Centimetres{122.0};
        return depth.value <= 63.5 ? std::optional(Centimetres{112.0}) : std::nullopt;
    case Approach::Side:
        if (depth.value <= 25.5)
            return Centimetres{122.0};
        if (obstruction.value > 86.5 || depth.value > 61.0)
            return std::nullopt;
        return Centimetres{117.0};
    }
    return std::nullopt;
}

} // namespace model
