#pragma once
#include <optional>
#include <string>
#include <vector>

/// Words of a contents line, and what single words mean.
namespace model::words {

/// A word as typed, in small letters, and without its plural ending.
struct Word {
    std::string typed, low, single;
};

[[nodiscard]] std::string lower(const std::string &text);
/// Text without white space at both ends.
[[nodiscard]] std::string trimmed(const std::string &text);
/// Singular of one English word in small letters; the same for the singular itself.
[[nodiscard]] std::string singular(const std::string &word);
/// Words parted by white space, without full stops and commas at their ends; "400g" gives "400" and "g".
[[nodiscard]] std::vector<Word> wordsOf(const std::string &text);
/// The form in which names are compared: small letters, singular words, one space between.
[[nodiscard]] std::string comparable(const std::string &name);

/// "4", "1.5", "1,5", "four", "a", "dozen"; none for any other word.
[[nodiscard]] std::optional<double> numberFrom(const std::string &word);
/// A unit of pack size: its short form ("g", "kg", "ml", "l"), or empty.
[[nodiscard]] std::string sizeUnit(const std::string &word);
/// Key of the allergen that a word names ("wheat" -> "gluten", "dairy" -> "milk"), or empty.
[[nodiscard]] std::string allergenFrom(const std::string &singularWord);

} // namespace model::words
