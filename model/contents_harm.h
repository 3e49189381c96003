#pragma once
#include "model/contents_line.h"

/// What can hurt, told by the words of a name. Facts found so are usual ones, to be confirmed.
namespace model::words {

/// A name that sounds like a medicine, or like a poison or fuel, and is not known as one: asked, never
/// guessed.
[[nodiscard]] std::optional<Doubt> harmDoubt(const Reading &reading, const std::string &name);

/// Adds the allergens that words of the name tell ("walnut oil", "peanut sauce", "Yorkshire pudding mix"),
/// marked as usual. `entry`: the thing that it is taken for, or nullptr.
void addNamedAllergens(Thing &thing, const std::string &name, const CatalogueThing *entry,
                       const Lexicon &lexicon);

} // namespace model::words
