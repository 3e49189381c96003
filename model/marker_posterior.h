#pragma once
#include <array>
#include <cstddef>
#include <vector>

namespace model {

/// What a mark feels like, in just-noticeable steps of a good finger.
struct MarkFeatures {
    double size = 0, height = 0, texture = 0;
    friend bool operator==(const MarkFeatures &, const MarkFeatures &) = default;
};

/// What the answers of a same-or-different test say about every pair of marks.
///
/// A hierarchical model on fixed grids, without sampling, so that equal answers give equal numbers: a
/// client's sensitivity, weight of texture and criterion are shared by all pairs, each pair's distance
/// spreads round what its features and those three lead to expect. All priors are defaults of this program.
class MarkerPosterior {
public:
    explicit MarkerPosterior(const std::vector<MarkFeatures> &marks);

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
    /// Bits that one more trial of the pair is expected to tell about whether it is good.
    [[nodiscard]] double information(std::size_t pair) const;
    /// P(good) of the pair at one sensitivity, texture weight and criterion of the grid: for the properties
    /// that hold there.
    [[nodiscard]] double goodAt(std::size_t pair, std::size_t cell) const;

    static constexpr std::size_t sensitivities = 9, textures = 4, criteria = 6, distances = 28;
    static constexpr std::size_t expectations = sensitivities * textures;
    static constexpr std::size_t cells = expectations * criteria;
    static constexpr double lapse = 0.035;
    static constexpr double limit = 0.05; // confusion of a pair that is good

private:
    using Spread = std::array<double, distances>;
    struct Pair {
        std::array<Spread, expectations> expected; // prior over the distances
        std::array<Spread, criteria> likelihood;
        std::array<double, cells> evidence, good, confusion; // per cell: of the answers; shares of it
    };
    void settle(Pair &pair) const;
    void weigh();

    std::size_t m_marks;
    std::vector<Pair> m_pairs;
    std::array<double, cells> m_prior{}, m_weight{};
    std::array<double, criteria> m_catch{}; // log likelihood of the catch trials
};

} // namespace model
