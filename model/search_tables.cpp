#include "model/search_tables.h"
#include "model/coefficients.h"
#include "model/evaluate.h"
#include <algorithm>
#include <map>
#include <numeric>
#include <string>
#include <utility>

namespace model {
namespace {

/// Numbers keys from 0 in the order in which they are met.
template<class Key> class Numbering {
public:
    int operator()(const Key &key) { return m_numbers.emplace(key, count()).first->second; }
    [[nodiscard]] int count() const { return static_cast<int>(m_numbers.size()); }

private:
    std::map<Key, int> m_numbers;
};

/// In the order in which pairs are walked.
std::vector<std::pair<int, int>> firstBeforeSecond(std::vector<std::pair<int, int>> pairs) {
    for (auto &[i, j] : pairs)
        if (j < i)
            std::swap(i, j);
    std::sort(pairs.begin(), pairs.end());
    return pairs;
}

} // namespace

SearchTables::SearchTables(const Problem &problem)
    : items(static_cast<int>(problem.items.size())), places(static_cast<int>(problem.places.size())),
      codes(static_cast<int>(problem.markers.size()) + 1), bayCost(model::bayCost(problem)),
      placeCost(model::placeCost(problem)), oneThingPerMark(problem.oneThingPerMark),
      mostToLearn(problem.mostToLearn) {
    numberPlaces(problem);
    numberItems(problem);
    findLookAlikes(problem);
    numberCodes(problem);
    if (!problem.shownPlace.empty()) {
        changeCost = toMilli(problem.changeMinutes);
        shownPlace = problem.shownPlace;
        shownCode = problem.shownCode;
    }
}

void SearchTables::numberPlaces(const Problem &problem) {
    Numbering<int> numberOfBay;
    for (const ProblemPlace &place : problem.places) {
        bayOf.push_back(numberOfBay(place.bay));
        runWidth.push_back(thousandths(place.widthCm));
    }
    bays = numberOfBay.count();
    for (const std::vector<int> &row : nearQuarters(problem))
        near.insert(near.end(), row.begin(), row.end());
}

void SearchTables::numberItems(const Problem &problem) {
    Numbering<std::string> numberOfGroup, numberOfShape;
    Numbering<std::pair<std::string, std::string>> numberOfSub;
    allowedPlaces.resize(items);
    for (int i = 0; i < items; ++i) {
        const ProblemItem &item = problem.items[i];
        groupOf.push_back(numberOfGroup(item.group));
        subOf.push_back(numberOfSub({item.group, item.sub}));
        shapeOf.push_back(numberOfShape(item.shape));
        width.push_back(shelfWidth(item));
        klass.push_back(keptFromChemicals(item) ? 'F' : item.klass);
        const bool carries = problem.allergenApart && carriesAllergen(item);
        const bool kept = problem.allergenApart && keptFromAllergen(item);
        avoided.push_back(static_cast<char>(carries ? 1 : kept ? 2 : 0));
        for (int p = 0; p < places; ++p) {
            itemPlace.push_back(itemPlaceCost(problem, i, p));
            allowed.push_back(placeRules(problem, i, p).empty());
            if (allowed.back() != 0)
                allowedPlaces[i].push_back(p);
        }
    }
    groups = numberOfGroup.count();
    subs = numberOfSub.count();
    shapes = numberOfShape.count();
}

void SearchTables::findLookAlikes(const Problem &problem) {
    const auto apartPairs = firstBeforeSecond(problem.apart);
    const Sizes sizes(problem.items);
    std::vector<std::vector<LookAlike>> rows(items);
    auto nextApart = apartPairs.begin();
    for (int i = 0; i < items; ++i)
        for (int j = i + 1; j < items; ++j) {
            const double measure = sizes.differ(i, j) ? 0.0 : alike(problem.items[i], problem.items[j]);
            nextApart = std::find_if(nextApart, apartPairs.end(), [&](const auto &pair) {
                return pair >= std::pair{i, j};
            });
            const bool apart = nextApart != apartPairs.end() && *nextApart == std::pair{i, j};
            if (measure == 0.0 && !apart)
                continue;
            const MilliMinutes cost = pairCost(problem, i, j, measure);
            rows[i].push_back({j, cost, measure >= alikeForbidsSameCode, apart});
            rows[j].push_back({i, cost, measure >= alikeForbidsSameCode, apart});
        }
    m_first.push_back(0);
    for (const std::vector<LookAlike> &row : rows) {
        m_lookAlikes.insert(m_lookAlikes.end(), row.begin(), row.end());
        m_first.push_back(static_cast<int>(m_lookAlikes.size()));
        mostRisk.push_back(
            std::accumulate(row.begin(), row.end(), MilliMinutes{0},
                            [](MilliMinutes sum, const LookAlike &other) { return sum + other.cost; }));
    }
}

void SearchTables::numberCodes(const Problem &problem) {
    for (int c = 0; c < codes; ++c) {
        typeCost.push_back(model::typeCost(problem, c));
        learnt.push_back(isLearnt(problem, c));
        repeatable.push_back(c == 0 || problem.markers[c - 1].ownText);
        for (int d = 0; d < codes; ++d)
            confusion.push_back(confusionThousandths(problem, c, d));
    }
    allowedCodes.assign(items, {0});
    for (int i = 0; i < items; ++i) {
        for (int c = 0; c < codes; ++c)
            markCost.push_back(model::markCost(problem, i, c));
        if (problem.items[i].pinnedCode) {
            const int pinned = *problem.items[i].pinnedCode;
            allowedCodes[i].clear(); // left empty: no plan
            if (!allowedPlaces[i].empty() && codeFits(problem, i, allowedPlaces[i].front(), pinned))
                allowedCodes[i].push_back(pinned);
            continue;
        }
        if (allowedPlaces[i].empty() || lookAlikes(i).empty())
            continue;
        for (int c = 1; c < codes; ++c) // every allowed place has the storage of the item
            if (codeFits(problem, i, allowedPlaces[i].front(), c))
                allowedCodes[i].push_back(c);
    }
}

SearchTables SearchTables::withPairCosts(std::int64_t times, std::int64_t over) const {
    SearchTables tables = *this;
    for (LookAlike &other : tables.m_lookAlikes)
        other.cost = other.cost * times / over;
    for (std::int64_t &most : tables.mostRisk)
        most = most * times / over + 1; // each pair is rounded down: never less than their sum
    return tables;
}

} // namespace model
