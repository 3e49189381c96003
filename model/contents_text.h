#pragma once
#include <string>
#include <vector>

/// The text of a contents line before its words are read.
namespace model::words {

/// Text without control signs and marks of writing direction; the commas, quotation marks and fractions of
/// other keyboards as those of this one.
[[nodiscard]] std::string cleaned(const std::string &line);
/// The things of a line: parted by commas, semicolons, line ends and the words "comma" and "semicolon", but
/// not within brackets or quotation marks, nor at a decimal comma.
[[nodiscard]] std::vector<std::string> itemsOf(const std::string &line);

} // namespace model::words
