#pragma once
#include "model/result.h"
#include "model/units.h"
#include <optional>
#include <string>

namespace model {

/// Acuity below any chart: kept as a category, never turned into a letter size.
enum class BelowChart { None, CountingFingers, HandMovement, LightPerception, NoLightPerception };

struct Acuity {
    std::optional<LogMar> logMar;         // none below the chart
    BelowChart below = BelowChart::None;
    friend bool operator==(const Acuity &, const Acuity &) = default;
};

/// Reads an acuity in the notation on the card: Snellen 6/x and 20/x with letters more or fewer ("6/9-2"), decimal,
/// "0.6 logMAR", letter score "60 letters", "1.6 M" and "N12" at `distance`, CF, HM, LP, NLP.
/// `distance` is needed for M and N. Fails with NotUnderstood, OutOfRange or Missing.
/// Source: conversions of Bach, acuity cheat sheet; 5 letters a line, 0.02 each.
[[nodiscard]] Result<Acuity> parseAcuity(const std::string &typed, std::optional<Centimetres> distance);

/// Height of a letter that subtends 5 minutes of arc times 10^acuity times `reserve` at `distance`.
/// `reserve` (>= 1) makes it read with ease. Fails with OutOfRange unless distance > 0 and reserve >= 1.
/// Source: h = 2 d tan(angle / 2); angle of a 0.0 logMAR letter is 5 minutes of arc.
[[nodiscard]] Result<Millimetres> letterHeight(LogMar acuity, Centimetres distance, double reserve);

/// Point size of type whose x-height is `xHeight`; `ratio` is the x-height of the face in em (0 < ratio < 1).
/// Source: 1 point = 25.4/72 mm.
[[nodiscard]] Result<Points> pointSize(Millimetres xHeight, double ratio);

} // namespace model
