#pragma once

/// What a count of right answers says of the true rate.
namespace model {

/// A Beta distribution of a rate: `s` right of `n` with prior a = b = 1 (uniform) or 1/2 (Jeffreys).
struct RateBelief {
    double a = 1, b = 1;
};
[[nodiscard]] RateBelief beliefAfter(int right, int trials, double prior);
/// The rate with the share p of the belief below it.
[[nodiscard]] double quantileOf(const RateBelief &belief, double p);
[[nodiscard]] double meanOf(const RateBelief &belief);
/// Belief that the rate is above `rate`.
[[nodiscard]] double beliefAbove(const RateBelief &belief, double rate);
/// Chance of `right` of `trials` further answers: the beta-binomial distribution.
[[nodiscard]] double chanceOf(const RateBelief &belief, int right, int trials);
/// Belief that the first rate is above the second; `first.a` must be a whole number.
[[nodiscard]] double beliefGreater(const RateBelief &first, const RateBelief &second);

/// Chance of at least `right` of `trials` by guessing with chance p.
[[nodiscard]] double byGuessing(int right, int trials, double p);

/// Interval of a rate. Wilson 1927; `z` 1.959964 for 95 %.
struct RateInterval {
    double low = 0, high = 1;
};
[[nodiscard]] RateInterval wilson(int right, int trials, double z = 1.959963984540054);
/// Fewest answers, all right, after which the rate is at least `rate` with 95 % belief.
[[nodiscard]] int allRightNeeded(double rate, double prior);

} // namespace model
