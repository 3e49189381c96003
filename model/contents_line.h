#pragma once
#include "model/contents.h"
#include "model/contents_words.h"

namespace model::words {

/// Uses a week meant by "rarely": a few times a year.
inline constexpr double rarelyPerWeek = 0.1;
/// Weight meant by "heavy" when none is known.
inline constexpr double heavyKg = 2.5;

/// Understands one thing of a contents line, separators taken off.
[[nodiscard]] ContentsItem parseItem(const std::string &text);

} // namespace model::words
