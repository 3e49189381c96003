#include "model/contents_line.h"
#include "model/contents_reading.h"
#include <algorithm>
#include <cmath>
#include <map>

namespace model::words {
namespace {

void addAllergen(Thing &thing, const std::string &key, AllergenState state, const std::string &says) {
    for (auto &fact : thing.allergens) {
        if (fact.allergen != key)
            continue;
        if (state == AllergenState::Contains) {
            fact.state = state;
            thing.usual.erase("allergen:" + key);
        }
        if (!says.empty())
            fact.readBy = says;
        return;
    }
    thing.allergens.push_back({key, state, says});
}

std::string nameOf(const Reading &r) {
    std::string out;
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const bool inName = r.entry != nullptr && i >= r.nameFrom && i < r.nameTo;
        if (inName || !r.taken[i])
            out += (out.empty() ? "" : " ") + r.all[i].typed;
    }
    return out;
}

/// Words left beside a catalogue name: two things in one, or another thing than the match.
void askAboutRest(Reading &r) {
    std::string rest;
    bool known = false;
    bool joined = false;
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        if (r.taken[i])
            continue;
        joined = joined || r.all[i].low == "and";
        known = known || findInCatalogue(r.all[i].typed) != nullptr;
        rest += (rest.empty() ? "" : " ") + r.all[i].typed;
    }
    if (r.entry == nullptr || rest.empty())
        return;
    if (joined)
        r.doubts.push_back(nameOf(r) + ": one thing, or two?");
    else if (known)
        r.doubts.push_back(nameOf(r) + ": the same as " + r.entry->name + "?");
}

std::size_t distance(const std::string &a, const std::string &b) {
    std::vector<std::size_t> row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j)
        row[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t before = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t above = row[j];
            const std::size_t change = before + (a[i - 1] == b[j - 1] ? 0 : 1);
            row[j] = std::min({change, above + 1, row[j - 1] + 1});
            before = above;
        }
    }
    return row[b.size()];
}

std::vector<std::pair<std::string, const CatalogueThing *>> comparableNames() {
    std::vector<std::pair<std::string, const CatalogueThing *>> out;
    for (const auto &entry : catalogue()) {
        out.emplace_back(comparable(entry.name), &entry);
        for (const auto &other : entry.others)
            out.emplace_back(comparable(other), &entry);
    }
    return out;
}

/// A catalogue thing whose name is spelt or sounds nearly so; nullptr if there is none, or more than one.
const CatalogueThing *nearMiss(const std::string &name) {
    static const auto known = comparableNames();
    const std::string wanted = comparable(name);
    if (wanted == "flower")
        return findInCatalogue("flour");
    const CatalogueThing *found = nullptr;
    for (const auto &[other, entry] : known) {
        const std::size_t longer = std::max(wanted.size(), other.size());
        const std::size_t shorter = std::min(wanted.size(), other.size());
        const bool close = shorter >= 5 && longer - shorter <= 1 && distance(wanted, other) <= 1;
        const bool begins = wanted.size() >= 5 && other.starts_with(wanted + " ");
        if (!close && !begins)
            continue;
        if (found != nullptr && found != entry)
            return nullptr;
        found = entry;
    }
    return found;
}

double inBaseUnits(double value, const std::string &unit) {
    return unit == "kg" || unit == "l" ? value * 1000 : value;
}

/// Size in g or ml of a pack as the catalogue writes it; none for "box 6 eggs".
std::optional<double> packSize(const std::string &pack) {
    const auto parts = wordsOf(pack);
    for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
        const auto value = numberFrom(parts[i].low);
        if (value && !sizeUnit(parts[i + 1].low).empty())
            return inBaseUnits(*value, sizeUnit(parts[i + 1].low));
    }
    return std::nullopt;
}

std::string shortNumber(double value) {
    std::string text = std::to_string(value);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
        text.pop_back();
    return text;
}

/// "2400 g tins": 2 tins of 400 g, or one of 2400 g?
bool gluedCount(Reading &r, double usual) {
    const std::string digits = shortNumber(*r.size);
    const std::string pack = shortNumber(r.unit == "kg" || r.unit == "l" ? usual / 1000 : usual);
    if (!r.counts.empty() || digits.size() != pack.size() + 1 || digits.substr(1) != pack)
        return false;
    r.doubts.push_back(digits + " " + r.unit + ": " + digits.substr(0, 1) + " of " + pack + " " + r.unit +
                       ", or one of " + digits + " " + r.unit + "?");
    return true;
}

void scaleToSize(Reading &r) {
    Thing &thing = r.item.thing;
    if (!r.size)
        return;
    const double typed = inBaseUnits(*r.size, r.unit);
    const auto usual = r.entry != nullptr ? packSize(r.entry->pack) : std::nullopt;
    if (!usual) {
        thing.weight = Kilograms{typed / 1000};
        return;
    }
    if (gluedCount(r, *usual))
        return;
    const double ratio = typed / *usual;
    thing.weight = Kilograms{thing.weight->value * ratio};
    if (ratio > 6 || ratio < 1.0 / 6)
        r.doubts.push_back(r.item.size + ": usual is " + r.entry->pack + ". Right?");
    const double side = std::cbrt(ratio);
    for (auto *length : {&thing.width, &thing.depth, &thing.height})
        (*length)->value = {std::round((*length)->value.value * side * 10) / 10};
}

void applyFact(Thing &thing, const std::string &word, std::vector<std::string> &doubts) {
    static const std::map<std::string, Surface> materials{
        {"glass", Surface::Glass},     {"plastic", Surface::Plastic}, {"metal", Surface::Metal},
        {"ceramic", Surface::Ceramic}, {"card", Surface::Card},       {"paper", Surface::Paper},
        {"wood", Surface::Wood},       {"cloth", Surface::Cloth},     {"foil", Surface::Foil}};
    if (const auto key = allergenFrom(word); !key.empty()) {
        addAllergen(thing, key, AllergenState::Contains, "");
    } else if (const auto found = materials.find(word); found != materials.end()) {
        thing.surface = found->second;
        thing.glass = word == "glass" || word == "ceramic";
        thing.usual.erase("surface");
    } else if (word == "hot") {
        thing.hotUse = true;
    } else if (word == "sharp") {
        thing.sharp = true;
    } else if (word == "poison" || word == "hazard") {
        thing.hazard = true;
    } else if (word == "medicine") {
        thing.medicine = true;
    } else if (word == "fridge" || word == "freezer") {
        thing.storage = word == "fridge" ? Storage::Fridge : Storage::Freezer;
        thing.usual.erase("storage");
    } else if (word == "heavy") {
        if (!thing.weight || thing.weight->value < heavyKg)
            thing.weight = Kilograms{heavyKg};
        thing.usual.insert("weight");
    } else {
        doubts.push_back(word + ": not understood. What is it?");
    }
}

void applyCounts(Reading &r) {
    if (r.counts.size() > 1)
        r.doubts.push_back("Two counts: " + shortNumber(r.counts[0]) + " or " + shortNumber(r.counts[1]) +
                           "?");
    if (r.counts.empty())
        return;
    const double count = r.counts.front();
    if (count < 1 || count > 999 || count != std::floor(count))
        r.doubts.push_back(shortNumber(count) + " of them?");
    else
        r.item.thing.count = static_cast<int>(count);
}

void applyEntry(Reading &r, const std::string &name) {
    const CatalogueThing *entry = r.entry;
    if (entry == nullptr) {
        entry = nearMiss(name);
        if (entry != nullptr)
            r.doubts.push_back(name + ": " + entry->name + "?");
        else
            r.doubts.emplace_back("shape and size?");
    }
    if (entry != nullptr) {
        r.item.thing = entry->usual;
        r.item.matched = entry->id;
        r.entry = entry;
    } else {
        r.item.thing.group = "other";
        r.item.thing.sub = "other";
    }
    r.item.thing.name = name;
}

} // namespace

ContentsItem parseItem(const std::string &text) {
    std::vector<AllergenWords> said;
    Reading r = readingOf(text, said);
    askAboutRest(r);
    std::string name = nameOf(r);
    if (name.empty())
        name = trimmed(text);
    applyEntry(r, name);
    Thing &thing = r.item.thing;
    if (r.uses) {
        thing.usesPerWeek = r.uses;
        thing.usual.erase("uses");
    }
    if (r.pack) {
        thing.shape = *r.pack;
        thing.usual.erase("shape");
    }
    applyCounts(r);
    scaleToSize(r);
    for (const auto &word : r.facts)
        applyFact(thing, word, r.doubts);
    for (const auto &[allergen, isClaim] : said) {
        if (isClaim)
            addAllergen(thing, allergen, AllergenState::NotChecked,
                        "pack says " + r.item.claim + "; not checked");
        else
            addAllergen(thing, allergen, AllergenState::MayContain, "");
    }
    for (const auto &doubt : r.doubts)
        r.item.doubt += (r.item.doubt.empty() ? "" : " ") + doubt;
    return r.item;
}

} // namespace model::words
