#pragma once
#include "reports/pdf_tree.h"
#include "reports/writers.h"

namespace reports {

/// Makes a drawn PDF a PDF/UA-1 file: marks, structure tree, links, bookmarks, title, language.
/// Source: ISO 14289-1:2014 on ISO 32000-1:2008.
/// Fails with InputOutput if the PDF library does.
[[nodiscard]] Result<std::string> tagPdf(const std::string &drawn, const TagTree &tree,
                                         const Document &document);

} // namespace reports
