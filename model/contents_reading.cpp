#include "model/contents_reading.h"
#include "model/spoken_numbers.h"
#include <algorithm>
#include <array>

namespace model::words {
namespace {

void addWords(Reading &r, const std::string &text, bool bracket) {
    for (auto word : wordsOf(text)) {
        if (word.low == "gf" || word.low == "df") { // as shops write it
            addWords(r, word.low == "gf" ? "gluten free" : "dairy free", bracket);
            continue;
        }
        word.bracket = bracket;
        r.all.push_back(std::move(word));
    }
}

/// "(note ...)" keeps its words as they are.
void addBracket(Reading &r, const std::string &text) {
    const auto inner = wordsOf(text);
    if (!inner.empty() && inner.front().low == "note") {
        const auto at = lower(text).find("note");
        r.notes.push_back(trimmed(text.substr(at + 4)));
        return;
    }
    std::string parted = text;
    std::replace(parted.begin(), parted.end(), ',', ' ');
    addWords(r, parted, true);
}

/// Parts the text of a thing into plain words, words in brackets, and the name in quotation marks.
void addText(Reading &r, const std::string &text) {
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const char end = c == '(' ? ')' : c == '"' ? '"' : '\0';
        const auto close = end == '\0' ? std::string::npos : text.find(end, i + 1);
        if (close == std::string::npos) {
            plain += c == '(' || c == ')' || c == '"' ? ' ' : c;
            continue;
        }
        addWords(r, plain, false);
        plain.clear();
        const std::string inner = text.substr(i + 1, close - i - 1);
        if (c == '(')
            addBracket(r, inner);
        else if (r.quoted.empty())
            r.quoted = joined(wordsOf(inner), 0, wordsOf(inner).size());
        else
            addWords(r, inner, false);
        i = close;
    }
    addWords(r, plain, false);
    r.taken.assign(r.all.size(), false);
}

/// True if a catalogue name ends before this word: what follows "in" is not what it is, "tuna in olive oil".
bool endsName(const Reading &r, std::size_t to, const Lexicon &lexicon) {
    for (std::size_t from = to; from-- > 0 && to - from <= lexicon.longest();) {
        if (lexicon.find(joined(r.all, from, to)) != nullptr)
            return true;
    }
    return false;
}

/// The longest run of words that is a catalogue name; of equal ones the last.
void matchCatalogue(Reading &r, const Lexicon &lexicon) {
    const auto claims = claimsIn(r);
    const std::size_t longest = std::min(r.all.size(), lexicon.longest() + 2);
    for (std::size_t length = longest; length > 0 && r.entry == nullptr; --length) {
        for (std::size_t from = 0; from + length <= r.all.size(); ++from) {
            const bool denied = from > 0 && (r.is(from - 1, "no") || r.is(from - 1, "without") ||
                                             (r.is(from - 1, "in") && endsName(r, from - 1, lexicon)));
            const std::size_t to = from + length;
            const bool holds = length == 1 && r.is(to, "of") && r.free(to + 1);           // "tray of 30 eggs"
            const bool lacks = length == 1 && r.is(to, "free") && !r.is(to + 1, "range"); // "sugar-free"
            bool whole = !denied && !holds && !lacks && !cuts(claims, from, from + length);
            for (std::size_t i = from; i < from + length; ++i)
                whole = whole && r.free(i) && !r.all[i].bracket;
            const auto *found = whole ? lexicon.find(joined(r.all, from, from + length)) : nullptr;
            const bool weaker =
                r.entry != nullptr && length == 1 && !allergenFrom(r.all[from].single).empty();
            if (found == nullptr || weaker)
                continue;
            r.entry = found;
            r.nameFrom = from;
            r.nameTo = from + length;
        }
    }
    if (r.entry != nullptr)
        r.take(r.nameFrom, r.nameTo);
}

/// "ajvar like pesto": the usual facts of another thing.
void takeLike(Reading &r, const Lexicon &lexicon) {
    for (std::size_t at = r.quoted.empty() ? 1 : 0; at + 1 < r.all.size(); ++at) {
        if (!r.is(at, "like"))
            continue;
        for (std::size_t to = r.all.size(); to > at + 1; --to) {
            const auto *found = lexicon.find(joined(r.all, at + 1, to));
            if (found == nullptr)
                continue;
            r.like = found->name;
            r.entry = found;
            r.take(at, to);
            return;
        }
    }
}

/// "for tuna": for, or four? Asked, never taken.
void noteSoundAlike(Reading &r) {
    static constexpr std::array<std::pair<const char *, const char *>, 9> sounds{{{"for", "4"},
                                                                                  {"fore", "4"},
                                                                                  {"to", "2"},
                                                                                  {"too", "2"},
                                                                                  {"ate", "8"},
                                                                                  {"won", "1"},
                                                                                  {"tree", "3"},
                                                                                  {"free", "3"},
                                                                                  {"sex", "6"}}};
    const bool named = r.all.size() >= 2 || !r.quoted.empty();
    if (!named || !r.free(0) || !r.counts.empty() || r.all[0].bracket)
        return;
    for (const auto &[typed, number] : sounds) {
        if (r.all[0].low != typed || (r.all[0].low == "free" && (r.is(1, "range") || r.is(1, "from"))))
            continue;
        r.soundTyped = r.all[0].typed;
        r.sounds = number;
        r.take(0, 1);
        return;
    }
}

/// What stands in brackets and was not understood.
void noteUnknown(Reading &r) {
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        if (!r.free(i) || !(r.all[i].bracket || !r.quoted.empty()))
            continue;
        if (!r.is(i, "contain") && !r.is(i, "with") && !r.is(i, "and") && !r.is(i, "/"))
            r.unknown += (r.unknown.empty() ? "" : " ") + r.all[i].typed;
        r.take(i, i + 1);
    }
}

void takeReally(Reading &r) {
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        if (!r.is(i, "really"))
            continue;
        r.really = true;
        r.take(i, i + 1);
    }
}

} // namespace

bool isLasting(const CatalogueThing &entry) {
    static constexpr std::array groups{"pans", "tableware", "tools", "appliances"};
    return std::find(groups.begin(), groups.end(), entry.usual.group) != groups.end();
}

std::string nameOf(const Reading &r) {
    if (!r.quoted.empty())
        return r.quoted;
    std::string out;
    bool glued = false;
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const bool inName = r.nameTo > r.nameFrom && i >= r.nameFrom && i < r.nameTo;
        if (r.taken[i] && !inName)
            continue;
        out += (out.empty() ? "" : glued ? "-" : " ") + r.all[i].typed;
        glued = r.all[i].glued;
    }
    return out;
}

Reading readingOf(const std::string &text, const Lexicon &lexicon) {
    Reading r;
    addText(r, text);
    takeReally(r);
    takeLike(r, lexicon);
    if (!r.quoted.empty() && r.like.empty())
        r.entry = lexicon.find(r.quoted);
    else if (r.quoted.empty() && r.like.empty())
        matchCatalogue(r, lexicon);
    takeClaims(r);
    takeDates(r);
    takeFrequency(r);
    takeNotes(r);
    takeSizes(r);
    takePack(r);
    takeCount(r);
    noteSoundAlike(r);
    takeFillers(r);
    takeFacts(r);
    takeCount(r); // behind what was taken now
    noteUnknown(r);
    return r;
}

} // namespace model::words
