#include "model/appliance_line.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>

namespace model {
namespace {

constexpr std::size_t longestLine = 400;

std::string trimmed(const std::string &text) {
    const auto first = text.find_first_not_of(" \t\n");
    return first == std::string::npos ? std::string()
                                      : text.substr(first, text.find_last_not_of(" \t\n.") - first + 1);
}

/// The parts between `mark`, trimmed; empty ones left out.
std::vector<std::string> split(const std::string &text, char mark) {
    std::vector<std::string> parts;
    for (std::size_t from = 0; from <= text.size();) {
        const std::size_t to = std::min(text.find(mark, from), text.size());
        if (std::string part = trimmed(text.substr(from, to - from)); !part.empty())
            parts.push_back(std::move(part));
        from = to + 1;
    }
    return parts;
}

Result<Control> controlOf(const std::string &text) {
    Control control;
    const auto colon = text.rfind(':');
    if (colon != std::string::npos)
        control.name = trimmed(text.substr(0, colon));
    for (std::string &setting : split(colon == std::string::npos ? text : text.substr(colon + 1), ',')) {
        for (const std::string &other : control.settings)
            if (typed::tidy(other) == typed::tidy(setting))
                return fail(ErrorCode::Refused,
                            Sentence::tr("The setting {1} stands there twice. Kept.", {setting}));
        control.settings.push_back(std::move(setting));
    }
    if (control.settings.empty())
        return fail(
            ErrorCode::NotUnderstood,
            Sentence::tr("No setting for {1}. For example oven: off, 180, 200. Kept.", {control.name}));
    return control;
}

} // namespace

Result<Appliance> parseAppliance(const std::string &line) {
    const auto colon = line.find(':');
    Appliance appliance;
    appliance.name = trimmed(line.substr(0, std::min(colon, line.size())));
    if (line.size() > longestLine)
        return fail(ErrorCode::OutOfRange, Sentence::tr("One appliance takes at most 400 letters. Kept."));
    if (colon == std::string::npos || appliance.name.empty())
        return fail(
            ErrorCode::NotUnderstood,
            Sentence::tr(
                "First the name, then a colon, then the settings: for example oven: off, 180, 200. Kept."));
    for (const std::string &part : split(line.substr(colon + 1), ';')) {
        auto control = controlOf(part);
        if (!control)
            return tl::unexpected(control.error());
        for (const Control &other : appliance.controls)
            if (typed::tidy(other.name) == typed::tidy(control->name))
                return fail(ErrorCode::Refused,
                            Sentence::tr("Two controls have the same name, or none. Name each: cooker: ring: "
                                         "off, 3; oven: off, 180. Kept."));
        appliance.controls.push_back(std::move(*control));
    }
    if (appliance.controls.empty())
        return fail(ErrorCode::NotUnderstood,
                    Sentence::tr("Which settings of {1} are used? For example {2}: off, 180, 200. Kept.",
                                 {appliance.name, appliance.name}));
    return appliance;
}

std::string applianceLine(const Appliance &appliance) {
    std::string line = appliance.name + ": ";
    for (const Control &control : appliance.controls) {
        line += &control == &appliance.controls.front() ? "" : "; ";
        line += control.name.empty() ? "" : control.name + ": ";
        for (const std::string &setting : control.settings)
            line += (&setting == &control.settings.front() ? "" : ", ") + setting;
    }
    return line;
}

Result<std::optional<Celsius>> readHeat(const std::string &typed) {
    const std::string tidied = typed::tidy(typed);
    if (tidied.empty())
        return std::optional<Celsius>();
    const auto read = typed::numberAndUnit(tidied);
    static const std::vector<std::string> celsius{"", "c", "°c", "degrees", "degrees c", "celsius"};
    static const std::vector<std::string> fahrenheit{"f", "°f", "degrees f", "fahrenheit"};
    const bool inF = read && std::ranges::count(fahrenheit, read->unit) > 0;
    if (!read || (!inF && std::ranges::count(celsius, read->unit) == 0))
        return fail(ErrorCode::NotUnderstood, typed::notA(Sentence::tr("a temperature"), typed, "65 C"));
    const double value = inF ? (read->value - 32) * 5 / 9 : read->value;
    if (value < -40 || value > 400)
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr("A surface has -40 to 400 C. For example 65 C. Kept."));
    return std::optional(Celsius{value});
}

} // namespace model
