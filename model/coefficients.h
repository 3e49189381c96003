#pragma once
#include "model/problem.h"
#include <cstdint>
#include <vector>

/// The coefficients of the placement objective, each rounded once, half up, to whole mmin a week; and its
/// lengths in whole thousandths of a centimetre. Everything that counts, recount or search, takes its numbers
/// from here.
namespace model {

/// Width that stays free beside every thing for the fingers.
inline constexpr double fingerGapCm = 1.0;
/// Height that stays free above a thing, except on a counter.
inline constexpr double headroomCm = 1.0;
/// From this look-alike measure on two things near each other may not carry the same code.
inline constexpr double alikeForbidsSameCode = 0.5;
/// Near is counted in quarters: 4 in the same place, 1 on the next shelf of the same bay, else 0.
inline constexpr int nearSame = 4;
inline constexpr int nearNext = 1;

/// Chance that a look-alike that stands in the same place, unmarked, is taken instead.
inline constexpr double slip = 0.10;

/// Half up, of the double as it comes: a decimal half may fall either way in binary, so terms are multiplied
/// and added in the order in which the formulas are written.
[[nodiscard]] MilliMinutes toMilli(double minutes);
[[nodiscard]] std::int64_t thousandths(double cm);
[[nodiscard]] MilliMinutes bayCost(const Problem &problem);   // each further bay of a group
[[nodiscard]] MilliMinutes placeCost(const Problem &problem); // each further place of a sub-category
/// What an item takes of its shelf, finger gap included, in thousandths of a centimetre.
[[nodiscard]] std::int64_t shelfWidth(const ProblemItem &item);

/// Food that has, or may have, what the client avoids.
[[nodiscard]] bool carriesAllergen(const ProblemItem &item);
/// Other food, and bare tableware, pans and tools that food touches.
[[nodiscard]] bool keptFromAllergen(const ProblemItem &item);

/// 0 from knuckle to shoulder, 1 within 35 cm below or 20 cm above, else 2.
[[nodiscard]] int reachLevel(const ProblemClient &client, double heightCm);

/// What it costs that one thing stands in one place, in minutes a week, by its parts.
struct ItemPlaceParts {
    double reach = 0, walk = 0, dark = 0, move = 0;
    [[nodiscard]] double sum() const { return reach + walk + dark + move; }
};
[[nodiscard]] ItemPlaceParts itemPlaceParts(const Problem &problem, int i, int p);
[[nodiscard]] double metresToArea(const Problem &problem, int i, int p);
/// One coefficient: the sum of the parts, rounded once.
[[nodiscard]] MilliMinutes itemPlaceCost(const Problem &problem, int i, int p);

/// Keeping up code `c` on item `i`; 0 for no mark.
[[nodiscard]] MilliMinutes markCost(const Problem &problem, int i, int c);
/// Learning code `c` once, spread over 12 weeks.
[[nodiscard]] MilliMinutes typeCost(const Problem &problem, int c);

/// Risk of a mix-up of two things that stand in the same place without marks, their meanings counted.
[[nodiscard]] MilliMinutes pairCost(const Problem &problem, int i, int j);
/// The same where their look-alike measure is known.
[[nodiscard]] MilliMinutes pairCost(const Problem &problem, int i, int j, double measure);
/// Chance in thousandths that code `a` is taken for code `b`; 1000 if neither is marked.
[[nodiscard]] int confusionThousandths(const Problem &problem, int a, int b);
/// [p][q] in quarters. The neighbour in a bay is the next place up or down by height; equal heights count by
/// index.
[[nodiscard]] std::vector<std::vector<int>> nearQuarters(const Problem &problem);
/// The share of a pair's cost that is left, truncated to whole mmin.
[[nodiscard]] inline MilliMinutes pairRisk(MilliMinutes cost, int near, int confusion) {
    return cost * near * confusion / (nearSame * 1000);
}

} // namespace model
