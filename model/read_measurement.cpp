#include "model/read_measurement.h"
#include "model/findings.h"
#include "model/marks.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>

namespace model {

namespace {

bool isOneOf(const std::string &text, std::initializer_list<const char *> choices) {
    return std::any_of(choices.begin(), choices.end(), [&](const char *choice) { return text == choice; });
}

struct Range {
    double least, most;
};

/// A number with one of the units, within the range; `name` is what it is called: "a contrast sensitivity".
Result<double> readNumber(const std::string &typed, const std::string &name,
                          std::initializer_list<const char *> units, Range range,
                          const std::string &example) {
    const auto value = typed::numberAndUnit(typed::tidy(typed));
    if (!value || !isOneOf(value->unit, units))
        return fail(ErrorCode::NotUnderstood, typed::notA(name, typed, example));
    if (!(value->value >= range.least && value->value <= range.most))
        return fail(
            ErrorCode::OutOfRange,
            Sentence::tr("Out of range for {1}: {2}. It goes from {3} to {4}. Try {5}. Kept.",
                         {name, typed, typed::words(range.least, 2), typed::words(range.most, 2), example}));
    return value->value;
}

const Marker *namedMark(const std::string &name) {
    const auto &kit = markerKit();
    const auto found = std::find_if(kit.begin(), kit.end(), [&](const Marker &marker) {
        return typed::tidy(marker.name) == name || typed::tidy(marker.key) == name;
    });
    return found == kit.end() ? nullptr : &*found;
}

struct HeightRange {
    Centimetres least, most;
    const char *example;
};

HeightRange heightRange(Test test) {
    if (test == Test::Stature)
        return {{50}, {230}, "162 cm"};
    if (test == Test::KnuckleHeight)
        return {{20}, {120}, "72 cm"};
    if (test == Test::ShoulderHeight)
        return {{40}, {200}, "131 cm"};
    if (test == Test::ReachLow)
        return {{0}, {150}, "30 cm"};
    if (test == Test::ReachHigh)
        return {{40}, {280}, "175 cm"};
    return {{40}, {220}, "150 cm"};
}

} // namespace

Result<std::optional<Centimetres>> readDistance(const Measurement &measurement) {
    if (typed::tidy(measurement.distanceTyped).empty())
        return std::optional<Centimetres>{};
    const auto length = parseLength(measurement.distanceTyped, Centimetres{2000});
    if (length)
        return std::optional(length->value);
    if (length.error().code == ErrorCode::NotUnderstood)
        return fail(ErrorCode::NotUnderstood,
                    typed::notA(Sentence::tr("a distance"), measurement.distanceTyped, "40 cm"));
    return tl::unexpected(length.error());
}

Result<Acuity> readAcuity(const Measurement &measurement) {
    const auto distance = readDistance(measurement);
    if (!distance)
        return tl::unexpected(distance.error());
    return parseAcuity(measurement.typed, *distance,
                       measurement.test == Test::NearAcuity ? "N12 at 40 cm" : "6/24");
}

Result<double> readContrast(const std::string &typed) {
    return readNumber(typed, Sentence::tr("a contrast sensitivity"),
                      {"", "log", "logcs", "log units", "log cs"}, {0, 2.4}, "1.05");
}

Result<double> readField(const std::string &typed) {
    return readNumber(typed, Sentence::tr("a field in degrees"),
                      {"", "deg", "degree", "degrees", "degrees across"}, {0.5, 180}, "120");
}

Result<Points> readPoints(const std::string &typed) {
    std::string text = typed::tidy(typed);
    if (!text.empty() && text[0] == 'n')
        text = typed::tidy(text.substr(1));
    const auto points =
        readNumber(text, Sentence::tr("a print size"), {"", "pt", "point", "points"}, {4, 200}, "24 point");
    if (!points)
        return tl::unexpected(points.error());
    return Points{*points};
}

Result<bool> readYesNo(const std::string &typed) {
    const std::string text = typed::tidy(typed);
    if (isOneOf(text, {"yes", "y", "true"}))
        return true;
    if (isOneOf(text, {"no", "n", "false"}))
        return false;
    return fail(ErrorCode::NotUnderstood, typed::notA(Sentence::tr("an answer"), typed, "yes or no"));
}

Result<std::vector<std::string>> readMarks(const std::string &typed) {
    std::vector<std::string> keys;
    const auto names = typed::list(typed);
    if (names.empty())
        return fail(ErrorCode::NotUnderstood,
                    typed::notA(Sentence::tr("a list of marks"), typed, "ridge, or none"));
    if (names.size() == 1 && isOneOf(names[0], {"none", "no pair", "no marks"}))
        return keys;
    for (const std::string &name : names) {
        const Marker *marker = namedMark(name);
        if (!marker)
            return fail(ErrorCode::NotUnderstood,
                        Sentence::tr("No mark in the kit is called: {1}. Try {2}. Kept.",
                                     {name, markerKit().front().name}));
        if (std::find(keys.begin(), keys.end(), marker->key) == keys.end())
            keys.push_back(marker->key);
    }
    return keys;
}

Result<Centimetres> readHeight(const Measurement &measurement) {
    const HeightRange range = heightRange(measurement.test);
    const std::string text = typed::tidy(measurement.typed);
    const auto plain = typed::numberAndUnit(text);
    if (range.least.value == 0 && (text == "floor" || (plain && plain->value == 0)))
        return Centimetres{0};
    const auto length = parseLength(measurement.typed, range.most);
    if (!length) {
        if (length.error().code == ErrorCode::NotUnderstood)
            return fail(ErrorCode::NotUnderstood,
                        typed::notA(Sentence::tr("a height"), measurement.typed, range.example));
        return tl::unexpected(length.error());
    }
    if (length->value < range.least)
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr("Too low for this: {1}. The least here is {2} cm. Try {3}. Kept.",
                                 {measurement.typed, typed::words(range.least.value, 1), range.example}));
    return length->value;
}

Result<Posture> readPosture(const std::string &typed) {
    const std::string text = typed::tidy(typed);
    if (isOneOf(text, {"standing", "stands", "stand", "on foot"}))
        return Posture::Standing;
    if (isOneOf(text, {"seated", "sitting", "sits", "sit", "wheelchair", "stool"}))
        return Posture::Seated;
    return fail(ErrorCode::NotUnderstood,
                typed::notA(Sentence::tr("a way of working"), typed, "standing or seated"));
}

Result<Centimetres> readSoles(const std::string &typed) {
    const std::string text = typed::tidy(typed);
    if (isOneOf(text, {"none", "no shoes", "barefoot", "slippers", "0", "0 cm"}))
        return Centimetres{0};
    const auto height = parseLength(typed, Centimetres{15});
    if (!height && height.error().code == ErrorCode::NotUnderstood)
        return fail(ErrorCode::NotUnderstood,
                    typed::notA(Sentence::tr("a height of soles"), typed, "2 cm, or none"));
    return height.map([](const Length &length) { return length.value; });
}

Result<Sex> readLiftFigures(const std::string &typed) {
    const std::string text = typed::tidy(typed);
    if (isOneOf(text, {"women", "women's", "woman", "woman's", "female", "lower"}))
        return Sex::Female;
    if (isOneOf(text, {"men", "men's", "man", "man's", "male"}))
        return Sex::Male;
    return fail(ErrorCode::NotUnderstood,
                typed::notA(Sentence::tr("a column of the lifting filter"), typed, "women's or men's"));
}

Result<Kilograms> readWeight(const std::string &typed) {
    const auto value = typed::numberAndUnit(typed::tidy(typed));
    double kilograms = value ? value->value : 0;
    if (value && isOneOf(value->unit, {"g", "gram", "grams"}))
        kilograms /= 1000;
    else if (value && isOneOf(value->unit, {"lb", "lbs", "pound", "pounds"}))
        kilograms *= 0.45359237;
    else if (!value || !isOneOf(value->unit, {"", "kg", "kilogram", "kilograms", "kilo", "kilos"}))
        return fail(ErrorCode::NotUnderstood, typed::notA(Sentence::tr("a weight"), typed, "1.5 kg"));
    if (!(kilograms > 0 && kilograms <= 50))
        return fail(
            ErrorCode::OutOfRange,
            Sentence::tr(
                "Not a weight lifted at home: {1}. It is above 0 and at most 50 kg. Try 1.5 kg. Kept.",
                {typed}));
    return Kilograms{kilograms};
}

} // namespace model
