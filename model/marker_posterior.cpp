#include "model/marker_posterior.h"
#include "model/same_different.h"
#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace model {

namespace {

using P = MarkerPosterior;

constexpr std::array<double, P::criteria> criterionGrid{0.3, 0.7, 1.1, 1.5, 1.9, 2.3};
constexpr double leastExpected = 0.25; // steps: two marks with equal features may still differ a little
constexpr std::array<double, 2> sensitivityRange{0.2, 2.8};
constexpr std::array<double, 2> distanceRange{0.25, 16};

/// The `index`th of `count` values from first to last in equal ratios.
double geometric(const std::array<double, 2> &range, std::size_t index, std::size_t count) {
    return range[0] *
           std::pow(range[1] / range[0], static_cast<double>(index) / static_cast<double>(count - 1));
}

double sensitivityAt(std::size_t index) {
    return geometric(sensitivityRange, index, P::sensitivities);
}

const std::array<double, P::distances> &distanceGrid() {
    static const auto grid = [] {
        std::array<double, P::distances> values{};
        for (std::size_t i = 1; i < values.size(); ++i)
            values[i] = geometric(distanceRange, i - 1, P::distances - 1);
        return values;
    }();
    return grid;
}

/// Distances up to this index are confused too often.
std::size_t firstGood() {
    const auto &grid = distanceGrid();
    return static_cast<std::size_t>(
        std::find_if(grid.begin(), grid.end(), [](double d) { return confusionAt(d) < P::limit; }) -
        grid.begin());
}

const std::array<double, P::distances> &confusionGrid() {
    static const auto grid = [] {
        std::array<double, P::distances> values{};
        std::transform(distanceGrid().begin(), distanceGrid().end(), values.begin(), confusionAt);
        return values;
    }();
    return grid;
}

/// Chance of the answer "same", by criterion and distance.
const auto &sameGrid() {
    static const auto grid = [] {
        std::array<std::array<double, P::distances>, P::criteria> values{};
        for (std::size_t c = 0; c < P::criteria; ++c)
            for (std::size_t d = 0; d < P::distances; ++d)
                values[c][d] = sameAnswer(distanceGrid()[d], criterionGrid[c], P::lapse);
        return values;
    }();
    return grid;
}

/// Share of a lognormal round `expected`, `spread` wide, that falls to each value of the grid; below the
/// first to 0.
std::array<double, P::distances> spreadRound(double expected, double spread) {
    const auto &grid = distanceGrid();
    const double halfStep = 0.5 * std::log(grid[2] / grid[1]);
    const auto above = [&](std::size_t i) {
        return normalBelow((std::log(expected / grid[i]) - halfStep) / spread);
    };
    std::array<double, P::distances> shares{};
    const double aboveZero = normalBelow((std::log(expected / grid[1]) + halfStep) / spread);
    shares[0] = 1 - aboveZero;
    double left = aboveZero;
    for (std::size_t i = 1; i + 1 < grid.size(); ++i) {
        shares[i] = left - above(i);
        left = above(i);
    }
    shares[P::distances - 1] = left;
    return shares;
}

double nominal(const MarkFeatures &a, const MarkFeatures &b, double heightWeight, double textureWeight) {
    const double size = a.size - b.size;
    const double height = heightWeight * (a.height - b.height);
    const double texture = textureWeight * (a.texture - b.texture);
    return std::max(leastExpected, std::sqrt(size * size + height * height + texture * texture));
}

double bell(double value, double mean, double spread) {
    const double z = (value - mean) / spread;
    return std::exp(-z * z / 2);
}

double bits(double share) {
    if (share <= 0 || share >= 1)
        return 0;
    return -share * std::log2(share) - (1 - share) * std::log2(1 - share);
}

double dot(const std::array<double, P::distances> &a, const std::array<double, P::distances> &b,
           std::size_t from, std::size_t to) {
    double sum = 0;
    for (std::size_t d = from; d < to; ++d)
        sum += a[d] * b[d];
    return sum;
}

std::array<double, P::distances> times(std::array<double, P::distances> a,
                                       const std::array<double, P::distances> &b) {
    for (std::size_t d = 0; d < a.size(); ++d)
        a[d] *= b[d];
    return a;
}

} // namespace

MarkerPosterior::MarkerPosterior(const std::vector<MarkFeatures> &marks, const MarkerModel &model)
    : m_marks(marks.size()), m_weights(model.heightWeights.size() * model.textureWeights.size()) {
    const std::size_t expectations = sensitivities * m_weights;
    for (std::size_t e = 0; e < expectations; ++e)
        for (const double criterion : criterionGrid)
            m_prior.push_back(
                bell(std::log(sensitivityAt(e / m_weights)), std::log(0.9), model.sensitivitySpread) *
                bell(criterion, 1.2, 0.5));
    m_pairs.resize(m_marks * (m_marks - 1) / 2);
    for (std::size_t a = 0; a < m_marks; ++a)
        for (std::size_t b = a + 1; b < m_marks; ++b)
            expect(m_pairs[pairOf(a, b)], marks[a], marks[b], model);
}

void MarkerPosterior::expect(Pair &pair, const MarkFeatures &a, const MarkFeatures &b,
                             const MarkerModel &model) const {
    for (std::size_t s = 0; s < sensitivities; ++s)
        for (const double height : model.heightWeights)
            for (const double texture : model.textureWeights) {
                const double steps = nominal(a, b, height, texture);
                pair.expected.push_back(spreadRound(sensitivityAt(s) * steps,
                                                    std::hypot(model.spread, model.featureError / steps)));
            }
    for (Spread &likelihood : pair.likelihood)
        likelihood.fill(1);
    pair.evidence.resize(cells());
    pair.good.resize(cells());
    pair.confusion.resize(cells());
    pair.distance.resize(cells());
    pair.nominal = nominal(a, b, 1, 1);
    settle(pair);
}

std::size_t MarkerPosterior::pairOf(std::size_t a, std::size_t b) const {
    assert(a != b && a < m_marks && b < m_marks);
    if (a > b)
        std::swap(a, b);
    return a * (2 * m_marks - a - 1) / 2 + (b - a - 1);
}

void MarkerPosterior::answer(std::size_t a, std::size_t b, bool same) {
    m_weight.clear();
    const auto factor = [same](std::size_t c, std::size_t d) {
        return same ? sameGrid()[c][d] : 1 - sameGrid()[c][d];
    };
    if (a == b) {
        for (std::size_t c = 0; c < criteria; ++c)
            m_catch[c] += std::log(factor(c, 0));
        return;
    }
    Pair &pair = m_pairs[pairOf(a, b)];
    double most = 0;
    for (std::size_t c = 0; c < criteria; ++c)
        for (std::size_t d = 0; d < distances; ++d)
            most = std::max(most, pair.likelihood[c][d] *= factor(c, d));
    for (Spread &likelihood : pair.likelihood) // a factor that all have in common changes no weight
        for (double &value : likelihood)
            value /= most;
    settle(pair);
}

void MarkerPosterior::settle(Pair &pair) const {
    const std::size_t good = firstGood();
    for (std::size_t cell = 0; cell < cells(); ++cell) {
        const Spread joint = times(pair.expected[cell / criteria], pair.likelihood[cell % criteria]);
        const double sum = std::accumulate(joint.begin(), joint.end(), 0.0);
        pair.evidence[cell] = std::log(sum);
        if (!(sum > 0)) { // a cell that the answers rule out
            pair.good[cell] = pair.confusion[cell] = pair.distance[cell] = 0;
            continue;
        }
        pair.good[cell] =
            std::accumulate(joint.begin() + static_cast<std::ptrdiff_t>(good), joint.end(), 0.0) / sum;
        pair.confusion[cell] = dot(joint, confusionGrid(), 0, distances) / sum;
        pair.distance[cell] = dot(joint, distanceGrid(), 0, distances) / sum;
    }
}

const std::vector<double> &MarkerPosterior::weights() const {
    if (!m_weight.empty())
        return m_weight;
    std::vector<double> logs(cells());
    for (std::size_t cell = 0; cell < cells(); ++cell)
        logs[cell] = std::log(m_prior[cell]) + m_catch[cell % criteria];
    for (const Pair &pair : m_pairs)
        for (std::size_t cell = 0; cell < cells(); ++cell)
            logs[cell] += pair.evidence[cell];
    const double most = *std::max_element(logs.begin(), logs.end());
    for (double &value : logs)
        value = std::exp(value - most);
    const double sum = std::accumulate(logs.begin(), logs.end(), 0.0);
    for (double &value : logs)
        value /= sum;
    m_weight = std::move(logs);
    return m_weight;
}

double MarkerPosterior::good(std::size_t pair) const {
    const auto &share = m_pairs[pair].good;
    return std::inner_product(share.begin(), share.end(), weights().begin(), 0.0);
}

double MarkerPosterior::confusion(std::size_t pair) const {
    const auto &share = m_pairs[pair].confusion;
    return std::inner_product(share.begin(), share.end(), weights().begin(), 0.0);
}

double MarkerPosterior::goodAt(std::size_t pair, std::size_t cell) const {
    return m_pairs[pair].good[cell];
}

double MarkerPosterior::sensitivity() const {
    const auto &weight = weights();
    double mean = 0;
    for (std::size_t cell = 0; cell < cells(); ++cell)
        mean += weight[cell] * sensitivityAt(cell / criteria / m_weights);
    return mean;
}

double MarkerPosterior::felt() const {
    double distance = 0;
    double expected = 0;
    for (const Pair &pair : m_pairs) {
        distance += std::inner_product(pair.distance.begin(), pair.distance.end(), weights().begin(), 0.0);
        expected += pair.nominal;
    }
    return distance / expected;
}

double MarkerPosterior::information(std::size_t index, const std::vector<std::size_t> &others) const {
    const Pair &pair = m_pairs[index];
    const auto &weight = weights();
    const std::size_t firstOfGood = firstGood();
    std::array<Spread, criteria> answeredSame{};
    for (std::size_t c = 0; c < criteria; ++c)
        answeredSame[c] = times(pair.likelihood[c], sameGrid()[c]);
    std::vector<double> sameInCell(cells(), 0); // and the cell
    double same = 0;
    double sameAndGood = 0;
    for (std::size_t cell = 0; cell < cells(); ++cell) {
        const Spread &expected = pair.expected[cell / criteria];
        const Spread &answered = answeredSame[cell % criteria];
        if (!(weight[cell] > 0))
            continue;
        const double scale = weight[cell] / std::exp(pair.evidence[cell]);
        const double ofGood = dot(expected, answered, firstOfGood, distances);
        sameAndGood += scale * ofGood;
        sameInCell[cell] = scale * (ofGood + dot(expected, answered, 0, firstOfGood));
        same += sameInCell[cell];
    }
    const auto told = [same](double now, double andSame) {
        const double different = 1 - same;
        return bits(now) - same * bits(andSame / same) - different * bits((now - andSame) / different);
    };
    double all = told(good(index), sameAndGood);
    for (const std::size_t other : others) {
        const auto &share = m_pairs[other].good;
        if (other != index)
            all += told(good(other), std::inner_product(share.begin(), share.end(), sameInCell.begin(), 0.0));
    }
    return all;
}

} // namespace model
