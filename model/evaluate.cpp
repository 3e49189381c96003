#include "model/evaluate.h"
#include "model/coefficients.h"
#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace model {
namespace {

using Sub = std::pair<std::string, std::string>; // group and sub-category

struct Spread {
    std::map<std::string, std::set<int>> baysOfGroup;
    std::map<Sub, std::set<int>> placesOfSub;
};

Spread spreadOf(const Problem &problem, const Placement &placement) {
    Spread spread;
    for (std::size_t i = 0; i < problem.items.size(); ++i) {
        const ProblemItem &item = problem.items[i];
        const int p = placement.place[i];
        spread.baysOfGroup[item.group].insert(problem.places[p].bay);
        spread.placesOfSub[{item.group, item.sub}].insert(p);
    }
    return spread;
}

std::set<int> codesInUse(const Placement &placement) {
    std::set<int> codes(placement.code.begin(), placement.code.end());
    codes.erase(0);
    return codes;
}

MilliMinutes riskOf(const Problem &problem, const Placement &placement, int i, int j, int quarters) {
    return quarters == 0 ? 0
                         : pairRisk(pairCost(problem, i, j), quarters,
                                    confusionThousandths(problem, placement.code[i], placement.code[j]));
}

MilliMinutes totalRisk(const Problem &problem, const Placement &placement) {
    const std::vector<std::vector<int>> near = nearQuarters(problem);
    const Sizes sizes(problem.items);
    const int count = static_cast<int>(problem.items.size());
    MilliMinutes risk = 0;
    for (int i = 0; i < count; ++i)
        for (int j = i + 1; j < count; ++j)
            if (!sizes.differ(i, j))
                risk += riskOf(problem, placement, i, j, near[placement.place[i]][placement.place[j]]);
    return risk;
}

MilliMinutes riskOfOne(const Problem &problem, const Placement &placement, int i) {
    const std::vector<std::vector<int>> near = nearQuarters(problem);
    MilliMinutes risk = 0;
    for (int j = 0; j < static_cast<int>(problem.items.size()); ++j)
        if (j != i)
            risk += riskOf(problem, placement, std::min(i, j), std::max(i, j),
                           near[placement.place[i]][placement.place[j]]);
    return risk;
}

/// Whatever it weighs: outside knuckle to shoulder, or of glass above the shoulder.
bool awkward(const Problem &problem, const ProblemItem &item, int p) {
    const double height = problem.places[p].heightCm;
    return reachLevel(problem.client, height) > 0 || (item.glass && height > problem.client.shoulderCm);
}

double wrongPicks(const Problem &problem, const Placement &placement) {
    const std::vector<std::vector<int>> near = nearQuarters(problem);
    const Sizes sizes(problem.items);
    const int count = static_cast<int>(problem.items.size());
    std::vector<double> share(count, 0.0); // of the uses of each that end with another thing
    for (int i = 0; i < count; ++i)
        for (int j = i + 1; j < count; ++j) {
            const int quarters = sizes.differ(i, j) ? 0 : near[placement.place[i]][placement.place[j]];
            if (quarters == 0)
                continue;
            const double taken = slip * alike(problem.items[i], problem.items[j]) * quarters / nearSame *
                                 confusionThousandths(problem, placement.code[i], placement.code[j]) / 1000.0;
            share[i] += taken;
            share[j] += taken;
        }
    double sum = 0;
    for (int i = 0; i < count; ++i)
        sum += problem.items[i].usesPerWeek * std::min(share[i], 1.0);
    return sum;
}

Terms withoutRisk(const Problem &problem, const Placement &placement) {
    Terms terms;
    for (int i = 0; i < static_cast<int>(problem.items.size()); ++i) {
        terms.unary += itemPlaceCost(problem, i, placement.place[i]);
        terms.mark += markCost(problem, i, placement.code[i]);
    }
    const Spread spread = spreadOf(problem, placement);
    for (const auto &[group, bays] : spread.baysOfGroup)
        terms.bay += bayCost(problem) * static_cast<MilliMinutes>(bays.size() - 1);
    for (const auto &[sub, places] : spread.placesOfSub)
        terms.place += placeCost(problem) * static_cast<MilliMinutes>(places.size() - 1);
    for (const int code : codesInUse(placement))
        terms.type += typeCost(problem, code);
    return terms;
}

} // namespace

Terms evaluate(const Problem &problem, const Placement &placement) {
    Terms terms = withoutRisk(problem, placement);
    terms.risk = totalRisk(problem, placement);
    return terms;
}

Terms evaluateAround(const Problem &problem, const Placement &placement, int i) {
    Terms terms = withoutRisk(problem, placement);
    terms.risk = riskOfOne(problem, placement, i);
    return terms;
}

NaturalFigures naturalFigures(const Problem &problem, const Placement &placement) {
    NaturalFigures figures;
    for (int i = 0; i < static_cast<int>(problem.items.size()); ++i) {
        const ProblemItem &item = problem.items[i];
        const int p = placement.place[i];
        if (item.usesPerWeek > 0 && awkward(problem, item, p))
            figures.awkwardReachesPerWeek += item.usesPerWeek;
        figures.metresPerWeek += 2 * metresToArea(problem, i, p) * item.usesPerWeek;
        figures.moved += item.current >= 0 && item.current != p;
        figures.marked += placement.code[i] != 0;
    }
    figures.wrongPicksPerWeek = wrongPicks(problem, placement);
    figures.markerTypes = static_cast<int>(codesInUse(placement).size());
    const Spread spread = spreadOf(problem, placement);
    for (const auto &[group, bays] : spread.baysOfGroup)
        figures.baysPerGroup +=
            static_cast<double>(bays.size()) / static_cast<double>(spread.baysOfGroup.size());
    return figures;
}

} // namespace model
