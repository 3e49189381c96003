#include "model/contents_reading.h"
#include <algorithm>
#include <array>

namespace model::words {
namespace {

/// Words of a claim or a warning, from the first to behind the last.
struct Said {
    std::size_t from = 0, to = 0;
    std::vector<std::size_t> allergens;
    bool claim = false;
    bool contested = false; // "not gluten free", "gluten free?"
};

bool isAllergen(const Reading &r, std::size_t i) {
    return i < r.all.size() && !allergenFrom(r.all[i].single).empty();
}

bool isWord(const Reading &r, std::size_t i, const char *low) {
    return i < r.all.size() && r.all[i].low == low;
}

/// Allergens in a row, with "and", "or" or "/" between them: "nuts and milk".
Said listFrom(const Reading &r, std::size_t i) {
    Said out{i, i, {}, false, false};
    while (isAllergen(r, out.to += isWord(r, out.to, "tree") ? 1 : 0)) { // "tree nuts"
        out.allergens.push_back(out.to++);
        const bool more = isWord(r, out.to, "and") || isWord(r, out.to, "or") || isWord(r, out.to, "/");
        if (!more || !isAllergen(r, out.to + 1))
            break;
        ++out.to;
    }
    return out;
}

/// "may contain traces of nuts": the number of words before the allergens.
std::size_t warning(const Reading &r, std::size_t i) {
    std::size_t at = i;
    if (isWord(r, at, "may") && (isWord(r, at + 1, "contain") || isWord(r, at + 1, "contains")))
        at += 2;
    if (isWord(r, at, "traces"))
        at += isWord(r, at + 1, "of") ? 2 : 1;
    return at - i;
}

/// "no", "without", "non-", "free from", "contains no", "does not contain": the words before the allergens.
std::size_t denial(const Reading &r, std::size_t i) {
    if (isWord(r, i, "no") || isWord(r, i, "without") || isWord(r, i, "non") || isWord(r, i, "zero"))
        return 1;
    if (isWord(r, i, "free") && (isWord(r, i + 1, "from") || isWord(r, i + 1, "of")))
        return 2;
    const auto contains = [&](std::size_t at) { return at < r.all.size() && r.all[at].single == "contain"; };
    if ((contains(i) || isWord(r, i, "with") || isWord(r, i, "has")) && isWord(r, i + 1, "no"))
        return 2;
    const std::size_t at = isWord(r, i, "does") || isWord(r, i, "do") ? i + 1 : i;
    const bool denies = isWord(r, at, "not") || isWord(r, at, "doesnt") || isWord(r, at, "never");
    if (denies)
        return contains(at + 1) || isWord(r, at + 1, "with") ? at + 2 - i : at + 1 - i;
    return 0;
}

/// Words before an allergen and "free" that deny it or leave it open, "not", "no longer", "maybe"; 0: none.
std::size_t contest(const Reading &r, std::size_t i) {
    static constexpr std::array contests{"not",      "isnt",  "arent",    "never",    "no",         "non",
                                         "hardly",   "maybe", "perhaps",  "possibly", "probably",   "unsure",
                                         "might",    "doubt", "whether",  "if",       "supposedly", "used",
                                         "should",   "think", "thought",  "cannot",   "cant",       "wasnt",
                                         "supposed", "once",  "hopefully"};
    static constexpr std::array links{"is",  "are",         "it",   "its",    "be",
                                      "may", "longer",      "sure", "always", "really",
                                      "to",  "necessarily", "was",  "been",   "this"};
    const auto among = [](const auto &names, const std::string &low) {
        return std::find(names.begin(), names.end(), low) != names.end();
    };
    bool contested = false;
    std::size_t at = i;
    for (; at < r.all.size(); ++at) {
        const bool said = among(contests, r.all[at].low);
        const bool asks = isWord(r, at, "is") && (isWord(r, at + 1, "it") || isWord(r, at + 1, "this"));
        contested = contested || said || asks;
        if (!said && !among(links, r.all[at].low))
            break;
    }
    return contested ? at - i : 0;
}

bool isSaid(const Said &said) {
    return !said.allergens.empty();
}

Said saidAt(const Reading &r, std::size_t i) {
    if (const std::size_t ahead = contest(r, i); ahead > 0) {
        Said said = listFrom(r, i + ahead);
        if (isSaid(said) && isWord(r, said.to, "free")) {
            said.from = i;
            ++said.to;
            said.contested = true;
            return said;
        }
    }
    if (const std::size_t ahead = warning(r, i); ahead > 0) {
        Said said = listFrom(r, i + ahead);
        said.from = i;
        return said;
    }
    if (const std::size_t ahead = denial(r, i); ahead > 0) {
        Said said = listFrom(r, i + ahead);
        said.from = i;
        said.claim = true;
        if (isSaid(said))
            return said;
    }
    if ((i < r.all.size() && r.all[i].single == "contain") || isWord(r, i, "containing") ||
        isWord(r, i, "allergens")) {
        Said said = listFrom(r, i + 1);
        said.from = i;
        return said;
    }
    Said said = listFrom(r, i);
    if (!said.allergens.empty() && isWord(r, said.to, "free") && !isWord(r, said.to + 1, "range")) {
        ++said.to;
        said.claim = true;
        for (std::size_t k = said.from; k < said.to; ++k)
            said.contested = said.contested || r.all[k].asked;
        said.contested = said.contested || r.all.back().asked; // "nut free muesli?"
        return said;
    }
    return {};
}

/// What the pack of a vegan thing says it is made without.
constexpr std::array veganWithout{"milk", "eggs", "fish", "crustaceans", "molluscs"};

/// "vegan" stays a word of the name, unless it stands beside a name in quotation marks or in brackets.
void takeVegan(Reading &r) {
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const bool denied =
            i > 0 && (isWord(r, i - 1, "not") || isWord(r, i - 1, "non") || isWord(r, i - 1, "no"));
        if (r.all[i].low != "vegan" || denied)
            continue;
        for (const char *key : veganWithout)
            r.claims.push_back({key, "vegan", "vegan"});
        if (r.free(i) && (r.all[i].bracket || !r.quoted.empty()))
            r.take(i, i + 1);
        return;
    }
}

} // namespace

std::vector<WordSpan> claimsIn(const Reading &r) {
    std::vector<WordSpan> out;
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const Said said = saidAt(r, i);
        if (!isSaid(said))
            continue;
        out.push_back({said.from, said.to, said.contested});
        i = said.to - 1;
    }
    return out;
}

bool cuts(const std::vector<WordSpan> &claims, std::size_t from, std::size_t to) {
    return std::any_of(claims.begin(), claims.end(), [&](const WordSpan &claim) {
        const bool apart = claim.to <= from || claim.from >= to;
        const bool within = !claim.contested && claim.from >= from && claim.to <= to;
        return !apart && !within;
    });
}

void takeClaims(Reading &r) {
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const Said said = saidAt(r, i);
        if (!isSaid(said))
            continue;
        const bool named = r.taken[i];
        if (said.contested) {
            r.contested = true;
            r.unknown += (r.unknown.empty() ? "" : " ") + joined(r.all, said.from, said.to);
            r.take(said.from, said.to);
            i = said.to - 1;
            continue;
        }
        const bool contains =
            !said.claim && (r.all[i].low.starts_with("contain") || r.all[i].low == "allergens");
        for (const auto at : said.allergens) {
            const std::string key = allergenFrom(r.all[at].single);
            if (said.claim)
                r.claims.push_back(
                    {key, r.all[at].single + "-free",
                     isWord(r, said.to - 1, "free") ? r.all[at].low + " free" : "no " + r.all[at].low});
            else if (contains && !named)
                r.facts.push_back(key);
            else if (!named)
                r.mayContain.push_back(key);
        }
        if (!named)
            r.take(said.from, said.to);
        i = said.to - 1;
    }
    takeVegan(r);
}

namespace {

/// "frozen raspberries": what an unknown name begins with is said of the thing and stays in its name.
void noteFirstFact(Reading &r) {
    std::size_t at = 0;
    while (at < r.all.size() && !(r.free(at) && !r.all[at].bracket))
        ++at;
    if (r.free(at) && r.free(at + 1) && isFact(r.all[at].low) && r.all[at].low != "hot" && !r.compound(at))
        r.facts.push_back(r.all[at].low);
}

} // namespace

void takeFacts(Reading &r) {
    const bool named = r.nameTo > r.nameFrom || !r.quoted.empty();
    const auto already = static_cast<long>(r.facts.size());
    for (std::size_t i = r.all.size(); i-- > 0;) {
        if (!r.free(i))
            continue;
        const std::string single = r.all[i].single;
        const bool inBracket = r.all[i].bracket;
        const bool known = isFact(r.all[i].low) || !allergenFrom(single).empty() ||
                           (inBracket && (anyShape(single) || single == "cupboard"));
        // in front of the name it belongs to the name as well: "plastic cups", "almond biscuits"
        const bool front = !inBracket && (named ? i < r.nameFrom : false) && r.low(i) != "heavy" &&
                           r.low(i) != "hot" && r.low(i) != "open" && r.low(i) != "opened";
        bool first = !named && !inBracket; // an unknown name keeps its first word, whatever it is
        for (std::size_t k = 0; k < i; ++k)
            first = first && !(r.free(k) && !r.all[k].bracket);
        const bool joint = i > 0 && (r.is(i - 1, "and") || r.is(i - 1, "&") || r.is(i - 1, "/"));
        const bool noun = !named && i >= 2 && r.free(i - 1) && r.all[i - 2].glued; // "heavy-duty foil"
        const bool ofTool = front && !allergenFrom(single).empty() && r.entry != nullptr &&
                            r.entry->usual.klass != Klass::Food; // "egg whisk"
        if (ofTool)
            continue;
        if (!known || first || noun || r.compound(i) || (joint && !inBracket)) {
            if (!named && !inBracket)
                return noteFirstFact(r);
            continue;
        }
        if (r.low(i) == "open" || r.low(i) == "opened")
            r.notes.emplace_back("open");
        else
            r.facts.insert(r.facts.begin() + already, isFact(r.all[i].low) ? r.all[i].low : single);
        if (!front || (r.nameFrom != i + 1 && !r.free(i + 1))) // "egg fried rice" keeps its egg
            r.take(i, i + 1);
    }
}

} // namespace model::words
