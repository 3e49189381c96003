#pragma once
#include "model/secret.h"
#include <string>
#include <string_view>

namespace model {

/// A passphrase as it enters the key derivation: Unicode NFKC, so that it opens whichever way a keyboard
/// composes its letters. Fails with NotUnderstood on bytes that are not UTF-8, and on an empty one. Source:
/// NIST SP 800-63B, normalise with NFKC or NFKD before hashing.
[[nodiscard]] Result<SecretBytes> normalisedPassphrase(std::string_view typed);

/// As checkPassphrase, and refuses the therapist's own name as well.
[[nodiscard]] Result<void> checkPassphraseOf(std::string_view passphrase, const std::string &author);

} // namespace model
