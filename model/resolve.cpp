#include "model/construct.h"
#include "model/search.h"
#include <algorithm>
#include <set>

namespace model {
namespace {

constexpr std::int64_t localMoves = 30'000;

/// From, made fit for the search: what may not stand where it does is taken up and placed anew, and a code
/// that does not fit is taken off. `touched` gets the items concerned.
void start(SearchState &state, const Placement &from, std::set<int> &touched) {
    const SearchTables &tables = state.tables();
    for (int i = 0; i < tables.items; ++i) {
        const int p = from.place[i];
        if (p >= 0 && p < tables.places && tables.allowed[i * tables.places + p] != 0)
            state.put(i, p);
        else
            touched.insert(i);
    }
    construct(state);
    for (int i = 0; i < tables.items; ++i) {
        const std::vector<int> &codes = tables.allowedCodes[i];
        if (std::find(codes.begin(), codes.end(), from.code[i]) != codes.end())
            state.setCode(i, from.code[i]);
        else if (from.code[i] != 0)
            touched.insert(i);
    }
}

/// True if one change of the line would make the plan better or less broken.
bool wantsChange(const SearchState &state, int i) {
    const SearchTables &tables = state.tables();
    for (const int p : tables.allowedPlaces[i])
        if (p != state.place(i) && state.moveDelta(i, p).score() < 0)
            return true;
    for (const int c : tables.allowedCodes[i])
        if (state.codeDelta(i, c).score() < 0)
            return true;
    return false;
}

/// The touched things, what shares their old and new places, their look-alikes and their sub-categories.
std::vector<int> around(const SearchState &state, const Placement &from, const std::set<int> &touched) {
    const SearchTables &tables = state.tables();
    std::set<int> near = touched;
    for (const int i : touched) {
        const std::vector<int> &fellows = state.itemsIn(state.place(i));
        near.insert(fellows.begin(), fellows.end());
        for (const LookAlike &other : tables.lookAlikes(i))
            near.insert(other.item);
        for (int j = 0; j < tables.items; ++j)
            if (tables.subOf[j] == tables.subOf[i] || (from.place[i] >= 0 && state.place(j) == from.place[i]))
                near.insert(j);
    }
    return {near.begin(), near.end()};
}

} // namespace

Solution resolve(const Problem &problem, const Placement &from, const SolveOptions &options) {
    const SearchTables tables(problem);
    if (!everythingHasAPlace(tables))
        return {};
    SearchState state(tables);
    std::set<int> touched;
    start(state, from, touched);
    for (int i = 0; i < tables.items; ++i)
        if (wantsChange(state, i))
            touched.insert(i);
    const std::vector<int> free = around(state, from, touched);
    const Placement begin = state.placement();
    SearchProgress progress(options, localMoves * std::max(options.seeds, 1));
    const SearchRun run = bestOfSeeds(options, [&](std::uint64_t seed) {
        SearchRandom random(seed);
        SearchState local(tables);
        local.load(begin);
        Annealer annealer(local, random, free, [&](std::int64_t moves) { return progress.tick(moves); });
        const std::optional<Found> found = annealer.run({Stage::Changes::Both, localMoves, 150, 5});
        return SearchRun{found, annealer.stopped()};
    });
    return run.found || run.stopped ? finished(problem, tables, run) : solve(problem, options);
}

} // namespace model
