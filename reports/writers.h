#pragma once
#include "model/result.h"
#include "reports/document.h"
#include <filesystem>
#include <functional>
#include <string>

namespace reports {

using model::Result;

struct PrintLayout {
    double bodyPoints = 18; // 12..72
    double pageWidthMm = 210, pageHeightMm = 297;
    double marginMm = 25.4;
};

struct BrailleLayout {
    int grade = 2;  // 1 uncontracted, 2 contracted UEB
    int cells = 40; // 12..100
    int lines = 25; // 5..100, page number on the last
};

/// Tagged PDF (PDF/UA-1), as bytes. Fails with NotUnderstood and names the characters that no font holds, or
/// with OutOfRange for a layout that cannot be.
[[nodiscard]] Result<std::string> writePdf(const Document &document, const PrintLayout &layout);
/// North American ASCII braille, CR LF line ends, a form feed after every page. Fails with NotUnderstood and
/// names the characters that the table cannot write.
[[nodiscard]] Result<std::string> writeBrf(const Document &document, const BrailleLayout &layout);
/// The same pages in Unicode braille (UTF-8), LF line ends.
[[nodiscard]] Result<std::string> writeUnicodeBraille(const Document &document, const BrailleLayout &layout);
/// The same pages as Portable Embosser Format 2008-1.
[[nodiscard]] Result<std::string> writePef(const Document &document, const BrailleLayout &layout);
[[nodiscard]] Result<std::string> writeHtml(const Document &document);
[[nodiscard]] Result<std::string> writeText(const Document &document);

/// Plain text as a document: a blank line ends a paragraph.
[[nodiscard]] Document documentFromText(const std::string &text, const std::string &language);
/// Puts BRF back into words, for checks. Fails with NotUnderstood.
[[nodiscard]] Result<std::string> readBrfBack(const std::string &brf, int grade);
/// Short braille of a label in Unicode cells, and its length in cells. Fails as writeBrf.
[[nodiscard]] Result<std::string> brailleLabel(const std::string &text, int grade);

/// Writes bytes beside the target, flushes and renames, so that a file is whole or not there. Fails with
/// ReadOnly, Full, InputOutput.
[[nodiscard]] Result<void> writeFile(const std::filesystem::path &path, const std::string &bytes);

} // namespace reports
