#pragma once
#include "model/marker_test.h"
#include <random>
#include <string>
#include <vector>

/// Made-up clients for the simulation of the marker test. No person's data: the figures of the groups are
/// assumptions.
namespace simulation {

struct Group {
    std::string name;
    double sensitivity = 1, spread = 0.3; // median, and sd of its logarithm
    double textureWeight = 1;
};
[[nodiscard]] const std::vector<Group> &groups();

/// The twelve marks of the simulation, as the table of marks has them.
[[nodiscard]] const std::vector<model::MarkFeatures> &nominalMarks();

/// A client whose fingers do not quite agree with the table of marks.
class MadeUpClient {
public:
    MadeUpClient(const Group &group, std::uint64_t seed);
    [[nodiscard]] model::TouchAnswer answer(const model::GivenPair &given);
    /// True chance to confuse the two.
    [[nodiscard]] double confusion(std::size_t a, std::size_t b) const;
    /// Size of the largest set in which every true confusion is under the limit; 1 if there is no pair.
    [[nodiscard]] std::size_t largestTrueSet() const;

private:
    double normal() { return m_normal(m_random); }

    std::mt19937_64 m_random;
    std::normal_distribution<double> m_normal;
    std::vector<std::vector<double>> m_distance;
    double m_lapse = 0, m_criterion = 0;
};

} // namespace simulation
