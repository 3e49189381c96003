#include "model/short_name.h"
#include "model/contents.h"
#include "model/meanings.h"
#include "model/planning.h"
#include "model/rule_words.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>
#include <array>
#include <map>
#include <sstream>
#include <string_view>
#include <unordered_map>

namespace model {
namespace {

using ThingsById = std::unordered_map<std::string_view, const Thing *>;

ThingsById thingsOf(const Case &record) {
    ThingsById things;
    for (const Thing &thing : record.things)
        things.emplace(thing.id.text, &thing);
    return things;
}

const Thing *thingIn(const ThingsById &things, const Id &id) {
    const auto found = things.find(id.text);
    return found == things.end() ? nullptr : found->second;
}

std::string wordingOf(const Case &record, const Id &thing) {
    std::string wording;
    for (const Overrule &overrule : record.overrules)
        if (overrule.thing == thing && !overrule.wording.empty())
            wording = overrule.wording;
    return wording;
}

std::string shapeWord(Shape shape) {
    static constexpr std::array words{"jar",  "bottle", "tin",   "box",  "bag", "packet", "tub", "canister",
                                      "tube", "mug",    "plate", "bowl", "pan", "tool",   ""};
    return words.at(static_cast<std::size_t>(shape));
}

/// How often a property of `mine` is there among things that have one name.
bool isItsAlone(const std::string &mine, const std::vector<std::string> &all) {
    return !mine.empty() && std::ranges::count(all, mine) == 1;
}

/// What tells a thing from others with its name: size, shape, or its number on the shelf.
std::string additionFor(const std::vector<const Thing *> &alike, std::size_t which) {
    std::vector<std::string> sizes, shapes;
    for (const Thing *thing : alike) {
        sizes.push_back(thing->packSize);
        shapes.push_back(shapeWord(thing->shape));
    }
    if (std::ranges::all_of(sizes, [&](const auto &size) { return isItsAlone(size, sizes); }))
        return sizes[which];
    if (std::ranges::all_of(shapes, [&](const auto &shape) { return isItsAlone(shape, shapes); }))
        return shapes[which];
    return std::to_string(which + 1);
}

/// Lines of one shelf as they are counted.
std::vector<std::size_t> shelfOf(const Plan &plan, const Id &place) {
    std::vector<std::size_t> lines;
    for (std::size_t k = 0; k < plan.lines.size(); ++k)
        if (plan.lines[k].place == place)
            lines.push_back(k);
    std::ranges::stable_sort(lines, {}, [&](std::size_t k) { return plan.lines[k].order; });
    return lines;
}

/// Of each line of the shelf those with its name: a name is tidied once, not once a pair.
std::vector<std::vector<std::size_t>> namesakes(const std::vector<ShortName> &names,
                                                const std::vector<std::size_t> &shelf) {
    std::map<std::string, std::vector<std::size_t>> named;
    std::vector<std::string> tidied;
    for (const std::size_t line : shelf) {
        tidied.push_back(typed::tidy(names[line].name));
        named[tidied.back()].push_back(line);
    }
    std::vector<std::vector<std::size_t>> same;
    for (const std::string &name : tidied)
        same.push_back(named[name]);
    return same;
}

void tellApart(const ThingsById &things, const Plan &plan, const std::vector<std::size_t> &shelf,
               std::vector<ShortName> &names) {
    std::vector<std::string> before;
    for (const std::size_t line : shelf)
        before.push_back(names[line].name);
    const auto alikes = namesakes(names, shelf);
    for (std::size_t k = 0; k < shelf.size(); ++k) {
        const std::size_t line = shelf[k];
        const auto &same = alikes[k];
        if (same.size() < 2)
            continue;
        if (names[line].hers) {
            names[line].told = Sentence::tr(
                "\"{1}\" stands on another label of this shelf too. Choose other words.", {before[k]});
            continue;
        }
        std::vector<const Thing *> alike;
        for (const std::size_t other : same)
            alike.push_back(thingIn(things, plan.lines[other].thing));
        const auto which = static_cast<std::size_t>(std::ranges::find(same, line) - same.begin());
        names[line].name += " " + additionFor(alike, which);
        names[line].told = Sentence::tr("More than one thing here is called {1}.", {before[k]});
    }
}

std::vector<std::string> wordsIn(const std::string &text) {
    std::istringstream stream(text);
    std::vector<std::string> words;
    for (std::string word; stream >> word;)
        words.push_back(word);
    return words;
}

std::string inRow(const std::vector<std::string> &words, std::size_t from) {
    std::string row;
    for (std::size_t k = from; k < words.size(); ++k)
        row += (row.empty() ? "" : " ") + words[k];
    return row;
}

std::string withoutBrackets(const std::string &name) {
    std::string out;
    int depth = 0;
    for (const char letter : name) {
        depth += letter == '(' ? 1 : 0;
        if (depth == 0)
            out += letter;
        depth -= letter == ')' && depth > 0 ? 1 : 0;
    }
    return out;
}

bool isSmall(const std::string &word) {
    static constexpr std::array small{"a", "an", "and", "the", "of", "in", "with", "for", "&"};
    return std::ranges::find(small, typed::tidy(word)) != small.end();
}

std::string allergenWords(const std::string &key) {
    for (const AllergenName &name : allergens())
        if (name.key == key)
            return name.words;
    return key;
}

std::string allergenSentence(const AllergenFact &fact) {
    switch (fact.state) {
    case AllergenState::Contains:
        return " Contains " + allergenWords(fact.allergen) + ".";
    case AllergenState::MayContain:
        return " May contain " + allergenWords(fact.allergen) + ".";
    case AllergenState::NotChecked:
        return " Not checked for " + allergenWords(fact.allergen) + ".";
    case AllergenState::ReadNoneListed:
        break; // a new make has a new recipe: no tag clears a food
    }
    return {};
}

void warn(const Case &record, const ThingsById &things, ShortName &name) {
    const Thing *thing = thingIn(things, name.thing);
    const std::string word = thing ? warningWord(*thing, record.diet, record.plan->meaningMarks) : "";
    name.warns = !word.empty();
    if (name.warns && !name.hers)
        name.name += ", " + word;
}

} // namespace

bool sameName(const std::string &one, const std::string &other) {
    return typed::tidy(one) == typed::tidy(other);
}

std::vector<ShortName> shortNames(const Case &record) {
    std::vector<ShortName> names;
    if (!record.plan)
        return names;
    const Plan &plan = *record.plan;
    const ThingsById things = thingsOf(record);
    for (const PlanLine &line : plan.lines) {
        const Thing *thing = thingIn(things, line.thing);
        const std::string hers = wordingOf(record, line.thing);
        names.push_back({line.thing, hers.empty() && thing ? thing->name : hers, !hers.empty(), false, {}});
    }
    for (const Place &place : record.places)
        tellApart(things, plan, shelfOf(plan, place.id), names);
    for (ShortName &name : names)
        warn(record, things, name);
    return names;
}

std::vector<std::string> shorterNames(const std::string &name) {
    std::vector<std::string> words = wordsIn(withoutBrackets(name));
    if (std::ranges::any_of(words, [](const std::string &word) { return !isSmall(word); }))
        std::erase_if(words, isSmall);
    std::vector<std::string> out;
    const auto add = [&](const std::string &shorter) {
        if (!shorter.empty() && shorter.size() < name.size() && std::ranges::count(out, shorter) == 0)
            out.push_back(shorter);
    };
    add(inRow(words, 0));
    if (words.size() > 2)
        add(inRow(words, words.size() - 2));
    if (words.size() > 1)
        add(words.back());
    return out;
}

bool isNobodysName(const Case &record, const Id &thing, const std::string &shorter) {
    const auto is = [&](const Thing &other) { return other.id != thing && sameName(other.name, shorter); };
    return std::ranges::none_of(record.things, is) && !findInCatalogue(shorter);
}

std::string tagText(const Thing &thing, const std::string &name) {
    std::string text = sentenceCase(name) + ".";
    if (thing.bestBefore)
        text += (thing.dateKind == DateKind::UseBy ? " Use by " : " Best before ") +
                dateInWords(*thing.bestBefore) + ".";
    std::string directions = thing.directions;
    while (!directions.empty() && (directions.back() == '.' || directions.back() == ' '))
        directions.pop_back();
    if (!directions.empty())
        text += " To prepare: " + directions + ".";
    for (const AllergenFact &fact : thing.allergens)
        text += allergenSentence(fact);
    return text;
}

} // namespace model
