#pragma once
#include "model/result.h"
#include <string>

/// Words and braille cells. Unified English Braille through liblouis; one call at a time, from any thread.
namespace reports {

using model::Result;

/// Six-dot cells as Unicode braille, U+2800 to U+283F. A blank is U+2800.
using Cells = std::u32string;
constexpr char32_t blankCell = U'\u2800';

/// `grade` 1 is uncontracted, 2 contracted; any other fails with OutOfRange.
/// Web and mail addresses are uncontracted in both, with the grade 1 word indicator (dots 56, 56) in grade 2.
/// Two numbers with a blank between stay two numbers. Fails with NotUnderstood and names the characters that
/// the table cannot write, Missing without the table.
[[nodiscard]] Result<Cells> brailleOf(const std::string &words, int grade);
/// The characters of `words` that have no braille in this grade, as brailleOf fails for them.
[[nodiscard]] Result<void> allWritable(const std::string &words, int grade);
/// Back into print. Fails with NotUnderstood, Missing.
[[nodiscard]] Result<std::string> printOf(const Cells &cells, int grade);

/// North American ASCII braille, upper case.
/// Source: the 64 characters in the order of U+2800 to U+283F, as in the table en-us-brf.dis of liblouis.
[[nodiscard]] std::string asciiBraille(const Cells &cells);
/// Fails with NotUnderstood and names what is none of the 64 characters; lower case is read as upper case.
[[nodiscard]] Result<Cells> cellsOfAscii(const std::string &brf);

} // namespace reports
