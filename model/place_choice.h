#pragma once
#include "model/planning.h"

namespace model {

/// One place of the kitchen for a thing that is to be overruled to it.
struct PlaceChoice {
    Id place;
    std::string why; // it may not stand there, in a few words; empty: it may
    friend bool operator==(const PlaceChoice &, const PlaceChoice &) = default;
};
/// All places in their order, those where the thing may stand first. What stands there now is not asked: it
/// may have to move. Empty for a thing that the plan does not know.
[[nodiscard]] std::vector<PlaceChoice> placeChoices(const WhyLines &plan, const Id &thing);

/// Rules of the place itself, which no move of other things can mend. Her own earlier decisions and wishes
/// give way to a new one and are left out.
[[nodiscard]] std::vector<std::string> refusedBy(const PlanProblem &built, int item, int place);

} // namespace model
