#include "model/contrast.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace model {

namespace {

struct NamedColour {
    const char *name;
    Colour colour;
};
// Values of the CSS colour names, but "dark yellow" and "cream": judgement.
constexpr std::array<NamedColour, 20> namedColours{{{"black", {0, 0, 0}},
                                                    {"white", {255, 255, 255}},
                                                    {"grey", {128, 128, 128}},
                                                    {"gray", {128, 128, 128}},
                                                    {"light grey", {211, 211, 211}},
                                                    {"dark grey", {80, 80, 80}},
                                                    {"silver", {192, 192, 192}},
                                                    {"red", {255, 0, 0}},
                                                    {"dark red", {139, 0, 0}},
                                                    {"green", {0, 128, 0}},
                                                    {"dark green", {0, 100, 0}},
                                                    {"blue", {0, 0, 255}},
                                                    {"dark blue", {0, 0, 139}},
                                                    {"navy", {0, 0, 128}},
                                                    {"yellow", {255, 255, 0}},
                                                    {"orange", {255, 165, 0}},
                                                    {"brown", {139, 69, 19}},
                                                    {"pink", {255, 192, 203}},
                                                    {"purple", {128, 0, 128}},
                                                    {"cream", {255, 253, 208}}}};

/// Value of a string of hexadecimal digits; none if there is anything else in it.
std::optional<int> hexadecimal(const std::string &digits) {
    constexpr int base = 16;
    int value = 0;
    const char *end = digits.data() + digits.size();
    const auto [stop, error] = std::from_chars(digits.data(), end, value, base);
    return error == std::errc{} && stop == end && digits[0] != '-' ? std::optional(value) : std::nullopt;
}

std::optional<Colour> fromDigits(std::string digits) {
    if (digits.size() == 3)
        digits = {digits[0], digits[0], digits[1], digits[1], digits[2], digits[2]};
    if (digits.size() != 6)
        return std::nullopt;
    const auto value = hexadecimal(digits);
    return value ? std::optional(Colour{*value >> 16, (*value >> 8) & 255, *value & 255}) : std::nullopt;
}

double linear(int channel) {
    const double share = channel / 255.0;
    return share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

} // namespace

Result<double> weberContrast(double ground, double print) {
    if (!(ground > 0 && print >= 0 && print <= ground))
        return fail(
            ErrorCode::OutOfRange,
            Sentence::tr(
                "Contrast of dark print needs a ground that is above 0 and not darker than the print."));
    return (ground - print) / ground;
}

double michelsonOf(double weber) {
    return weber / (2 - weber);
}

double weberOf(double michelson) {
    return 2 * michelson / (1 + michelson);
}

double contrastReserve(double weber, double logContrastSensitivity) {
    return weber * std::pow(10.0, logContrastSensitivity);
}

Result<Colour> parseColour(const std::string &typed) {
    const std::string text = typed::tidy(typed);
    for (const NamedColour &named : namedColours)
        if (text == named.name)
            return named.colour;
    if (!text.empty() && text[0] == '#')
        if (const auto colour = fromDigits(text.substr(1)))
            return *colour;
    return fail(ErrorCode::NotUnderstood,
                typed::notA(Sentence::tr("a colour"), typed, "#595959, black or dark blue"));
}

double relativeLuminance(Colour colour) {
    return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
}

double contrastRatio(Colour a, Colour b) {
    const auto [darker, lighter] = std::minmax({relativeLuminance(a), relativeLuminance(b)});
    return (lighter + 0.05) / (darker + 0.05);
}

double printedContrast(Colour a, Colour b) {
    return 1 - 1 / contrastRatio(a, b);
}

} // namespace model
