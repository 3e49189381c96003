#pragma once

/// Telling two marks apart by touch: Thurstone's distances with the differencing rule of signal detection
/// (Macmillan and Creelman, "Detection theory", 2005, chapter 9, with a lapse rate). Distances are d',
/// criteria in the same unit; both without dimension.
namespace model {

/// Chance that one of two marks is taken for the other: Phi(-d/2).
[[nodiscard]] double confusionAt(double distance);
/// Chance of the answer "same" for two marks one after the other. `criterion` is large in a client who says
/// "same" readily; `lapse` is the share of answers given without feeling, half of them "same".
[[nodiscard]] double sameAnswer(double distance, double criterion, double lapse);
/// Share of the standard normal distribution below z.
[[nodiscard]] double normalBelow(double z);

/// Fewest answers "different" or "same" to one pair by itself so that P(confusion < `limit`) >= `credible`,
/// given `same` answers "same", each taken for a confusion, and a Beta(prior, prior) prior.
[[nodiscard]] int fewestAlone(double limit, double prior, int same, double credible);
/// Regularised incomplete beta function I_x(a, b) for a, b > 0 and x within 0 to 1.
[[nodiscard]] double betaBelow(double x, double a, double b);

} // namespace model
