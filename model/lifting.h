#pragma once
#include "model/reach.h"
#include "model/result.h"
#include "model/units.h"
#include <optional>

/// What two hands may lift. Both rules are for healthy workers: a frail person may lift half of it at most
/// (common practice), and what she was seen to lift safely stands before any of them.
namespace model {

enum class Sex { Female, Male };
enum class Arms { Close, Out };

/// One lift, or one kind of lift.
struct Lift {
    Centimetres from{}, to{}; // height of the hands at both ends of the lift
    Centimetres stature{};
    Sex sex = Sex::Female;
    Arms arms = Arms::Close;
    double twistDegrees = 0;
    double perMinute = 0; // lifts a minute
};
/// Largest weight by the lifting filter of the Health and Safety Executive (INDG143 rev 4, L23): two hands, a
/// load easy to grasp, a stable stance; of the zones between `from` and `to` the smallest figure. Twist
/// beyond 45 degrees 0.9, beyond 90 degrees 0.8. The figures hold up to 30 lifts an hour; 1-2 a minute 0.7,
/// 5-8 a minute 0.5, above 12 0.2; between these bands the lower factor is taken. Fails with OutOfRange for
/// what cannot be.
[[nodiscard]] Result<Kilograms> liftFilter(const Lift &lift);
/// The figure of one zone, with no correction.
[[nodiscard]] Kilograms filterFigure(ReachZone zone, Sex sex, Arms arms);
/// Seated, hands close: women 3 kg, men 5 kg (from memory).
[[nodiscard]] Kilograms seatedFilter(Sex sex);

/// One lift in the terms of the revised NIOSH equation: centimetres, degrees, multipliers of the tables.
struct NioshLift {
    double horizontal = 25; // ankles' midpoint to hands
    double vertical = 75;   // hands above floor
    double travel = 25;
    double asymmetry = 0; // degrees
    double frequency = 1; // multiplier, 0 to 1
    double coupling = 1;  // multiplier, 0.9 poor to 1 good
};
/// Multipliers of the equation, 0 where the lift is outside its range.
struct NioshFactors {
    double horizontal = 0, vertical = 0, distance = 0, asymmetry = 0;
};
[[nodiscard]] NioshFactors nioshFactors(const NioshLift &lift);
/// Recommended weight limit, 23 kg times all multipliers. Not for one hand, sitting, kneeling, slippery
/// floors or frail people. Fails with OutOfRange for what cannot be. Source: Waters, Putz-Anderson and Garg
/// 1994, DHHS (NIOSH) 94-110, revised 2021.
[[nodiscard]] Result<Kilograms> nioshLimit(const NioshLift &lift);

} // namespace model
