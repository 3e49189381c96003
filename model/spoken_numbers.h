#pragma once
#include "model/contents_words.h"

namespace model::words {

/// A number that begins at one word and takes `length` of them.
struct SpokenNumber {
    double value = 0;
    std::size_t length = 0; // 0: no number begins here
};

/// "4", "four", "twenty one", "two hundred and fifty", "one and a half", "half a", "a dozen", "a couple of".
/// An article alone is no number. A number does not reach beyond a word that says what is counted.
[[nodiscard]] SpokenNumber numberAt(const std::vector<Word> &all, std::size_t at);

} // namespace model::words
