#pragma once
#include "reports/pdf_compose.h"

namespace reports {

/// Puts pieces on pages and draws them. The answer is a PDF whose marks are flat; which element owns a mark
/// stands in `tree`. Fails with InputOutput if the drawing library does.
[[nodiscard]] Result<std::string> paintPages(const std::vector<Piece> &pieces, const Sheet &sheet,
                                             Typesetter &type, const Document &document, TagTree &tree);

} // namespace reports
