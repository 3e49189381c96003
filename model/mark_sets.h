#pragma once
#include <cstddef>
#include <cstdint>
#include <vector>

/// Choosing sets of marks, by looking at every set there is: 4096 for 12 marks.
namespace model {

inline constexpr std::size_t mostMarks = 16;

/// One bit a mark.
using MarkSet = std::uint32_t;

/// The marks of a set in order.
[[nodiscard]] std::vector<std::size_t> marksOf(MarkSet set);
[[nodiscard]] std::size_t sizeOf(MarkSet set);
[[nodiscard]] MarkSet setOf(const std::vector<std::size_t> &marks);

/// The largest set of which every pair is accepted; of equal ones the one with the smallest indices.
/// `accepted[a]` holds the marks that mark a is told apart from. At most mostMarks marks.
[[nodiscard]] MarkSet largestSet(const std::vector<MarkSet> &accepted);
/// As above, but of equal ones the one with the largest product of `good[a][b]` over its pairs, and only then
/// the one with the smallest indices.
[[nodiscard]] MarkSet surestLargestSet(const std::vector<MarkSet> &accepted,
                                       const std::vector<std::vector<double>> &good);

/// A set to aim at.
struct LikelySet {
    MarkSet marks = 0;
    double mostProbable = 0; // probability of the most probable set of that size, this one or another
};
/// The set of `size` marks with the largest product of `good[a][b]` over its pairs that are not accepted,
/// times the product of the best set one mark larger that holds it, to the power `lookAhead`. Of equal ones
/// the one with the smallest indices. `size` at most the number of marks.
[[nodiscard]] LikelySet likeliestSet(const std::vector<MarkSet> &accepted,
                                     const std::vector<std::vector<double>> &good, std::size_t size,
                                     double lookAhead = 0);

} // namespace model
