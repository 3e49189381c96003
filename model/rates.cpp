#include "model/rates.h"
#include "model/same_different.h"
#include <algorithm>
#include <cmath>

namespace model {

namespace {

double logBeta(double a, double b) {
    return std::lgamma(a) + std::lgamma(b) - std::lgamma(a + b);
}

double logChoose(int n, int k) {
    return std::lgamma(n + 1.0) - std::lgamma(k + 1.0) - std::lgamma(n - k + 1.0);
}

} // namespace

RateBelief beliefAfter(int right, int trials, double prior) {
    return {prior + right, prior + trials - right};
}

double quantileOf(const RateBelief &belief, double p) {
    constexpr int halvings = 80;
    double low = 0, high = 1;
    for (int i = 0; i < halvings; ++i) {
        const double middle = (low + high) / 2;
        (betaBelow(middle, belief.a, belief.b) < p ? low : high) = middle;
    }
    return (low + high) / 2;
}

double meanOf(const RateBelief &belief) {
    return belief.a / (belief.a + belief.b);
}

double beliefAbove(const RateBelief &belief, double rate) {
    return 1 - betaBelow(rate, belief.a, belief.b);
}

double chanceOf(const RateBelief &belief, int right, int trials) {
    return std::exp(logChoose(trials, right) + logBeta(right + belief.a, trials - right + belief.b) -
                    logBeta(belief.a, belief.b));
}

double beliefGreater(const RateBelief &first, const RateBelief &second) {
    double sum = 0;
    for (int i = 0; i < static_cast<int>(std::lround(first.a)); ++i)
        sum += std::exp(logBeta(second.a + i, second.b + first.b) - std::log(first.b + i) -
                        logBeta(1 + i, first.b) - logBeta(second.a, second.b));
    return sum;
}

double byGuessing(int right, int trials, double p) {
    double sum = 0;
    for (int k = right; k <= trials; ++k)
        sum += std::exp(logChoose(trials, k) + k * std::log(p) + (trials - k) * std::log1p(-p));
    return sum;
}

RateInterval wilson(int right, int trials, double z) {
    const double n = trials, share = right / n, z2 = z * z;
    const double centre = (share + z2 / (2 * n)) / (1 + z2 / n);
    const double half = z / (1 + z2 / n) * std::sqrt(share * (1 - share) / n + z2 / (4 * n * n));
    return {std::max(0.0, centre - half), std::min(1.0, centre + half)};
}

int allRightNeeded(double rate, double prior) {
    constexpr double doubt = 0.05;
    int trials = 1;
    while (quantileOf(beliefAfter(trials, trials, prior), doubt) < rate)
        ++trials;
    return trials;
}

} // namespace model
