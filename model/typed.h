#pragma once
#include <optional>
#include <string>
#include <vector>

/// What every field has in common: tidying what was typed and reading plain numbers out of it.
namespace model::typed {

/// Lower case, single spaces, trimmed; true minus and fraction signs as "-" and "/".
[[nodiscard]] std::string tidy(const std::string &text);

/// A number as people write it: digits with at most one point or comma and an optional sign. No exponents, no
/// words.
[[nodiscard]] std::optional<double> number(const std::string &text);

/// A number and the words that follow it: "40 cm" is 40 and "cm".
struct NumberAndUnit {
    double value = 0;
    std::string unit;
};
[[nodiscard]] std::optional<NumberAndUnit> numberAndUnit(const std::string &tidied);

/// Words between commas, each tidied; empty ones left out.
[[nodiscard]] std::vector<std::string> list(const std::string &text);

/// "0.60", "24", "1.5": `decimals` at most, no trailing zeros unless `keepZeros`.
enum class Zeros { Drop, Keep };
[[nodiscard]] std::string words(double value, int decimals, Zeros zeros = Zeros::Drop);

/// "Not a distance: 4o. Try 40 cm. Kept."
[[nodiscard]] std::string notA(const std::string &what, const std::string &typed, const std::string &example);

} // namespace model::typed
