#include "model/contents_pieces.h"
#include "model/contents_text.h"
#include "model/sentence.h"
#include "model/spoken_numbers.h"
#include <algorithm>
#include <array>

namespace model::words {
namespace {

constexpr std::size_t longest = 200; // a longer piece says nothing of the one before

template<std::size_t Size> bool isOneOf(const std::string &low, const std::array<const char *, Size> &names) {
    return std::find(names.begin(), names.end(), low) != names.end();
}

/// "daily", "no gluten", "4": nothing in it that could be a name, and nothing that was said already.
bool saysMore(const Reading &r, const std::string &before, const Lexicon &lexicon) {
    if (r.all.empty() || r.pack || !r.unknown.empty())
        return false;
    const Reading first = readingOf(before, lexicon);
    const bool again = (!r.counts.empty() && !first.counts.empty()) || (r.uses && first.uses) ||
                       (!r.sizes.empty() && !first.sizes.empty());
    return !again;
}

/// "tomatoes, tinned": with the name before it the name of a known thing, and no thing itself.
bool endsName(const Reading &r, const std::string &before, const Lexicon &lexicon) {
    const std::string name = r.all.size() == 1 ? nameOf(readingOf(before, lexicon)) : std::string();
    return !name.empty() && lexicon.findTurned(r.all.front().typed + " " + name) != nullptr;
}

/// Says something of the thing before it, and is no thing.
bool belongs(const std::string &piece, const std::string &before, const Lexicon &lexicon) {
    if (piece.size() > longest || before.size() > longest)
        return false;
    if (isDateAlone(piece))
        return true;
    const Reading r = readingOf(piece, lexicon);
    if (r.entry != nullptr || !r.quoted.empty())
        return false;
    return nameOf(r).empty() ? saysMore(r, before, lexicon) : endsName(r, before, lexicon);
}

bool isAllergen(const std::string &piece) {
    const auto all = wordsOf(piece);
    return !all.empty() && std::all_of(all.begin(), all.end(), [](const Word &word) {
        return word.low == "and" || word.low == "or" || !allergenFrom(word.single).empty();
    });
}

/// "biscuits contain milk", "may contain nuts": an allergen that was said ends it, and more of them may
/// follow.
bool endsWithAllergens(const std::string &piece) {
    const auto all = wordsOf(piece);
    std::size_t at = all.size();
    while (at > 0 && (all[at - 1].low == "and" || !allergenFrom(all[at - 1].single).empty()))
        --at;
    return at > 0 && at < all.size() &&
           (all[at - 1].single == "contain" ||
            isOneOf(all[at - 1].low, std::array{"containing", "allergens", "of"}));
}

/// Words that take back what was said: "make that", "correction", "no" before a number; 0: none.
std::size_t correctionAt(const std::string &piece) {
    const auto all = wordsOf(piece);
    const auto is = [&](std::size_t i, const char *low) { return i < all.size() && all[i].low == low; };
    const std::size_t sorry = is(0, "no") || is(0, "sorry") || is(0, "oh") ? 1 : 0;
    if (is(sorry, "make") && (is(sorry + 1, "that") || is(sorry + 1, "it")))
        return sorry + 2;
    if (is(sorry, "i") && is(sorry + 1, "mean"))
        return sorry + 2;
    if (is(sorry, "correction") || is(sorry, "rather"))
        return sorry + 1;
    return sorry > 0 && sorry < all.size() && numberAt(all, sorry).length > 0 ? sorry : 0;
}

std::string withoutWords(const std::string &piece, std::size_t count) {
    const auto all = wordsOf(piece);
    return joined(all, count, all.size());
}

/// "top shelf: 4 mugs": where it stands, as a note. Else the text as it is.
std::string withHeading(const std::string &piece) {
    static constexpr std::array places{"shelf",  "cupboard", "drawer",  "fridge", "freezer", "larder",
                                       "pantry", "rack",     "worktop", "left",   "right",   "top",
                                       "bottom", "middle",   "door",    "shelves"};
    const auto colon = piece.find(": ");
    if (colon > 40 || piece.find_first_of("\"(") < colon)
        return piece;
    const std::string head = trimmed(piece.substr(0, colon));
    const std::string rest = trimmed(piece.substr(colon + 1));
    const auto all = wordsOf(head);
    const bool place =
        std::any_of(all.begin(), all.end(), [](const Word &word) { return isOneOf(word.low, places); });
    return place && !rest.empty() ? rest + " (note " + head + ")" : piece;
}

bool isNumber(const std::string &piece) {
    const auto all = wordsOf(piece);
    return !all.empty() && numberAt(all, 0).length == all.size();
}

/// "4, tomatoes, 2, beans": where a count stands first, each count belongs to what follows it.
std::vector<std::string> countsFirst(const std::vector<std::string> &all) {
    if (all.size() < 2 || !isNumber(all.front()))
        return all;
    std::vector<std::string> out;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const bool count = isNumber(all[i]) && i + 1 < all.size() && !isNumber(all[i + 1]);
        out.push_back(count ? all[i] + " " + all[i + 1] : all[i]);
        i += count ? 1 : 0;
    }
    return out;
}

/// Pieces from `from` on that may be allergens of the thing before them, or things. Sets `from` behind them.
void addAllergens(Piece &piece, const std::vector<std::string> &all, std::size_t &from,
                  const Lexicon &lexicon) {
    std::size_t end = from;
    std::size_t sure = from; // what is no thing is an allergen, and so is what stands before it
    for (; end < all.size() && isAllergen(all[end]); ++end)
        if (lexicon.find(all[end]) == nullptr)
            sure = end + 1;
    for (; from < sure; ++from)
        piece.text += " and " + all[from];
    if (from == end)
        return;
    const std::string before = piece.text;
    std::string contents = before;
    std::string things; // before it: behind it they would be asked again
    std::string said = piece.text;
    std::string names;
    for (; from < end; ++from) {
        contents += " and " + all[from];
        things += all[from] + "; ";
        said += ", " + all[from];
        names += (names.empty() ? "" : ", ") + all[from];
    }
    piece.doubt = Doubt{Sentence::tr("{1}: in {2}, or by itself?", {names, piece.text}),
                        {{Sentence::tr("in it"), contents}, {Sentence::tr("by itself"), things + before}}};
    piece.text = contents;
    piece.said = said;
}

void correct(Piece &piece, const std::string &next, std::size_t skipped) {
    const std::string rest = withoutWords(next, skipped);
    piece.doubt =
        Doubt{Sentence::tr("{1}: instead of {2}?", {rest, piece.text}),
              {{Sentence::tr("yes, instead"), rest}, {Sentence::tr("no, both"), piece.text + "; " + rest}}};
    piece.said = piece.text + ", " + next;
    piece.text = rest;
}

} // namespace

std::vector<Piece> piecesOf(const std::string &line, const Lexicon &lexicon) {
    const auto all = countsFirst(itemsOf(line));
    std::vector<Piece> out;
    for (std::size_t i = 0; i < all.size();) {
        Piece *before = out.empty() || out.back().doubt ? nullptr : &out.back();
        if (before && endsWithAllergens(before->text) && isAllergen(all[i])) {
            addAllergens(*before, all, i, lexicon);
            continue;
        }
        const std::size_t skipped = before ? correctionAt(all[i]) : 0;
        if (skipped > 0 && skipped < wordsOf(all[i]).size())
            correct(*before, all[i], skipped);
        else if (before && belongs(all[i], before->text, lexicon))
            before->text += " " + all[i];
        else
            out.push_back({withHeading(all[i]), "", {}});
        ++i;
    }
    return out;
}

} // namespace model::words
