#pragma once
#include "model/case.h"
#include "model/findings.h"

/// What the plan needs to be bought, and what may not be bought for this client.
namespace model {

/// What to buy, with 10 % spare.
struct Supply {
    std::string name;
    int count = 0;
    double cost = 0; // of all of them
    std::string caution;
};
/// Marks and labels of the plan, of sections and shelves, and of controls; clips for bags that carry one, a
/// pot for marks taken off, and a bin for the client's own things where no place is her own. Empty without a
/// plan.
[[nodiscard]] std::vector<Supply> supplies(const Case &record, const Findings &findings);
[[nodiscard]] double totalCost(const std::vector<Supply> &supplies);
/// "7.20 pounds"; without a word for the money the figure alone.
[[nodiscard]] std::string priceInWords(double cost, const Case &record);

/// A material that an answer rules out, and what does its work instead.
struct BannedMaterial {
    std::string material; // "Natural rubber (latex)"
    std::string because;  // "latex allergy: not asked"
    std::string instead;  // "ribbed silicone band; knotted cord", or a sentence that nothing of the kit does
};
[[nodiscard]] std::vector<BannedMaterial> bannedMaterials(const Case &record, const Findings &findings);

} // namespace model
