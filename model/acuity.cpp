#include "model/sentence.h"
#include "model/sight.h"
#include "model/typed.h"
#include <algorithm>
#include <array>
#include <cmath>

/// The notations of an acuity: one small reader for each, tried in turn.
namespace model {

namespace {

constexpr double bestLogMar = -0.6, worstLogMar = 3.0;
constexpr double logMarPerLetter = 0.02;
constexpr double pointsPerM = 8.0;

using Attempt = std::optional<Result<Acuity>>; // none: not this notation

tl::unexpected<Error> outOfRange(const std::string &typed, const std::string &why) {
    return fail(ErrorCode::OutOfRange, Sentence::tr("Not a possible acuity: {1}. {2} Kept.", {typed, why}));
}

Result<Acuity> chart(const std::string &typed, double logMar) {
    if (!(logMar >= bestLogMar - 1e-9 && logMar <= worstLogMar + 1e-9))
        return outOfRange(
            typed, Sentence::tr("logMAR goes from -0.6 to 3.0; below every chart enter CF, HM, LP or NLP."));
    return Acuity{LogMar{logMar}, BelowChart::None};
}

bool startsWith(const std::string &text, const std::string &start) {
    return text.compare(0, start.size(), start) == 0;
}

/// "at 1 m", "@ 30 cm", "1m": what may follow CF and HM.
bool isTestDistance(std::string rest) {
    if (startsWith(rest, "at "))
        rest = rest.substr(3);
    else if (startsWith(rest, "@"))
        rest = typed::tidy(rest.substr(1));
    if (rest == "face")
        return true;
    const auto value = typed::numberAndUnit(rest);
    const std::array<std::string, 6> units{"cm", "m", "ft", "feet", "in", "mm"};
    return value && value->value > 0 && std::find(units.begin(), units.end(), value->unit) != units.end();
}

/// "with projection", "no projection": what may follow LP.
bool isProjection(const std::string &rest) {
    const std::array<std::string, 6> said{"with projection",      "with accurate projection",
                                          "with good projection", "without projection",
                                          "no projection",        "with poor projection"};
    return std::find(said.begin(), said.end(), rest) != said.end();
}

struct Category {
    const char *name;
    BelowChart below;
};
constexpr std::array<Category, 16> categories{{{"counting fingers", BelowChart::CountingFingers},
                                               {"count fingers", BelowChart::CountingFingers},
                                               {"cf", BelowChart::CountingFingers},
                                               {"fc", BelowChart::CountingFingers},
                                               {"hand movements", BelowChart::HandMovement},
                                               {"hand movement", BelowChart::HandMovement},
                                               {"hand motion", BelowChart::HandMovement},
                                               {"hm", BelowChart::HandMovement},
                                               {"no light perception", BelowChart::NoLightPerception},
                                               {"no perception of light", BelowChart::NoLightPerception},
                                               {"nlp", BelowChart::NoLightPerception},
                                               {"npl", BelowChart::NoLightPerception},
                                               {"light perception", BelowChart::LightPerception},
                                               {"perception of light", BelowChart::LightPerception},
                                               {"lp", BelowChart::LightPerception},
                                               {"pl", BelowChart::LightPerception}}};

Attempt belowChart(const std::string &text) {
    for (const Category &category : categories) {
        const std::string name = category.name;
        if (!startsWith(text, name))
            continue;
        const std::string rest = typed::tidy(text.substr(name.size()));
        const bool light = category.below == BelowChart::LightPerception;
        const bool fingers =
            category.below == BelowChart::CountingFingers || category.below == BelowChart::HandMovement;
        if (rest.empty() || (light && isProjection(rest)) || (fingers && isTestDistance(rest)))
            return Acuity{std::nullopt, category.below};
    }
    return std::nullopt;
}

/// Letters more or fewer than the line: "-2", " +1", "(-2)". None if it is no such thing.
std::optional<int> letters(std::string text) {
    text.erase(std::remove(text.begin(), text.end(), ' '), text.end());
    if (text.empty())
        return 0;
    if (text.size() == 4 && text.front() == '(' && text.back() == ')')
        text = text.substr(1, 2);
    if (text.size() != 2 || (text[0] != '+' && text[0] != '-') || text[1] < '0' || text[1] > '9')
        return std::nullopt;
    return (text[0] == '+' ? 1 : -1) * (text[1] - '0');
}

Attempt snellen(const std::string &typed, const std::string &text) {
    const auto slash = text.find('/');
    if (slash == std::string::npos)
        return std::nullopt;
    std::size_t end = text.find_first_not_of(' ', slash + 1);
    if (end == std::string::npos)
        return std::nullopt;
    const std::size_t start = end;
    while (end < text.size() &&
           ((text[end] >= '0' && text[end] <= '9') || text[end] == '.' || text[end] == ','))
        ++end;
    const auto distance = typed::number(typed::tidy(text.substr(0, slash)));
    const auto denominator = typed::number(text.substr(start, end - start));
    const auto more = letters(text.substr(end));
    if (!distance || !denominator || !more)
        return std::nullopt;
    if (!(*distance > 0 && *denominator > 0))
        return outOfRange(typed, Sentence::tr("Both numbers of a fraction are above 0, for example 6/24."));
    return chart(typed, std::log10(*denominator / *distance) - logMarPerLetter * *more);
}

Attempt letterScore(const std::string &typed, const typed::NumberAndUnit &value) {
    if (value.unit != "letters" && value.unit != "letter" && value.unit != "etdrs letters" &&
        value.unit != "etdrs")
        return std::nullopt;
    if (value.value == 0)
        return outOfRange(typed, Sentence::tr("No letter was read: enter CF, HM, LP or NLP."));
    if (value.value < 0 || value.value > 100 || value.value != std::floor(value.value))
        return outOfRange(typed, Sentence::tr("A letter score is a whole number from 1 to 100."));
    return chart(typed, (85.0 - value.value) / 50.0);
}

Result<Acuity> nearSize(const std::string &typed, double mUnits, std::optional<Centimetres> distance) {
    if (!(mUnits > 0 && mUnits <= 100))
        return outOfRange(typed, Sentence::tr("A print size is above 0, for example 1.6 M or N12."));
    if (!distance)
        return fail(
            ErrorCode::Missing,
            Sentence::tr("No distance for {1}. Enter how far away it was read, for example 40 cm. Kept.",
                         {typed}));
    if (!(distance->value > 0))
        return outOfRange(typed, Sentence::tr("The distance must be above 0."));
    return chart(typed, std::log10(mUnits / (distance->value / 100.0)));
}

/// A prefix or suffix that says which notation a number is in: "N12", "1.6 M", "M 1.6", "logMAR 0.6".
struct Tagged {
    std::string tag;
    double value = 0;
};

std::optional<Tagged> tagged(const std::string &text) {
    if (const auto value = typed::numberAndUnit(text))
        return Tagged{value->unit, value->value};
    for (const char *prefix : {"logmar", "n", "m"}) {
        if (!startsWith(text, prefix))
            continue;
        if (const auto value = typed::number(typed::tidy(text.substr(std::string(prefix).size()))))
            return Tagged{prefix, *value};
    }
    return std::nullopt;
}

Attempt numbered(const std::string &typed, const std::string &text, std::optional<Centimetres> distance) {
    const auto value = tagged(text);
    if (!value)
        return std::nullopt;
    if (value->tag == "logmar")
        return chart(typed, value->value);
    if (value->tag == "m")
        return nearSize(typed, value->value, distance);
    if (value->tag == "n" || value->tag == "pt" || value->tag == "point" || value->tag == "points")
        return nearSize(typed, value->value / pointsPerM, distance);
    if (value->tag.empty() || value->tag == "decimal") {
        if (!(value->value > 0 && value->value <= 4))
            return outOfRange(
                typed,
                Sentence::tr(
                    "A decimal acuity is above 0 and at most 4. With a unit: 0.6 logMAR, N12, 1.6 M."));
        return chart(typed, -std::log10(value->value));
    }
    return letterScore(typed, {value->value, value->tag});
}

} // namespace

Result<Acuity> parseAcuity(const std::string &typed, std::optional<Centimetres> distance,
                           const std::string &example) {
    const std::string text = typed::tidy(typed);
    if (text.size() >= 2 && text[0] == 'j' && typed::number(typed::tidy(text.substr(1))))
        return fail(
            ErrorCode::NotUnderstood,
            Sentence::tr("Jaeger sizes differ between makers: {1}. Enter N or M with the distance. Kept.",
                         {typed}));
    if (const Attempt read = belowChart(text))
        return *read;
    if (const Attempt read = snellen(typed, text))
        return *read;
    if (const Attempt read = numbered(typed, text, distance))
        return *read;
    return fail(ErrorCode::NotUnderstood, typed::notA(Sentence::tr("an acuity"), typed, example));
}

} // namespace model
