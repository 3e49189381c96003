#pragma once
#include "model/search_tables.h"

namespace model {

/// What a step of the search changes: minutes, and the penalty for what no legal plan has. Both in mmin.
struct SearchCost {
    std::int64_t cost = 0, penalty = 0;
    [[nodiscard]] std::int64_t score() const { return cost + penalty; }
    SearchCost &operator+=(const SearchCost &other) {
        cost += other.cost;
        penalty += other.penalty;
        return *this;
    }
    SearchCost &operator-=(const SearchCost &other) {
        cost -= other.cost;
        penalty -= other.penalty;
        return *this;
    }
    friend SearchCost operator-(SearchCost left, const SearchCost &right) { return left -= right; }
    friend bool operator==(const SearchCost &, const SearchCost &) = default;
};

/// A placement that may break rules, with all counters that make a change of one line cost O(look-alikes).
/// Items may be nowhere (-1) while a plan is being built. Rules of one item (places, codes) are the caller's
/// to keep.
class SearchState {
public:
    /// Starts with nothing placed and nothing marked. `tables` must outlive the state.
    explicit SearchState(const SearchTables &tables);

    [[nodiscard]] const SearchTables &tables() const { return *m_tables; }
    [[nodiscard]] const Placement &placement() const { return m_placement; }
    [[nodiscard]] int place(int i) const { return m_placement.place[i]; }
    [[nodiscard]] int code(int i) const { return m_placement.code[i]; }
    [[nodiscard]] const std::vector<int> &itemsIn(int p) const { return m_itemsIn[p]; }
    [[nodiscard]] int uses(int c) const { return m_typeCount[c]; }
    /// The objective, charges for changed lines included, and the penalty. Constant groups and subs are taken
    /// off, so that with everything placed the cost is the objective.
    [[nodiscard]] const SearchCost &total() const { return m_total; }
    [[nodiscard]] bool legal() const { return m_total.penalty == 0; }

    /// What it would add if `i` stood in `p`, all others as they are.
    [[nodiscard]] SearchCost standing(int i, int p) const;
    [[nodiscard]] SearchCost moveDelta(int i, int p) const;
    /// The same, or, once it is sure that the score is over `allowance`, some score over it.
    [[nodiscard]] SearchCost moveDeltaWithin(int i, int p, std::int64_t allowance) const;
    /// Width over the run of `p` that comes on top if `width` (thousandths of a cm) is added there.
    [[nodiscard]] std::int64_t overflowAdded(int p, std::int64_t width) const;
    [[nodiscard]] SearchCost codeDelta(int i, int c) const;
    void put(int i, int p);     // from nowhere, or from where it is
    void setCode(int i, int c); // of a placed item
    void load(const Placement &placement);

    /// Puts and marks with the delta already worked out.
    void put(int i, int p, const SearchCost &delta);
    void setCode(int i, int c, const SearchCost &delta);

private:
    [[nodiscard]] SearchCost standingAlone(int i, int p) const;
    [[nodiscard]] SearchCost riskMoved(int i, int p) const;
    [[nodiscard]] SearchCost pairCost(int i, const LookAlike &other, int c, int near) const;
    [[nodiscard]] std::int64_t changeCost(int i, int p, int c) const;
    /// How many things of the shape of `i` carry `c` in `p`; and the penalty if it is one too many.
    [[nodiscard]] int &alreadySo(int i, int p, int c);
    [[nodiscard]] std::int64_t markTwice(int i, int p, int c, int self) const;
    void count(int i, int p, int by);

    const SearchTables *m_tables;
    Placement m_placement;
    SearchCost m_total;
    std::vector<std::int64_t> m_load;        // per place, thousandths of a cm
    std::vector<int> m_chemical, m_food;     // per place
    std::vector<int> m_avoided, m_free;      // per place: food with the avoided allergen, food without
    int m_learnt = 0;                        // kinds of marks in use that have to be learnt
    std::vector<int> m_groupBay;             // [group * bays + bay]
    std::vector<int> m_subPlace;             // [sub * places + place]
    std::vector<int> m_shapeCode;            // [(place * shapes + shape) * codes + code]; or empty
    std::vector<int> m_typeCount;            // per code
    std::vector<std::vector<int>> m_itemsIn; // per place, in no order
    std::vector<int> m_position;             // of an item in the list of its place
};

} // namespace model
