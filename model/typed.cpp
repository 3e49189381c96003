#include "model/typed.h"
#include "model/sentence.h"
#include <algorithm>
#include <cctype>
#include <charconv>

namespace model::typed {

namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

void replaceAll(std::string &text, const std::string &from, const std::string &to) {
    for (auto at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
        text.replace(at, from.size(), to);
}

} // namespace

std::string tidy(const std::string &text) {
    std::string plain = text;
    for (const char *minus : {"\u2212", "\u2013", "\u2010", "\u2011"})
        replaceAll(plain, minus, "-");
    replaceAll(plain, "\u2044", "/");
    replaceAll(plain, "\u00b0", " degrees");
    replaceAll(plain, "\u00a0", " ");
    replaceAll(plain, "\u2032", "'");
    replaceAll(plain, "\u2033", "\"");
    std::string result;
    for (const char c : plain) {
        if (std::isspace(static_cast<unsigned char>(c))) {
            if (!result.empty() && result.back() != ' ')
                result.push_back(' ');
        } else {
            result.push_back(c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c);
        }
    }
    if (!result.empty() && result.back() == ' ')
        result.pop_back();
    return result;
}

std::optional<double> number(const std::string &text) {
    if (text.empty() || text.size() > 12)
        return std::nullopt;
    std::string plain = text[0] == '+' ? text.substr(1) : text;
    std::replace(plain.begin(), plain.end(), ',', '.');
    const std::string digits = !plain.empty() && plain[0] == '-' ? plain.substr(1) : plain;
    const auto points = std::count(digits.begin(), digits.end(), '.');
    const bool onlyDigits =
        std::all_of(digits.begin(), digits.end(), [](char c) { return isDigit(c) || c == '.'; });
    if (digits.empty() || points > 1 || !onlyDigits || !isDigit(digits.back()))
        return std::nullopt;
    double value = 0;
    const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value);
    if (error != std::errc{} || end != plain.data() + plain.size())
        return std::nullopt;
    return value;
}

std::optional<NumberAndUnit> numberAndUnit(const std::string &tidied) {
    std::size_t end = 0;
    while (end < tidied.size() && (isDigit(tidied[end]) || tidied[end] == '.' || tidied[end] == ',' ||
                                   (end == 0 && (tidied[end] == '-' || tidied[end] == '+'))))
        ++end;
    const auto value = number(tidied.substr(0, end));
    if (!value)
        return std::nullopt;
    std::string unit = tidied.substr(end);
    if (!unit.empty() && unit[0] == ' ')
        unit.erase(0, 1);
    return NumberAndUnit{*value, unit};
}

std::vector<std::string> list(const std::string &text) {
    std::vector<std::string> items;
    std::string item;
    for (const char c : text + ",") {
        if (c != ',' && c != ';') {
            item.push_back(c);
            continue;
        }
        if (const std::string tidied = tidy(item); !tidied.empty())
            items.push_back(tidied);
        item.clear();
    }
    return items;
}

std::string words(double value, int decimals, Zeros zeros) {
    char buffer[64];
    const auto written =
        std::to_chars(buffer, buffer + sizeof buffer, value, std::chars_format::fixed, decimals);
    std::string text(buffer, written.ptr);
    if (zeros == Zeros::Drop && text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.')
            text.pop_back();
    }
    return text.find_first_not_of("-0.") == std::string::npos && text[0] == '-' ? text.substr(1) : text;
}

std::string notA(const std::string &what, const std::string &typed, const std::string &example) {
    return Sentence::tr("Not {1}: {2}. Try {3}. Kept.", {what, typed, example});
}

} // namespace model::typed
