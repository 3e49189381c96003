#pragma once
#include "model/result.h"
#include "reports/document.h"

namespace reports {

/// The text as a square code at level Q, in modules of 1 mm with a quiet zone of 4 modules, printed at its
/// own size; the words say what it says. Fails with OutOfRange if it is empty or too long for a code of 57
/// modules.
/// Source: ISO/IEC 18004, QR code, byte mode.
[[nodiscard]] model::Result<Figure> squareCode(const std::string &name, const std::string &text);

} // namespace reports
