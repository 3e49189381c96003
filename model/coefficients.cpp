#include "model/coefficients.h"
#include "model/evaluate.h"
#include <algorithm>
#include <cmath>
#include <numeric>

namespace model {
namespace {

constexpr double minutesPerCost = 0.05;
constexpr double weeksToSpread = 12.0;
constexpr double meaningSeverity = 30.0 * 0.03; // what the meaning marker leaves of it
constexpr double levelOneBelowCm = 35.0;
constexpr double levelOneAboveCm = 20.0;

bool differInMeaning(const ProblemClient &client, const ProblemItem &a, const ProblemItem &b) {
    return a.hazard != b.hazard || (client.avoidsAllergen && a.allergen != b.allergen);
}

double severity(const Problem &problem, const ProblemItem &a, const ProblemItem &b) {
    if (differInMeaning(problem.client, a, b))
        return meaningSeverity;
    return a.spoils || b.spoils ? problem.weights.spoiltMeal : 1.0;
}

} // namespace

MilliMinutes toMilli(double minutes) {
    return static_cast<MilliMinutes>(std::floor(minutes * 1000.0 + 0.5));
}

std::int64_t thousandths(double cm) {
    return std::llround(cm * 1000.0);
}

MilliMinutes bayCost(const Problem &problem) {
    return toMilli(problem.weights.group);
}

MilliMinutes placeCost(const Problem &problem) {
    return toMilli(problem.weights.shelfMates);
}

std::int64_t shelfWidth(const ProblemItem &item) {
    return thousandths(item.runCm > 0 ? item.runCm : item.widthCm) + thousandths(fingerGapCm);
}

int reachLevel(const ProblemClient &client, double heightCm) {
    if (heightCm >= client.knuckleCm && heightCm <= client.shoulderCm)
        return 0;
    const bool close =
        heightCm >= client.knuckleCm - levelOneBelowCm && heightCm <= client.shoulderCm + levelOneAboveCm;
    return close ? 1 : 2;
}

double metresToArea(const Problem &problem, int i, int p) {
    const ProblemItem &item = problem.items[i];
    const ProblemPlace &place = problem.places[p];
    return std::hypot(place.x - item.areaX, place.y - item.areaY);
}

ItemPlaceParts itemPlaceParts(const Problem &problem, int i, int p) {
    const ProblemItem &item = problem.items[i];
    const ProblemPlace &place = problem.places[p];
    const bool glassAbove = item.glass && place.heightCm > problem.client.shoulderCm;
    const int level = reachLevel(problem.client, place.heightCm) + (glassAbove ? 1 : 0);
    ItemPlaceParts parts;
    parts.reach = item.usesPerWeek * problem.weights.reach * level;
    parts.walk = item.usesPerWeek * problem.weights.walk * metresToArea(problem, i, p);
    if (problem.client.usableVision && !place.lit)
        parts.dark = item.usesPerWeek * problem.weights.dark;
    if (item.current >= 0 && item.current != p)
        parts.move = problem.weights.move / weeksToSpread * (1 + item.keep);
    return parts;
}

MilliMinutes itemPlaceCost(const Problem &problem, int i, int p) {
    return toMilli(itemPlaceParts(problem, i, p).sum());
}

MilliMinutes markCost(const Problem &problem, int i, int c) {
    if (c == 0)
        return 0;
    const ProblemItem &item = problem.items[i];
    const ProblemMarker &marker = problem.markers[c - 1];
    return toMilli(problem.weights.marking * (item.refillsPerWeek * marker.fixMinutes +
                                              item.usesPerWeek * marker.readSeconds / 60.0) +
                   minutesPerCost * marker.cost);
}

MilliMinutes typeCost(const Problem &problem, int c) {
    return c == 0 ? 0
                  : toMilli(problem.weights.learning * problem.markers[c - 1].learnMinutes / weeksToSpread);
}

MilliMinutes pairCost(const Problem &problem, int i, int j) {
    return pairCost(problem, i, j, alike(problem.items[i], problem.items[j]));
}

MilliMinutes pairCost(const Problem &problem, int i, int j, double measure) {
    const ProblemItem &a = problem.items[i];
    const ProblemItem &b = problem.items[j];
    return toMilli(problem.weights.wrongPick * slip * measure * (a.usesPerWeek + b.usesPerWeek) *
                   severity(problem, a, b));
}

int confusionThousandths(const Problem &problem, int a, int b) {
    if (a == 0 && b == 0)
        return 1000;
    const double q = a == 0   ? problem.miss[b - 1]
                     : b == 0 ? problem.miss[a - 1]
                              : problem.confusion[a - 1][b - 1];
    return static_cast<int>(toMilli(q));
}

std::vector<std::vector<int>> nearQuarters(const Problem &problem) {
    const int count = static_cast<int>(problem.places.size());
    std::vector<int> order(count);
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) {
        const ProblemPlace &left = problem.places[a];
        const ProblemPlace &right = problem.places[b];
        return left.bay != right.bay ? left.bay < right.bay : left.heightCm < right.heightCm;
    });
    std::vector<std::vector<int>> near(count, std::vector<int>(count, 0));
    for (int k = 0; k < count; ++k) {
        near[order[k]][order[k]] = nearSame;
        if (k == 0 || problem.places[order[k]].bay != problem.places[order[k - 1]].bay)
            continue;
        near[order[k]][order[k - 1]] = nearNext;
        near[order[k - 1]][order[k]] = nearNext;
    }
    return near;
}

} // namespace model
