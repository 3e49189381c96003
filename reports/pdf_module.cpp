#include "reports/pdf_write.h"

extern "C" [[gnu::visibility("default")]] void feltmarkComposePdf(const reports::Document &ready,
                                                                  const reports::PrintLayout &layout,
                                                                  reports::Result<std::string> &written) {
    written = reports::composePdf(ready, layout);
}
