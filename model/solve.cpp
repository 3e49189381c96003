#include "model/solve.h"
#include "model/construct.h"
#include "model/polish.h"
#include "model/search.h"
#include <algorithm>
#include <numeric>
#include <thread>
#include <tuple>

namespace model {
namespace {

bool cheaper(const SearchRun &one, const SearchRun &other) {
    if (!one.found || !other.found)
        return one.found.has_value() && !other.found;
    const auto key = [](const Found &found) {
        return std::tie(found.cost, found.placement.place, found.placement.code);
    };
    return key(*one.found) < key(*other.found);
}

/// For the search of places before there are codes: a fifth of the risk, which is about what codes will leave
/// of it, and a step in which chemicals stand beside food is dear but not out of the question, so that they
/// can change places.
SearchTables codesForeseen(const SearchTables &tables) {
    SearchTables foreseen = tables.withPairCosts(1, 5);
    foreseen.chemicalPenalty = 2000;
    return foreseen;
}

/// What the budget of a usual kitchen buys here: a move costs more where each thing has many look-alikes, and
/// few moves are better spent on few seeds.
SolveOptions afforded(const SearchTables &tables, const SolveOptions &asked) {
    constexpr std::int64_t usualLookAlikes = 20, fixedCost = 3, fewMovesPerThing = 2'000;
    constexpr int fewSeeds = 2;
    std::int64_t lookAlikes = 0;
    for (int i = 0; i < tables.items; ++i)
        lookAlikes += static_cast<std::int64_t>(tables.lookAlikes(i).size());
    const std::int64_t mean = lookAlikes / std::max(tables.items, 1);
    SolveOptions options = asked;
    if (mean > usualLookAlikes)
        options.moves = asked.moves * fixedCost / (fixedCost + mean - usualLookAlikes);
    if (options.seeds > fewSeeds && options.moves / std::max(tables.items, 1) < fewMovesPerThing) {
        options.moves = options.moves * options.seeds / fewSeeds;
        options.seeds = fewSeeds;
    }
    return options;
}

/// One seed of the staged search: places first, with a tenth of the risk since codes will take the rest; then
/// codes; then both. Percentages and temperatures: measured on invented kitchens of 25 to 200 things.
class StagedSearch {
public:
    StagedSearch(const SearchTables &tables, const SearchTables &foreseen, const SolveOptions &options,
                 SearchProgress &progress)
        : m_tables(tables), m_foreseen(foreseen), m_options(options), m_progress(progress),
          m_all(static_cast<std::size_t>(tables.items)) {
        std::iota(m_all.begin(), m_all.end(), 0);
    }

    [[nodiscard]] SearchRun run(std::uint64_t seed) const {
        SearchRandom random(seed);
        SearchState state(m_tables);
        construct(state);
        std::optional<Found> best;
        const auto keep = [&best](const std::optional<Found> &found) {
            if (found && (!best || found->cost < best->cost))
                best = found;
        };
        if (state.legal())
            best = Found{state.placement(), state.total().cost};
        const auto tick = [this](std::int64_t moves) { return m_progress.tick(moves); };
        Annealer annealer(state, random, m_all, tick);
        if (const std::optional<Placement> places = placesOnly(random, state.placement())) {
            state.load(*places);
            const std::optional<Found> coded = annealer.run({Stage::Changes::Codes, share(20), 1500, 10});
            state.load(coded ? coded->placement : *places);
            keep(coded);
            keep(annealer.run({Stage::Changes::Both, share(40), 150, 25}));
        } else {
            keep(annealer.run({Stage::Changes::Both, share(60), 800, 10}));
        }
        return {best, annealer.stopped()};
    }

private:
    [[nodiscard]] std::int64_t share(int percent) const { return m_options.moves * percent / 100; }

    /// The best legal placement without codes.
    [[nodiscard]] std::optional<Placement> placesOnly(SearchRandom &random, const Placement &start) const {
        SearchState bare(m_foreseen);
        bare.load(start);
        Annealer annealer(bare, random, m_all, [this](std::int64_t moves) { return m_progress.tick(moves); });
        const std::optional<Found> found = annealer.run({Stage::Changes::Places, share(40), 1100, 50});
        return found ? std::optional(found->placement) : std::nullopt;
    }

    const SearchTables &m_tables, &m_foreseen;
    const SolveOptions &m_options;
    SearchProgress &m_progress;
    std::vector<int> m_all;
};

} // namespace

bool SearchProgress::tick(std::int64_t moves) {
    const std::int64_t done = m_done.fetch_add(moves) + moves;
    if (m_options.progress)
        m_options.progress(std::min(1.0, static_cast<double>(done) / static_cast<double>(m_moves)));
    return m_options.stop && m_options.stop();
}

bool everythingHasAPlace(const SearchTables &tables) {
    const auto none = [](const std::vector<int> &list) { return list.empty(); };
    return std::none_of(tables.allowedPlaces.begin(), tables.allowedPlaces.end(), none) &&
           std::none_of(tables.allowedCodes.begin(), tables.allowedCodes.end(), none);
}

SearchRun bestOfSeeds(const SolveOptions &options, const std::function<SearchRun(std::uint64_t)> &search) {
    const int seeds = std::max(options.seeds, 1);
    std::vector<SearchRun> runs(static_cast<std::size_t>(seeds));
    std::atomic<int> next{0};
    const auto work = [&] {
        for (int k = next++; k < seeds; k = next++)
            runs[k] = search(options.seed * 1'000'003 + static_cast<std::uint64_t>(k));
    };
    std::vector<std::thread> threads;
    for (int t = 1; t < std::min(options.threads, seeds); ++t)
        threads.emplace_back(work);
    work();
    for (std::thread &thread : threads)
        thread.join();
    SearchRun best = *std::min_element(runs.begin(), runs.end(), cheaper);
    best.stopped = std::any_of(runs.begin(), runs.end(), [](const SearchRun &run) { return run.stopped; });
    return best;
}

LastTry lastTry(const SearchTables &tables) {
    constexpr std::int64_t moves = 200'000;
    SearchState state(tables);
    construct(state);
    std::vector<int> all(static_cast<std::size_t>(tables.items));
    std::iota(all.begin(), all.end(), 0);
    SearchRandom random(1);
    Annealer annealer(state, random, all, {});
    const std::optional<Found> found = annealer.run({Stage::Changes::Places, moves, 2000, 10});
    return {found, annealer.nearest()};
}

Solution finished(const Problem &problem, const SearchTables &tables, const SearchRun &run) {
    Solution solution;
    solution.stopped = run.stopped;
    if (!run.found)
        return solution;
    SearchState state(tables);
    state.load(run.found->placement);
    if (!run.stopped)
        polish(state);
    solution.placement = state.placement();
    solution.terms = evaluate(problem, *solution.placement);
    return solution;
}

Solution solve(const Problem &problem, const SolveOptions &asked) {
    const SearchTables tables(problem);
    if (!everythingHasAPlace(tables))
        return {};
    const SolveOptions options = afforded(tables, asked);
    const SearchTables foreseen = codesForeseen(tables);
    SearchProgress progress(options, options.moves * std::max(options.seeds, 1));
    const StagedSearch search(tables, foreseen, options, progress);
    SearchRun best = bestOfSeeds(options, [&](std::uint64_t seed) { return search.run(seed); });
    if (!best.found && !best.stopped)
        best.found = lastTry(tables).found;
    return finished(problem, tables, best);
}

std::int64_t movesFor(double seconds) {
    constexpr double movesPerSecond = 3'800'000;
    return static_cast<std::int64_t>(seconds * movesPerSecond);
}

} // namespace model
