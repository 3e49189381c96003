#include "model/detection.h"
#include "model/same_different.h"
#include "model/sentence.h"
#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>

namespace model {

namespace {

constexpr int halvings = 100;

/// Where a rising function reaches `wanted`, between the two ends.
double whereReached(const std::function<double(double)> &rising, double wanted, double low, double high) {
    for (int i = 0; i < halvings; ++i) {
        const double middle = (low + high) / 2;
        (rising(middle) < wanted ? low : high) = middle;
    }
    return (low + high) / 2;
}

bool isRate(double p) {
    return p > 0 && p < 1;
}

tl::unexpected<Error> notARate(const std::string &what) {
    return fail(ErrorCode::OutOfRange, Sentence::tr("No distance follows from this: {1}.", {what}));
}

double normalDensity(double x) {
    return std::exp(-x * x / 2) / std::sqrt(2 * std::numbers::pi);
}

struct Sums {
    std::vector<double> rows, columns;
    double all = 0;
};

Sums sumsOf(const Confusions &counts) {
    Sums sums;
    for (const auto &row : counts) {
        sums.columns.resize(std::max(sums.columns.size(), row.size()));
        sums.rows.push_back(0);
        for (std::size_t j = 0; j < row.size(); ++j) {
            sums.rows.back() += row[j];
            sums.columns[j] += row[j];
            sums.all += row[j];
        }
    }
    return sums;
}

} // namespace

double normalQuantile(double p) {
    constexpr double farOut = 40;
    return whereReached(normalBelow, p, -farOut, farOut);
}

Result<YesNo> yesNo(double hits, double falseAlarms) {
    if (!isRate(hits) || !isRate(falseAlarms))
        return notARate(Sentence::tr("rates lie between 0 and 1; use the log-linear rule for 0 and 1"));
    const double h = normalQuantile(hits), f = normalQuantile(falseAlarms);
    return YesNo{h - f, -(h + f) / 2, std::exp((f * f - h * h) / 2)};
}

double logLinearRate(int count, int trials) {
    return (count + 0.5) / (trials + 1.0);
}

double shareRight(double distance, int m) {
    constexpr double reach = 9;
    constexpr int steps = 2000;
    const double from = -reach, step = (2 * reach + distance) / steps;
    double sum = 0;
    for (int i = 0; i <= steps; ++i) {
        const double x = from + i * step;
        const double simpson = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
        sum += simpson * normalDensity(x - distance) * std::pow(normalBelow(x), m - 1);
    }
    return sum * step / 3;
}

Result<double> distanceOfChoice(double share, int m) {
    if (m < 2 || !(share >= 1.0 / m && share < 1))
        return notARate(Sentence::tr("the share right must be from chance up to, but not, 1"));
    constexpr double most = 20;
    return whereReached([m](double distance) { return shareRight(distance, m); }, share, 0, most);
}

Result<double> distanceIndependent(double share) {
    if (!(share >= 0.5 && share < 1))
        return notARate(Sentence::tr("the share right must be from 0.5 up to, but not, 1"));
    // share = a^2 + (1 - a)^2 with a = Phi(d / 2)
    return 2 * normalQuantile((1 + std::sqrt(2 * share - 1)) / 2);
}

Result<double> distanceDifferencing(double hits, double falseAlarms) {
    if (!isRate(hits) || !isRate(falseAlarms) || hits < falseAlarms)
        return notARate(Sentence::tr("hits must be more than false alarms, both between 0 and 1"));
    const double root = std::numbers::sqrt2;
    const double k = -root * normalQuantile(falseAlarms / 2);
    constexpr double most = 60;
    return whereReached([&](double d) { return normalBelow((d - k) / root) + normalBelow((-d - k) / root); },
                        hits, 0, most);
}

double bitsTransmitted(const Confusions &counts) {
    const Sums sums = sumsOf(counts);
    double bits = 0;
    for (std::size_t i = 0; i < counts.size(); ++i)
        for (std::size_t j = 0; j < counts[i].size(); ++j)
            if (const double n = counts[i][j]; n > 0)
                bits += n / sums.all * std::log2(n * sums.all / (sums.rows[i] * sums.columns[j]));
    return bits;
}

double bitsWithoutBias(const Confusions &counts) {
    const Sums sums = sumsOf(counts);
    const double rows = static_cast<double>(sums.rows.size()) - 1;
    const double columns = static_cast<double>(sums.columns.size()) - 1;
    return std::max(0.0, bitsTransmitted(counts) - rows * columns / (2 * sums.all * std::numbers::ln2));
}

double similarity(const Confusions &counts, std::size_t i, std::size_t j) {
    const Sums sums = sumsOf(counts);
    const auto p = [&](std::size_t a, std::size_t b) { return counts[a][b] / sums.rows[a]; };
    return std::sqrt(p(i, j) * p(j, i) / (p(i, i) * p(j, j)));
}

} // namespace model
