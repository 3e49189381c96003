#include "model/contents_reading.h"
#include "model/contents_line.h"
#include <algorithm>
#include <array>
#include <map>

namespace model::words {
namespace {

bool isFact(const std::string &word) {
    static constexpr std::array names{"glass",  "plastic", "metal",    "ceramic", "card",   "paper",
                                      "wood",   "cloth",   "foil",     "hot",     "heavy",  "sharp",
                                      "poison", "hazard",  "medicine", "fridge",  "freezer"};
    return std::find(names.begin(), names.end(), word) != names.end();
}

/// Takes the facts in brackets out of the text, and what stands in quotation marks as the whole name.
std::string withoutBrackets(const std::string &text, Reading &reading) {
    std::string out;
    std::string inner;
    int depth = 0;
    for (const char c : text) {
        if (c == '(') {
            ++depth;
        } else if (c == ')') {
            depth = std::max(0, depth - 1);
            inner += ' ';
        } else {
            (depth > 0 ? inner : out) += c == ',' && depth > 0 ? ' ' : c;
        }
    }
    for (const auto &word : wordsOf(inner))
        reading.facts.push_back(word.single);
    return out;
}

/// "nut free", "no nuts", "may contain nuts".
void takeClaims(Reading &r, std::vector<AllergenWords> &said) {
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const std::string here = allergenFrom(r.all[i].single);
        if (!r.free(i))
            continue;
        if (!here.empty() && r.is(i + 1, "free")) {
            said.push_back({here, true});
            r.item.claim = r.all[i].low + " free";
            r.take(i, i + 2);
        } else if (r.is(i, "no") && r.free(i + 1) && !allergenFrom(r.all[i + 1].single).empty()) {
            said.push_back({allergenFrom(r.all[i + 1].single), true});
            r.item.claim = "no " + r.all[i + 1].low;
            r.take(i, i + 2);
        } else if (r.is(i, "may") && r.is(i + 1, "contain") && r.free(i + 2) &&
                   !allergenFrom(r.all[i + 2].single).empty()) {
            said.push_back({allergenFrom(r.all[i + 2].single), false});
            r.take(i, i + 3);
        }
    }
}

/// The longest run of words that is a catalogue name; of equal ones the last, unless that one names an
/// allergen.
void matchCatalogue(Reading &r) {
    for (std::size_t length = r.all.size(); length > 0 && r.entry == nullptr; --length) {
        for (std::size_t from = 0; from + length <= r.all.size(); ++from) {
            std::string name;
            bool whole = true;
            for (std::size_t i = from; i < from + length; ++i) {
                whole = whole && r.free(i);
                name += (name.empty() ? "" : " ") + r.all[i].typed;
            }
            const auto *found = whole ? findInCatalogue(name) : nullptr;
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

std::optional<double> timesAWeek(double times, const std::string &unit) {
    if (unit == "day")
        return times * 7;
    if (unit == "week")
        return times;
    if (unit == "month")
        return times * 12 / 52;
    return std::nullopt;
}

/// "3/week" in one word.
std::optional<double> slashed(const std::string &word) {
    const auto slash = word.find('/');
    if (slash == std::string::npos)
        return std::nullopt;
    const auto times = numberFrom(word.substr(0, slash));
    return times ? timesAWeek(*times, singular(word.substr(slash + 1))) : std::nullopt;
}

std::optional<double> oftenWord(const std::string &word) {
    if (word == "daily")
        return 7;
    if (word == "weekly")
        return 1;
    if (word == "monthly")
        return 12.0 / 52;
    if (word == "rarely")
        return rarelyPerWeek;
    return slashed(word);
}

/// "3 per week", "three times a week", "once a week", "every day": uses a week and the number of words.
std::pair<std::optional<double>, std::size_t> oftenPhrase(const Reading &r, std::size_t i) {
    const auto low = [&](std::size_t k) { return r.free(k) ? r.all[k].low : std::string(); };
    const auto unit = [&](std::size_t k) { return r.free(k) ? r.all[k].single : std::string(); };
    if (low(i) == "every")
        return {timesAWeek(1, unit(i + 1)), 2};
    std::optional<double> times = numberFrom(low(i));
    std::size_t next = i + 1;
    if (low(i) == "once" || low(i) == "twice")
        times = low(i) == "once" ? 1 : 2;
    else if (low(next) == "times" || low(next) == "time")
        ++next;
    else if (low(next) != "per" && low(next) != "/")
        return {};
    if (!times || (low(next) != "a" && low(next) != "per" && low(next) != "/"))
        return {};
    return {timesAWeek(*times, unit(next + 1)), next + 2 - i};
}

void takeFrequency(Reading &r) {
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        if (!r.free(i))
            continue;
        if (const auto uses = oftenWord(r.all[i].low)) {
            r.uses = uses;
            r.take(i, i + 1);
        } else if (const auto [phrase, length] = oftenPhrase(r, i); phrase) {
            r.uses = phrase;
            r.take(i, i + length);
        }
    }
}

void takeSize(Reading &r) {
    for (std::size_t i = 0; i + 1 < r.all.size(); ++i) {
        if (!r.free(i) || !r.free(i + 1) || sizeUnit(r.all[i + 1].low).empty())
            continue;
        if (const auto value = numberFrom(r.all[i].low)) {
            r.size = value;
            r.unit = sizeUnit(r.all[i + 1].low);
            r.item.size = r.all[i].typed + " " + r.unit;
            std::replace(r.item.size.begin(), r.item.size.end(), ',', '.');
            r.take(i, i + 2);
            return;
        }
    }
}

void takePack(Reading &r) {
    static const std::map<std::string, Shape> packs{
        {"tin", Shape::Can}, {"can", Shape::Can},   {"jar", Shape::Jar},          {"bottle", Shape::Bottle},
        {"bag", Shape::Bag}, {"box", Shape::Box},   {"carton", Shape::Box},       {"packet", Shape::Packet},
        {"tub", Shape::Tub}, {"tube", Shape::Tube}, {"canister", Shape::Canister}};
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const auto found = packs.find(r.all[i].single);
        const bool bare = r.entry == nullptr && !r.is(i + 1, "of");
        if (!r.free(i) || found == packs.end() || bare)
            continue;
        r.pack = found->second;
        r.take(i, r.is(i + 1, "of") ? i + 2 : i + 1);
        return;
    }
}

/// How many: in front or at the end, or beside the catalogue name.
void takeCount(Reading &r) {
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const bool atEdge = r.entry != nullptr || i == 0 || i + 1 == r.all.size() || r.taken[i - 1] ||
                            r.taken[i + 1] || r.is(i, "x");
        if (!r.free(i) || !atEdge)
            continue;
        std::size_t at = i;
        double times = 1;
        if (r.is(at, "half") && (r.is(at + 1, "a") || r.is(at + 1, "dozen"))) {
            times = 0.5;
            at += r.is(at + 1, "a") ? 2 : 1;
        } else if ((r.is(at, "a") && r.is(at + 1, "dozen")) || (r.is(at, "x") && r.free(at + 1))) {
            ++at;
        }
        const auto value = r.free(at) ? numberFrom(r.all[at].low) : std::nullopt;
        const bool article = r.is(at, "a") || r.is(at, "an");
        if (!value || (article && at > 0 && !r.taken[at - 1]))
            continue;
        r.counts.push_back(*value * times);
        r.take(i, at + 1);
        if (r.is(at + 1, "x"))
            r.take(at + 1, at + 2);
    }
}

void takeFacts(Reading &r) {
    for (std::size_t i = r.all.size(); i-- > 0;) {
        if (!r.free(i))
            continue;
        const bool known = isFact(r.all[i].low) || !allergenFrom(r.all[i].single).empty();
        bool first = true; // an unknown name keeps its first word, whatever it is
        for (std::size_t k = 0; k < i; ++k)
            first = first && !r.free(k);
        if (!known || (r.entry == nullptr && first)) {
            if (r.entry == nullptr)
                return;
            continue;
        }
        r.facts.push_back(r.all[i].single);
        r.take(i, i + 1);
    }
}

/// "for tuna": for, or four? Asked, never taken.
void askSoundAlikeCount(Reading &r) {
    static const std::map<std::string, std::string> sounds{
        {"for", "4"}, {"to", "2"}, {"too", "2"}, {"ate", "8"}, {"won", "1"}};
    if (r.all.size() < 2 || !r.free(0) || !r.counts.empty())
        return;
    const auto found = sounds.find(r.all[0].low);
    if (found == sounds.end())
        return;
    r.doubts.push_back(r.all[0].typed + ": " + found->second + " of them?");
    r.take(0, 1);
}

} // namespace

Reading readingOf(const std::string &text, std::vector<AllergenWords> &said) {
    Reading r;
    const std::string rest = withoutBrackets(text, r);
    std::string plain;
    std::copy_if(rest.begin(), rest.end(), std::back_inserter(plain), [](char c) { return c != '"'; });
    r.all = wordsOf(plain);
    r.taken.assign(r.all.size(), false);
    if (rest != plain) { // a name in quotation marks is taken as it stands
        r.entry = findInCatalogue(plain);
        r.nameTo = r.entry != nullptr ? r.all.size() : 0;
        return r;
    }
    takeClaims(r, said);
    matchCatalogue(r);
    takeFrequency(r);
    takeSize(r);
    takePack(r);
    takeCount(r);
    askSoundAlikeCount(r);
    takeFacts(r);
    if (r.entry == nullptr) // "for tuna": the name stands behind what was taken
        takeCount(r);
    return r;
}

} // namespace model::words
