#include "model/contrast.h"
#include "model/notations.h"
#include "model/reading_ease.h"
#include "model/reading_trial.h"
#include "model/sight.h"
#include "model/typed.h"
#include "tests/check_values/check_functions.h"

namespace check {

using namespace model;

namespace {

/// "none" for a category below the chart, "refused" for what cannot be read.
std::string logMar(const Input &input) {
    std::optional<Centimetres> distance;
    if (input.size() > 1)
        distance = Centimetres{number(input, 1)};
    const auto acuity = parseAcuity(input.at(0), distance);
    if (!acuity)
        return "refused";
    return acuity->logMar ? shown(acuity->logMar->value) : "none";
}

std::string category(const Input &input) {
    const auto acuity = parseAcuity(input.at(0), std::nullopt);
    const auto across = input.size() > 1 ? std::optional(number(input, 1)) : std::nullopt;
    switch (visionCategory(*acuity, input.at(0), across)) {
    case VisionCategory::None:
        return "none";
    case VisionCategory::Mild:
        return "mild";
    case VisionCategory::Moderate:
        return "moderate";
    case VisionCategory::Severe:
        return "severe";
    case VisionCategory::Blindness3:
        return "blindness 3";
    case VisionCategory::Blindness4:
        return "blindness 4";
    case VisionCategory::Blindness5:
        return "blindness 5";
    }
    return {};
}

std::string band(const Input &input) {
    switch (contrastBand(number(input, 0))) {
    case ContrastBand::Normal:
        return "normal";
    case ContrastBand::Borderline:
        return "borderline";
    case ContrastBand::Impaired:
        return "impaired";
    case ContrastBand::Severe:
        return "severe";
    case ContrastBand::VeryPoor:
        return "very poor";
    }
    return {};
}

std::string easeName(ReadingEase ease) {
    switch (ease) {
    case ReadingEase::None:
        return "none";
    case ReadingEase::Spot:
        return "spot";
    case ReadingEase::Fluent:
        return "fluent";
    case ReadingEase::HighFluent:
        return "high fluent";
    }
    return {};
}

double labelPoints(const Input &i) {
    const auto height = letterHeight({number(i, 0)}, {number(i, 1)}, number(i, 2));
    return pointSize(*height, number(i, 3))->value;
}

double ratioOf(const Input &i) {
    return contrastRatio(*parseColour(i.at(0)), *parseColour(i.at(1)));
}

void addContrast(Functions &all) {
    all["threshold"] = [](const Input &i) { return shown(weberThreshold(number(i, 0))); };
    all["threshold-percent"] = [](const Input &i) { return shown(100 * weberThreshold(number(i, 0))); };
    all["michelson"] = [](const Input &i) { return shown(michelsonOf(number(i, 0))); };
    all["michelson-percent"] = [](const Input &i) {
        return shown(100 * michelsonOf(weberThreshold(number(i, 0))));
    };
    all["weber-of-michelson"] = [](const Input &i) { return shown(weberOf(number(i, 0))); };
    all["weber"] = [](const Input &i) { return shown(*weberContrast(number(i, 0), number(i, 1))); };
    all["contrast-reserve"] = [](const Input &i) {
        return shown(contrastReserve(number(i, 0), number(i, 1)));
    };
    all["band"] = band;
    all["wcag"] = [](const Input &i) { return shown(ratioOf(i)); };
    all["luminance"] = [](const Input &i) { return shown(relativeLuminance(*parseColour(i.at(0)))); };
    all["band-of-size"] = [](const Input &i) { return easeName(easeOfSize(number(i, 0))); };
    all["band-of-contrast"] = [](const Input &i) { return easeName(easeOfContrast(number(i, 0))); };
    all["lux-task"] = [](const Input &) { return shown(taskLux); };
    all["lux-room"] = [](const Input &) { return shown(roomLux); };
}

void addReading(Functions &all) {
    all["reading-acuity"] = [](const Input &i) {
        return shown(readingAcuity(whole(i, 0), whole(i, 1)).value);
    };
    all["wpm"] = [](const Input &i) { return shown(wordsPerMinute(whole(i, 0), number(i, 1))); };
    all["speed"] = [](const Input &i) {
        return shown(speedAt(number(i, 0), number(i, 1), number(i, 2), number(i, 3)));
    };
    all["field-width"] = [](const Input &i) { return shown(fieldWidth(number(i, 0), {number(i, 1)}).value); };
    all["small-field"] = [](const Input &i) { return shown(isTubeField(number(i, 0)) ? 1 : 0); };
    all["near-impairment"] = [](const Input &i) {
        const auto acuity = parseAcuity(i.at(0), Centimetres{number(i, 1)});
        return shown(nearImpairment(*acuity->logMar) ? 1 : 0);
    };
}

} // namespace

Functions sightFunctions() {
    Functions all;
    all["logmar"] = logMar;
    all["acuity-words"] = [](const Input &i) { return wordsOf(*parseAcuity(i.at(0), std::nullopt)); };
    all["decimal"] = [](const Input &i) { return shown(decimalOf({number(i, 0)})); };
    all["letters"] = [](const Input &i) { return shown(*letterScoreOf({number(i, 0)})); };
    all["m-at-40"] = [](const Input &i) { return shown(mUnitsAt({number(i, 0)}, {40})); };
    all["m-of-height"] = [](const Input &i) { return shown(mUnits({number(i, 0)})); };
    all["height-of-m"] = [](const Input &i) { return shown(heightOfMUnits(number(i, 0)).value); };
    all["height"] = [](const Input &i) {
        return shown(letterHeight({number(i, 0)}, {number(i, 1)}, 1)->value);
    };
    all["x-height"] = [](const Input &i) { return shown(xHeightOf({number(i, 0)}, number(i, 1))->value); };
    all["x-height-m"] = [](const Input &i) {
        return shown(mUnits(*xHeightOf({number(i, 0)}, number(i, 1))));
    };
    all["label-points"] = [](const Input &i) { return shown(labelPoints(i)); };
    all["rescale"] = [](const Input &i) {
        return shown(atDistance({number(i, 0)}, {number(i, 1)}, {number(i, 2)}).value);
    };
    all["category"] = category;
    addContrast(all);
    addReading(all);
    return all;
}

} // namespace check
