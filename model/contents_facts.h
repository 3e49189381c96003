#pragma once
#include "model/contents_reading.h"

namespace model::words {

/// Writes one said fact into a thing: a material, an allergen key, "hot", "heavy", a shape's word. False if
/// the word says nothing.
bool applyFact(Thing &thing, const std::string &word);
void addAllergen(Thing &thing, const std::string &key, AllergenState state, const std::string &says);
/// Gives a thing the shape of its pack, with the surface that such packs usually have.
void applyShape(Thing &thing, Shape shape);
/// Gives a thing the sizes and the weight of its pack. `entry`: whose usual pack it is compared with;
/// nullptr: sizes follow from shape and amount.
void applySize(Thing &thing, const CatalogueThing *entry, const std::string &packSize);
/// Gives a pan, bowl or plate the width that was said, and scales the rest with it; of anything else a length
/// is only kept as its size.
void applyLength(Thing &thing, double length, const std::string &unit);
/// "400 g" as an amount in g or ml; none for "large" and other texts.
[[nodiscard]] std::optional<double> amountOf(const std::string &packSize);

/// Weight meant by "heavy" when none is known.
inline constexpr double heavyKg = 2.5;

} // namespace model::words
