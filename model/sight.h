#pragma once
#include "model/result.h"
#include "model/units.h"
#include <optional>
#include <string>

namespace model {

/// Acuity below any chart: kept as a category, never turned into a letter size.
enum class BelowChart { None, CountingFingers, HandMovement, LightPerception, NoLightPerception };

struct Acuity {
    std::optional<LogMar> logMar; // none below the chart
    BelowChart below = BelowChart::None;
    friend bool operator==(const Acuity &, const Acuity &) = default;
};

/// Reads an acuity in the notation on the card: Snellen 6/x and 20/x with letters more or fewer ("6/9-2"),
/// decimal, "0.6 logMAR", letter score "60 letters", "1.6 M", "N12" and "12 point" at `distance`, CF, HM, LP,
/// NLP. `distance` is needed for M, N and points; `example` stands in the sentence of what was not
/// understood. Fails with NotUnderstood, OutOfRange or Missing. Source: conversions of Bach, acuity cheat
/// sheet; 5 letters a line, 0.02 each; N and points: 8 point is 1 M.
[[nodiscard]] Result<Acuity> parseAcuity(const std::string &typed, std::optional<Centimetres> distance,
                                         const std::string &example = "6/24");

/// True if `a` is a worse acuity than `b`; every category below the chart is worse than any chart.
[[nodiscard]] bool worse(const Acuity &a, const Acuity &b);
/// "logMAR 0.60", to the nearest 0.02, or "counting fingers".
[[nodiscard]] std::string wordsOf(const Acuity &acuity);

/// Height of a letter that subtends 5 minutes of arc times 10^acuity times `reserve` at `distance`.
/// `reserve` (>= 1) makes it read with ease. Fails with OutOfRange unless distance > 0 and reserve >= 1.
/// Source: h = 2 d tan(angle / 2); angle of a 0.0 logMAR letter is 5 minutes of arc.
[[nodiscard]] Result<Millimetres> letterHeight(LogMar acuity, Centimetres distance, double reserve);

/// Point size of type whose x-height is `xHeight`; `ratio` is the x-height of the face in em (0 < ratio < 1).
/// Source: 1 point = 25.4/72 mm.
[[nodiscard]] Result<Points> pointSize(Millimetres xHeight, double ratio);
/// The other way round.
[[nodiscard]] Result<Millimetres> xHeightOf(Points size, double ratio);

/// Print size in M units: a letter of 1 M is 1.4544 mm high, 5 minutes of arc at 1 m (Sloan; the definition
/// is from memory).
[[nodiscard]] double mUnits(Millimetres height);
[[nodiscard]] Millimetres heightOfMUnits(double m);

/// x-height of Noto Sans in em, as its OS/2 table gives it; all print of this program is set in it.
inline constexpr double paperXHeightRatio = 0.536;

/// Vision impairment by presenting acuity of the better eye; ICD-11 9D90, with the ICD-10 category (H54)
/// beside it.
enum class VisionCategory { None, Mild, Moderate, Severe, Blindness3, Blindness4, Blindness5 };
/// Boundaries 6/12, 6/18, 6/60, 3/60, 1/60; a value typed as 6/18, 6/19, 20/60, 20/63, 20/70 or 0.3 counts as
/// the boundary itself, and so does a boundary rounded to two decimals in logMAR or letters. `fieldAcross` of
/// at most 20 degrees (10 in radius) makes it at least Blindness3. CF counts as 1/60 or better only if
/// `typed` says so ("CF at 1 m"), or gives no distance. Source: WHO, ICD-10 (2010) H54 and ICD-11 (2018).
[[nodiscard]] VisionCategory visionCategory(const Acuity &acuity, const std::string &typed,
                                            std::optional<double> fieldAcross);
/// What was typed, with the distance that stands beside it if fingers were counted: "CF at 30 cm".
[[nodiscard]] std::string withDistance(const std::string &typed, const Acuity &acuity,
                                       std::optional<Centimetres> distance);
/// "moderate vision impairment (ICD-11), category 1 (ICD-10)".
[[nodiscard]] std::string wordsOf(VisionCategory category);

/// Contrast of dark print at the threshold of a contrast sensitivity in log units: 10^-logCS.
[[nodiscard]] double weberThreshold(double logContrastSensitivity);
enum class ContrastBand { Normal, Borderline, Impaired, Severe, VeryPoor };
/// Cut-offs 1.65, 1.50, 1.05 and 0.60. Sources: Leat, Legge & Bullimore 1999 (1.50, 1.05); 9 % and 25 %
/// thresholds of a review of reading and contrast; 1.65 from memory.
[[nodiscard]] ContrastBand contrastBand(double logContrastSensitivity);
[[nodiscard]] std::string wordsOf(ContrastBand band);

/// Width seen at `distance` through a field of `across` degrees: 2 d tan(across / 2).
[[nodiscard]] Millimetres fieldWidth(double across, Centimetres distance);

} // namespace model
