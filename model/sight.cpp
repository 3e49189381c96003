#include "model/sight.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <cmath>
#include <numbers>

namespace model {

namespace {

constexpr double millimetresPerPoint = 25.4 / 72.0;
constexpr double minutesOfLetter = 5.0;
constexpr double millimetresPerM = 1.4544;

double radians(double degrees) {
    return degrees * std::numbers::pi / 180.0;
}

} // namespace

bool worse(const Acuity &a, const Acuity &b) {
    if (a.logMar && b.logMar)
        return *a.logMar > *b.logMar;
    return a.below > b.below;
}

std::string wordsOf(const Acuity &acuity) {
    if (acuity.logMar)
        return Sentence::tr("logMAR {1}", {typed::words(std::round(acuity.logMar->value / 0.02) * 0.02, 2,
                                                        typed::Zeros::Keep)});
    switch (acuity.below) {
    case BelowChart::None:
        break;
    case BelowChart::CountingFingers:
        return Sentence::tr("counting fingers");
    case BelowChart::HandMovement:
        return Sentence::tr("hand movement");
    case BelowChart::LightPerception:
        return Sentence::tr("light perception");
    case BelowChart::NoLightPerception:
        return Sentence::tr("no light perception");
    }
    return Sentence::tr("no acuity");
}

Result<Millimetres> letterHeight(LogMar acuity, Centimetres distance, double reserve) {
    if (!(distance.value > 0))
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr("A letter needs a distance greater than 0 to have a height."));
    if (!(reserve >= 1))
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr("A reserve below 1 makes print smaller than can be read. Give 1 or more."));
    const double degrees = minutesOfLetter / 60.0 * std::pow(10.0, acuity.value);
    if (degrees >= 180)
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr("No letter is that large: the acuity is beyond every chart."));
    return Millimetres{2.0 * distance.value * 10.0 * std::tan(radians(degrees) / 2.0) * reserve};
}

Result<Points> pointSize(Millimetres xHeight, double ratio) {
    if (!(xHeight.value > 0) || !(ratio > 0 && ratio < 1))
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr(
                        "A point size needs an x-height above 0 and a face whose ratio is between 0 and 1."));
    return Points{xHeight.value / ratio / millimetresPerPoint};
}

Result<Millimetres> xHeightOf(Points size, double ratio) {
    if (!(size.value > 0) || !(ratio > 0 && ratio < 1))
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr(
                        "An x-height needs a point size above 0 and a face whose ratio is between 0 and 1."));
    return Millimetres{size.value * millimetresPerPoint * ratio};
}

double mUnits(Millimetres height) {
    return height.value / millimetresPerM;
}

Millimetres heightOfMUnits(double m) {
    return {m * millimetresPerM};
}

double weberThreshold(double logContrastSensitivity) {
    return std::pow(10.0, -logContrastSensitivity);
}

ContrastBand contrastBand(double logContrastSensitivity) {
    if (logContrastSensitivity >= 1.65)
        return ContrastBand::Normal;
    if (logContrastSensitivity >= 1.50)
        return ContrastBand::Borderline;
    if (logContrastSensitivity >= 1.05)
        return ContrastBand::Impaired;
    if (logContrastSensitivity >= 0.60)
        return ContrastBand::Severe;
    return ContrastBand::VeryPoor;
}

std::string wordsOf(ContrastBand band) {
    switch (band) {
    case ContrastBand::Normal:
        return Sentence::tr("normal for an older adult");
    case ContrastBand::Borderline:
        return Sentence::tr("borderline");
    case ContrastBand::Impaired:
        return Sentence::tr("moderate loss of contrast");
    case ContrastBand::Severe:
        return Sentence::tr("severe loss of contrast");
    case ContrastBand::VeryPoor:
        return Sentence::tr("very poor contrast");
    }
    return {};
}

Millimetres fieldWidth(double across, Centimetres distance) {
    return {2.0 * distance.value * 10.0 * std::tan(radians(across) / 2.0)};
}

} // namespace model
