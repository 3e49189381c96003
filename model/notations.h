#pragma once
#include "model/sight.h"
#include <optional>
#include <string>
#include <vector>

/// One acuity in every notation, for whoever thinks in another one than the chart's.
namespace model {

/// "6/24": `metres` or feet over the distance at which the letter subtends 5 minutes of arc, to 4 figures.
[[nodiscard]] std::string snellenOf(LogMar acuity, double distance);
/// 1 over the minimum angle of resolution: 10^-logMAR.
[[nodiscard]] double decimalOf(LogMar acuity);
/// Minimum angle of resolution in minutes of arc.
[[nodiscard]] double minutesOf(LogMar acuity);
/// Letters of an ETDRS chart, 85 - 50 logMAR (from memory); below 0 there is none.
[[nodiscard]] std::optional<double> letterScoreOf(LogMar acuity);
/// Print of this acuity at `distance` in M units, and in points of the N notation (8 points are 1 M).
[[nodiscard]] double mUnitsAt(LogMar acuity, Centimetres distance);
[[nodiscard]] double nPointsAt(LogMar acuity, Centimetres distance);
/// The acuity that the same letters have at another distance: + log10(from / to).
[[nodiscard]] LogMar atDistance(LogMar acuity, Centimetres from, Centimetres to);

/// Mean in logMAR, the only unit that may be averaged (Bach). None without values, or if one of them lies
/// below the chart: a category has no number.
[[nodiscard]] std::optional<LogMar> meanAcuity(const std::vector<Acuity> &acuities);

/// "6/24, 20/80, decimal 0.25, logMAR 0.60, 55 letters"; with a distance "; at 40 cm 1.6 M, N12.8". A
/// category below the chart in its words: it has no other notation.
[[nodiscard]] std::string allNotations(const Acuity &acuity, std::optional<Centimetres> distance);

} // namespace model
