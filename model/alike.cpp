#include "model/evaluate.h"
#include <array>
#include <cmath>
#include <string_view>

namespace model {
namespace {

struct ShapePair {
    std::string_view one, other;
    double alike;
};

constexpr std::array<ShapePair, 7> shapePairs{{{"can", "canister", 0.35},
                                               {"tub", "canister", 0.4},
                                               {"jar", "bottle", 0.3},
                                               {"jar", "tub", 0.3},
                                               {"can", "jar", 0.25},
                                               {"canister", "jar", 0.25},
                                               {"mug", "jar", 0.1}}};

double shapesAlike(std::string_view a, std::string_view b) {
    if (a == b)
        return 1.0;
    for (const ShapePair &pair : shapePairs)
        if ((pair.one == a && pair.other == b) || (pair.one == b && pair.other == a))
            return pair.alike;
    return 0.0;
}

double square(double x) {
    return x * x;
}

} // namespace

Sizes::Sizes(const std::vector<ProblemItem> &items) {
    for (const ProblemItem &item : items)
        m_sizes.push_back({item.widthCm, item.heightCm});
}

double alike(const ProblemItem &a, const ProblemItem &b) {
    constexpr double weightScale = 0.35, soundScale = 0.6, leastAlike = 0.05;
    const double size = Sizes::distance({a.widthCm, a.heightCm}, {b.widthCm, b.heightCm});
    if (size > Sizes::farthestAlike) // most pairs, and quicker to tell than words
        return 0.0;
    if (a.storage != b.storage)
        return 0.0;
    const double shape = shapesAlike(a.shape, b.shape);
    if (shape == 0.0)
        return 0.0;
    const double distance = size + square(std::log(a.weightKg / b.weightKg) / weightScale) +
                            square((a.sound - b.sound) / soundScale);
    const double measure = shape * std::exp(-0.5 * distance);
    return measure < leastAlike ? 0.0 : measure;
}

} // namespace model
