#pragma once
#include "model/result.h"
#include <vector>

/// Signal detection: how far two things lie apart for a finger or an eye, from right and wrong answers.
/// Distances are d', without dimension. Macmillan & Creelman, "Detection theory", 2005.
namespace model {

/// z(p), the standard normal deviate with the share p below it; 0 < p < 1.
[[nodiscard]] double normalQuantile(double p);

/// Yes or no to a signal: sensitivity d' = z(H) - z(F), criterion c, likelihood ratio beta.
struct YesNo {
    double distance = 0, criterion = 0, beta = 1;
};
/// Fails with OutOfRange unless both rates lie between 0 and 1, neither included.
[[nodiscard]] Result<YesNo> yesNo(double hits, double falseAlarms);
/// A rate that is never 0 or 1: (count + 0.5) / (trials + 1). Log-linear rule: Hautus 1995 (from memory).
[[nodiscard]] double logLinearRate(int count, int trials);

/// Share right in a choice of one out of `m` (at least 2) without bias, and the other way round; Green & Dai
/// 1991. Fails with OutOfRange at or below chance and at 1.
[[nodiscard]] double shareRight(double distance, int m);
[[nodiscard]] Result<double> distanceOfChoice(double share, int m);

/// "Same or different?" with independent observation, no bias (from memory).
[[nodiscard]] Result<double> distanceIndependent(double share);
/// The same by the differencing rule; "different" is the signal (from memory).
[[nodiscard]] Result<double> distanceDifferencing(double hits, double falseAlarms);

/// How often each thing that was given (row) was taken for each (column).
using Confusions = std::vector<std::vector<double>>;
/// Bits transmitted, Miller 1956; and with the bias of few trials taken off, Miller 1955, not below 0.
[[nodiscard]] double bitsTransmitted(const Confusions &counts);
[[nodiscard]] double bitsWithoutBias(const Confusions &counts);
/// Similarity of two of them: sqrt(p_ij p_ji / (p_ii p_jj)). Luce 1963 (from memory).
[[nodiscard]] double similarity(const Confusions &counts, std::size_t i, std::size_t j);

} // namespace model
