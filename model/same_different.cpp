#include "model/same_different.h"
#include <cmath>
#include <initializer_list>

namespace model {

namespace {

/// The continued fraction of the incomplete beta function, by the modified method of Lentz
/// (DLMF 8.17.22, National Institute of Standards and Technology).
double betaFraction(double x, double a, double b) {
    constexpr double tiny = 1e-300;
    constexpr double close = 1e-15;
    const auto kept = [](double value) { return std::abs(value) < tiny ? tiny : value; };
    double c = 1;
    double d = 1 / kept(1 - (a + b) * x / (a + 1));
    double fraction = d;
    for (int m = 1; m <= 1000; ++m) {
        const double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
        const double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
        double step = 1;
        for (const double term : {even, odd}) {
            d = 1 / kept(1 + term * d);
            c = kept(1 + term / c);
            step = c * d;
            fraction *= step;
        }
        if (std::abs(step - 1) < close)
            break;
    }
    return fraction;
}

} // namespace

double normalBelow(double z) {
    return 0.5 * std::erfc(-z / std::sqrt(2.0));
}

double confusionAt(double distance) {
    return normalBelow(-distance / 2);
}

double sameAnswer(double distance, double criterion, double lapse) {
    const double felt = normalBelow((criterion - distance) / std::sqrt(2.0)) -
                        normalBelow((-criterion - distance) / std::sqrt(2.0));
    return (1 - lapse) * felt + lapse / 2;
}

double betaBelow(double x, double a, double b) {
    if (x <= 0)
        return 0;
    if (x >= 1)
        return 1;
    const double front =
        std::exp(std::lgamma(a + b) - std::lgamma(a) - std::lgamma(b) + a * std::log(x) + b * std::log1p(-x));
    if (x < (a + 1) / (a + b + 2))
        return front * betaFraction(x, a, b) / a;
    return 1 - front * betaFraction(1 - x, b, a) / b;
}

int fewestAlone(double limit, double prior, int same, double credible) {
    int trials = same;
    while (betaBelow(limit, prior + same, prior + trials - same) < credible)
        ++trials;
    return trials;
}

} // namespace model
