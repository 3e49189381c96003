#pragma once
#include "model/planning.h"

/// What safety facts forbid, as rules of the placement problem: no minutes buy them. Not asked counts as the
/// cautious answer.
namespace model {

/// Tableware, pans, tools, wraps; all that is neither food nor chemical unless
/// it is known to touch no food.
[[nodiscard]] bool touchesFood(const Thing &thing);
/// Daily things out of the high places for a client who needs help up there, and out of the low ones for one
/// who falls or is dizzy bending.
void forbidHighAndLow(const Case &record, const Problem &problem, ProblemItem &item);
/// What is the client's own goes into her own bin, if there is one for this storage, and nothing else does.
/// `record.places` are the places of the problem, in their order.
void keepOwnApart(const Case &record, const Thing &thing, ProblemItem &item);
/// Codes with print that has no room on the thing in a size that this client reads, whatever shorter name it
/// gets.
void forbidUnreadable(const Case &record, const Findings &findings, PlanProblem &out);
/// Kinds of marks that this client learns at most, meaning marks among them; none: no limit.
[[nodiscard]] std::optional<int> mostKindsOfMarks(const Case &record);
/// Rules between things: medicines alone, harmful look-alikes apart, avoided food apart, few kinds of marks.
void addSafetyRules(const Case &record, const Findings &findings, PlanProblem &out);

} // namespace model
