#pragma once
#include "model/result.h"
#include <string>

/// Contrast of print, of colours, and what a contrast sensitivity leaves of it.
namespace model {

/// Contrast of dark print on a lighter ground, from their reflectances or luminances in one unit:
/// (ground - print) / ground, 0 to 1. Fails with OutOfRange unless 0 <= print <= ground and ground > 0.
[[nodiscard]] Result<double> weberContrast(double ground, double print);
/// Michelson contrast of dark print whose Weber contrast is `weber` (0 to 1): W / (2 - W).
[[nodiscard]] double michelsonOf(double weber);
/// The other way round: 2 M / (1 + M).
[[nodiscard]] double weberOf(double michelson);
/// How many times the threshold the contrast of the print is: weber x 10^logCS.
[[nodiscard]] double contrastReserve(double weber, double logContrastSensitivity);

/// A colour of the screen or of a label, each channel 0 to 255.
struct Colour {
    int red = 0, green = 0, blue = 0;
    friend bool operator==(const Colour &, const Colour &) = default;
};
/// Reads "#595959", "#fff" or the name of a common label colour: "dark blue". Fails with NotUnderstood.
[[nodiscard]] Result<Colour> parseColour(const std::string &typed);

/// Relative luminance, 0 black to 1 white. Source: W3C, WCAG 2.2, relative luminance.
[[nodiscard]] double relativeLuminance(Colour colour);
/// Contrast ratio, 1 to 21, the same either way round; never rounded up. Source: W3C, WCAG 2.2.
[[nodiscard]] double contrastRatio(Colour a, Colour b);
/// Weber contrast of the two colours as printed: the darker one against the lighter, with a reflectance of
/// 5 % at the black end, since no ink is black. The 5 % is a judgement of this program.
[[nodiscard]] double printedContrast(Colour a, Colour b);

} // namespace model
