#include "model/sentence.h"
#include "model/sight.h"
#include "model/typed.h"
#include <algorithm>
#include <array>

namespace model {

namespace {

std::string withoutSpaces(const std::string &typed) {
    std::string text = typed::tidy(typed);
    std::erase(text, ' ');
    std::replace(text.begin(), text.end(), ',', '.');
    return text;
}

/// Printed values that stand for the boundary between mild and moderate, although some are a trifle worse
/// than 6/18.
bool isMildBoundary(const std::string &typed) {
    const std::array<std::string, 9> printed{"6/18",    "6/19", "20/60", "20/63",     "20/70",
                                             "20/63.3", "0.3",  "0.30",  "0.3decimal"};
    return std::find(printed.begin(), printed.end(), withoutSpaces(typed)) != printed.end();
}

/// Half a hundredth of a logMAR for what is typed to two decimals: 0.48 logMAR and 61 letters are 6/18.
double roundingOf(const std::string &typed) {
    const std::string text = typed::tidy(typed);
    const bool twoDecimals =
        text.find("logmar") != std::string::npos || text.find("letter") != std::string::npos;
    return twoDecimals ? 0.005 : 1e-6;
}

/// Counting fingers nearer than a metre is worse than 1/60.
bool countedNearerThanOneMetre(const std::string &typed) {
    const std::string text = typed::tidy(typed);
    const auto digit = text.find_first_of("0123456789.");
    if (digit == std::string::npos)
        return text.find("face") != std::string::npos;
    const auto value = typed::numberAndUnit(text.substr(digit));
    if (!value)
        return false;
    double metres = value->value;
    if (value->unit == "cm")
        metres /= 100;
    else if (value->unit == "mm")
        metres /= 1000;
    else if (value->unit == "ft" || value->unit == "feet")
        metres *= 0.3048;
    else if (value->unit == "in")
        metres *= 0.0254;
    return metres < 0.9; // 3 feet is taken for a metre
}

VisionCategory byAcuity(const Acuity &acuity, const std::string &typed) {
    const double tolerance = roundingOf(typed);
    if (acuity.logMar) {
        const double value = acuity.logMar->value;
        if (value <= 0.301030 + tolerance)
            return VisionCategory::None;
        if (value <= 0.477121 + tolerance || isMildBoundary(typed))
            return VisionCategory::Mild;
        if (value <= 1.0 + tolerance)
            return VisionCategory::Moderate;
        if (value <= 1.301030 + tolerance)
            return VisionCategory::Severe;
        return value <= 1.778151 + tolerance ? VisionCategory::Blindness3 : VisionCategory::Blindness4;
    }
    switch (acuity.below) {
    case BelowChart::None:
    case BelowChart::CountingFingers:
        return countedNearerThanOneMetre(typed) ? VisionCategory::Blindness4 : VisionCategory::Blindness3;
    case BelowChart::HandMovement:
    case BelowChart::LightPerception:
        return VisionCategory::Blindness4;
    case BelowChart::NoLightPerception:
        return VisionCategory::Blindness5;
    }
    return VisionCategory::Blindness5;
}

} // namespace

std::string withDistance(const std::string &typed, const Acuity &acuity,
                         std::optional<Centimetres> distance) {
    const bool named = typed.find_first_of("0123456789") != std::string::npos;
    if (acuity.below != BelowChart::CountingFingers || named || !distance)
        return typed;
    return "CF at " + typed::words(distance->value, 1) + " cm" /* read again as it is typed */;
}

VisionCategory visionCategory(const Acuity &acuity, const std::string &typed,
                              std::optional<double> fieldAcross) {
    const VisionCategory acuityAlone = byAcuity(acuity, typed);
    if (fieldAcross && *fieldAcross <= 20.0)
        return std::max(acuityAlone, VisionCategory::Blindness3);
    return acuityAlone;
}

std::string wordsOf(VisionCategory category) {
    switch (category) {
    case VisionCategory::None:
        return Sentence::tr("no vision impairment by acuity (ICD-11), category 0 (ICD-10)");
    case VisionCategory::Mild:
        return Sentence::tr("mild vision impairment (ICD-11), category 0 (ICD-10)");
    case VisionCategory::Moderate:
        return Sentence::tr("moderate vision impairment (ICD-11), category 1 (ICD-10)");
    case VisionCategory::Severe:
        return Sentence::tr("severe vision impairment (ICD-11), category 2 (ICD-10)");
    case VisionCategory::Blindness3:
        return Sentence::tr("blindness (ICD-11), category 3 (ICD-10)");
    case VisionCategory::Blindness4:
        return Sentence::tr("blindness (ICD-11), category 4 (ICD-10)");
    case VisionCategory::Blindness5:
        return Sentence::tr("blindness (ICD-11), category 5 (ICD-10)");
    }
    return {};
}

} // namespace model
