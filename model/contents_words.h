#pragma once
#include <optional>
#include <string>
#include <vector>

/// Words of a contents line, and what single words mean.
namespace model::words {

/// A word as typed, in small letters without accents, and without its plural ending.
struct Word {
    std::string typed, low, single;
    bool glued = false;   // a hyphen joins it to the next word
    bool minus = false;   // a minus sign stood before this number
    bool asked = false;   // a question mark stood behind it
    bool bracket = false; // stood in brackets: says something of the thing, is no part of its name
};

/// Small letters, accents of the Latin script aside; other letters stay as they are.
[[nodiscard]] std::string lower(const std::string &text);
/// Text without white space at both ends.
[[nodiscard]] std::string trimmed(const std::string &text);
/// Singular of one English word in small letters; the same for the singular itself, and for a plural that is
/// misspelt ("tomatos").
[[nodiscard]] std::string singular(const std::string &word);
/// Words parted by white space and hyphens, without full stops and commas at their ends; "400g" gives "400"
/// and "g", "3/week" gives "3", "/" and "week".
[[nodiscard]] std::vector<Word> wordsOf(const std::string &text);
/// The words `from` up to `to` as they were typed.
[[nodiscard]] std::string joined(const std::vector<Word> &all, std::size_t from, std::size_t to);
/// The form in which names are compared: small letters, singular words, one space between.
[[nodiscard]] std::string comparable(const std::string &name);

/// "4", "1.5", "1,5", "1/2", "four", "dozen"; none for any other word.
[[nodiscard]] std::optional<double> numberFrom(const std::string &word);
/// A unit of pack size: its short form ("g", "kg", "ml", "l", "oz", "lb", "pint"), or empty.
[[nodiscard]] std::string sizeUnit(const std::string &word);
/// A unit of length: its short form ("cm", "mm", "inch"), or empty.
[[nodiscard]] std::string lengthUnit(const std::string &word);
/// A length in cm.
[[nodiscard]] double inCentimetres(double value, const std::string &unit);
/// A size in g or ml.
[[nodiscard]] double inBaseUnits(double value, const std::string &unit);
/// Key of the allergen that a word names ("wheat" -> "gluten", "dairy" -> "milk"), or empty.
[[nodiscard]] std::string allergenFrom(const std::string &singularWord);
/// A number as short as can be: "2", "1.5".
[[nodiscard]] std::string shortNumber(double value);

} // namespace model::words
