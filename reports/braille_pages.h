#pragma once
#include "reports/braille_cells.h"
#include "reports/writers.h"
#include <vector>

namespace reports {

/// Lines from the top, none longer than the layout's cells, no blanks at the end; as many as the layout's
/// lines, the last one with the page number at its right end.
using BraillePage = std::vector<Cells>;

/// Lays a prepared document out by the rules of the Braille Authority of North America (Braille Formats):
/// headings centred, in cell 5, in cell 7; paragraphs 3-1; lists 1-3. Tables become one list item a row,
/// drawings their words. Words are never cut, unless one is longer than a line. Fails as brailleOf, and with
/// OutOfRange for a layout that cannot be.
[[nodiscard]] Result<std::vector<BraillePage>> braillePages(const Document &document,
                                                            const BrailleLayout &layout);

/// Breaks cells into lines: the first begins after `first` blanks, the others after `runover`; none ends past
/// `width`.
[[nodiscard]] std::vector<Cells> brailleLines(const Cells &words, std::size_t first, std::size_t runover,
                                              std::size_t width);

} // namespace reports
