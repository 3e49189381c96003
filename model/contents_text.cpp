#include "model/contents_text.h"
#include "model/contents_words.h"
#include <algorithm>
#include <array>
#include <utility>

namespace model::words {
namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// Signs of other keyboards and writing systems, and what takes their place.
constexpr std::array<std::pair<const char *, const char *>, 31> signs{{
    {"\u00a0", " "},  {"\u2009", " "},  {"\u202f", " "},     {"\u3000", " "},     {"\u2028", "\n"},
    {"\u2029", "\n"}, {"\u060c", ","},  {"\uff0c", ","},     {"\u3001", ","},     {"\u061b", ";"},
    {"\uff1b", ";"},  {"\u201c", "\""}, {"\u201d", "\""},    {"\u201e", "\""},    {"\u00ab", "\""},
    {"\u00bb", "\""}, {"\u2018", "'"},  {"\u2019", "'"},     {"\u00d7", " x "},   {"\u2013", "-"},
    {"\u2014", " "},  {"\u2022", " "},  {"\u00bd", " 1/2 "}, {"\u00bc", " 1/4 "}, {"\u00be", " 3/4 "},
    {"\uff08", "("},  {"\uff09", ")"},  {"\ufeff", ""},      {"\u200b", ""},      {"\u00ad", ""},
    {"\u2026", " "},
}};

/// U+200E, U+200F, U+202A to U+202E and U+2066 to U+2069: they could turn the text around them.
bool turnsText(const std::string &text, std::size_t at) {
    const auto byte = [&](std::size_t i) {
        return at + i < text.size() ? static_cast<unsigned char>(text[at + i]) : 0U;
    };
    if (byte(0) != 0xE2)
        return false;
    return (byte(1) == 0x80 &&
            (byte(2) == 0x8E || byte(2) == 0x8F || (byte(2) >= 0xAA && byte(2) <= 0xAE))) ||
           (byte(1) == 0x81 && byte(2) >= 0xA6 && byte(2) <= 0xA9);
}

/// "1,5 l": a comma between digits, without space, before a unit is a decimal.
bool isDecimalComma(const std::string &line, std::size_t at) {
    if (at == 0 || at + 1 >= line.size() || !isDigit(line[at - 1]) || !isDigit(line[at + 1]))
        return false;
    std::size_t end = at + 1;
    while (end < line.size() && isDigit(line[end]))
        ++end;
    while (end < line.size() && line[end] == ' ')
        ++end;
    std::size_t last = end;
    while (last < line.size() && std::isalpha(static_cast<unsigned char>(line[last])) != 0)
        ++last;
    const std::string unit = line.substr(end, last - end);
    static constexpr std::array metres{"m", "metre", "metres", "meter", "meters"};
    return !sizeUnit(unit).empty() || !lengthUnit(unit).empty() ||
           std::ranges::find(metres, lower(unit)) != metres.end();
}

/// Numbers of a list that runs 1, 2, 3 from its first line to its last are no counts.
std::string withoutListNumbers(const std::string &line) {
    std::string out;
    int number = 0;
    for (std::size_t from = 0; from < line.size(); ++number) {
        const auto end = std::min(line.find('\n', from), line.size());
        const std::string text = trimmed(line.substr(from, end - from));
        const std::string digits = std::to_string(number + 1);
        const std::string rest = text.substr(std::min(digits.size(), text.size()));
        if (!text.starts_with(digits) || !(rest.starts_with(". ") || rest.starts_with(") ")))
            return line;
        out += rest.substr(2) + "\n";
        from = end + 1;
    }
    return number > 1 ? out : line;
}

/// "Rice. Pasta. 2. Eggs": a sentence ends before a capital letter, behind a word of three letters or more
/// that is no abbreviation, behind a number or a unit.
bool endsSentence(const std::string &line, std::size_t at) {
    if (line[at] != '.' || at == 0 || at + 2 >= line.size() || line[at + 1] != ' ' ||
        std::isupper(static_cast<unsigned char>(line[at + 2])) == 0)
        return false;
    std::size_t from = at;
    while (from > 0 && std::isalnum(static_cast<unsigned char>(line[from - 1])) != 0)
        --from;
    const std::string word = lower(line.substr(from, at - from));
    static constexpr std::array shortened{"pkt",    "pkts", "evap", "veg", "choc",
                                          "approx", "exp",  "bbe",  "qty", "med"};
    if (word.empty() || std::ranges::find(shortened, word) != shortened.end())
        return false;
    const auto digits = word.find_first_not_of("0123456789");
    if (isDigit(word.front()))
        return digits == std::string::npos || !sizeUnit(word.substr(digits)).empty();
    return word.size() >= 3 || !sizeUnit(word).empty();
}

/// Spoken separators as signs. "Full stop" and "new line" end a thing too.
std::string withSigns(const std::string &line) {
    std::string out;
    std::string word;
    std::string before;
    const auto flush = [&] {
        const std::string low = lower(word);
        const std::string pair = before + " " + low;
        const bool spoken = pair == "full stop" || pair == "new line" || pair == "new paragraph";
        if (spoken) {
            out.erase(out.size() - before.size() - 1);
            out += "\n";
        } else {
            out += low == "comma" ? "," : low == "semicolon" ? ";" : low == "newline" ? "\n" : word;
        }
        before = low;
        word.clear();
    };
    for (const char c : line) {
        if (c == ' ' || c == '\t' || c == '\n') {
            flush();
            out += c;
        } else {
            word += c;
        }
    }
    flush();
    return out;
}

/// Quotation marks and brackets count only if they are closed in the same line of text.
bool closes(const std::string &line, std::size_t at, char sign) {
    const auto end = line.find_first_of(std::string(sign == ')' ? "\n;" : "\n") + sign, at + 1);
    return end != std::string::npos && line[end] == sign;
}

} // namespace

std::string cleaned(const std::string &line) {
    std::string out;
    std::size_t at = 0;
    bool quoted = false; // 12" is twelve inches, unless it closes a quotation
    while (at < line.size()) {
        const auto c = static_cast<unsigned char>(line[at]);
        if (turnsText(line, at)) {
            at += 3;
            continue;
        }
        const auto *const found = std::find_if(signs.begin(), signs.end(), [&](const auto &sign) {
            return line.compare(at, std::string(sign.first).size(), sign.first) == 0;
        });
        if (found != signs.end()) {
            out += found->second;
            at += std::string(found->first).size();
            continue;
        }
        if (c == '"' && !quoted && at > 0 && isDigit(line[at - 1])) {
            out += " inch ";
            ++at;
            continue;
        }
        quoted = c == '"' ? !quoted : quoted && c != '\n';
        const bool end = c == '\n' || c == '\r' || c == '\v' || c == '\f';
        out += end ? '\n' : c < 0x20 || c == 0x7f ? ' ' : line[at];
        ++at;
    }
    return out;
}

std::vector<std::string> itemsOf(const std::string &text) {
    const std::string line = withSigns(withoutListNumbers(text));
    std::vector<std::string> out(1);
    bool bracket = false;
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const char c = line[i];
        if (c == '"')
            quoted = !quoted && closes(line, i, '"');
        if (!quoted && (c == '(' || c == ')'))
            bracket = c == '(' && closes(line, i, ')');
        const bool ends = c == '\n' || (endsSentence(line, i) && !bracket) ||
                          ((c == ';' || (c == ',' && !isDecimalComma(line, i))) && !bracket);
        if (ends && !quoted)
            out.emplace_back();
        else
            out.back() += c;
    }
    std::vector<std::string> kept;
    for (const auto &item : out) {
        if (!wordsOf(item).empty())
            kept.push_back(trimmed(item));
    }
    return kept;
}

} // namespace model::words
