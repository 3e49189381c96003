#include "model/lexicon.h"
#include <algorithm>
#include <array>
#include <utility>

namespace model::words {
namespace {

bool isVowel(char c) {
    return c == 'a' || c == 'e' || c == 'i' || c == 'o' || c == 'u' || c == 'y';
}

/// Letters that are spoken alike, the longest first.
constexpr std::array<std::pair<const char *, const char *>, 28> alikeSounds{{
    {"ough", "o"}, {"ower", "our"}, {"augh", "o"}, {"wor", "wr"}, {"sch", "sk"}, {"tch", "c"}, {"cia", "sa"},
    {"kn", "n"},   {"wr", "r"},     {"wh", "w"},   {"ph", "f"},   {"gh", "g"},   {"ck", "k"},  {"ch", "c"},
    {"ce", "se"},  {"ci", "si"},    {"cy", "si"},  {"sh", "s"},   {"th", "t"},   {"qu", "kw"}, {"mb", "m"},
    {"dg", "j"},   {"ge", "je"},    {"gi", "ji"},  {"c", "k"},    {"z", "s"},    {"x", "ks"},  {"v", "f"},
}};

constexpr std::size_t longestCompared = 64;

std::string respelt(const std::string &word) {
    std::string out;
    std::size_t at = 0;
    while (at < word.size()) {
        const auto *const found = std::find_if(alikeSounds.begin(), alikeSounds.end(), [&](const auto &pair) {
            return word.compare(at, std::string(pair.first).size(), pair.first) == 0;
        });
        if (found == alikeSounds.end()) {
            out += word[at++];
        } else {
            out += found->second;
            at += std::string(found->first).size();
        }
    }
    return out;
}

} // namespace

std::string soundOf(const std::string &comparableName) {
    std::string out;
    char last = 0;
    for (const char c : respelt(comparableName)) {
        if (c == ' ' || c == last)
            continue;
        const bool first = last == 0;
        last = c;
        if (isVowel(c) && !first)
            continue;
        if (c == 'h' && !first)
            continue;
        out += isVowel(c) ? 'a' : c;
    }
    return out;
}

std::size_t misspellings(const std::string &a, const std::string &b, std::size_t most) {
    const std::size_t longer = std::max(a.size(), b.size());
    if (longer - std::min(a.size(), b.size()) > most)
        return most + 1;
    if (longer >= longestCompared)
        return a == b ? 0 : most + 1;
    std::array<std::array<std::size_t, longestCompared>, 3> rows{};
    for (std::size_t j = 0; j <= b.size(); ++j)
        rows[0][j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        auto &row = rows[i % 3];
        const auto &above = rows[(i + 2) % 3];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            row[j] =
                std::min({above[j - 1] + (a[i - 1] == b[j - 1] ? 0U : 1U), above[j] + 1, row[j - 1] + 1});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                row[j] = std::min(row[j], rows[(i + 1) % 3][j - 2] + 1);
        }
        if (*std::min_element(row.begin(), row.begin() + static_cast<long>(b.size()) + 1) > most)
            return most + 1;
    }
    return std::min(rows[a.size() % 3][b.size()], most + 1);
}

} // namespace model::words
