#pragma once
#include <string>

/// What the programs of poppler find in a PDF.
namespace pdf_reading {

/// What `command` prints, with the name of a file for "PDF".
[[nodiscard]] std::string output(std::string command, const std::string &pdf);
/// The words in reading order, one blank between, without the page numbers.
[[nodiscard]] std::string words(const std::string &pdf);
/// Any text with one blank between its words.
[[nodiscard]] std::string collapsed(const std::string &text);

} // namespace pdf_reading
