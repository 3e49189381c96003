#include "model/polish.h"

namespace model {
namespace {

bool better(const SearchCost &delta, bool smallerVector) {
    return delta.penalty == 0 && (delta.cost < 0 || (delta.cost == 0 && smallerVector));
}

/// Takes the first better code for an item that was put to `p` for a trial; puts it back if there is none.
bool improvesIn(SearchState &state, int i, int p) {
    const int here = state.place(i), code = state.code(i);
    const SearchCost before = state.total();
    if (p != here)
        state.put(i, p);
    for (const int c : state.tables().allowedCodes[i]) {
        const SearchCost codeDelta = state.codeDelta(i, c);
        SearchCost delta = state.total() - before;
        delta += codeDelta;
        if (better(delta, p < here || (p == here && c < code))) {
            state.setCode(i, c, codeDelta);
            return true;
        }
    }
    if (p != here)
        state.put(i, here);
    return false;
}

/// Place and code of one item together; true if something changed.
bool improveLine(SearchState &state, int i) {
    bool improved = false;
    for (const int p : state.tables().allowedPlaces[i])
        while (improvesIn(state, i, p))
            improved = true;
    return improved;
}

bool improveByPlaces(SearchState &state, int i, int j) {
    const SearchTables &tables = state.tables();
    const int p = state.place(i), q = state.place(j);
    if (p == q || tables.allowed[i * tables.places + q] == 0 || tables.allowed[j * tables.places + p] == 0)
        return false;
    const std::int64_t more = tables.width[i] - tables.width[j];
    if (state.overflowAdded(q, more) > 0 || state.overflowAdded(p, -more) > 0)
        return false;
    const SearchCost before = state.total();
    state.put(i, q);
    state.put(j, p);
    if (better(state.total() - before, q < p))
        return true;
    state.put(j, q);
    state.put(i, p);
    return false;
}

bool mayCarry(const SearchTables &tables, int i, int c) {
    for (const int fitting : tables.allowedCodes[i])
        if (fitting == c)
            return true;
    return false;
}

bool improveByCodes(SearchState &state, int i, int j) {
    const int c = state.code(i), d = state.code(j);
    if (c == d || !mayCarry(state.tables(), i, d) || !mayCarry(state.tables(), j, c))
        return false;
    const SearchCost before = state.total();
    state.setCode(i, d);
    state.setCode(j, c);
    if (better(state.total() - before, d < c))
        return true;
    state.setCode(j, d);
    state.setCode(i, c);
    return false;
}

/// The place with the code as it is, then the code; true if something changed.
bool improveQuickly(SearchState &state, int i) {
    bool improved = false;
    for (const int p : state.tables().allowedPlaces[i]) {
        const int here = state.place(i);
        const SearchCost delta = p == here ? SearchCost{} : state.moveDeltaWithin(i, p, 0);
        if (p != here && better(delta, p < here)) {
            state.put(i, p, delta);
            improved = true;
        }
    }
    for (const int c : state.tables().allowedCodes[i]) {
        const SearchCost delta = state.codeDelta(i, c);
        if (c != state.code(i) && better(delta, c < state.code(i))) {
            state.setCode(i, c, delta);
            improved = true;
        }
    }
    return improved;
}

void polishQuickly(SearchState &state) {
    constexpr int mostSweeps = 3;
    bool improved = true;
    for (int sweep = 0; improved && sweep < mostSweeps; ++sweep) {
        improved = false;
        for (int i = 0; i < state.tables().items; ++i)
            improved |= improveQuickly(state, i);
    }
}

} // namespace

void polish(SearchState &state) {
    constexpr int mostForPairs = 400; // above, to try everything would take seconds
    const int items = state.tables().items;
    if (items > mostForPairs)
        return polishQuickly(state);
    for (bool improved = true; improved;) {
        improved = false;
        for (int i = 0; i < items; ++i)
            improved |= improveLine(state, i);
        for (int i = 0; i < items; ++i)
            for (int j = i + 1; j < items; ++j) {
                improved |= improveByPlaces(state, i, j);
                improved |= improveByCodes(state, i, j);
            }
    }
}

} // namespace model
