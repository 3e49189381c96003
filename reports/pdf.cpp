#include "reports/pdf_write.h"
#include "reports/platform.h"
#include "reports/prepare.h"

namespace reports {

Result<std::string> writePdf(const Document &document, const PrintLayout &layout) {
    static const auto compose = reinterpret_cast<ComposePdf *>(fromLibrary("pdf_writer.so", composePdfName));
    if (!compose)
        return model::fail(model::ErrorCode::Missing,
                           "The part of the program that writes PDF is missing. Install the program again; "
                           "the other kinds of paper can be written meanwhile.");
    const auto ready = prepared(document, Links::Spelled);
    if (!ready)
        return tl::unexpected(ready.error());
    Result<std::string> written;
    compose(*ready, layout, written);
    return written;
}

} // namespace reports
