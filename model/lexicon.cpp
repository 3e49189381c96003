#include "model/lexicon.h"
#include <algorithm>
#include <sstream>
#include <tuple>

namespace model {
namespace {

using words::comparable;

std::string lettersOf(const std::string &comparableName) {
    std::string out;
    std::remove_copy(comparableName.begin(), comparableName.end(), std::back_inserter(out), ' ');
    return out;
}

std::vector<std::string> partsOf(const std::string &comparableName) {
    std::istringstream in(comparableName);
    std::vector<std::string> out;
    std::string part;
    while (in >> part)
        out.push_back(part);
    return out;
}

std::string sortedWords(const std::string &comparableName) {
    auto parts = partsOf(comparableName);
    std::sort(parts.begin(), parts.end());
    std::string out;
    for (const auto &part : parts)
        out += part + " ";
    return out;
}

/// "tom pur" begins "tomato puree".
bool begins(const std::vector<words::Word> &typed, const std::vector<std::string> &written,
            const std::vector<std::string> &singles) {
    if (typed.size() > written.size())
        return false;
    for (std::size_t i = 0; i < typed.size(); ++i) {
        if (!written[i].starts_with(typed[i].low) && singles[i] != typed[i].single)
            return false;
    }
    return true;
}

/// "beans" ends "kidney beans".
bool ends(const std::vector<words::Word> &typed, const std::vector<std::string> &singles) {
    if (typed.size() >= singles.size())
        return false;
    return std::equal(typed.rbegin(), typed.rend(), singles.rbegin(),
                      [](const auto &word, const auto &single) { return word.single == single; });
}

/// Words that are written otherwise and spoken the same, told apart by no rule of spelling.
const std::map<std::string, std::string> &spokenAlike() {
    static const std::map<std::string, std::string> pairs{
        {"flower", "flour"},  {"serial", "cereal"},    {"meet", "meat"},       {"leak", "leek"},
        {"source", "sauce"},  {"time", "thyme"},       {"current", "currant"}, {"bred", "bread"},
        {"stake", "steak"},   {"muscle", "mussel"},    {"place", "plaice"},    {"pair", "pear"},
        {"carat", "carrot"},  {"mustered", "mustard"}, {"chilly", "chilli"},   {"pee", "pea"},
        {"tee", "tea"},       {"doe", "dough"},        {"moose", "mousse"},    {"desert", "dessert"},
        {"pi", "pie"},        {"ail", "ale"},          {"whine", "wine"},      {"bare", "beer"},
        {"soul", "sole"},     {"died", "dried"},       {"raison", "raisin"},   {"reason", "raisin"},
        {"cumming", "cumin"}, {"coming", "cumin"},     {"maze", "maize"},      {"barely", "barley"}};
    return pairs;
}

/// Short forms that everybody uses.
const std::map<std::string, std::string> &shortForms() {
    static const std::map<std::string, std::string> forms{{"veg", "vegetable"},
                                                          {"choc", "chocolate"},
                                                          {"tab", "tablet"},
                                                          {"tom", "tomato"},
                                                          {"toms", "tomato"},
                                                          {"mayo", "mayonnaise"},
                                                          {"spud", "potato"},
                                                          {"evoo", "olive oil"},
                                                          {"mushie", "mushroom"},
                                                          {"cuke", "cucumber"},
                                                          {"avo", "avocado"},
                                                          {"parm", "parmesan"},
                                                          {"bicarb", "bicarbonate of soda"},
                                                          {"bic", "bicarbonate of soda"},
                                                          {"spag", "spaghetti"},
                                                          {"caulie", "cauliflower"},
                                                          {"brocc", "broccoli"},
                                                          {"marg", "margarine"},
                                                          {"sarnie", "sandwich"}};
    return forms;
}

std::string replaced(const std::string &comparableName, const std::map<std::string, std::string> &by) {
    std::string out;
    for (const auto &part : partsOf(comparableName)) {
        const auto found = by.find(part);
        out += (out.empty() ? "" : " ") + (found == by.end() ? part : found->second);
    }
    return out;
}

/// Each thing once, by the name that came first.
void pushNew(std::vector<NearName> &out, const NearName &near) {
    if (std::none_of(out.begin(), out.end(),
                     [&](const NearName &other) { return other.thing == near.thing; }))
        out.push_back(near);
}

/// The shortest names first, then a thing's own name before another one, then what is used most.
void sortByUse(std::vector<NearName> &names) {
    const auto key = [](const NearName &near) {
        const auto words = std::count(near.name.begin(), near.name.end(), ' ');
        return std::tuple(words, near.name != near.thing->name, -near.thing->usual.usesPerWeek.value_or(0));
    };
    std::stable_sort(names.begin(), names.end(),
                     [&](const NearName &a, const NearName &b) { return key(a) < key(b); });
}

} // namespace

Lexicon::Lexicon(const std::vector<CatalogueThing> &own) : m_own(own.begin(), own.end()) {
    for (const auto &thing : m_own)
        add(thing);
    for (const auto &thing : catalogue())
        add(thing);
}

const Lexicon &Lexicon::standard() {
    static const Lexicon lexicon;
    return lexicon;
}

void Lexicon::add(const CatalogueThing &thing) {
    addName(thing.name, thing);
    for (const auto &other : thing.others)
        addName(other, thing);
}

void Lexicon::addName(const std::string &name, const CatalogueThing &thing) {
    Name made;
    made.written = name;
    made.text = comparable(name);
    made.thing = &thing;
    for (const auto &word : words::wordsOf(name)) {
        made.words.push_back(word.low);
        made.singles.push_back(word.single);
    }
    made.letters = lettersOf(made.text);
    made.sound = words::soundOf(made.text);
    m_byName.emplace(made.text, &thing);
    m_byLetters.emplace(made.letters, &thing);
    m_bySorted.emplace(sortedWords(made.text), &thing);
    const auto parts = partsOf(made.text);
    m_longest = std::max(m_longest, parts.size());
    for (const auto &part : parts)
        ++m_words[part];
    m_names.push_back(std::move(made));
}

const CatalogueThing *Lexicon::find(const std::string &name) const {
    const std::string wanted = comparable(name);
    if (const auto found = m_byName.find(wanted); found != m_byName.end())
        return found->second;
    if (wanted.find(' ') != std::string::npos) { // "chick peas"
        if (const auto found = m_byLetters.find(lettersOf(wanted)); found != m_byLetters.end())
            return found->second;
    }
    const std::string full = replaced(wanted, shortForms());
    const auto found = full == wanted ? m_byName.end() : m_byName.find(full);
    return found == m_byName.end() ? nullptr : found->second;
}

const CatalogueThing *Lexicon::findTurned(const std::string &name) const {
    const std::string wanted = comparable(name);
    if (const auto found = m_byLetters.find(lettersOf(wanted)); found != m_byLetters.end())
        return found->second;
    const auto parts = partsOf(wanted);
    const bool several = std::all_of(parts.begin(), parts.end(),
                                     [this](const std::string &part) { return m_byName.contains(part); });
    return several ? nullptr : findInAnyOrder(name);
}

const CatalogueThing *Lexicon::findInAnyOrder(const std::string &name) const {
    const auto found = m_bySorted.find(sortedWords(comparable(name)));
    return found == m_bySorted.end() ? nullptr : found->second;
}

std::vector<NearName> Lexicon::beginningWith(const std::string &name) const {
    const auto typed = words::wordsOf(name);
    std::vector<NearName> out;
    if (typed.empty() || typed.size() > m_longest || name.size() < 2)
        return out;
    for (const auto &known : m_names) {
        if (begins(typed, known.words, known.singles))
            pushNew(out, {known.thing, known.written});
    }
    sortByUse(out);
    return out;
}

std::vector<NearName> Lexicon::endingWith(const std::string &name) const {
    const auto typed = words::wordsOf(name);
    std::vector<NearName> out;
    for (const auto &known : m_names) {
        if (!typed.empty() && ends(typed, known.singles))
            pushNew(out, {known.thing, known.written});
    }
    std::stable_sort(out.begin(), out.end(), [](const NearName &x, const NearName &y) {
        return x.thing->usual.usesPerWeek.value_or(0) > y.thing->usual.usesPerWeek.value_or(0);
    });
    std::stable_partition(out.begin(), out.end(),
                          [](const NearName &near) { return near.name == near.thing->name; });
    return out;
}

std::vector<NearName> Lexicon::spokenAs(const std::string &name) const {
    const std::string wanted = comparable(name);
    const std::string spoken = replaced(wanted, spokenAlike());
    const auto found = m_byName.find(spoken);
    if (spoken == wanted || found == m_byName.end())
        return {};
    return {{found->second, spoken}};
}

std::vector<NearName> Lexicon::alike(const std::string &name) const {
    const std::string wanted = comparable(name);
    std::vector<NearName> out;
    if (wanted.size() < 3 || wanted.size() > 60)
        return out;
    const std::string letters = lettersOf(wanted);
    const std::string sound = words::soundOf(wanted);
    const std::size_t most = letters.size() >= 8 ? 2 : letters.size() >= 5 ? 1 : 0;
    std::vector<std::pair<std::size_t, NearName>> near;
    for (const auto &known : m_names) {
        const std::size_t wrong = words::misspellings(letters, known.letters, std::max<std::size_t>(most, 1));
        const bool spelt = wrong <= most;
        const bool sounds =
            letters.size() >= 4 && sound.size() >= 2 && sound == known.sound &&
            words::misspellings(letters, known.letters, letters.size() / 3) <= letters.size() / 3;
        if (spelt || sounds)
            near.emplace_back(spelt ? wrong : most + 1, NearName{known.thing, known.written});
    }
    std::stable_sort(near.begin(), near.end(),
                     [](const auto &a, const auto &b) { return a.first < b.first; });
    for (const auto &[wrong, found] : near)
        pushNew(out, found);
    return out;
}

} // namespace model
