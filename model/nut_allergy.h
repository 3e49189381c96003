#pragma once
#include "model/client.h"
#include <string>

/// Peanuts and tree nuts are two of the 14 allergens of Regulation (EU) No 1169/2011, Annex II; "nut allergy"
/// is said of either or both.
namespace model {

/// True if it may mean peanuts, tree nuts or both: "nut allergy". Case aside.
[[nodiscard]] bool eitherNut(const std::string &typed);
/// What to ask then, beside the field.
[[nodiscard]] std::string eitherNutAsked();
/// What to ask while one of the two is to be avoided and the other is not; empty if nothing.
[[nodiscard]] std::string otherNutAsked(const Diet &diet);

} // namespace model
