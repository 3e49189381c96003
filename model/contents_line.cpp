#include "model/contents_line.h"
#include "model/contents_facts.h"
#include "model/contents_harm.h"
#include "model/contents_print.h"
#include "model/spoken_numbers.h"
#include <algorithm>
#include <cmath>

namespace model::words {
namespace {

/// Facts as they were said, for whoever asks what was understood.
std::vector<std::string> saidFacts(const Reading &r) {
    LineParts parts = partsOf(r);
    std::vector<std::string> out;
    if (!parts.size.empty())
        out.push_back(parts.size);
    for (const auto &fact : parts.facts) {
        const std::string allergen = allergenFrom(fact);
        out.push_back(allergen.empty() ? fact : allergen);
    }
    for (const auto &allergen : parts.mayContain)
        out.push_back("may contain " + allergen);
    for (const auto &claim : r.claims) {
        if (std::find(out.begin(), out.end(), "claim " + claim.claimed) == out.end())
            out.push_back("claim " + claim.claimed);
    }
    out.insert(out.end(), parts.notes.begin(), parts.notes.end());
    return out;
}

void applyCount(Reading &r, Thing &thing) {
    if (r.counts.size() != 1)
        return;
    const double count = r.counts.front();
    if (count > 0 && count < 1) {
        thing.count = 1;
        r.notes.emplace_back("part used");
    } else if (count >= 1 && count <= 999 && count == std::floor(count)) {
        thing.count = static_cast<int>(count);
    }
}

void applyUsual(const Reading &r, ContentsItem &item, const std::string &name) {
    Thing &thing = item.thing;
    if (r.entry != nullptr) {
        thing = r.entry->usual;
        thing.like = r.entry->name;
        item.matched = r.entry->id;
    } else {
        thing.group = "other";
        thing.sub = "other";
    }
    if (!r.like.empty()) {
        for (auto &fact : thing.allergens) // of another thing: perhaps
            fact.state = AllergenState::MayContain;
    }
    thing.name = name;
}

void applySizes(const Reading &r, ContentsItem &item) {
    Thing &thing = item.thing;
    const bool one = r.sizes.size() == 1;
    if (one)
        item.size = shortNumber(r.sizes.front().first) + " " + r.sizes.front().second;
    const std::string size = one ? item.size : r.sizeClass;
    const bool shaped = r.entry != nullptr || r.pack;
    if (one && !lengthUnit(r.sizes.front().second).empty())
        applyLength(thing, r.sizes.front().first, r.sizes.front().second);
    else if (!size.empty() && shaped)
        applySize(thing, r.entry, size);
    else if (one)
        thing.weight = Kilograms{inBaseUnits(r.sizes.front().first, r.sizes.front().second) / 1000};
}

void applySaid(Reading &r, ContentsItem &item) {
    Thing &thing = item.thing;
    if (r.uses) {
        thing.usesPerWeek = r.uses;
        thing.usual.erase("uses");
    }
    if (r.pack)
        applyShape(thing, *r.pack);
    applyCount(r, thing);
    applySizes(r, item);
    for (const auto &word : r.facts)
        applyFact(thing, word);
    for (const auto &key : r.mayContain)
        addAllergen(thing, key, AllergenState::MayContain, "");
    for (const auto &claim : r.claims) {
        if (item.claim.find(claim.words) == std::string::npos)
            item.claim += (item.claim.empty() ? "" : ", ") + claim.words;
        addAllergen(thing, claim.allergen, AllergenState::NotChecked,
                    "pack says " + claim.words + "; not checked");
    }
    for (const auto &note : r.notes)
        thing.note += (thing.note.empty() ? "" : ", ") + note;
}

/// Words of an amount that another one may follow: "2 small", "one 400 gram", "3 tins".
std::size_t amountAt(const std::vector<Word> &all, std::size_t at) {
    const SpokenNumber number = numberAt(all, at);
    const bool article = all[at].low == "a" || all[at].low == "an";
    std::size_t next = at + (number.length > 0 ? number.length : article ? 1 : 0);
    if (next == at)
        return 0;
    const std::size_t counted = next;
    next += next < all.size() && all[next].low == "x" ? 1 : 0;
    if (const SpokenNumber size = next < all.size() ? numberAt(all, next) : SpokenNumber{};
        size.length > 0 && next + size.length < all.size() && !sizeUnit(all[next + size.length].low).empty())
        next += size.length + 1;
    while (next < all.size() &&
           (all[next].low == "small" || all[next].low == "large" || all[next].low == "big" ||
            all[next].low == "medium" || packShape(all[next].single)))
        ++next;
    const bool measured = next > counted || (counted < all.size() && !sizeUnit(all[counted].low).empty());
    return measured ? next - at : 0;
}

/// Another count and its pack, with no word between: "2 jars", not "400 g".
bool packBegins(const std::vector<Word> &all, std::size_t at) {
    const SpokenNumber number = at < all.size() ? numberAt(all, at) : SpokenNumber{};
    const std::size_t next = at + number.length;
    return number.length > 0 && next < all.size() && packShape(all[next].single).has_value();
}

/// "two tins each of peas and carrots" as one text for each.
std::vector<std::string> eachOf(const std::vector<Word> &all) {
    const SpokenNumber number = all.empty() ? SpokenNumber{} : numberAt(all, 0);
    std::size_t to = std::max(number.length, all.empty() ? 0 : amountAt(all, 0));
    if (to == 0 || to + 2 >= all.size() || all[to].low != "each" || all[to + 1].low != "of")
        return {};
    const std::string amount = joined(all, 0, to);
    std::vector<std::string> out;
    std::size_t from = to + 2;
    for (to = from; to <= all.size(); ++to) {
        if (to < all.size() && all[to].low != "and" && all[to].low != "&" && all[to].low != "plus")
            continue;
        if (to > from)
            out.push_back(amount + " " + joined(all, from, to));
        from = to + 1;
    }
    return out;
}

} // namespace

std::vector<std::string> amountsParted(const std::string &text) {
    if (text.find('"') != std::string::npos || text.find('(') != std::string::npos)
        return {text};
    const auto all = wordsOf(text);
    if (auto shared = eachOf(all); !shared.empty())
        return shared;
    std::vector<std::string> amounts;
    std::size_t at = 0;
    while (at < all.size()) {
        const std::size_t length = amountAt(all, at);
        if (length == 0)
            break;
        amounts.push_back(joined(all, at, at + length));
        at += length;
        if (packBegins(all, at)) // "1 tin 2 jars coconut milk"
            continue;
        const bool more =
            at + 1 < all.size() && (all[at].low == "and" || all[at].low == "plus" || all[at].low == "+");
        if (!more || amountAt(all, at + 1) == 0)
            break;
        ++at;
    }
    if (amounts.size() < 2 || at >= all.size())
        return {text};
    for (auto &amount : amounts)
        amount += " " + joined(all, at, all.size());
    return amounts;
}

ContentsItem parseItem(const std::string &text, const Lexicon &lexicon) {
    Reading r = readingOf(text, lexicon);
    ContentsItem item;
    item.said = text;
    std::string name = nameOf(r);
    if (name.empty())
        name = trimmed(text);
    if (const auto *whole =
            r.unknown.empty() || r.contested ? nullptr : lexicon.findTurned(r.unknown + " " + name)) {
        r.entry = whole; // "beans (baked)"
        name = r.unknown + " " + name;
        r.unknown.clear();
        r.quoted = name;
    }
    std::optional<Doubt> doubt = splitDoubt(r, lexicon);
    auto nameless = nameDoubt(r, name, lexicon);
    if (!doubt)
        doubt = amountDoubt(r);
    if (!doubt)
        doubt = nameless; // what it is comes before what is unlikely of it
    if (!doubt)
        doubt = sizeDoubt(r, r.entry);
    if (!doubt)
        doubt = factDoubt(r);
    if (!doubt && r.entry == nullptr)
        doubt = shapeDoubt(r, name);
    applyUsual(r, item, name);
    addNamedAllergens(item.thing, name, r.entry, lexicon);
    applySaid(r, item);
    item.facts = saidFacts(r);
    if (doubt) {
        item.doubt = doubt->question;
        item.answers = std::move(doubt->answers);
        item.thing.said = text;
        item.thing.doubt = item.doubt;
    }
    return item;
}

} // namespace model::words
