#pragma once
#include "reports/writers.h"

/// The writer of PDF is a library of its own: what it draws with takes a tenth of the start of the program,
/// and few visits need it before their end. `writePdf` loads it when it is first called.
namespace reports {

/// What `writePdf` promises, for a document that is prepared.
[[nodiscard]] Result<std::string> composePdf(const Document &ready, const PrintLayout &layout);

/// The one function that the library shows, and its name there.
using ComposePdf = void(const Document &ready, const PrintLayout &layout, Result<std::string> &written);
inline constexpr const char *composePdfName = "feltmarkComposePdf";

} // namespace reports
