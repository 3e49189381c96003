#pragma once
#include "model/better_eye.h"
#include "model/case.h"
#include "model/field_loss.h"
#include "model/findings.h"
#include <optional>
#include <vector>

/// The rooms behind sightMeaning().
namespace model {

[[nodiscard]] std::optional<FieldLoss> fieldLossFinding(const Case &record, std::vector<Finding> &all);
/// Glare, colours, and getting used to light and dark, in the words that were written down.
void toldFindings(const Case &record, std::vector<Finding> &all);
/// Near and distance acuity that cannot both be so; each is kept.
void sightContradictions(const std::optional<BetterEye> &distance, const std::optional<BetterEye> &nearEye,
                         std::vector<Finding> &all);

} // namespace model
