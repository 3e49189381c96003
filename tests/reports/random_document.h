#pragma once
#include "reports/document.h"

/// Whether some words are longer than a line.
enum class LongWords { None, Some };

/// A document made up from `seed`: every kind of block, words of all lengths, every letter with an accent
/// that the braille table has. The same seed makes the same document.
[[nodiscard]] reports::Document randomDocument(unsigned seed, LongWords longWords);
