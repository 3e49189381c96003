#pragma once

/// How much braille fits on a label. Millimetres, centre to centre unless said.
namespace reports {

/// Usual geometries of braille. Source: NLS Specification 800; Marburg Medium; ADA 2010, 703.3.1.
struct BrailleGeometry {
    double cellPitch = 6.2;
    double linePitch = 10.0;
    double dotSpacing = 2.34;
    double dotDiameter = 1.44; // at the base
};

/// Cells in one line across a label `width` wide with `margin` at both sides; 0 if none fits.
[[nodiscard]] int cellsAcross(double width, double margin, const BrailleGeometry &geometry);
/// Lines down a label `height` high with `margin` above and below; 0 if none fits.
[[nodiscard]] int linesDown(double height, double margin, const BrailleGeometry &geometry);
/// From the edge of the first dot to the edge of the last one.
[[nodiscard]] double widthOfCells(int cells, const BrailleGeometry &geometry);
[[nodiscard]] double heightOfLines(int lines, const BrailleGeometry &geometry);

} // namespace reports
