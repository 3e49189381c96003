#include "model/contents.h"
#include "model/contents_line.h"
#include "model/contents_pieces.h"
#include "model/contents_print.h"
#include "model/contents_reading.h"
#include "model/contents_text.h"
#include "model/lexicon.h"
#include "model/sentence.h"
#include <algorithm>

namespace model {
namespace {

/// "tin 400 g" -> "tin 400 grams".
std::string packInWords(const std::string &pack) {
    std::string out;
    for (const auto &word : words::wordsOf(pack)) {
        const std::string unit = word.typed == "g"    ? "grams"
                                 : word.typed == "kg" ? "kilograms"
                                 : word.typed == "ml" ? "millilitres"
                                 : word.typed == "l"  ? "litres"
                                                      : word.typed;
        out += (out.empty() ? "" : " ") + unit;
    }
    return out;
}

const CatalogueThing *entryOf(const std::string &id) {
    const auto &all = catalogue();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const auto &entry) { return entry.id == id; });
    return found == all.end() ? nullptr : &*found;
}

/// "3/week" as it is spoken: "3 times a week".
std::string oftenSpoken(double usesPerWeek) {
    std::string out = words::oftenWords(usesPerWeek);
    const auto slash = out.find('/');
    return slash == std::string::npos
               ? out
               : Sentence::tr("{1} times a {2}", {out.substr(0, slash), out.substr(slash + 1)});
}

std::string factsInWords(const Thing &thing) {
    std::string out;
    for (const auto &fact : thing.allergens) {
        if (thing.usual.contains("allergen:" + fact.allergen))
            continue;
        if (fact.state == AllergenState::Contains)
            out += Sentence::tr(", contains {1}", {fact.allergen});
        if (fact.state == AllergenState::MayContain)
            out += Sentence::tr(", may contain {1}", {fact.allergen});
    }
    return out;
}

std::string sentence(const ContentsItem &item) {
    const Thing &thing = item.thing;
    std::string out = thing.count ? std::to_string(*thing.count) + " " + thing.name : thing.name;
    if (!out.empty() && out[0] >= 'a' && out[0] <= 'z')
        out[0] = static_cast<char>(out[0] - 'a' + 'A');
    if (thing.usesPerWeek && !thing.usual.contains("uses"))
        out += ", " + oftenSpoken(*thing.usesPerWeek);
    if (!thing.count)
        out += Sentence::tr(", count not given");
    if (!item.size.empty())
        out += ", " + packInWords(item.size);
    else if (const auto *entry = entryOf(item.matched); entry != nullptr && thing.count)
        out += Sentence::tr(", usual {1}", {packInWords(entry->pack)});
    out += factsInWords(thing);
    if (!item.claim.empty())
        out += Sentence::tr(", says {1}, not checked", {item.claim});
    if (!item.doubt.empty())
        out += ". " + item.doubt;
    if (out.back() != '?' && out.back() != '.')
        out += ".";
    return out;
}

/// A thing of which something has to be asked before it is read.
ContentsItem asked(const words::Piece &piece, const Lexicon &lexicon) {
    ContentsItem item = words::parseItem(piece.text, lexicon);
    item.said = piece.said;
    item.doubt = piece.doubt->question;
    item.answers = piece.doubt->answers;
    item.thing.said = piece.said;
    item.thing.doubt = item.doubt;
    return item;
}

} // namespace

Result<std::vector<ContentsItem>> parseContents(const std::string &line) {
    return parseContents(line, Lexicon::standard());
}

Result<std::vector<ContentsItem>> parseContents(const std::string &line, const Lexicon &lexicon) {
    std::vector<ContentsItem> out;
    for (const auto &piece : words::piecesOf(words::cleaned(line), lexicon)) {
        if (piece.doubt) {
            out.push_back(asked(piece, lexicon));
            continue;
        }
        for (const auto &amount : words::amountsParted(piece.text))
            out.push_back(words::parseItem(amount, lexicon));
    }
    if (out.empty())
        return fail(ErrorCode::NotUnderstood,
                    Sentence::tr("Nothing on the line. Write what stands on the shelf, for example: 4 "
                                 "chopped tomatoes, rice daily."));
    return out;
}

std::string readContentsBack(const std::vector<ContentsItem> &items) {
    std::string out;
    for (const auto &item : items)
        out += (out.empty() ? "" : " ") + sentence(item);
    return out;
}

} // namespace model
