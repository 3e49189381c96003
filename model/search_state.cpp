#include "model/search_state.h"
#include "model/coefficients.h"
#include <algorithm>

namespace model {
namespace {

constexpr int nowhere = -1;
constexpr std::int64_t overflowPenalty = 20; // per 0.001 cm
constexpr std::int64_t sameCodePenalty = 20'000;
constexpr std::int64_t apartPenalty = 100'000;
constexpr std::int64_t allergenPenalty = 50'000;
constexpr std::int64_t kindPenalty = 20'000;

std::int64_t overflow(std::int64_t load, std::int64_t width) {
    return load > width ? load - width : 0;
}

} // namespace

SearchState::SearchState(const SearchTables &tables)
    : m_tables(&tables), m_placement{std::vector<int>(tables.items, nowhere),
                                     std::vector<int>(tables.items, 0)},
      m_load(tables.places), m_chemical(tables.places), m_food(tables.places), m_avoided(tables.places),
      m_free(tables.places), m_groupBay(tables.groups * tables.bays), m_subPlace(tables.subs * tables.places),
      m_shapeCode(tables.oneThingPerMark ? tables.places * tables.shapes * tables.codes : 0),
      m_typeCount(tables.codes), m_itemsIn(tables.places), m_position(tables.items) {
    m_total.cost = -tables.bayCost * tables.groups - tables.placeCost * tables.subs;
    m_typeCount[0] = tables.items;
}

inline SearchCost SearchState::pairCost(int i, const LookAlike &other, int c, int near) const {
    const SearchTables &t = *m_tables;
    const int d = m_placement.code[other.item];
    const int confusion = i < other.item ? t.confusion[c * t.codes + d] : t.confusion[d * t.codes + c];
    const bool repeated = other.needsOther && c == d && t.repeatable[c] == 0;
    return {pairRisk(other.cost, near, confusion),
            (repeated ? sameCodePenalty : 0) + (other.apart ? apartPenalty : 0)};
}

int &SearchState::alreadySo(int i, int p, int c) {
    const SearchTables &t = *m_tables;
    return m_shapeCode[(p * t.shapes + t.shapeOf[i]) * t.codes + c];
}

std::int64_t SearchState::markTwice(int i, int p, int c, int self) const {
    const SearchTables &t = *m_tables;
    if (!t.oneThingPerMark || t.repeatable[c] != 0)
        return 0;
    return m_shapeCode[(p * t.shapes + t.shapeOf[i]) * t.codes + c] > self ? sameCodePenalty : 0;
}

std::int64_t SearchState::changeCost(int i, int p, int c) const {
    const SearchTables &t = *m_tables;
    if (t.changeCost == 0)
        return 0;
    return p != t.shownPlace[i] || c != t.shownCode[i] ? t.changeCost : 0;
}

SearchCost SearchState::standingAlone(int i, int p) const {
    const SearchTables &t = *m_tables;
    const int here = m_placement.place[i];
    const int self = here == p ? 1 : 0;
    const int selfInBay = here != nowhere && t.bayOf[here] == t.bayOf[p] ? 1 : 0;
    SearchCost sum{t.itemPlace[i * t.places + p] + changeCost(i, p, m_placement.code[i]), 0};
    if (m_groupBay[t.groupOf[i] * t.bays + t.bayOf[p]] == selfInBay)
        sum.cost += t.bayCost;
    if (m_subPlace[t.subOf[i] * t.places + p] == self)
        sum.cost += t.placeCost;
    const std::int64_t load = m_load[p] - self * t.width[i];
    sum.penalty +=
        overflowPenalty * (overflow(load + t.width[i], t.runWidth[p]) - overflow(load, t.runWidth[p]));
    if (t.klass[i] == 'C')
        sum.penalty += m_chemical[p] - self < m_food[p] ? t.chemicalPenalty : 0;
    else if (t.klass[i] == 'F')
        sum.penalty += m_food[p] - self < m_chemical[p] ? t.chemicalPenalty : 0;
    if (t.avoided[i] == 1)
        sum.penalty += m_avoided[p] - self < m_free[p] ? allergenPenalty : 0;
    else if (t.avoided[i] == 2)
        sum.penalty += m_free[p] - self < m_avoided[p] ? allergenPenalty : 0;
    sum.penalty += markTwice(i, p, m_placement.code[i], self);
    return sum;
}

SearchCost SearchState::standing(int i, int p) const {
    const SearchTables &t = *m_tables;
    SearchCost sum = standingAlone(i, p);
    for (const LookAlike &other : t.lookAlikes(i)) {
        const int q = m_placement.place[other.item];
        if (q == nowhere)
            continue;
        if (const int near = t.near[p * t.places + q]; near > 0)
            sum += pairCost(i, other, m_placement.code[i], near);
    }
    return sum;
}

SearchCost SearchState::riskMoved(int i, int p) const {
    const SearchTables &t = *m_tables;
    const int *nearHere = t.near.data() + m_placement.place[i] * t.places;
    const int *nearThere = t.near.data() + p * t.places;
    SearchCost sum;
    for (const LookAlike &other : t.lookAlikes(i)) {
        const int q = m_placement.place[other.item];
        if (nearHere[q] == nearThere[q])
            continue;
        const int c = m_placement.code[i];
        if (nearThere[q] > 0)
            sum += pairCost(i, other, c, nearThere[q]);
        if (nearHere[q] > 0)
            sum -= pairCost(i, other, c, nearHere[q]);
    }
    return sum;
}

SearchCost SearchState::moveDelta(int i, int p) const {
    SearchCost delta = riskMoved(i, p);
    delta += standingAlone(i, p);
    delta -= standingAlone(i, m_placement.place[i]);
    return delta;
}

SearchCost SearchState::moveDeltaWithin(int i, int p, std::int64_t allowance) const {
    SearchCost delta = standingAlone(i, p);
    delta -= standingAlone(i, m_placement.place[i]);
    if (legal() && delta.score() - m_tables->mostRisk[i] > allowance)
        return delta;
    return delta += riskMoved(i, p);
}

std::int64_t SearchState::overflowAdded(int p, std::int64_t width) const {
    const std::int64_t run = m_tables->runWidth[p];
    return overflow(m_load[p] + width, run) - overflow(m_load[p], run);
}

SearchCost SearchState::codeDelta(int i, int c) const {
    const SearchTables &t = *m_tables;
    const int old = m_placement.code[i], p = m_placement.place[i];
    SearchCost delta;
    if (old == c)
        return delta;
    delta.cost = t.markCost[i * t.codes + c] - t.markCost[i * t.codes + old] + changeCost(i, p, c) -
                 changeCost(i, p, old);
    if (m_typeCount[c] == 0)
        delta.cost += t.typeCost[c];
    if (m_typeCount[old] == 1)
        delta.cost -= t.typeCost[old];
    if (t.mostToLearn) {
        const int more =
            (m_typeCount[c] == 0 ? t.learnt[c] : 0) - (m_typeCount[old] == 1 ? t.learnt[old] : 0);
        delta.penalty +=
            kindPenalty * (overflow(m_learnt + more, *t.mostToLearn) - overflow(m_learnt, *t.mostToLearn));
    }
    delta.penalty += markTwice(i, p, c, 0) - markTwice(i, p, old, 1);
    for (const LookAlike &other : t.lookAlikes(i)) {
        const int near = t.near[p * t.places + m_placement.place[other.item]];
        if (near == 0)
            continue;
        delta += pairCost(i, other, c, near);
        delta -= pairCost(i, other, old, near);
    }
    return delta;
}

void SearchState::count(int i, int p, int by) {
    const SearchTables &t = *m_tables;
    m_load[p] += by * t.width[i];
    m_chemical[p] += t.klass[i] == 'C' ? by : 0;
    m_food[p] += t.klass[i] == 'F' ? by : 0;
    m_avoided[p] += t.avoided[i] == 1 ? by : 0;
    m_free[p] += t.avoided[i] == 2 ? by : 0;
    m_groupBay[t.groupOf[i] * t.bays + t.bayOf[p]] += by;
    m_subPlace[t.subOf[i] * t.places + p] += by;
    if (t.oneThingPerMark)
        alreadySo(i, p, m_placement.code[i]) += by;
}

void SearchState::put(int i, int p, const SearchCost &delta) {
    if (const int here = m_placement.place[i]; here != nowhere) {
        count(i, here, -1);
        std::vector<int> &list = m_itemsIn[here];
        list[m_position[i]] = list.back();
        m_position[list.back()] = m_position[i];
        list.pop_back();
    }
    count(i, p, 1);
    m_position[i] = static_cast<int>(m_itemsIn[p].size());
    m_itemsIn[p].push_back(i);
    m_placement.place[i] = p;
    m_total += delta;
}

void SearchState::put(int i, int p) {
    put(i, p, m_placement.place[i] == nowhere ? standing(i, p) : moveDelta(i, p));
}

void SearchState::setCode(int i, int c, const SearchCost &delta) {
    const SearchTables &t = *m_tables;
    const int old = m_placement.code[i];
    if (--m_typeCount[old] == 0)
        m_learnt -= t.learnt[old];
    if (m_typeCount[c]++ == 0)
        m_learnt += t.learnt[c];
    if (t.oneThingPerMark) {
        --alreadySo(i, m_placement.place[i], old);
        ++alreadySo(i, m_placement.place[i], c);
    }
    m_placement.code[i] = c;
    m_total += delta;
}

void SearchState::setCode(int i, int c) {
    setCode(i, c, codeDelta(i, c));
}

void SearchState::load(const Placement &placement) {
    *this = SearchState(*m_tables);
    for (int i = 0; i < m_tables->items; ++i)
        put(i, placement.place[i]);
    for (int i = 0; i < m_tables->items; ++i)
        setCode(i, placement.code[i]);
}

} // namespace model
