#pragma once
#include "model/case.h"
#include "model/findings.h"
#include "model/lifting.h"
#include <optional>
#include <string>

/// The two lifting rules, said for one client's shelves with their limits.
namespace model {

/// Which figures of the lifting filter were asked for; none: not said, so the lower ones stand.
[[nodiscard]] std::optional<Sex> liftFiguresSaid(const Case &record);
/// "women's figures", and that it was not said if so.
[[nodiscard]] std::string figuresWords(const std::optional<Sex> &said);

/// One lift between a shelf and the worktop, in the terms of the NIOSH equation: hands 25 cm before the
/// ankles, 50 cm for a shelf deeper than 30 cm, no turn, seldom, a fair grip. Defaults of this program.
[[nodiscard]] NioshLift liftToWorktop(Centimetres height, Centimetres depth);

/// " At most 3.5 kg with two hands: ..." for a shelf at this height: what was lifted safely, or half of each
/// rule, whichever is least. Seated only the seated filter holds. Empty if nothing is known.
[[nodiscard]] std::string liftWords(const Case &record, const Findings &findings, Centimetres height,
                                    Centimetres depth, bool seated);
/// What the two rules are made for, and what they are not.
[[nodiscard]] Finding liftRulesFinding(const Case &record);

} // namespace model
