#pragma once
#include "model/case.h"
#include <string>
#include <vector>

/// Two records with one kitchen: that of the keeper holds it, and it stands in place of the partner's own.
/// What the partner's record held before stays in it, for the day on which the kitchen is shared no more.
namespace model {

struct SharedKitchen {
    Id keeper, partner;
    [[nodiscard]] bool holds(const Id &client) const { return client == keeper || client == partner; }
    [[nodiscard]] Id otherThan(const Id &client) const { return client == keeper ? partner : keeper; }
    friend bool operator==(const SharedKitchen &, const SharedKitchen &) = default;
};

/// Two ids a line, the keeper's first. What is no such line is left out.
[[nodiscard]] std::vector<SharedKitchen> sharedKitchensFrom(const std::string &text);
[[nodiscard]] std::string sharedKitchensText(const std::vector<SharedKitchen> &all);

/// Kitchen, contents, appliances, decisions, weights, upkeep and plan of `from` in place of those of `into`;
/// all else of `into` stays.
void takeKitchen(Case &into, const Case &from);

/// Of two records with a kitchen each, the one with more in it keeps it: `one` where they are even.
[[nodiscard]] SharedKitchen keptByTheFuller(const Case &one, const Case &other);

} // namespace model
