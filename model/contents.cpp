#include "model/contents.h"
#include "model/contents_line.h"
#include <algorithm>
#include <cmath>

namespace model {
namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// "1,5 l": a comma between digits, without space, before a unit is a decimal.
bool isDecimalComma(const std::string &line, std::size_t at) {
    if (at == 0 || at + 1 >= line.size() || !isDigit(line[at - 1]) || !isDigit(line[at + 1]))
        return false;
    std::size_t end = at + 1;
    while (end < line.size() && isDigit(line[end]))
        ++end;
    while (end < line.size() && line[end] == ' ')
        ++end;
    std::size_t last = end;
    while (last < line.size() && std::isalpha(static_cast<unsigned char>(line[last])) != 0)
        ++last;
    return !words::sizeUnit(line.substr(end, last - end)).empty();
}

/// Spoken separators, "comma" and "semicolon", as signs.
std::string withSigns(const std::string &line) {
    std::string out;
    std::string word;
    const auto flush = [&] {
        const std::string low = words::lower(word);
        out += low == "comma" ? "," : low == "semicolon" ? ";" : word;
        word.clear();
    };
    for (const char c : line) {
        if (c == ' ' || c == '\t' || c == '\n' || c == '\r') {
            flush();
            out += c;
        } else {
            word += c;
        }
    }
    flush();
    return out;
}

std::vector<std::string> itemsOf(const std::string &line) {
    std::vector<std::string> out(1);
    int depth = 0;
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const char c = line[i];
        quoted = c == '"' ? !quoted : quoted;
        depth += c == '(' ? 1 : c == ')' && depth > 0 ? -1 : 0;
        const bool ends = c == ';' || c == '\n' || (c == ',' && depth == 0 && !isDecimalComma(line, i));
        if (ends && !quoted)
            out.emplace_back();
        else
            out.back() += c;
    }
    std::vector<std::string> kept;
    for (const auto &item : out) {
        if (!words::wordsOf(item).empty())
            kept.push_back(words::trimmed(item));
    }
    return kept;
}

std::string plainNumber(double value) {
    const double rounded = std::round(value * 100) / 100;
    std::string text = std::to_string(rounded);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
        text.pop_back();
    return text;
}

std::string often(double usesPerWeek) {
    const auto near = [&](double value) { return std::abs(usesPerWeek - value) < 1e-9; };
    if (near(7))
        return "daily";
    if (near(1))
        return "weekly";
    if (near(12.0 / 52))
        return "monthly";
    if (near(words::rarelyPerWeek))
        return "rarely";
    return plainNumber(usesPerWeek) + " times a week";
}

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

std::string factsInWords(const Thing &thing) {
    std::string out;
    for (const auto &fact : thing.allergens) {
        if (thing.usual.contains("allergen:" + fact.allergen))
            continue;
        if (fact.state == AllergenState::Contains)
            out += ", contains " + fact.allergen;
        if (fact.state == AllergenState::MayContain)
            out += ", may contain " + fact.allergen;
    }
    return out;
}

std::string sentence(const ContentsItem &item) {
    const Thing &thing = item.thing;
    std::string out = thing.count ? std::to_string(*thing.count) + " " + thing.name : thing.name;
    if (!out.empty() && out[0] >= 'a' && out[0] <= 'z')
        out[0] = static_cast<char>(out[0] - 'a' + 'A');
    if (thing.usesPerWeek && !thing.usual.contains("uses"))
        out += ", " + often(*thing.usesPerWeek);
    if (!thing.count)
        out += ", count not given";
    if (!item.size.empty())
        out += ", " + packInWords(item.size);
    else if (const auto *entry = entryOf(item.matched); entry != nullptr && thing.count)
        out += ", usual " + packInWords(entry->pack);
    out += factsInWords(thing);
    if (!item.claim.empty())
        out += ", says " + item.claim + ", not checked";
    if (!item.doubt.empty())
        out += ". " + item.doubt;
    if (out.back() != '?' && out.back() != '.')
        out += ".";
    return out;
}

} // namespace

Result<std::vector<ContentsItem>> parseContents(const std::string &line) {
    std::vector<ContentsItem> out;
    for (const auto &text : itemsOf(withSigns(line)))
        out.push_back(words::parseItem(text));
    if (out.empty())
        return fail(ErrorCode::NotUnderstood, "Nothing on the line. Write what stands on the shelf, for "
                                              "example: 4 chopped tomatoes, rice daily.");
    return out;
}

std::string readContentsBack(const std::vector<ContentsItem> &items) {
    std::string out;
    for (const auto &item : items)
        out += (out.empty() ? "" : " ") + sentence(item);
    return out;
}

} // namespace model
