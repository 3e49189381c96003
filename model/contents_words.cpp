#include "model/contents_words.h"
#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <map>
#include <sstream>
#include <string_view>

namespace model::words {
namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// Words that end in "s" and are no plural, or whose plural is not told from its ending.
const std::map<std::string, std::string> &irregular() {
    static const std::map<std::string, std::string> forms{
        {"peppers", "peppers"},  {"knives", "knife"},       {"leaves", "leaf"},
        {"loaves", "loaf"},      {"halves", "half"},        {"cookies", "cookie"},
        {"brownies", "brownie"}, {"smoothies", "smoothie"}, {"pies", "pie"},
        {"glasses", "glasses"},  {"molasses", "molasses"},  {"swiss", "swiss"},
        {"gas", "gas"},          {"potatoes", "potato"},    {"tomatoes", "tomato"},
        {"mangoes", "mango"},    {"avocadoes", "avocado"},  {"canvas", "canvas"},
        {"quiches", "quiche"},   {"brioches", "brioche"},   {"shelves", "shelf"},
        {"calves", "calf"},      {"mousses", "mousse"},     {"veggies", "veggie"},
        {"cloves", "clove"},     {"chillies", "chilli"},    {"chilies", "chilli"},
        {"chili", "chilli"},     {"chile", "chilli"},       {"yoghurts", "yoghurt"},
        {"yogurt", "yoghurt"},   {"yogurts", "yoghurt"},    {"mozzarellas", "mozzarella"},
        {"houmous", "hummus"},   {"houmus", "hummus"},      {"humus", "hummus"},
        {"colour", "color"},
    };
    return forms;
}

/// "tomatos", "cherrys", "dishs": an "s" where English writes another ending. What is meant is asked.
bool isMisspeltPlural(const std::string &word) {
    static constexpr std::array names{"tomatos", "potatos", "leafs", "loafs", "knifes", "halfs"};
    if (std::find(names.begin(), names.end(), word) != names.end())
        return true;
    if (word.ends_with("ys") && word.size() > 4)
        return std::string_view("aeiou").find(word[word.size() - 3]) == std::string_view::npos;
    return word.ends_with("chs") || word.ends_with("shs") || word.ends_with("xs");
}

/// "400g" -> 400 and g; "4x400g" -> 4, x, 400 and g; "3/week" -> 3, / and week; anything else stays whole.
void pushParted(std::vector<std::string> &out, const std::string &word) {
    const auto end =
        std::find_if_not(word.begin(), word.end(), [](char c) { return isDigit(c) || c == '.' || c == ','; });
    const std::string digits(word.begin(), end);
    const std::string rest(end, word.end());
    const bool times =
        !rest.empty() && (rest[0] == 'x' || rest[0] == 'X') && (rest.size() == 1 || isDigit(rest[1]));
    if (!digits.empty() && rest == "in") { // "10in"
        out.insert(out.end(), {digits, "inch"});
        return;
    }
    const bool pack = rest == "pack" || rest == "pk" || rest == "pks";
    const auto slash = word.find('/');
    const bool fraction = slash != std::string::npos && slash + 1 < word.size() && isDigit(word[slash + 1]);
    if (!digits.empty() && times) {
        out.push_back(digits);
        out.emplace_back("x");
        if (rest.size() > 1)
            pushParted(out, rest.substr(1));
    } else if (!digits.empty() && !rest.empty() &&
               (!sizeUnit(rest).empty() || !lengthUnit(rest).empty() || pack)) {
        out.push_back(digits);
        out.push_back(rest);
    } else if (slash != std::string::npos && word.size() > 1 && !fraction) {
        if (slash > 0)
            pushParted(out, word.substr(0, slash));
        out.emplace_back("/");
        if (slash + 1 < word.size())
            pushParted(out, word.substr(slash + 1));
    } else if (word.size() > 1 && (word[0] == 'x' || word[0] == 'X') &&
               std::all_of(word.begin() + 1, word.end(), isDigit)) {
        out.emplace_back("x");
        out.push_back(word.substr(1));
    } else {
        out.push_back(word);
    }
}

/// Latin letters with accents from U+00C0 to U+017E by their plain letter; the second byte picks it.
std::string plainLetter(unsigned char first, unsigned char second) {
    static const std::string c3 = "aaaaaa?ceeeeiiii?nooooo?ouuuuy??aaaaaa?ceeeeiiii?nooooo?ouuuuy?y";
    static const std::string c4 = "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiiiiijjkk?lllllll";
    static const std::string c5 = "lllnnnnnn???oooooo??rrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzz?";
    const std::string &row = first == 0xC3 ? c3 : first == 0xC4 ? c4 : c5;
    const char letter = row[second - 0x80];
    return letter == '?' ? std::string{static_cast<char>(first), static_cast<char>(second)}
                         : std::string(1, letter);
}

constexpr std::array edgeSigns{'.', ',', ':', '!', '?', '\''};

std::string withoutEdgeSigns(std::string word) {
    while (!word.empty() && std::find(edgeSigns.begin(), edgeSigns.end(), word.back()) != edgeSigns.end())
        word.pop_back();
    while (word.size() > 1 && (word[0] == '\'' || word[0] == '*' || word[0] == ':' || word[0] == '#'))
        word.erase(0, 1);
    return word;
}

void pushWord(std::vector<Word> &out, const std::string &typed, bool glued) {
    std::vector<std::string> parted;
    pushParted(parted, typed);
    for (const auto &part : parted) {
        std::string low = lower(part);
        low.erase(std::remove(low.begin(), low.end(), '\''), low.end());
        out.push_back({part, low, singular(low)});
    }
    if (!out.empty())
        out.back().glued = glued;
}

} // namespace

std::string lower(const std::string &text) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto c = static_cast<unsigned char>(text[i]);
        const auto next = i + 1 < text.size() ? static_cast<unsigned char>(text[i + 1]) : 0;
        if (c >= 0xC3 && c <= 0xC5 && next >= 0x80 && next < 0xC0) {
            out += plainLetter(c, static_cast<unsigned char>(next));
            ++i;
        } else {
            out += static_cast<char>(c < 0x80 ? std::tolower(c) : c);
        }
    }
    return out;
}

std::string trimmed(const std::string &text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    if (first == std::string::npos)
        return "";
    return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

std::string singular(const std::string &word) {
    if (const auto found = irregular().find(word); found != irregular().end())
        return found->second;
    const auto ends = [&](const char *ending) { return word.ends_with(ending); };
    if (word.size() < 4 || !ends("s") || ends("ss") || ends("us") || ends("is") || isMisspeltPlural(word))
        return word;
    if (ends("ies"))
        return word.substr(0, word.size() - 3) + "y";
    for (const char *ending : {"ches", "shes", "sses", "xes"}) {
        if (ends(ending))
            return word.substr(0, word.size() - 2);
    }
    return word.substr(0, word.size() - 1);
}

std::vector<Word> wordsOf(const std::string &text) {
    std::istringstream in(text);
    std::vector<Word> out;
    std::string word;
    while (in >> word) {
        const bool asked = word.ends_with('?');
        word = withoutEdgeSigns(word);
        if (word == "*" || (word == "+" && out.empty()))
            continue; // a bullet of a list
        std::size_t from = 0;
        const bool minus = word.size() > 1 && word[0] == '-' && isDigit(word[1]);
        const std::size_t first = out.size();
        while (from < word.size()) {
            const auto hyphen = std::min(word.find('-', from), word.size());
            if (hyphen > from)
                pushWord(out, word.substr(from, hyphen - from), hyphen + 1 < word.size());
            from = hyphen + 1;
        }
        if (minus)
            out[first].minus = true;
        if (asked && !out.empty())
            out.back().asked = true;
    }
    return out;
}

std::string joined(const std::vector<Word> &all, std::size_t from, std::size_t to) {
    std::string out;
    for (std::size_t i = from; i < to; ++i)
        out += all[i].typed + (i + 1 == to ? "" : all[i].glued ? "-" : " ");
    return out;
}

std::string comparable(const std::string &name) {
    std::string out;
    for (const auto &word : wordsOf(name))
        out += (out.empty() ? "" : " ") + word.single;
    return out;
}

std::optional<double> numberFrom(const std::string &word) {
    static const std::map<std::string, double> spoken{
        {"one", 1},      {"two", 2},      {"three", 3},      {"four", 4},      {"five", 5},
        {"six", 6},      {"seven", 7},    {"eight", 8},      {"nine", 9},      {"ten", 10},
        {"eleven", 11},  {"twelve", 12},  {"dozen", 12},     {"thirteen", 13}, {"fourteen", 14},
        {"fifteen", 15}, {"sixteen", 16}, {"seventeen", 17}, {"eighteen", 18}, {"nineteen", 19},
        {"twenty", 20},  {"thirty", 30},  {"forty", 40},     {"fifty", 50},    {"sixty", 60},
        {"seventy", 70}, {"eighty", 80},  {"ninety", 90},    {"½", 0.5},       {"¼", 0.25},
        {"¾", 0.75}};
    if (const auto found = spoken.find(word); found != spoken.end())
        return found->second;
    if (const auto slash = word.find('/'); slash != std::string::npos && slash > 0) {
        const auto top = numberFrom(word.substr(0, slash));
        const auto bottom = numberFrom(word.substr(slash + 1));
        return top && bottom && *bottom > 0 ? std::optional(*top / *bottom) : std::nullopt;
    }
    if (word.size() > 1 && word[0] == '.')
        return numberFrom("0" + word);
    if (word.empty() || word.size() > 7 || !isDigit(word[0]) || !isDigit(word.back()))
        return std::nullopt;
    double value = 0;
    double place = 0;
    for (const char c : word) {
        if (isDigit(c)) {
            value = place > 0 ? value + place * (c - '0') : value * 10 + (c - '0');
            place /= 10;
        } else if ((c == '.' || c == ',') && place == 0) {
            place = 0.1;
        } else {
            return std::nullopt;
        }
    }
    return value;
}

std::string sizeUnit(const std::string &word) {
    static const std::map<std::string, std::string> units{
        {"g", "g"},      {"gr", "g"},          {"gm", "g"},       {"gms", "g"},         {"gram", "g"},
        {"gramme", "g"}, {"kg", "kg"},         {"kgs", "kg"},     {"kilo", "kg"},       {"kilogram", "kg"},
        {"ml", "ml"},    {"mls", "ml"},        {"mil", "ml"},     {"millilitre", "ml"}, {"milliliter", "ml"},
        {"cl", "cl"},    {"centilitre", "cl"}, {"l", "l"},        {"lt", "l"},          {"ltr", "l"},
        {"litre", "l"},  {"liter", "l"},       {"oz", "oz"},      {"ounce", "oz"},      {"lb", "lb"},
        {"lbs", "lb"},   {"pound", "lb"},      {"pint", "pint"},  {"pt", "pint"},       {"quart", "quart"},
        {"qt", "quart"}, {"gallon", "gallon"}, {"gal", "gallon"}, {"fl", "fl oz"},      {"fluid", "fl oz"}};
    const std::string low = lower(word);
    auto found = units.find(low);
    if (found == units.end())
        found = units.find(singular(low));
    return found == units.end() ? "" : found->second;
}

std::string lengthUnit(const std::string &word) {
    static const std::map<std::string, std::string> units{
        {"cm", "cm"},  {"cms", "cm"},        {"centimetre", "cm"}, {"centimeter", "cm"}, {"mm", "mm"},
        {"mms", "mm"}, {"millimetre", "mm"}, {"millimeter", "mm"}, {"inch", "inch"},     {"inches", "inch"}};
    const std::string low = lower(word);
    auto found = units.find(low);
    if (found == units.end())
        found = units.find(singular(low));
    return found == units.end() ? "" : found->second;
}

double inCentimetres(double value, const std::string &unit) {
    // 1 inch is 2.54 cm by definition.
    return unit == "mm" ? value / 10 : unit == "inch" ? value * 2.54 : value;
}

double inBaseUnits(double value, const std::string &unit) {
    // 1 oz 28.35 g, 1 lb 453.6 g (avoirdupois), 1 imperial gallon 4546.09 ml: by definition, rounded; a pint
    // is an eighth of it, a quart a quarter, a fluid ounce 1/160.
    static const std::map<std::string, double> factors{
        {"kg", 1000},      {"l", 1000},        {"cl", 10},          {"oz", 28.35},    {"lb", 453.592},
        {"pint", 568.261}, {"quart", 1136.52}, {"gallon", 4546.09}, {"fl oz", 28.413}};
    const auto found = factors.find(unit);
    return found == factors.end() ? value : value * found->second;
}

std::string allergenFrom(const std::string &singularWord) {
    static const std::map<std::string, std::string> names{{"gluten", "gluten"},
                                                          {"wheat", "gluten"},
                                                          {"rye", "gluten"},
                                                          {"barley", "gluten"},
                                                          {"spelt", "gluten"},
                                                          {"oat", "gluten"},
                                                          {"egg", "eggs"},
                                                          {"fish", "fish"},
                                                          {"peanut", "peanuts"},
                                                          {"soya", "soya"},
                                                          {"soy", "soya"},
                                                          {"soybean", "soya"},
                                                          {"milk", "milk"},
                                                          {"dairy", "milk"},
                                                          {"lactose", "milk"},
                                                          {"nut", "nuts"},
                                                          {"almond", "nuts"},
                                                          {"hazelnut", "nuts"},
                                                          {"walnut", "nuts"},
                                                          {"cashew", "nuts"},
                                                          {"pecan", "nuts"},
                                                          {"pistachio", "nuts"},
                                                          {"macadamia", "nuts"},
                                                          {"celery", "celery"},
                                                          {"mustard", "mustard"},
                                                          {"sesame", "sesame"},
                                                          {"sulphite", "sulphites"},
                                                          {"sulfite", "sulphites"},
                                                          {"sulphur", "sulphites"},
                                                          {"lupin", "lupin"},
                                                          {"mollusc", "molluscs"},
                                                          {"mollusk", "molluscs"},
                                                          {"mussel", "molluscs"},
                                                          {"oyster", "molluscs"},
                                                          {"squid", "molluscs"},
                                                          {"crustacean", "crustaceans"},
                                                          {"prawn", "crustaceans"},
                                                          {"shrimp", "crustaceans"},
                                                          {"crab", "crustaceans"},
                                                          {"lobster", "crustaceans"},
                                                          {"shellfish", "crustaceans"}};
    const auto found = names.find(singularWord);
    return found == names.end() ? "" : found->second;
}

std::string shortNumber(double value) {
    std::string text = std::to_string(std::round(value * 1000) / 1000);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
        text.pop_back();
    return text;
}

} // namespace model::words
