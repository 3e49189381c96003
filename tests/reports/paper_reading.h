#pragma once
#include "model/case.h"
#include "reports/document.h"
#include <string>
#include <utility>
#include <vector>

/// What a test reads out of a document.
namespace reading {

/// All words of a block.
[[nodiscard]] std::string words(const reports::Block &block);
/// All words of the document, title included.
[[nodiscard]] std::string words(const reports::Document &document);
/// The words of everything that is not a caution.
[[nodiscard]] std::string wordsOutsideCautions(const reports::Document &document);
[[nodiscard]] std::vector<std::string> cautions(const reports::Document &document);
/// The blocks after the heading with these words, up to the next heading of its level or above.
[[nodiscard]] std::vector<reports::Block> section(const reports::Document &document,
                                                  const std::string &heading);
/// Headings of one level among the blocks.
[[nodiscard]] std::vector<std::string> headings(const std::vector<reports::Block> &blocks, int level);
/// Items of numbered lists among the blocks.
[[nodiscard]] std::vector<std::string> numberedItems(const std::vector<reports::Block> &blocks);
[[nodiscard]] std::string lowered(std::string text);

} // namespace reading
