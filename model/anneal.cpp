#include "model/anneal.h"
#include <algorithm>
#include <cmath>
#include <numeric>

namespace model {

Annealer::Annealer(SearchState &state, SearchRandom &random, const std::vector<int> &free,
                   std::function<bool(std::int64_t)> tick)
    : m_state(state), m_tables(state.tables()), m_random(random), m_free(m_tables.items, 0),
      m_itemsOfSub(m_tables.subs), m_tick(std::move(tick)) {
    for (const int i : free) {
        m_free[i] = 1;
        if (m_tables.allowedPlaces[i].size() > 1)
            m_placeItems.push_back(i);
        if (m_tables.allowedCodes[i].size() > 1)
            m_codeItems.push_back(i);
    }
    for (int i = 0; i < m_tables.items; ++i)
        m_itemsOfSub[m_tables.subOf[i]].push_back(i);
}

std::optional<Found> Annealer::run(const Stage &stage) {
    constexpr std::int64_t stretch = 1024; // moves at one temperature
    m_best.reset();
    m_nearest = m_state.placement();
    m_nearestPenalty = m_state.total().penalty;
    note();
    const bool places = stage.changes != Stage::Changes::Codes && !m_placeItems.empty();
    const bool codes = stage.changes != Stage::Changes::Places && !m_codeItems.empty();
    if (!places && !codes)
        return m_best;
    constexpr int codeShare = 45;
    for (std::int64_t done = 0; done < stage.moves && !m_stopped; done += stretch) {
        const double progress = static_cast<double>(done) / static_cast<double>(stage.moves);
        m_tolerance.setTemperature(stage.hot * std::pow(stage.cold / stage.hot, progress));
        for (std::int64_t k = done; k < std::min(done + stretch, stage.moves); ++k) {
            m_allowance = m_tolerance.draw(m_random);
            if (places && (!codes || m_random.below(100) >= codeShare))
                changePlaces();
            else
                changeCodes();
        }
        m_stopped = m_tick && m_tick(std::min(stretch, stage.moves - done));
    }
    return m_best;
}

void Annealer::changePlaces() {
    constexpr int moves = 40, swaps = 30, blocks = 10;
    const int draw = m_random.below(moves + swaps + blocks);
    if (draw < moves)
        movePlace();
    else if (draw < moves + swaps)
        swapPlaces();
    else
        swapBlocks();
}

void Annealer::movePlace() {
    const int i = m_random.oneOf(m_placeItems);
    int p = 0;
    if (const std::vector<int> &kin = m_itemsOfSub[m_tables.subOf[i]];
        kin.size() > 1 && m_random.below(2) == 0)
        p = m_state.place(m_random.oneOf(kin));
    else
        p = m_random.oneOf(m_tables.allowedPlaces[i]);
    if (p == m_state.place(i) || m_tables.allowed[i * m_tables.places + p] == 0)
        return;
    const SearchCost delta = m_state.moveDeltaWithin(i, p, m_allowance);
    if (delta.score() > m_allowance)
        return;
    m_state.put(i, p, delta);
    note();
}

void Annealer::swapPlaces() {
    const int i = m_random.oneOf(m_placeItems), j = m_random.oneOf(m_placeItems);
    const int p = m_state.place(i), q = m_state.place(j);
    if (p == q || m_tables.allowed[i * m_tables.places + q] == 0 ||
        m_tables.allowed[j * m_tables.places + p] == 0)
        return;
    if (!exchangeFits(p, q, m_tables.width[i] - m_tables.width[j]))
        return;
    if (!put(i, q) || !put(j, p))
        return undo();
    decide();
}

void Annealer::block(std::vector<int> &list, int like, int kind) const {
    list.clear();
    for (const int i : m_state.itemsIn(m_state.place(like)))
        if (kind == 2 || (kind == 0 && m_tables.subOf[i] == m_tables.subOf[like]) ||
            (kind == 1 && m_tables.groupOf[i] == m_tables.groupOf[like]))
            list.push_back(i);
}

/// False if `more` width that goes from `p` to `q` would overfill them more than they are: no use to try.
bool Annealer::exchangeFits(int p, int q, std::int64_t more) const {
    return m_state.overflowAdded(q, more) + m_state.overflowAdded(p, -more) <= 0;
}

void Annealer::swapBlocks() {
    const int i = m_random.oneOf(m_placeItems);
    const int p = m_state.place(i), q = m_random.oneOf(m_tables.allowedPlaces[i]);
    if (p == q)
        return;
    const int draw = m_random.below(6);
    const int kind = draw < 4 ? 0 : draw - 3;
    block(m_here, i, kind);
    m_there.clear();
    if (!m_state.itemsIn(q).empty())
        block(m_there, m_random.oneOf(m_state.itemsIn(q)), kind);
    std::int64_t more = 0;
    for (const int a : m_here)
        more += m_tables.width[a];
    for (const int b : m_there)
        more -= m_tables.width[b];
    if (!exchangeFits(p, q, more))
        return;
    for (const int a : m_here)
        if (!put(a, q))
            return undo();
    for (const int b : m_there)
        if (!put(b, p))
            return undo();
    decide();
}

void Annealer::changeCodes() {
    constexpr int single = 75, swaps = 22, wholeTypes = 3;
    const int draw = m_random.below(single + swaps + wholeTypes);
    if (draw < single)
        changeOneCode();
    else if (draw < single + swaps)
        swapCodes();
    else
        replaceCode();
}

void Annealer::changeOneCode() {
    const int i = m_random.oneOf(m_codeItems);
    const int c = m_random.oneOf(m_tables.allowedCodes[i]);
    if (c == m_state.code(i))
        return;
    const SearchCost delta = m_state.codeDelta(i, c);
    if (delta.score() > m_allowance)
        return;
    m_state.setCode(i, c, delta);
    note();
}

void Annealer::swapCodes() {
    const int i = m_random.oneOf(m_codeItems);
    const int j = m_random.oneOf(m_tables.lookAlikes(i)).item;
    const int c = m_state.code(i), d = m_state.code(j);
    if (c == d || m_free[j] == 0)
        return;
    if (!setCode(i, d) || !setCode(j, c))
        return undo();
    decide();
}

void Annealer::replaceCode() {
    const int old = m_state.code(m_random.oneOf(m_codeItems));
    if (old == 0)
        return;
    const int c = m_random.below(m_tables.codes);
    if (c == old)
        return;
    for (const int i : m_codeItems)
        if (m_state.code(i) == old && !setCode(i, c))
            setCode(i, 0);
    decide();
}

bool Annealer::put(int i, int p) {
    if (m_tables.allowed[i * m_tables.places + p] == 0 || m_free[i] == 0)
        return false;
    const SearchCost delta = m_state.moveDelta(i, p);
    m_steps.push_back({i, m_state.place(i), false, delta});
    m_state.put(i, p, delta);
    return true;
}

bool Annealer::setCode(int i, int c) {
    const std::vector<int> &fitting = m_tables.allowedCodes[i];
    if (!std::binary_search(fitting.begin(), fitting.end(), c))
        return false;
    const SearchCost delta = m_state.codeDelta(i, c);
    m_steps.push_back({i, m_state.code(i), true, delta});
    m_state.setCode(i, c, delta);
    return true;
}

void Annealer::decide() {
    SearchCost sum;
    for (const Step &step : m_steps)
        sum += step.delta;
    if (sum.score() > m_allowance)
        return undo();
    m_steps.clear();
    note();
}

void Annealer::undo() {
    for (auto step = m_steps.rbegin(); step != m_steps.rend(); ++step) {
        const SearchCost back = SearchCost{} - step->delta;
        if (step->code)
            m_state.setCode(step->item, step->old, back);
        else
            m_state.put(step->item, step->old, back);
    }
    m_steps.clear();
}

void Annealer::note() {
    if (!m_state.legal()) {
        if (!m_best && m_state.total().penalty < m_nearestPenalty) {
            m_nearest = m_state.placement();
            m_nearestPenalty = m_state.total().penalty;
        }
        return;
    }
    if (m_best && m_best->cost <= m_state.total().cost)
        return;
    if (!m_best)
        m_best.emplace();
    m_best->placement = m_state.placement(); // assigned, not made anew: this is often
    m_best->cost = m_state.total().cost;
}

} // namespace model
