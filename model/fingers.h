#pragma once
#include "model/measurement.h"
#include "model/result.h"
#include <array>
#include <string>

/// Which finger a result of touch is of.
namespace model {

inline constexpr std::array<const char *, 5> fingerNames{"thumb", "index", "middle", "ring", "little"};

struct HandFinger {
    Side hand = Side::NotStated;
    std::string finger; // one of fingerNames; other words stay as they were typed; empty: not stated
    friend auto operator<=>(const HandFinger &, const HandFinger &) = default;
};

/// "Index finger" -> "index". Words that name no finger stay as they are, tidied.
[[nodiscard]] std::string fingerNamed(const std::string &typed);
/// Reads "right index" or "thumb of the left hand". Fails with NotUnderstood unless hand and finger are named
/// once each.
[[nodiscard]] Result<HandFinger> parseReadingFinger(const std::string &typed);
/// "right hand, index"; "hand not stated".
[[nodiscard]] std::string wordsOf(const HandFinger &which);
[[nodiscard]] HandFinger whichFinger(const Measurement &result);

} // namespace model
