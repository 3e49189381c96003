#pragma once
#include "model/case.h"
#include <string>
#include <vector>

/// One short name for each thing, as it stands on its label.
namespace model {

struct ShortName {
    Id thing;
    std::string name;
    bool hers = false;  // the therapist's own wording
    bool warns = false; // it says that this does harm, since no mark does
    std::string told;   // a sentence: what it shares its name with, and what was added; or empty
    friend bool operator==(const ShortName &, const ShortName &) = default;
};
/// For the lines of the plan, in their order; no two of one shelf are the same. Where two things of a shelf
/// have one name, the size of the pack is added, else its shape, else a number. Her own wording is kept as it
/// is; if it is there twice, that is told.
[[nodiscard]] std::vector<ShortName> shortNames(const Case &record);

/// What a label may say instead of a name that does not fit, the fullest first: without small words and
/// brackets; the last two words; the last word, since it says what the thing is. Never cut inside a word.
[[nodiscard]] std::vector<std::string> shorterNames(const std::string &name);
/// True if a shorter name is no other thing's: not of this kitchen, and none that is commonly sold.
[[nodiscard]] bool isNobodysName(const Case &record, const Id &thing, const std::string &shorter);

/// What a tag says: the name, the date, how to prepare it, the allergens. Nothing on it clears an allergen.
[[nodiscard]] std::string tagText(const Thing &thing, const std::string &name);

/// True for the same letters, whatever their case.
[[nodiscard]] bool sameName(const std::string &one, const std::string &other);

} // namespace model
