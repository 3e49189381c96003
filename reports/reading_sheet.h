#pragma once
#include "model/date.h"
#include "model/reading_sentences.h"
#include "reports/writers.h"

namespace reports {

/// The sheet of the reading trial for one distance, worded by templates/reading_sheet.md: a ruler of 100 mm
/// that proves the scale, then twelve sentences from 1.3 logMAR down. It names no client. Fails with
/// OutOfRange unless the distance is 20 to 50 cm: nearer the small lines cannot be printed, farther the
/// large ones do not fit.
[[nodiscard]] Result<Document> readingSheet(model::ReadingVersion version, model::Centimetres distance,
                                            model::Date on, const std::string &madeBy = {});
/// The same as a tagged PDF. Lines below 18 point are what this sheet is for.
[[nodiscard]] Result<std::string> readingSheetPdf(model::ReadingVersion version, model::Centimetres distance,
                                                  model::Date on, const std::string &madeBy = {});
/// "reading-sheet-A-40cm.pdf".
[[nodiscard]] std::string readingSheetName(model::ReadingVersion version, model::Centimetres distance);

} // namespace reports
