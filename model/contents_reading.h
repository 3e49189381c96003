#pragma once
#include "model/contents.h"
#include "model/contents_words.h"

namespace model::words {

/// One thing while it is being read: words are taken one after the other, what is left is the name.
struct Reading {
    std::vector<Word> all;
    std::vector<bool> taken;
    const CatalogueThing *entry = nullptr;
    std::size_t nameFrom = 0, nameTo = 0; // words of the catalogue name
    std::vector<double> counts;
    std::optional<double> uses;
    std::optional<double> size;
    std::string unit;
    std::optional<Shape> pack;
    std::vector<std::string> facts; // words that say what it is made of or what it is
    std::vector<std::string> doubts;
    ContentsItem item;

    [[nodiscard]] bool is(std::size_t i, const char *word) const {
        return i < all.size() && !taken[i] && all[i].low == word;
    }
    [[nodiscard]] bool free(std::size_t i) const { return i < all.size() && !taken[i]; }
    void take(std::size_t from, std::size_t to) { std::fill(taken.begin() + from, taken.begin() + to, true); }
};

/// A pack's words about an allergen: "nut free" (a claim), "may contain nuts" (no claim).
struct AllergenWords {
    std::string allergen;
    bool claim = false;
};

/// Takes count, size, pack, frequency, facts and claims out of the text of one thing.
[[nodiscard]] Reading readingOf(const std::string &text, std::vector<AllergenWords> &said);

} // namespace model::words
