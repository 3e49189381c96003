#include "reports/braille_label.h"
#include <cmath>

namespace reports {

namespace {

constexpr double hair = 1e-9;

/// How many blocks `pitch` apart, the last one `block` long, fit on a length.
int fitting(double length, double block, double pitch) {
    return length + hair < block ? 0 : static_cast<int>(std::floor((length - block) / pitch + hair)) + 1;
}

} // namespace

int cellsAcross(double width, double margin, const BrailleGeometry &geometry) {
    return fitting(width - 2 * margin, geometry.dotSpacing + geometry.dotDiameter, geometry.cellPitch);
}

int linesDown(double height, double margin, const BrailleGeometry &geometry) {
    return fitting(height - 2 * margin, 2 * geometry.dotSpacing + geometry.dotDiameter, geometry.linePitch);
}

double widthOfCells(int cells, const BrailleGeometry &geometry) {
    return (cells - 1) * geometry.cellPitch + geometry.dotSpacing + geometry.dotDiameter;
}

double heightOfLines(int lines, const BrailleGeometry &geometry) {
    return (lines - 1) * geometry.linePitch + 2 * geometry.dotSpacing + geometry.dotDiameter;
}

} // namespace reports
