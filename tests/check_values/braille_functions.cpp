#include "model/print_size.h"
#include "reports/braille_cells.h"
#include "reports/braille_label.h"
#include "reports/utf8.h"
#include "tests/check_values/check_functions.h"

namespace check {

namespace {

/// The cell with these dots, "1346", by the order of Unicode: what the program writes for its ASCII letter.
std::string cellOfDots(const Input &input) {
    char32_t cell = reports::blankCell;
    for (const char dot : input.at(0))
        cell += char32_t{1} << (dot - '1');
    const std::string letter = reports::asciiBraille({cell});
    return reports::toUtf8(*reports::cellsOfAscii(letter));
}

std::string asciiOfCell(const Input &input) {
    const std::string letter = reports::asciiBraille(reports::codePoints(input.at(0)));
    return letter == " " ? "space" : letter;
}

} // namespace

Functions brailleFunctions() {
    Functions all;
    all["ascii-of-cell"] = asciiOfCell;
    all["cell-of-dots"] = cellOfDots;
    all["braille-cells"] = [](const Input &i) {
        return shown(reports::cellsAcross(
            number(i, 0), number(i, 1),
            {.cellPitch = number(i, 2), .dotSpacing = number(i, 3), .dotDiameter = number(i, 4)}));
    };
    all["braille-lines"] = [](const Input &i) {
        return shown(reports::linesDown(
            number(i, 0), number(i, 1),
            {.linePitch = number(i, 2), .dotSpacing = number(i, 3), .dotDiameter = number(i, 4)}));
    };
    all["braille-width"] = [](const Input &i) {
        return shown(reports::widthOfCells(
            whole(i, 0),
            {.cellPitch = number(i, 1), .dotSpacing = number(i, 2), .dotDiameter = number(i, 3)}));
    };
    all["braille-height"] = [](const Input &i) {
        return shown(reports::heightOfLines(
            whole(i, 0),
            {.linePitch = number(i, 1), .dotSpacing = number(i, 2), .dotDiameter = number(i, 3)}));
    };
    all["least-paper"] = [](const Input &) { return shown(model::smallestPaper.value); };
    return all;
}

} // namespace check
