#include "model/findings.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <array>

namespace model {

namespace {

struct Unit {
    const char *word;
    double centimetres;
};
constexpr std::array<Unit, 20> units{
    {{"", 1},          {"cm", 1},           {"centimetre", 1},    {"centimetres", 1},
     {"mm", 0.1},      {"millimetre", 0.1}, {"millimetres", 0.1}, {"m", 100},
     {"metre", 100},   {"metres", 100},     {"in", 2.54},         {"inch", 2.54},
     {"inches", 2.54}, {"\"", 2.54},        {"ft", 30.48},        {"foot", 30.48},
     {"feet", 30.48},  {"'", 30.48},        {"centimeters", 1},   {"meters", 100}}};

std::optional<double> centimetresOf(const std::string &unit) {
    for (const Unit &known : units)
        if (unit == known.word)
            return known.centimetres;
    return std::nullopt;
}

/// "5 ft 3 in", "5' 3\"", "5'3".
std::optional<double> feetAndInches(const std::string &text) {
    for (const char *foot : {"ft", "feet", "foot", "'"}) {
        const auto at = text.find(foot);
        if (at == std::string::npos)
            continue;
        const auto feet = typed::number(typed::tidy(text.substr(0, at)));
        const auto inches = typed::numberAndUnit(typed::tidy(text.substr(at + std::string(foot).size())));
        if (!feet || !inches || *feet < 0 || inches->value < 0 || inches->value >= 12)
            return std::nullopt;
        const bool inch = inches->unit.empty() || centimetresOf(inches->unit) == 2.54;
        return inch ? std::optional(*feet * 30.48 + inches->value * 2.54) : std::nullopt;
    }
    return std::nullopt;
}

std::optional<double> centimetresIn(const std::string &text) {
    if (const auto imperial = feetAndInches(text))
        return imperial;
    const auto value = typed::numberAndUnit(text);
    const auto unit = value ? centimetresOf(value->unit) : std::nullopt;
    return unit ? std::optional(value->value * *unit) : std::nullopt;
}

} // namespace

Result<Length> parseLength(const std::string &typed, Centimetres longest) {
    const auto value = centimetresIn(typed::tidy(typed));
    if (!value)
        return fail(ErrorCode::NotUnderstood, typed::notA(Sentence::tr("a length"), typed, "40 cm"));
    if (!(*value > 0))
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr("A length is more than 0: {1}. Leave it empty if it was not measured. Kept.",
                                 {typed}));
    if (!(*value <= longest.value))
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr("Too long: {1}. The most here is {2} cm. Check the unit. Kept.",
                                 {typed, typed::words(longest.value, 1)}));
    return Length{Centimetres{*value}, typed, Basis::Measured};
}

} // namespace model
