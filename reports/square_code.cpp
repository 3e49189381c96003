#include "reports/square_code.h"
#include <cstdint>
#include <memory>
#include <qrencode.h>

namespace reports {

using model::ErrorCode;
using model::fail;
using model::Result;

namespace {

constexpr int quietModules = 4, mostModules = 57;
constexpr double overlap = 0.02; // of rows, so that no viewer shows a white line between them

using Code = std::unique_ptr<QRcode, decltype(&QRcode_free)>;

/// Dark modules of one row, those side by side as one box: no white line can show between them.
void addRow(const QRcode &code, int y, Figure &figure) {
    const auto dark = [&](int x) { return x < code.width && (code.data[y * code.width + x] & 1U) != 0; };
    for (int x = 0; x < code.width; ++x) {
        if (!dark(x))
            continue;
        const int from = x;
        while (dark(x))
            ++x;
        Figure::Box box;
        box.x = from + quietModules;
        box.y = y + quietModules;
        box.width = x - from;
        box.height = 1 + overlap;
        box.filled = true;
        figure.boxes.push_back(std::move(box));
    }
}

} // namespace

Result<Figure> squareCode(const std::string &name, const std::string &text) {
    const Code code(QRcode_encodeString8bit(text.c_str(), 0, QR_ECLEVEL_Q), &QRcode_free);
    if (text.empty() || !code || code->width > mostModules)
        return fail(ErrorCode::OutOfRange, "No square code holds the words of " + name +
                                               ": none, or more than 151 bytes. Shorten how to prepare it.");
    Figure figure;
    figure.width = figure.height = code->width + 2 * quietModules;
    figure.trueToScale = true;
    figure.words = "Square code of " + name + ". It says: " + text;
    for (int y = 0; y < code->width; ++y)
        addRow(*code, y, figure);
    return figure;
}

} // namespace reports
