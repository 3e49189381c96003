#pragma once
#include "model/secret.h"
#include <string>
#include <string_view>

namespace model {

/// Bytes behind a recovery code: 160 random bits.
inline constexpr std::size_t recoveryBytes = 20;

/// The code in 8 groups of four characters and a check character, joined by hyphens: "7K3QX-...". Crockford's
/// base 32: no I, L, O or U. The check character finds any one wrong character, two neighbours exchanged, and
/// a group in the wrong place.
[[nodiscard]] std::string writeRecoveryCode(const SecretBytes &random);

/// The bytes again; case, spaces and hyphens do not matter, O counts as 0, I and L as 1. Fails with
/// NotUnderstood and names the first group that does not fit.
[[nodiscard]] Result<SecretBytes> readRecoveryCode(std::string_view typed);

} // namespace model
