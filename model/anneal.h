#pragma once
#include "model/search_random.h"
#include "model/search_state.h"
#include <functional>
#include <optional>
#include <vector>

namespace model {

/// One stage of a search: what it may change, how long, and how hot at the start and at the end (mmin).
struct Stage {
    enum class Changes { Places, Codes, Both };
    Changes changes = Changes::Both;
    std::int64_t moves = 0;
    double hot = 0, cold = 0;
};

/// The best legal placement met, with its cost in the search.
struct Found {
    Placement placement;
    std::int64_t cost = 0;
};

/// Simulated annealing over a SearchState. The same moves for the same seed; no clock.
class Annealer {
public:
    /// `free` are the items that may change. `tick` is called now and then with the moves done; true stops.
    Annealer(SearchState &state, SearchRandom &random, const std::vector<int> &free,
             std::function<bool(std::int64_t)> tick);

    /// Runs one stage and returns the best legal placement that it met, its start counted.
    std::optional<Found> run(const Stage &stage);
    [[nodiscard]] bool stopped() const { return m_stopped; }
    /// Of all placements met in the last stage that were not legal, the one with the least penalty.
    [[nodiscard]] const Placement &nearest() const { return m_nearest; }

private:
    struct Step {
        int item = 0, old = 0;
        bool code = false;
        SearchCost delta;
    };
    void movePlace();
    void swapPlaces();
    void swapBlocks();
    void changePlaces();
    void changeCodes();
    void changeOneCode();
    void swapCodes();
    void replaceCode();

    bool put(int i, int p); // false: not allowed there
    bool setCode(int i, int c);
    [[nodiscard]] bool exchangeFits(int p, int q, std::int64_t more) const;
    void decide(); // keeps the steps taken or takes them back
    void undo();
    void note();
    void block(std::vector<int> &list, int like, int kind) const;

    SearchState &m_state;
    const SearchTables &m_tables;
    SearchRandom &m_random;
    std::vector<char> m_free;
    std::vector<int> m_placeItems, m_codeItems; // those with a choice
    std::vector<std::vector<int>> m_itemsOfSub;
    std::function<bool(std::int64_t)> m_tick;
    bool m_stopped = false;

    Tolerance m_tolerance;
    std::int64_t m_allowance = 0; // of the move that is being tried
    std::vector<Step> m_steps;
    std::vector<int> m_here, m_there;
    std::optional<Found> m_best;
    Placement m_nearest;
    std::int64_t m_nearestPenalty = 0;
};

} // namespace model
