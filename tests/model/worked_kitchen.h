#pragma once
#include "model/problem.h"

namespace model::fixtures {

/// Two shelves, salt, sugar and vinegar, the markers dot and band: the worked examples whose best plans were
/// computed by full enumeration of the model. Item and place indexes follow.
[[nodiscard]] Problem workedKitchen();

inline constexpr int salt = 0, sugar = 1, vinegar = 2;
inline constexpr int shelfA = 0, shelfB = 1;
inline constexpr int none = 0, dot = 1, band = 2;

} // namespace model::fixtures
