#include "model/contents_words.h"
#include <algorithm>
#include <array>
#include <cctype>
#include <map>
#include <sstream>

namespace model::words {
namespace {

bool isDigit(char c) {
    return std::isdigit(static_cast<unsigned char>(c)) != 0;
}

/// Words that end in "s" and are no plural, or whose plural is not told from its ending.
const std::map<std::string, std::string> &irregular() {
    static const std::map<std::string, std::string> forms{
        {"knives", "knife"},       {"leaves", "leaf"},       {"loaves", "loaf"},
        {"halves", "half"},        {"cookies", "cookie"},    {"brownies", "brownie"},
        {"smoothies", "smoothie"}, {"pies", "pie"},          {"glasses", "glasses"},
        {"hummus", "hummus"},      {"couscous", "couscous"}, {"asparagus", "asparagus"},
        {"molasses", "molasses"},  {"swiss", "swiss"},       {"gas", "gas"},
        {"potatoes", "potato"},    {"tomatoes", "tomato"},   {"mangoes", "mango"},
        {"avocadoes", "avocado"},  {"canvas", "canvas"},
    };
    return forms;
}

/// "400g" -> 400 and g; "3x" -> 3 and x; anything else stays whole.
void pushParted(std::vector<std::string> &out, const std::string &word) {
    const auto end =
        std::find_if_not(word.begin(), word.end(), [](char c) { return isDigit(c) || c == '.' || c == ','; });
    const std::string digits(word.begin(), end);
    const std::string rest(end, word.end());
    if (!digits.empty() && !rest.empty() && (!sizeUnit(rest).empty() || rest == "x")) {
        out.push_back(digits);
        out.push_back(rest);
    } else if (word.size() > 1 && (word[0] == 'x' || word[0] == 'X') &&
               std::all_of(word.begin() + 1, word.end(), isDigit)) {
        out.emplace_back("x");
        out.push_back(word.substr(1));
    } else {
        out.push_back(word);
    }
}

} // namespace

std::string lower(const std::string &text) {
    std::string out = text;
    for (char &c : out)
        c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
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
    if (word.size() < 4 || !ends("s") || ends("ss") || ends("us") || ends("is"))
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
    std::vector<std::string> parted;
    std::string word;
    while (in >> word) {
        while (!word.empty() && (word.back() == '.' || word.back() == ',' || word.back() == ':'))
            word.pop_back();
        if (!word.empty())
            pushParted(parted, word);
    }
    std::vector<Word> out;
    for (const auto &typed : parted) {
        const std::string low = lower(typed);
        out.push_back({typed, low, singular(low)});
    }
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
        {"a", 1},       {"an", 1},      {"one", 1},    {"two", 2},    {"three", 3}, {"four", 4},
        {"five", 5},    {"six", 6},     {"seven", 7},  {"eight", 8},  {"nine", 9},  {"ten", 10},
        {"eleven", 11}, {"twelve", 12}, {"dozen", 12}, {"twenty", 20}};
    if (const auto found = spoken.find(word); found != spoken.end())
        return found->second;
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
        {"g", "g"},     {"gram", "g"},        {"grams", "g"},        {"kg", "kg"},
        {"kilo", "kg"}, {"kilos", "kg"},      {"kilogram", "kg"},    {"kilograms", "kg"},
        {"ml", "ml"},   {"millilitre", "ml"}, {"millilitres", "ml"}, {"l", "l"},
        {"litre", "l"}, {"litres", "l"},      {"liter", "l"},        {"liters", "l"}};
    const auto found = units.find(lower(word));
    return found == units.end() ? "" : found->second;
}

std::string allergenFrom(const std::string &singularWord) {
    static const std::map<std::string, std::string> names{
        {"gluten", "gluten"},     {"wheat", "gluten"},     {"rye", "gluten"},
        {"barley", "gluten"},     {"spelt", "gluten"},     {"oat", "gluten"},
        {"egg", "eggs"},          {"fish", "fish"},        {"peanut", "peanuts"},
        {"soya", "soya"},         {"soy", "soya"},         {"soybean", "soya"},
        {"milk", "milk"},         {"dairy", "milk"},       {"lactose", "milk"},
        {"nut", "nuts"},          {"almond", "nuts"},      {"hazelnut", "nuts"},
        {"walnut", "nuts"},       {"cashew", "nuts"},      {"pecan", "nuts"},
        {"pistachio", "nuts"},    {"macadamia", "nuts"},   {"celery", "celery"},
        {"mustard", "mustard"},   {"sesame", "sesame"},    {"sulphite", "sulphites"},
        {"sulfite", "sulphites"}, {"lupin", "lupin"},      {"mollusc", "molluscs"},
        {"mussel", "molluscs"},   {"oyster", "molluscs"},  {"crustacean", "crustaceans"},
        {"prawn", "crustaceans"}, {"crab", "crustaceans"}, {"lobster", "crustaceans"}};
    const auto found = names.find(singularWord);
    return found == names.end() ? "" : found->second;
}

} // namespace model::words
