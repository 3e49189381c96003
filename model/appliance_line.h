#pragma once
#include "model/kitchen.h"
#include "model/result.h"

namespace model {

/// Reads "oven: off, 180, 200" or, with more than one control, "cooker: left front ring: off, 3, 6; oven:
/// off, 180". Fails with NotUnderstood and says what is missing, or Refused for a setting or a control said
/// twice.
[[nodiscard]] Result<Appliance> parseAppliance(const std::string &line);
/// The line that says the same.
[[nodiscard]] std::string applianceLine(const Appliance &appliance);
/// "75", "75 C" or "167 F"; nothing typed: not measured. Fails with NotUnderstood, OutOfRange unless -40..400
/// C.
[[nodiscard]] Result<std::optional<Celsius>> readHeat(const std::string &typed);

} // namespace model
