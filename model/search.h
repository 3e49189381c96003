#pragma once
#include "model/anneal.h"
#include "model/solve.h"
#include <atomic>
#include <optional>
#include <vector>

/// What the fresh plan and the changed plan have in common.
namespace model {

/// Reports moves done by all threads, and asks whether to stop.
class SearchProgress {
public:
    SearchProgress(const SolveOptions &options, std::int64_t moves) : m_options(options), m_moves(moves) {}
    /// True if the search is to stop.
    bool tick(std::int64_t moves);

private:
    const SolveOptions &m_options;
    std::int64_t m_moves;
    std::atomic<std::int64_t> m_done{0};
};

struct SearchRun {
    std::optional<Found> found;
    bool stopped = false;
};

/// True if each thing alone may stand somewhere, with the mark that was chosen for it.
[[nodiscard]] bool everythingHasAPlace(const SearchTables &tables);

/// Runs `search(seed)` for each seed on the threads asked for and takes the cheapest, of equals the smallest
/// vector, so that it does not matter which thread is first.
[[nodiscard]] SearchRun bestOfSeeds(const SolveOptions &options,
                                    const std::function<SearchRun(std::uint64_t)> &search);

/// A long, hot search for any legal placement, and the one that breaks least if there is none. If it finds
/// one, so does solve(): a problem is never without both a plan and a shortage.
struct LastTry {
    std::optional<Found> found;
    Placement nearest;
};
[[nodiscard]] LastTry lastTry(const SearchTables &tables);

/// Polished, with its terms counted afresh.
[[nodiscard]] Solution finished(const Problem &problem, const SearchTables &tables, const SearchRun &run);

} // namespace model
