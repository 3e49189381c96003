#include "reports/square_code.h"
#include <algorithm>
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
using Input = std::unique_ptr<QRinput, decltype(&QRinput_free)>;

/// "26" says that UTF-8 follows (AIM ECI 000026, ISO/IEC 18004): without it readers guess, and guess wrong.
constexpr unsigned utf8Follows = 26;

Code encoded(const std::string &text) {
    const Input input(QRinput_new2(0, QR_ECLEVEL_Q), &QRinput_free);
    const bool plain = std::ranges::all_of(text, [](char c) { return static_cast<unsigned char>(c) < 0x80; });
    const auto *bytes = reinterpret_cast<const unsigned char *>(text.data());
    const bool taken = input && (plain || QRinput_appendECIheader(input.get(), utf8Follows) == 0) &&
                       QRinput_append(input.get(), QR_MODE_8, static_cast<int>(text.size()), bytes) == 0;
    return {taken ? QRcode_encodeInput(input.get()) : nullptr, &QRcode_free};
}

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
    const Code code = encoded(text);
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
