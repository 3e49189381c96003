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
        const bool free = word.low.ends_with("free") && word.low.size() > 4;
        const std::string stem = word.low.substr(0, word.low.size() - (word.low.size() > 4 ? 4 : 0));
        if ((free || word.low.ends_with("less")) && !allergenFrom(singular(stem)).empty()) {
            addWords(r, stem + " free", bracket); // "glutenfree", "eggless"
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

/// True behind "in" or "with": what follows is not what it is, "mackerel in tomato sauce", "pan with lid".
bool isAddition(const Reading &r, std::size_t from) {
    for (std::size_t i = 1; i < from; ++i) {
        const bool inches = r.is(i, "in") && numberFrom(r.all[i - 1].low); // "9 in cake tin"
        const bool holds = r.is(i, "with") && packShape(r.all[i - 1].single) && from == i + 1 &&
                           r.single(from) != "lid"; // "jar with rice"
        if ((r.is(i, "in") || r.is(i, "with")) && !r.all[i].bracket && !inches && !holds)
            return true;
    }
    return false;
}

/// "jam jar of rice": a name that holds something else is what it stands in. Behind it, or where it began.
std::size_t containerEnd(const Reading &r, std::size_t from, const Lexicon &lexicon) {
    for (std::size_t to = std::min(r.all.size(), from + lexicon.longest()); to > from + 1; --to) {
        const auto *food = lexicon.find(joined(r.all, from, to - 1)); // "milk bottle of bleach"
        const bool known = lexicon.find(joined(r.all, from, to)) != nullptr ||
                           (food != nullptr && food->usual.klass == Klass::Food);
        const bool with = r.is(to, "with") && r.single(to + 1) != "lid" && r.single(to - 1) != "tin";
        if (packShape(r.single(to - 1)) && (r.is(to, "of") || with) && r.free(to + 1) &&
            !numberFrom(r.low(to + 1)) && known && !numberFrom(r.low(from)))
            return to;
    }
    return from;
}

/// "in a milk bottle", "in an old coffee tin": words between "in" and the pack that are no size and no stuff
/// tell what it held before. Behind the pack, or where it began.
std::size_t packedInEnd(const Reading &r, std::size_t in) {
    static constexpr std::array plain{"a",     "an",    "the", "its",    "one",
                                      "small", "large", "big", "medium", "tall"};
    bool other = false;
    const bool inches = numberFrom(r.all[in - 1].low).has_value();
    for (std::size_t i = in + 1; r.is(in, "in") && !inches && i < r.all.size() && i <= in + 4 && r.free(i);
         ++i) {
        if (r.all[i].bracket || numberFrom(r.all[i].low))
            break;
        if (other && packShape(r.single(i)))
            return i + 1;
        other = other ||
                (!isFact(r.all[i].low) && std::find(plain.begin(), plain.end(), r.all[i].low) == plain.end());
    }
    return in;
}

/// What a thing is kept in that once held another one: a note, and its shape.
void takeContainers(Reading &r, const Lexicon &lexicon) {
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const std::size_t holds = r.free(i) ? containerEnd(r, i, lexicon) : i;
        const std::size_t end = holds > i ? holds : i > 0 ? packedInEnd(r, i) : i;
        if (end == i)
            continue;
        r.pack = packShape(r.single(end - 1));
        if (isFact(r.all[i].low) && end == i + 2)
            r.facts.push_back(r.all[i].low); // "glass jar of coffee"
        else
            r.notes.push_back(joined(r.all, i, end));
        r.take(i, holds > i ? end + 1 : end);
    }
}

/// "I can see a bag of flour" has no can.
void takeSeen(Reading &r) {
    static constexpr std::array who{"i", "you", "we", "she", "he", "they"};
    for (std::size_t i = 1; i < r.all.size(); ++i) {
        const bool said = std::find(who.begin(), who.end(), r.all[i - 1].low) != who.end();
        if (said && r.is(i, "can") && !r.all[i].bracket)
            r.take(i - 1, i + (r.is(i + 1, "see") || r.is(i + 1, "find") || r.is(i + 1, "have") ? 2 : 1));
    }
}

/// The longest run of words that is a catalogue name; of equal ones the last.
void matchCatalogue(Reading &r, const Lexicon &lexicon) {
    const auto claims = claimsIn(r);
    const std::size_t longest = std::min(r.all.size(), lexicon.longest() + 2);
    for (std::size_t length = longest; length > 0 && r.entry == nullptr; --length) {
        for (std::size_t from = 0; from + length <= r.all.size(); ++from) {
            const bool denied = from > 0 && (r.is(from - 1, "no") || r.is(from - 1, "without"));
            const std::size_t to = from + length;
            const bool holds = length == 1 && r.is(to, "of") && r.free(to + 1);           // "tray of 30 eggs"
            const bool lacks = length == 1 && r.is(to, "free") && !r.is(to + 1, "range"); // "sugar-free"
            bool whole =
                !denied && !isAddition(r, from) && !holds && !lacks && !cuts(claims, from, from + length);
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
        const bool looks =
            at > 0 && (r.is(at - 1, "looks") || r.is(at - 1, "something") || r.is(at - 1, "smells"));
        if (!r.is(at, "like") || looks || (at > 0 && r.all[at - 1].glued))
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
    takeSeen(r);
    takeLike(r, lexicon);
    if (r.quoted.empty() && r.like.empty())
        takeContainers(r, lexicon);
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
