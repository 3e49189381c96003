#pragma once
#include "model/evaluate.h"
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>

namespace model {

struct SolveOptions {
    std::int64_t moves = 1'000'000; // budget per seed in a usual kitchen; never a clock
    int seeds = 4;
    int threads = 2;
    std::uint64_t seed = 1;
    std::function<void(double)> progress; // 0..1, called from worker threads
    std::function<bool()> stop;           // true: give back the best so far
};

/// A budget of moves for each of four seeds that takes about `seconds` for 80 things on two threads.
[[nodiscard]] std::int64_t movesFor(double seconds);

/// A legal placement, or none found. The same for the same problem, seed and budget on every run and thread
/// count.
struct Solution {
    std::optional<Placement> placement;
    Terms terms;
    bool stopped = false;
};

[[nodiscard]] Solution solve(const Problem &problem, const SolveOptions &options);
/// Changes `from` as little as possible so that it is legal and good for `problem` (set changeMinutes and
/// shown*). A thing that `from` does not place yet has place -1 there. Uses `options.moves` only if small
/// changes do not do.
[[nodiscard]] Solution resolve(const Problem &problem, const Placement &from, const SolveOptions &options);

/// What is short, for a problem without a legal placement; never empty for such a problem. Indexes into the
/// problem.
struct ProblemShortage {
    std::string rule;
    std::optional<double> needCm, haveCm;
    std::vector<int> items, places;
    std::string sentence; // names items and places
};
[[nodiscard]] std::vector<ProblemShortage> shortages(const Problem &problem);

/// Why item `i` is where it is: the terms that decide, and the best other place or code, all else fixed.
struct LineReason {
    struct Term {
        std::string name; // "reach", "walk", "dark", "move", "group", "shelf-mates", "learning", "marking",
                          // "wrong picks"
        MilliMinutes difference = 0; // runner-up minus chosen; positive speaks for the chosen
    };
    std::vector<Term> terms;          // largest first, none that is 0; their sum is the price
    std::optional<int> runnerUpPlace; // both set, or neither if nothing else is possible; one may be as it is
    std::optional<int> runnerUpCode;
    MilliMinutes price = 0;                                           // of the runner-up, a week
    std::vector<std::pair<int, std::vector<std::string>>> impossible; // place -> rules
    std::optional<int> swapWith; // the thing with which an exchange of places costs least, and what it costs
    MilliMinutes swapPrice = 0;
};
[[nodiscard]] LineReason reason(const Problem &problem, const Placement &placement, int i);

struct SearchTables;

/// Reasons of many lines of one problem: what they are worked out from is made once.
class LineReasons {
public:
    explicit LineReasons(Problem problem);

    [[nodiscard]] LineReason of(const Placement &placement, int i) const;
    /// The runner-up in another place; with another mark where no other place is possible.
    [[nodiscard]] LineReason elsewhere(const Placement &placement, int i) const;

private:
    [[nodiscard]] LineReason against(const Placement &placement, int i, bool elsewhere) const;

    Problem m_problem;
    std::shared_ptr<const SearchTables> m_tables;
};

} // namespace model
