#include "model/contrast.h"
#include "model/lifting.h"
#include "model/notations.h"
#include "model/sight.h"
#include "tests/check/json_field.h"
#include <array>
#include <cmath>
#include <iostream>

/// Sight, contrast and lifting on standard input and output: one JSON object a line, one answer a line.
namespace {

using namespace model;
using check::BadInput;
using check::Field;
using nlohmann::ordered_json;

constexpr double mostCentimetres = 2000;
constexpr double leastLogMar = -0.6, mostLogMar = 3;

/// Twelve significant figures: the last bits of a double are noise to a reader.
double tidied(double value) {
    if (value == 0 || !std::isfinite(value))
        return value;
    constexpr int figures = 12;
    const double scale = std::pow(10.0, figures - 1 - std::floor(std::log10(std::abs(value))));
    return std::isfinite(scale) ? std::round(value * scale) / scale : value;
}

template<class T> T checked(const Result<T> &result) {
    if (!result)
        throw BadInput(result.error().sentence);
    return *result;
}

std::string icd11(VisionCategory category) {
    switch (category) {
    case VisionCategory::None:
        return "none";
    case VisionCategory::Mild:
        return "mild";
    case VisionCategory::Moderate:
        return "moderate";
    case VisionCategory::Severe:
        return "severe";
    case VisionCategory::Blindness3:
    case VisionCategory::Blindness4:
    case VisionCategory::Blindness5:
        return "blindness";
    }
    return {};
}

int icd10(VisionCategory category) {
    return category <= VisionCategory::Mild ? 0 : static_cast<int>(category) - 1;
}

/// True for M, N and points nearer than a metre.
bool isNearPrint(const std::string &typed, std::optional<Centimetres> distance) {
    const auto without = parseAcuity(typed, std::nullopt);
    return !without && without.error().code == ErrorCode::Missing && distance && distance->value < 100;
}

ordered_json acuityAnswer(const Field &line) {
    const std::string typed = line.at("acuity").text();
    std::optional<Centimetres> distance;
    if (line.has("distance_m"))
        distance = Centimetres{line.at("distance_m").positive(mostCentimetres / 100) * 100};
    std::optional<double> field;
    if (line.has("field_across_deg"))
        field = line.at("field_across_deg").positive(360);
    const Acuity acuity = checked(parseAcuity(typed, distance));
    const VisionCategory category = visionCategory(acuity, withDistance(typed, acuity, distance), field);
    ordered_json answer;
    if (acuity.logMar) {
        const LogMar value = *acuity.logMar;
        answer["logmar"] = tidied(value.value);
        answer["decimal"] = tidied(decimalOf(value));
        answer["mar_arcmin"] = tidied(minutesOf(value));
        answer["snellen6"] = snellenOf(value, 6);
        answer["snellen20"] = snellenOf(value, 20);
    } else {
        for (const char *none : {"logmar", "decimal", "mar_arcmin", "snellen6", "snellen20"})
            answer[none] = nullptr;
        answer["why"] = "Below every chart: " + wordsOf(acuity) + " has no angle and is never made into one.";
    }
    if (isNearPrint(typed, distance)) {
        answer["category_icd11"] = nullptr;
        answer["category_icd10"] = nullptr;
        answer["why"] = "The category goes by distance acuity: this is near print.";
        return answer;
    }
    answer["category_icd11"] = icd11(category);
    answer["category_icd10"] = icd10(category);
    return answer;
}

ordered_json nearAnswer(const Field &line) {
    const std::string typed = line.at("near").text();
    std::optional<Centimetres> distance;
    if (line.has("distance_cm"))
        distance = Centimetres{line.at("distance_cm").positive(mostCentimetres)};
    const Acuity acuity = checked(parseAcuity(typed, distance));
    if (!distance)
        throw BadInput("No distance for " + typed + ". Enter how far away it was read: distance_cm.");
    if (!acuity.logMar)
        return {{"logmar", nullptr},
                {"m_units", nullptr},
                {"x_height_mm", nullptr},
                {"why", "Below every chart: no print size follows from " + wordsOf(acuity) + "."}};
    const double m = mUnitsAt(*acuity.logMar, *distance);
    return {{"logmar", tidied(acuity.logMar->value)},
            {"m_units", tidied(m)},
            {"x_height_mm", tidied(heightOfMUnits(m).value)}};
}

ordered_json labelAnswer(const Field &line) {
    const LogMar acuity{line.at("logmar").number(leastLogMar, mostLogMar)};
    const Centimetres distance{line.at("distance_cm").positive(mostCentimetres)};
    const Millimetres height = checked(letterHeight(acuity, distance, line.at("reserve").number(1, 100)));
    ordered_json answer{{"x_height_mm", tidied(height.value)}};
    if (!line.has("font_x_ratio")) {
        answer["points"] = nullptr;
        answer["why"] = "Points need the x-height of the face in em: font_x_ratio.";
        return answer;
    }
    const Field ratio = line.at("font_x_ratio");
    answer["points"] = tidied(checked(pointSize(height, ratio.positive(1))).value);
    return answer;
}

std::string bandName(ContrastBand band) {
    switch (band) {
    case ContrastBand::Normal:
        return "normal (older adults)";
    case ContrastBand::Borderline:
        return "borderline";
    case ContrastBand::Impaired:
        return "impaired (moderate loss)";
    case ContrastBand::Severe:
        return "disability (severe loss)";
    case ContrastBand::VeryPoor:
        return "very poor (profound)";
    }
    return {};
}

ordered_json contrastAnswer(const Field &line) {
    const double logUnits = line.at("contrast_logcs").number(0, 2.4);
    ordered_json answer{{"threshold_weber", tidied(weberThreshold(logUnits))}};
    if (line.has("print_weber")) {
        answer["contrast_reserve"] = tidied(contrastReserve(line.at("print_weber").number(0, 1), logUnits));
    } else {
        answer["contrast_reserve"] = nullptr;
        answer["why"] = "A reserve needs the contrast of the print: print_weber.";
    }
    answer["band"] = bandName(contrastBand(logUnits));
    return answer;
}

ordered_json colourAnswer(const Field &line) {
    const Colour text = checked(parseColour(line.at("text").text()));
    const Colour background = checked(parseColour(line.at("background").text()));
    return {{"wcag_ratio", tidied(contrastRatio(text, background))}};
}

const char *zoneName(ReachZone zone) {
    switch (zone) {
    case ReachZone::Floor:
        return "Z1 floor";
    case ReachZone::Low:
        return "Z2 low";
    case ReachZone::Best:
        return "Z3 best";
    case ReachZone::High:
        return "Z4 high";
    case ReachZone::Overhead:
        return "Z5 overhead";
    }
    return "";
}

ordered_json liftAnswer(const Field &line) {
    const Centimetres height{line.at("hand_height_mm").number(0, 3000) / 10};
    const Centimetres stature{line.at("stature_mm").number(500, 2300) / 10};
    Lift lift{.from = height, .to = height, .stature = stature};
    lift.sex = line.at("sex").oneOf({"female", "male"}) == "female" ? Sex::Female : Sex::Male;
    const std::string arms = line.at("arms").oneOf({"close", "out", "arms out", "extended"});
    lift.arms = arms == "close" ? Arms::Close : Arms::Out;
    if (line.has("to_height_mm"))
        lift.to = Centimetres{line.at("to_height_mm").number(0, 3000) / 10};
    if (line.has("twist_deg"))
        lift.twistDegrees = line.at("twist_deg").number(0, 180);
    if (line.has("per_minute"))
        lift.perMinute = line.at("per_minute").number(0, 60);
    ordered_json answer{{"zone", zoneName(reachZone(height, stature))},
                        {"lift_filter_kg", tidied(checked(liftFilter(lift)).value)}};
    if (std::max(lift.from, lift.to) > bodyHeights(stature, std::nullopt).overhead)
        answer["note"] = "Above the overhead reach of this stature: nothing is lifted there.";
    return answer;
}

ordered_json nioshAnswer(const Field &line) {
    const Field lift = line.at("niosh");
    const double most = 1000;
    const Result<Kilograms> limit = nioshLimit({.horizontal = lift.at("h").number(0, most),
                                                .vertical = lift.at("v").number(0, most),
                                                .travel = lift.at("d").number(0, most),
                                                .asymmetry = lift.at("a").number(0, 180),
                                                .frequency = lift.at("fm").number(0, 1),
                                                .coupling = lift.at("cm").number(0.9, 1)});
    return {{"rwl_kg", tidied(checked(limit).value)}};
}

struct Kind {
    const char *key;
    ordered_json (*answer)(const Field &);
};
constexpr std::array<Kind, 7> kinds{{{"acuity", acuityAnswer},
                                     {"near", nearAnswer},
                                     {"logmar", labelAnswer},
                                     {"contrast_logcs", contrastAnswer},
                                     {"text", colourAnswer},
                                     {"hand_height_mm", liftAnswer},
                                     {"niosh", nioshAnswer}}};

ordered_json answerTo(const std::string &line) {
    const nlohmann::json value = nlohmann::json::parse(line);
    if (!value.is_object())
        throw BadInput("A line is one JSON object: {\"acuity\": \"6/60\"}.");
    const Kind *found = nullptr;
    for (const Kind &kind : kinds) {
        if (!value.contains(kind.key))
            continue;
        if (found)
            throw BadInput(std::string("One question a line: this one has ") + found->key + " and " +
                           kind.key + ".");
        found = &kind;
    }
    if (!found)
        throw BadInput("No question: a line has one of acuity, near, logmar, contrast_logcs, text, "
                       "hand_height_mm, niosh.");
    return found->answer(Field(value, "this line", ""));
}

ordered_json answerOrError(const std::string &line) {
    try {
        return answerTo(line);
    } catch (const nlohmann::json::exception &) {
        return {{"error", "Not JSON, or a number too large to hold: one object in braces a line."}};
    } catch (const BadInput &wrong) {
        return {{"error", wrong.what()}};
    }
}

} // namespace

int main(int argc, char ** /*argv*/) {
    if (argc > 1) {
        std::cerr << "sight_case: takes no arguments: one JSON object a line on standard input\n";
        return 2;
    }
    std::string line;
    while (std::getline(std::cin, line))
        std::cout << answerOrError(line).dump(-1, ' ', false, ordered_json::error_handler_t::replace)
                  << std::endl;
    return 0;
}
