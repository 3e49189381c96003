#include "model/contents_print.h"
#include "model/contents_facts.h"
#include "model/contents_line.h"
#include "model/contents_text.h"
#include "model/sentence.h"
#include <algorithm>
#include <array>
#include <cmath>

namespace model::words {
namespace {

std::string listed(const std::vector<std::string> &list) {
    std::string out;
    for (const auto &word : list)
        out += (out.empty() ? "" : ", ") + word;
    return out;
}

void addOnce(std::vector<std::string> &list, const std::string &word) {
    if (std::find(list.begin(), list.end(), word) == list.end())
        list.push_back(word);
}

bool nearWhole(double value) {
    return value >= 1 && std::abs(value - std::round(value)) < 1e-9;
}

std::string quotedName(const std::string &name) {
    std::string out = name;
    std::replace(out.begin(), out.end(), '"', '\'');
    return "\"" + out + "\"";
}

/// What the line must add to a thing that has the base facts alone, one after the other as parseItem() does.
void addFacts(LineParts &parts, Thing base, const Thing &thing) {
    const auto say = [&](const std::string &word) {
        parts.facts.push_back(word);
        applyFact(base, word);
    };
    if (thing.shape != base.shape || (base.usual.contains("shape") && !thing.usual.contains("shape")))
        say(shapeWord(thing.shape));
    static constexpr std::array materials{"glass", "metal", "plastic", "card", "foil",
                                          "paper", "cloth", "ceramic", "wood"};
    if (thing.surface != base.surface || (base.usual.contains("surface") && !thing.usual.contains("surface")))
        say(materials.at(static_cast<std::size_t>(thing.surface)));
    if (thing.hotUse && !base.hotUse)
        say("hot");
    if (thing.sharp && !base.sharp)
        say("sharp");
    if (thing.hazard && !base.hazard)
        say("hazard");
    const bool lighter = !base.weight || base.weight->value < heavyKg;
    if (thing.weight && thing.weight->value == heavyKg && lighter)
        say("heavy");
    if (thing.medicine && !base.medicine)
        say("medicine");
    if (thing.storage != base.storage || (base.usual.contains("storage") && !thing.usual.contains("storage")))
        say(thing.storage == Storage::Fridge    ? "fridge"
            : thing.storage == Storage::Freezer ? "freezer"
                                                : "cupboard");
    for (const auto &fact : thing.allergens) {
        const bool usual = thing.usual.contains("allergen:" + fact.allergen);
        if (fact.state == AllergenState::Contains && !usual)
            parts.facts.push_back(fact.allergen);
        if (fact.state == AllergenState::MayContain && !usual)
            parts.mayContain.push_back(fact.allergen);
        const auto same =
            std::find_if(base.allergens.begin(), base.allergens.end(), [&](const AllergenFact &other) {
                return other.allergen == fact.allergen && other.readBy == fact.readBy;
            });
        if (const std::string said = "pack says ";
            fact.readBy.starts_with(said) && same == base.allergens.end())
            addOnce(parts.claims, fact.readBy.substr(said.size(), fact.readBy.find(';') - said.size()));
    }
}

/// True if the bare name is read as just this name, with the usual facts of the same thing.
bool plainNameSuffices(const Thing &thing, const Lexicon &lexicon) {
    const auto items = itemsOf(thing.name);
    if (items.size() != 1 || items.front() != thing.name)
        return false;
    const ContentsItem item = parseItem(thing.name, lexicon);
    const bool settled = item.doubt.empty() || (item.matched.empty() && item.doubt.starts_with("shape"));
    const bool said = std::any_of(item.facts.begin(), item.facts.end(),
                                  [](const std::string &fact) { return !fact.starts_with("claim "); });
    const bool bare = !said && !item.thing.count && item.size.empty() && item.thing.note.empty() &&
                      (!item.thing.usesPerWeek || item.thing.usual.contains("uses"));
    return settled && bare && item.thing.name == thing.name && item.thing.like == thing.like;
}

} // namespace

std::string oftenWords(double usesPerWeek) {
    const auto near = [&](double value) { return std::abs(usesPerWeek - value) < 1e-9; };
    if (near(7))
        return "daily";
    if (near(1))
        return "weekly";
    if (near(12.0 / 52))
        return "monthly";
    if (near(rarelyPerWeek))
        return "rarely";
    if (near(1.0 / 52))
        return "yearly";
    if (near(0))
        return "never";
    if (nearWhole(usesPerWeek * 52 / 12) && !nearWhole(usesPerWeek))
        return shortNumber(usesPerWeek * 52 / 12) + "/month";
    if (nearWhole(1 / usesPerWeek))
        return "every " + shortNumber(1 / usesPerWeek) + " weeks";
    return shortNumber(usesPerWeek) + "/week";
}

LineParts partsOf(const Reading &r) {
    LineParts parts;
    parts.counts = r.counts;
    parts.name = nameOf(r);
    parts.like = r.like;
    parts.quoted = !r.quoted.empty();
    parts.uses = r.uses;
    if (!r.sizes.empty())
        parts.size = shortNumber(r.sizes.front().first) + " " + r.sizes.front().second;
    if (r.pack)
        parts.facts.push_back(shapeWord(*r.pack));
    if (!r.sizeClass.empty())
        parts.facts.push_back(r.sizeClass);
    for (const auto &fact : r.facts)
        parts.facts.push_back(fact);
    parts.mayContain = r.mayContain;
    for (const auto &claim : r.claims)
        addOnce(parts.claims, claim.words);
    parts.notes = r.notes;
    parts.unknown = r.unknown;
    parts.really = r.really;
    return parts;
}

std::string lineFrom(const LineParts &parts) {
    std::string out;
    const auto add = [&](const std::string &words) {
        if (!words.empty())
            out += (out.empty() ? "" : " ") + words;
    };
    if (!parts.counts.empty())
        add(shortNumber(parts.counts.front()) + (parts.size.empty() ? "" : " x"));
    add(parts.size);
    add(parts.quoted ? quotedName(parts.name) : parts.name);
    if (!parts.like.empty())
        add("like " + parts.like);
    if (parts.uses)
        add(oftenWords(*parts.uses));
    if (!parts.facts.empty())
        add("(" + listed(parts.facts) + ")");
    for (const auto &claim : parts.claims)
        add(claim.find(' ') == std::string::npos ? "(" + claim + ")"
                                                 : claim); // "(vegan)" is no part of a name
    for (const auto &allergen : parts.mayContain)
        add("may contain " + allergen);
    for (std::size_t i = 1; i < parts.counts.size(); ++i)
        add("x " + shortNumber(parts.counts[i]));
    if (parts.really)
        add("really");
    for (const auto &note : parts.notes)
        add("(note " + note + ")");
    if (!parts.unknown.empty())
        add("(" + parts.unknown + ")");
    return out;
}

} // namespace model::words

namespace model {

using namespace words;

std::string contentsLine(const Thing &thing, const Lexicon &lexicon) {
    if (!thing.doubt.empty() && !thing.said.empty())
        return thing.said;
    const AsWritten english; // what follows asks the doubts for their words
    LineParts parts;
    parts.name = thing.name;
    parts.quoted = !plainNameSuffices(thing, lexicon);
    const auto *entry = thing.like.empty() ? nullptr : lexicon.find(thing.like);
    if (parts.quoted && lexicon.find(thing.name) != entry && entry != nullptr)
        parts.like = entry->name;
    if (thing.count)
        parts.counts.push_back(*thing.count);
    if (thing.usesPerWeek && !thing.usual.contains("uses"))
        parts.uses = thing.usesPerWeek;
    if (amountOf(thing.packSize))
        parts.size = thing.packSize;
    else if (!thing.packSize.empty())
        parts.facts.push_back(thing.packSize);
    LineParts bare = parts;
    bare.counts.clear();
    bare.uses.reset();
    addFacts(parts, parseItem(lineFrom(bare), lexicon).thing, thing);
    if (!thing.note.empty())
        parts.notes.push_back(thing.note);
    const std::string line = lineFrom(parts);
    const std::string doubt = parseItem(line, lexicon).doubt;
    parts.really = !doubt.empty() && !doubt.starts_with("shape") && !doubt.starts_with("size");
    return parts.really ? lineFrom(parts) : line;
}

} // namespace model
