#include "model/shelf_order.h"
#include "model/coefficients.h"
#include <algorithm>
#include <cmath>
#include <tuple>

namespace model {
namespace {

constexpr MilliMinutes subChange = 200;
constexpr std::size_t mostExact = 12;
constexpr double cmPerMetre = 100;

/// The costs of one shelf, its items numbered from 0.
class Shelf {
public:
    Shelf(const Problem &problem, const Placement &placement, int place, std::vector<int> items)
        : m_problem(problem), m_place(problem.places[place]), m_items(std::move(items)),
          m_step(m_items.size(), std::vector<MilliMinutes>(m_items.size(), 0)) {
        for (std::size_t a = 0; a < m_items.size(); ++a)
            for (std::size_t b = 0; b < m_items.size(); ++b)
                if (a != b)
                    m_step[a][b] = between(placement, std::min(m_items[a], m_items[b]),
                                           std::max(m_items[a], m_items[b]));
    }

    [[nodiscard]] std::size_t size() const { return m_items.size(); }
    [[nodiscard]] int item(std::size_t k) const { return m_items[k]; }
    [[nodiscard]] MilliMinutes step(std::size_t a, std::size_t b) const { return m_step[a][b]; }
    [[nodiscard]] std::int64_t width(std::size_t k) const { return shelfWidth(m_problem.items[m_items[k]]); }

    /// Of the way to item `k` when `before` of the shelf is taken up to its left.
    [[nodiscard]] MilliMinutes way(std::size_t k, std::int64_t before) const {
        const ProblemItem &item = m_problem.items[m_items[k]];
        const double fromMiddle =
            ((static_cast<double>(before) + static_cast<double>(width(k)) / 2) / 1000 - m_place.widthCm / 2) /
            cmPerMetre;
        const double metres = std::hypot(m_place.x + fromMiddle * m_place.runX - item.areaX,
                                         m_place.y + fromMiddle * m_place.runY - item.areaY);
        return toMilli(item.usesPerWeek * m_problem.weights.walk * metres);
    }

    [[nodiscard]] MilliMinutes cost(const std::vector<std::size_t> &row) const {
        MilliMinutes sum = 0;
        std::int64_t before = 0;
        for (std::size_t k = 0; k < row.size(); ++k) {
            sum += way(row[k], before) + (k > 0 ? step(row[k - 1], row[k]) : 0);
            before += width(row[k]);
        }
        return sum;
    }

private:
    [[nodiscard]] MilliMinutes between(const Placement &placement, int i, int j) const {
        const ProblemItem &a = m_problem.items[i], &b = m_problem.items[j];
        const bool sameSub = a.group == b.group && a.sub == b.sub;
        return pairRisk(pairCost(m_problem, i, j), nearSame,
                        confusionThousandths(m_problem, placement.code[i], placement.code[j])) +
               (sameSub ? 0 : subChange);
    }

    const Problem &m_problem;
    const ProblemPlace &m_place;
    std::vector<int> m_items;
    std::vector<std::vector<MilliMinutes>> m_step;
};

/// Least cost over all rows, by subsets: the last item and what stands left of it are all that the rest
/// needs.
std::vector<std::size_t> exactRow(const Shelf &shelf) {
    struct Best {
        MilliMinutes cost = -1; // none yet
        std::size_t before = 0;
    };
    const std::size_t count = shelf.size(), subsets = std::size_t{1} << count;
    std::vector<std::vector<Best>> best(subsets, std::vector<Best>(count));
    for (std::size_t k = 0; k < count; ++k)
        best[std::size_t{1} << k][k] = {shelf.way(k, 0), k};
    for (std::size_t set = 1; set < subsets; ++set) {
        std::int64_t taken = 0;
        for (std::size_t k = 0; k < count; ++k)
            taken += (set >> k & 1U) != 0 ? shelf.width(k) : 0;
        for (std::size_t last = 0; last < count; ++last) {
            if (best[set][last].cost < 0)
                continue;
            for (std::size_t next = 0; next < count; ++next) {
                if ((set >> next & 1U) != 0)
                    continue;
                const MilliMinutes cost =
                    best[set][last].cost + shelf.step(last, next) + shelf.way(next, taken);
                Best &there = best[set | std::size_t{1} << next][next];
                if (there.cost < 0 || cost < there.cost)
                    there = {cost, last};
            }
        }
    }
    std::size_t set = subsets - 1, last = 0;
    for (std::size_t k = 1; k < count; ++k)
        if (best[set][k].cost < best[set][last].cost)
            last = k;
    std::vector<std::size_t> row;
    while (set != 0) {
        row.push_back(last);
        const std::size_t before = best[set][last].before;
        set &= ~(std::size_t{1} << last);
        last = before;
    }
    std::reverse(row.begin(), row.end());
    return row;
}

/// Turns stretches round while that helps.
std::vector<std::size_t> turnedRow(const Shelf &shelf) {
    std::vector<std::size_t> row(shelf.size());
    for (std::size_t k = 0; k < row.size(); ++k)
        row[k] = k;
    MilliMinutes least = shelf.cost(row);
    for (bool improved = true; improved;) {
        improved = false;
        for (std::size_t a = 0; a + 1 < row.size(); ++a)
            for (std::size_t b = a + 1; b < row.size(); ++b) {
                std::vector<std::size_t> turned = row;
                std::reverse(turned.begin() + static_cast<std::ptrdiff_t>(a),
                             turned.begin() + static_cast<std::ptrdiff_t>(b) + 1);
                if (const MilliMinutes cost = shelf.cost(turned); cost < least) {
                    least = cost;
                    row = std::move(turned);
                    improved = true;
                }
            }
    }
    return row;
}

std::vector<int> itemsByName(const Problem &problem, const Placement &placement, int place) {
    std::vector<int> items;
    for (int i = 0; i < static_cast<int>(problem.items.size()); ++i)
        if (placement.place[i] == place)
            items.push_back(i);
    std::stable_sort(items.begin(), items.end(), [&](int a, int b) {
        const auto key = [&](int i) {
            const ProblemItem &item = problem.items[i];
            return std::tie(item.group, item.sub, item.name);
        };
        return key(a) < key(b);
    });
    return items;
}

} // namespace

MilliMinutes rowCost(const Problem &problem, const Placement &placement, int place,
                     const std::vector<int> &row) {
    const Shelf shelf(problem, placement, place, row);
    std::vector<std::size_t> order(row.size());
    for (std::size_t k = 0; k < order.size(); ++k)
        order[k] = k;
    return shelf.cost(order);
}

std::vector<int> shelfRow(const Problem &problem, const Placement &placement, int place) {
    const std::vector<int> items = itemsByName(problem, placement, place);
    if (items.size() < 2)
        return items;
    const Shelf shelf(problem, placement, place, items);
    std::vector<int> row;
    for (const std::size_t k : items.size() <= mostExact ? exactRow(shelf) : turnedRow(shelf))
        row.push_back(shelf.item(k));
    return row;
}

} // namespace model
