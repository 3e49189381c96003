#include "model/polish.h"

namespace model {
namespace {

bool better(const SearchCost &delta, bool smallerVector) {
    return delta.penalty == 0 && (delta.cost < 0 || (delta.cost == 0 && smallerVector));
}

/// Place and code of one item together; true if something changed.
bool improveLine(SearchState &state, int i) {
    const SearchTables &tables = state.tables();
    bool improved = false;
    for (const int p : tables.allowedPlaces[i])
        for (const int c : tables.allowedCodes[i]) {
            const int here = state.place(i), code = state.code(i);
            if (p == here && c == code)
                continue;
            const SearchCost before = state.total();
            state.put(i, p);
            state.setCode(i, c);
            if (better(state.total() - before, p < here || (p == here && c < code))) {
                improved = true;
                continue;
            }
            state.setCode(i, code);
            state.put(i, here);
        }
    return improved;
}

bool improveByPlaces(SearchState &state, int i, int j) {
    const SearchTables &tables = state.tables();
    const int p = state.place(i), q = state.place(j);
    if (p == q || tables.allowed[i * tables.places + q] == 0 || tables.allowed[j * tables.places + p] == 0)
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

} // namespace

void polish(SearchState &state) {
    const int items = state.tables().items;
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
