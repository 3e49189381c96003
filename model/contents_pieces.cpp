#include "model/contents_pieces.h"
#include "model/contents_print.h"
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
    const bool packed = r.pack && r.counts.empty() && r.sizes.empty(); // "jar" may be a thing
    if (r.all.empty() || packed || !r.unknown.empty())
        return false;
    const Reading first = readingOf(before, lexicon);
    if ((r.pack && first.pack) || (!r.sizeClass.empty() && !first.sizeClass.empty()))
        return false;
    const bool again = (!r.counts.empty() && !first.counts.empty()) || (r.uses && first.uses) ||
                       (!r.sizes.empty() && !first.sizes.empty());
    return !again;
}

/// "tomatoes, tinned": with the name before it the name of a known thing, and no thing itself.
bool endsName(const Reading &r, const std::string &before, const Lexicon &lexicon) {
    const bool word = r.all.size() == 1 && allergenFrom(r.all.front().single).empty();
    const std::string name = word ? nameOf(readingOf(before, lexicon)) : std::string();
    return !name.empty() && lexicon.findTurned(r.all.front().typed + " " + name) != nullptr;
}

/// "glass", "frozen", "gluten": what it is made of, or an allergen that is no thing.
bool isFactAlone(const std::string &piece, const Lexicon &lexicon) {
    static constexpr std::array allergens{"gluten", "lactose", "sulphite", "sulfite"};
    const auto all = wordsOf(piece);
    return !all.empty() && lexicon.find(piece) == nullptr &&
           std::all_of(all.begin(), all.end(),
                       [](const Word &word) { return isFact(word.low) || isOneOf(word.single, allergens); });
}

/// "soup, 2 cartons": a number and a pack alone, where the thing before has neither.
bool isPacksOnly(const std::string &piece, const std::string &before, const Lexicon &lexicon) {
    const auto all = wordsOf(piece);
    if (all.size() < 2 || !packShape(all.back().single) || numberAt(all, 0).length != all.size() - 1)
        return false;
    const Reading first = readingOf(before, lexicon);
    return first.counts.empty() && !first.pack;
}

/// Says something of the thing before it, and is no thing.
bool belongs(const std::string &piece, const std::string &before, const Lexicon &lexicon) {
    if (piece.size() > longest || before.size() > longest)
        return false;
    const auto all = wordsOf(piece);
    const bool number = std::any_of(all.begin(), all.end(),
                                    [](const Word &word) { return numberFrom(word.low).has_value(); });
    const bool inside = all.size() > 1 && all.front().low == "in" && !number; // "in the freezer"
    if (isDateAlone(piece) || isPacksOnly(piece, before, lexicon) || inside)
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

enum class Allergens { None, Warned, Denied };

/// "biscuits contain milk", "free from milk": allergens end it, and more of them may follow.
Allergens allergensAtEnd(const std::string &piece) {
    const auto all = wordsOf(piece);
    std::size_t at = all.size();
    while (at > 0 && (all[at - 1].low == "and" || !allergenFrom(all[at - 1].single).empty()))
        --at;
    if (at == 0 || at == all.size())
        return Allergens::None;
    const std::string &low = all[at - 1].low;
    if (isOneOf(low, std::array{"from", "no", "without"}))
        return Allergens::Denied;
    const bool traces = low == "of" && at > 1 && all[at - 2].low == "traces";
    const bool warned = all[at - 1].single == "contain" || low == "containing" || low == "allergens";
    return traces || warned ? Allergens::Warned : Allergens::None;
}

/// "sorry", "correction": what follows takes the place of what was said.
bool isCorrection(const std::string &piece) {
    static constexpr std::array words{"sorry", "correction", "oops", "no", "wait", "i", "mean"};
    const auto all = wordsOf(piece);
    return !all.empty() &&
           std::all_of(all.begin(), all.end(), [](const Word &word) { return isOneOf(word.low, words); });
}

/// "um", "and": nothing at all.
bool isFiller(const std::string &piece) {
    static constexpr std::array words{"um",   "er", "erm",  "hmm",  "and",  "so",
                                      "okay", "ok", "then", "next", "also", "well"};
    const auto all = wordsOf(piece);
    return std::all_of(all.begin(), all.end(), [](const Word &word) { return isOneOf(word.low, words); });
}

/// Words that take back what was said: "make that", "correction", "no" before a number; 0: none.
std::size_t correctionAt(const std::string &piece) {
    const auto all = wordsOf(piece);
    const auto is = [&](std::size_t i, const char *low) { return i < all.size() && all[i].low == low; };
    const auto number = [&](std::size_t i) { return i < all.size() && numberAt(all, i).length > 0; };
    const std::size_t sorry = is(0, "no") || is(0, "sorry") ? 1 : 0;
    if (is(sorry, "make") && (is(sorry + 1, "that") || is(sorry + 1, "it")))
        return sorry + 2;
    if (is(sorry, "i") && is(sorry + 1, "mean"))
        return sorry + 2;
    if (is(sorry, "correction") || (is(sorry, "rather") && number(sorry + 1)))
        return sorry + 1;
    return sorry > 0 && number(sorry) ? sorry : 0;
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
void addAllergens(Piece &piece, const std::vector<std::string> &pieces, std::size_t &from, bool denied,
                  const Lexicon &lexicon) {
    std::vector<std::string> all = pieces;
    std::size_t end = from;
    std::size_t sure = from; // what is no thing is an allergen, and so is what stands before it
    for (; end < all.size() && isAllergen(all[end]); ++end) {
        const bool joint = all[end].starts_with("and ") || all[end].starts_with("or ");
        all[end] = withoutWords(all[end], joint ? 1 : 0);
        if (!denied && lexicon.find(all[end]) == nullptr)
            sure = end + 1;
    }
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

/// `said`: all of what takes back, of which `rest` stands instead.
void correct(Piece &piece, const std::string &said, std::string rest, const Lexicon &lexicon) {
    if (isNumber(rest)) { // "make that 4"
        LineParts parts = partsOf(readingOf(piece.text, lexicon));
        parts.counts = {numberAt(wordsOf(rest), 0).value};
        rest = lineFrom(parts);
    }
    piece.doubt =
        Doubt{Sentence::tr("{1}: instead of {2}?", {rest, piece.text}),
              {{Sentence::tr("yes, instead"), rest}, {Sentence::tr("no, both"), piece.text + "; " + rest}}};
    piece.said = piece.text + ", " + said;
    piece.text = rest;
}

} // namespace

namespace {

/// More of the thing before it, whatever is still to be asked of that.
void addMore(Piece &piece, const std::string &more) {
    piece.text += " " + more;
    if (!piece.doubt)
        return;
    piece.said += ", " + more;
    for (auto &answer : piece.doubt->answers)
        answer.line += " " + more;
}

/// Takes one piece, or several that belong together, from `i` on.
void takePiece(std::vector<Piece> &out, const std::vector<std::string> &all, std::size_t &i,
               const Lexicon &lexicon) {
    Piece *before = out.empty() ? nullptr : &out.back();
    Piece *settled = before != nullptr && !before->doubt ? before : nullptr;
    const Allergens allergens = settled ? allergensAtEnd(settled->text) : Allergens::None;
    const std::size_t skipped = settled ? correctionAt(all[i]) : 0;
    const bool freeFollows =
        i + 1 < all.size() && all[i + 1].find(" free") != std::string::npos; // "gluten, wheat free"
    if (allergens != Allergens::None && isAllergen(all[i])) {
        addAllergens(*settled, all, i, allergens == Allergens::Denied, lexicon);
        return;
    }
    if (settled && isCorrection(all[i]) && i + 1 < all.size()) {
        correct(*settled, all[i] + ", " + all[i + 1], all[i + 1], lexicon);
        ++i;
    } else if (skipped > 0 && skipped < wordsOf(all[i]).size())
        correct(*settled, all[i], withoutWords(all[i], skipped), lexicon);
    else if (before && isFactAlone(all[i], lexicon) && !freeFollows)
        addMore(*before, "(" + all[i] + ")");
    else if (before && belongs(all[i], before->text, lexicon))
        addMore(*before, all[i]);
    else if (all.size() == 1 || !isFiller(all[i]))
        out.push_back({withHeading(all[i]), "", {}});
    ++i;
}

} // namespace

std::vector<Piece> piecesOf(const std::string &line, const Lexicon &lexicon) {
    const auto all = countsFirst(itemsOf(line));
    std::vector<Piece> out;
    for (std::size_t i = 0; i < all.size();)
        takePiece(out, all, i, lexicon);
    return out;
}

} // namespace model::words
