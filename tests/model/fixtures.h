#pragma once
#include "model/case.h"

/// Invented clients who break a naive program. Nobody real is meant.
namespace model::fixtures {

/// A result as it would be typed.
[[nodiscard]] Measurement result(Test test, const std::string &typed, Side side = Side::NotStated);
/// Every safety question answered with the answer that asks for no care, everybody at home asked about.
[[nodiscard]] Case unworried(const std::string &name, const std::string &code);

/// 6/9 and a field of 8 degrees across.
[[nodiscard]] Case tubeField();
/// Deafblind braille reader with a cochlear implant.
[[nodiscard]] Case deafblindReader();
/// Diabetes: sight varies by day, no pair of marks accepted, low-sugar treatment in the kitchen.
[[nodiscard]] Case variesByDay();
/// After a stroke: left side not attended to, weak left arm.
[[nodiscard]] Case leftNotAttended();
/// A couple in one kitchen: braille and nut allergy.
[[nodiscard]] Case coupleBraille();
/// A couple in one kitchen: large print and dementia.
[[nodiscard]] Case coupleLargePrint();

} // namespace model::fixtures
