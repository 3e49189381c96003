#pragma once
#include "model/problem.h"
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace model {

/// A thing that may be taken for another.
struct LookAlike {
    int item = 0;
    std::int64_t cost = 0;   // of the pair in one place, unmarked
    bool needsOther = false; // near each other the two may not carry the same code
    bool apart = false;      // the two may not be near each other
};

/// The problem with every coefficient worked out once, in flat tables, for the search. Code 0 is no mark.
struct SearchTables {
    explicit SearchTables(const Problem &problem);

    int items = 0, places = 0, codes = 0, groups = 0, subs = 0, bays = 0;
    std::int64_t bayCost = 0;   // each further bay of a group
    std::int64_t placeCost = 0; // each further place of a sub-category
    /// For each chemical beside food, or each food beside chemicals if they are fewer.
    std::int64_t chemicalPenalty = 200'000;
    std::vector<std::int64_t> itemPlace;                       // [item * places + place]
    std::vector<char> allowed;                                 // [item * places + place]
    std::vector<std::vector<int>> allowedPlaces, allowedCodes; // per item; a code only where it could help,
                                                               // none if the mark chosen by hand does not fit
    std::vector<std::int64_t> markCost;                        // [item * codes + code]
    std::vector<std::int64_t> typeCost;                        // [code]
    std::vector<char> repeatable;                              // [code]: none, or a text of its own
    std::vector<int> confusion;                                // [code * codes + code], thousandths
    std::vector<int> near;                                     // [place * places + place], quarters
    std::vector<int> bayOf;                                    // per place
    std::vector<int> groupOf, subOf;                           // per item
    std::vector<std::int64_t> width, runWidth; // thousandths of a cm: per item with gap, per place
    bool oneThingPerMark = false;
    int shapes = 0;
    std::vector<int> shapeOf; // per item
    std::vector<char> klass;  // per item: C, F (food and what it touches) or N
    std::vector<char>
        avoided; // per item: 1 food with the avoided allergen, 2 other food and bare tools, else 0
    std::vector<char> learnt; // [code]: has to be learnt
    std::optional<int> mostToLearn;
    std::vector<std::int64_t> mostRisk; // per item: the costs of all its pairs
    std::int64_t changeCost = 0;        // per line that differs from the shown plan; 0 if none is shown
    std::vector<int> shownPlace, shownCode;

    [[nodiscard]] std::span<const LookAlike> lookAlikes(int i) const {
        return {m_lookAlikes.data() + m_first[i], m_lookAlikes.data() + m_first[i + 1]};
    }
    /// The same tables with the costs of all pairs times `times` / `over`.
    [[nodiscard]] SearchTables withPairCosts(std::int64_t times, std::int64_t over) const;

private:
    void numberPlaces(const Problem &problem);
    void numberItems(const Problem &problem);
    void findLookAlikes(const Problem &problem);
    void numberCodes(const Problem &problem);

    std::vector<LookAlike> m_lookAlikes; // those of item 0, then of item 1 ...
    std::vector<int> m_first;
};

} // namespace model
