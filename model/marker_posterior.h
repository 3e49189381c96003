#pragma once
#include "model/touch_trials.h"
#include <array>
#include <cstddef>
#include <vector>

namespace model {

/// What is taken for true before the first answer. All figures are defaults of this program.
struct MarkerModel {
    double sensitivitySpread = 0.7; // sd of the logarithm of the sensitivity round 0.9
    double spread = 0.25;           // sd of the logarithm of a pair's distance round what is expected
    double featureError = 0.5;      // steps by which the difference of two marks may be off, added to it
    std::vector<double> heightWeights{0.6, 1, 1.6};
    std::vector<double> textureWeights{0.25, 0.5, 1, 1.5};
    friend bool operator==(const MarkerModel &, const MarkerModel &) = default;
};

/// What the answers of a same-or-different test say about every pair of marks.
///
/// A hierarchical model on fixed grids, without sampling, so that equal answers give equal numbers: a
/// client's sensitivity, weight of texture and criterion are shared by all pairs, each pair's distance
/// spreads round what its features and those three lead to expect. All priors are defaults of this program.
class MarkerPosterior {
public:
    MarkerPosterior(const std::vector<MarkFeatures> &marks, const MarkerModel &model);

    [[nodiscard]] std::size_t markCount() const { return m_marks; }
    [[nodiscard]] std::size_t pairCount() const { return m_pairs.size(); }
    /// Index of the pair a, b in either order, a != b.
    [[nodiscard]] std::size_t pairOf(std::size_t a, std::size_t b) const;

    /// Takes in one answer; a == b is a catch trial.
    void answer(std::size_t a, std::size_t b, bool same);

    /// Probability that the pair is confused in less than 5 of 100.
    [[nodiscard]] double good(std::size_t pair) const;
    /// Posterior mean of the chance to take one of the pair for the other.
    [[nodiscard]] double confusion(std::size_t pair) const;
    /// Posterior mean sensitivity; 1 would be a good finger.
    [[nodiscard]] double sensitivity() const;
    /// Posterior mean distance of all pairs, as a share of what their features say: low as well where one
    /// kind of feature, such as texture, is hardly felt.
    [[nodiscard]] double felt() const;
    /// Bits that one more trial of the pair is expected to tell about whether it is good, and about whether
    /// each of the `others` is, by what it tells of the client.
    [[nodiscard]] double information(std::size_t pair, const std::vector<std::size_t> &others = {}) const;
    /// P(good) of the pair at one sensitivity, texture weight and criterion of the grid: for the properties
    /// that hold there.
    [[nodiscard]] double goodAt(std::size_t pair, std::size_t cell) const;

    /// Combinations of sensitivity, weights and criterion on the grid.
    [[nodiscard]] std::size_t cells() const { return m_prior.size(); }

    static constexpr std::size_t sensitivities = 9, criteria = 6, distances = 28;
    static constexpr double lapse = 0.035;
    static constexpr double limit = 0.05; // confusion of a pair that is good

private:
    using Spread = std::array<double, distances>;
    struct Pair {
        std::vector<Spread> expected; // prior over the distances, by sensitivity and weights
        std::array<Spread, criteria> likelihood{};
        std::vector<double> evidence, good, confusion, distance; // by cell: of the answers; shares and means
        double nominal = 0;
    };
    void settle(Pair &pair) const;
    [[nodiscard]] const std::vector<double> &weights() const;
    void expect(Pair &pair, const MarkFeatures &a, const MarkFeatures &b, const MarkerModel &model) const;

    std::size_t m_marks;
    std::size_t m_weights; // combinations of the weights of height and texture
    std::vector<Pair> m_pairs;
    std::vector<double> m_prior;            // by cell
    mutable std::vector<double> m_weight;   // by cell; empty: worked out when it is next asked for
    std::array<double, criteria> m_catch{}; // log likelihood of the catch trials
};

} // namespace model
