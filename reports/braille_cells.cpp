#include "reports/braille_cells.h"
#include "reports/utf8.h"
#include <algorithm>
#include <array>
#include <cctype>
#include <liblouis/liblouis.h>
#include <mutex>
#include <set>
#include <string_view>
#include <vector>

namespace reports {

using model::ErrorCode;
using model::fail;

namespace {

constexpr std::string_view asciiOrder = " A1B'K2L@CIF/MSP\"E3H9O6R^DJG>NTQ,*5<-U8V.%[$+X!&;:4\\0Z7(_?W]#Y)=";
static_assert(asciiOrder.size() == 64);

constexpr char32_t firstCell = U'\u2800';
constexpr char32_t pastSixDots = U'\u2840';
constexpr std::u32string_view uncontractedWord =
    U"\u2830\u2830"; // grade 1 until the next blank: UEB 2013, rule 5.3

const char *tableOf(int grade) {
    return grade == 1 ? "en-ueb-g1.ctb" : "en-ueb-g2.ctb";
}

/// liblouis keeps its tables in global variables: every call to it holds this.
std::mutex &louis() {
    static std::mutex mutex;
    return mutex;
}

Result<void> tableReady(int grade) {
    if (grade != 1 && grade != 2)
        return fail(ErrorCode::OutOfRange, "Braille grade " + std::to_string(grade) +
                                               " is not known. Choose 1 (uncontracted) or 2 (contracted).");
    static std::once_flag quiet;
    std::call_once(quiet, [] { lou_registerLogCallback([](logLevels, const char *) {}); });
    if (lou_charSize() != sizeof(char32_t) || lou_getTable(tableOf(grade)) == nullptr)
        return fail(ErrorCode::Missing,
                    "The braille table " + std::string(tableOf(grade)) +
                        " is not installed. Install the package liblouis-data and try again.");
    return {};
}

using Translate = int (*)(const char *, const widechar *, int *, widechar *, int *, formtype *, char *, int);

/// One call; an empty answer means that the library gave up.
std::u32string called(Translate translate, const std::string &table, const std::u32string &in, int mode) {
    const std::vector<widechar> from(in.begin(), in.end());
    std::vector<widechar> to(from.size() * 12 + 64);
    int read = int(from.size());
    int written = int(to.size());
    if (translate(table.c_str(), from.data(), &read, to.data(), &written, nullptr, nullptr, mode) == 0 ||
        read < int(from.size()))
        return {};
    return {to.begin(), to.begin() + written};
}

Cells translated(const std::u32string &words, int grade) {
    Cells cells = called(lou_translateString, tableOf(grade), words, dotsIO | ucBrl);
    std::replace(cells.begin(), cells.end(), U' ', blankCell);
    return cells;
}

/// A character without braille comes out as its code in cells with dots 7 or 8.
bool isSixDot(const Cells &cells) {
    return !cells.empty() && std::all_of(cells.begin(), cells.end(),
                                         [](char32_t c) { return c >= firstCell && c < pastSixDots; });
}

Result<void> allWritableLocked(const std::u32string &words, int grade) {
    const std::set<char32_t> distinct(words.begin(), words.end());
    std::u32string missing;
    for (const char32_t character : distinct)
        if (character != U' ' && character != U'\n' && !isSixDot(translated({character}, grade)))
            missing += character;
    if (missing.empty())
        return {};
    return fail(ErrorCode::NotUnderstood, "The braille table cannot write " + named(missing) +
                                              ". Write these words in other letters or without the accent.");
}

bool isAddress(std::u32string_view token) {
    const auto at = token.find(U'@');
    return token.find(U"://") != std::u32string_view::npos ||
           token.find(U"www.") != std::u32string_view::npos ||
           (at != std::u32string_view::npos && at > 0 && token.find(U'.', at) != std::u32string_view::npos);
}

bool isDigit(char32_t c) {
    return c >= U'0' && c <= U'9';
}

/// Typewriter quotes as opening and closing ones: the tables guess worse. A quote that opens nothing stays
/// (inches).
std::u32string withPairedQuotes(std::u32string words) {
    bool open = false;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i] != U'"')
            continue;
        const bool atStart = i == 0 || words[i - 1] == U' ' || words[i - 1] == U'(';
        if (open)
            words[i] = U'\u201d';
        else if (atStart && words.find(U'"', i + 1) != std::u32string_view::npos)
            words[i] = U'\u201c';
        open = words[i] == U'\u201c';
    }
    return words;
}

/// A stretch that is translated on its own.
struct Part {
    std::u32string words;
    bool address = false;
};

std::vector<Part> parts(const std::u32string &words) {
    std::vector<Part> list;
    for (std::size_t begin = 0; begin < words.size();) {
        const std::size_t end = std::min(words.find(U' ', begin), words.size());
        const std::u32string token = words.substr(begin, end - begin);
        begin = end + 1;
        if (token.empty())
            continue;
        const bool address = isAddress(token);
        const bool joins = !list.empty() && !address && !list.back().address &&
                           !(isDigit(list.back().words.back()) && isDigit(token.front()));
        if (joins)
            list.back().words += U' ' + token;
        else
            list.push_back({token, address});
    }
    return list;
}

} // namespace

Result<void> allWritable(const std::string &words, int grade) {
    const std::lock_guard lock(louis());
    if (auto ready = tableReady(grade); !ready)
        return ready;
    return allWritableLocked(codePoints(words), grade);
}

Result<Cells> brailleOf(const std::string &words, int grade) {
    const std::lock_guard lock(louis());
    if (auto ready = tableReady(grade); !ready)
        return tl::unexpected(ready.error());
    Cells line;
    for (const Part &part : parts(withPairedQuotes(codePoints(words)))) {
        const Cells cells = translated(part.words, part.address ? 1 : grade);
        if (!isSixDot(cells)) {
            if (auto writable = allWritableLocked(part.words, grade); !writable)
                return tl::unexpected(writable.error());
            return fail(ErrorCode::NotUnderstood,
                        "The braille table cannot write \"" + toUtf8(part.words) + "\".");
        }
        line += line.empty() ? U"" : U"\u2800";
        line += part.address && grade == 2 ? Cells(uncontractedWord) : Cells();
        line += cells;
    }
    return line;
}

Result<std::string> printOf(const Cells &cells, int grade) {
    const std::lock_guard lock(louis());
    if (auto ready = tableReady(grade); !ready)
        return tl::unexpected(ready.error());
    std::u32string words;
    const auto read = [&](const Cells &stretch, int by) {
        const std::u32string back =
            called(lou_backTranslateString, std::string("unicode.dis,") + tableOf(by), stretch, 0);
        words += (words.empty() || back.empty() ? U"" : U" ") + back;
        return stretch.empty() || !back.empty();
    };
    Cells stretch;
    bool good = true;
    for (std::size_t begin = 0; begin < cells.size();) {
        const std::size_t end = std::min(cells.find(blankCell, begin), cells.size());
        const Cells word = cells.substr(begin, end - begin);
        begin = end + 1;
        if (grade == 2 && word.starts_with(uncontractedWord)) {
            good = good && read(std::exchange(stretch, {}), grade) && read(word.substr(2), 1);
        } else if (!word.empty()) {
            stretch += (stretch.empty() ? U"" : U"\u2800") + word;
        }
    }
    if (!(good && read(stretch, grade)))
        return fail(ErrorCode::NotUnderstood, "This braille could not be read back.");
    return toUtf8(words);
}

std::string asciiBraille(const Cells &cells) {
    std::string ascii;
    for (const char32_t cell : cells)
        ascii += asciiOrder.at(cell - firstCell);
    return ascii;
}

Result<Cells> cellsOfAscii(const std::string &brf) {
    Cells cells;
    for (const char c : brf) {
        const auto place = asciiOrder.find(char(std::toupper(static_cast<unsigned char>(c))));
        if (place == std::string_view::npos)
            return fail(ErrorCode::NotUnderstood, "This is no braille file: it holds " +
                                                      named({char32_t(static_cast<unsigned char>(c))}) + ".");
        cells += char32_t(firstCell + place);
    }
    return cells;
}

} // namespace reports
