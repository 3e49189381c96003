#include "model/better_eye.h"
#include "model/contrast.h"
#include "model/findings_parts.h"
#include "model/notations.h"
#include "model/print_size.h"
#include "model/read_measurement.h"
#include "model/reading_ease.h"
#include "model/sight_parts.h"
#include "model/typed.h"
#include <algorithm>

namespace model {

namespace {

const std::string acuitySource =
    "Bach, acuity cheat sheet: logMAR is log10 of the minimum angle in minutes of arc";
const std::string categorySource = "WHO, ICD-10 (2010) H54 and ICD-11 (2018) 9D90";
const std::string contrastSource = "Leat, Legge and Bullimore 1999 (1.50, 1.05); review of reading and "
                                   "contrast (9 and 25 percent thresholds)";
constexpr double usualPrintContrast = 0.9;

std::string eyeWords(const BetterEye &eye) {
    std::string words = eye.side == Side::Both        ? "both eyes open"
                        : eye.side == Side::NotStated ? "eye not stated"
                                                      : wordsOf(eye.side) + " eye";
    words += eye.withGlasses ? ", with the usual glasses" : ", without glasses";
    return eye.days > 1 ? words + "; the worst of " + std::to_string(eye.days) + " recorded days" : words;
}

/// "Chart: single letters." and what single signs mean; nothing if it was not said.
std::string chartWords(const std::string &chart) {
    if (chart.empty())
        return " The chart was not said.";
    const bool single = typed::tidy(chart).find("single") != std::string::npos;
    return " Chart: " + chart + "." +
           (single ? " Single signs can be read smaller than the same in rows (common practice)." : "");
}

/// The same acuity on other charts, the mean of several days, and for near the limit of the WHO.
std::string otherNotations(Test test, const BetterEye &eye) {
    const auto distance = test == Test::NearAcuity ? std::optional(Centimetres{40}) : std::nullopt;
    std::string words = " On other charts: " + allNotations(eye.acuity, distance) + ".";
    if (const auto mean = meanAcuity(eye.ofDays); mean && eye.days > 1)
        words += " Mean of the days in logMAR: " + typed::words(mean->value, 2, typed::Zeros::Keep) + ".";
    if (test == Test::NearAcuity)
        words += nearImpairment(*eye.acuity.logMar)
                     ? " Worse than N6 at 40 cm: near vision impairment (WHO 2018)."
                     : " No worse than N6 at 40 cm (WHO 2018).";
    return words;
}

/// The acuity of one test, its finding, and a finding for each entry that cannot be read.
std::optional<BetterEye> acuityFinding(const Case &record, Test test, std::vector<Finding> &all) {
    const auto results = countingResults(record, test);
    const std::string topic = infoOf(test).name + ", better eye";
    for (const Measurement *result : results)
        if (const auto read = readAcuity(*result); !read)
            all.push_back(notUnderstood(*result, read.error()));
    const auto eye = betterEye(results);
    if (!eye) {
        all.push_back(
            notMeasured(Domain::Sight, topic, "not measured", whyMissing(record, test), acuitySource));
        return eye;
    }
    const std::string at = eye->distance.empty() ? "" : " at " + eye->distance;
    std::string because = "Typed as " + eye->typed + at + ": " + eyeWords(*eye) + ".";
    if (eye->acuity.logMar)
        because += chartWords(eye->chart) + otherNotations(test, *eye);
    else
        because += " Below every chart, so no print size follows.";
    all.push_back(measured(Domain::Sight, topic, wordsOf(eye->acuity), because, acuitySource, eye->from));
    return eye;
}

struct FieldResult {
    double across = 0;
    Id from;
};

/// The narrowest field recorded.
std::optional<FieldResult> fieldFinding(const Case &record, std::vector<Finding> &all) {
    std::optional<FieldResult> narrowest;
    for (const Measurement *result : countingResults(record, Test::FieldExtent)) {
        const auto across = readField(result->typed);
        if (!across)
            all.push_back(notUnderstood(*result, across.error()));
        else if (!narrowest || *across < narrowest->across)
            narrowest = FieldResult{*across, result->id};
    }
    if (!narrowest) {
        all.push_back(notMeasured(Domain::Sight, "Field", "not measured",
                                  whyMissing(record, Test::FieldExtent), categorySource));
        return narrowest;
    }
    const std::string seen = typed::words(fieldWidth(narrowest->across, Centimetres{40}).value, 0);
    const bool small = isTubeField(narrowest->across);
    const std::string because =
        small ? "At 40 cm about " + seen +
                    " mm are seen at once. Moderate size and high contrast near the grip, "
                    "not huge print; fixed places."
              : "At 40 cm about " + seen + " mm are seen at once.";
    all.push_back(measured(Domain::Sight, "Field", typed::words(narrowest->across, 1) + " degrees across",
                           because, "w = 2 d tan(angle / 2); advice: common practice", {narrowest->from}));
    return narrowest;
}

void categoryFinding(const std::optional<BetterEye> &eye, const std::optional<FieldResult> &field,
                     std::vector<Finding> &all) {
    const std::string topic = "Category of vision impairment";
    if (!eye) {
        all.push_back(
            notMeasured(Domain::Sight, topic, "not known", "It needs a distance acuity.", categorySource));
        return;
    }
    const auto across = field ? std::optional(field->across) : std::nullopt;
    const auto distance = parseLength(eye->distance, Centimetres{2000});
    const std::string typed =
        withDistance(eye->typed, eye->acuity, distance ? std::optional(distance->value) : std::nullopt);
    const VisionCategory category = visionCategory(eye->acuity, typed, across);
    const VisionCategory acuityAlone = visionCategory(eye->acuity, typed, std::nullopt);
    std::vector<Id> from = eye->from;
    if (field)
        from.push_back(field->from);
    const std::string because =
        category != acuityAlone
            ? "By the field: no more than 10 degrees round fixation. Acuity alone would say " +
                  wordsOf(acuityAlone) + "."
        : field ? "By the acuity of the better eye; the field does not change it."
                : "By the acuity of the better eye; the field was not measured.";
    all.push_back(measured(Domain::Sight, topic, wordsOf(category), because + " Not a diagnosis.",
                           categorySource, std::move(from)));
}

struct ContrastResult {
    double logUnits = 0;
    Id from;
};

/// The lowest contrast sensitivity recorded.
std::optional<ContrastResult> contrastFinding(const Case &record, std::vector<Finding> &all) {
    std::optional<ContrastResult> worst;
    for (const Measurement *result : countingResults(record, Test::ContrastSensitivity)) {
        const auto value = readContrast(result->typed);
        if (!value)
            all.push_back(notUnderstood(*result, value.error()));
        else if (!worst || *value < worst->logUnits)
            worst = ContrastResult{*value, result->id};
    }
    if (!worst) {
        all.push_back(notMeasured(Domain::Sight, "Contrast", "not measured",
                                  whyMissing(record, Test::ContrastSensitivity), contrastSource));
        return worst;
    }
    const ContrastBand band = contrastBand(worst->logUnits);
    std::string because =
        "Log contrast sensitivity " + typed::words(worst->logUnits, 2) + ": print needs more than " +
        typed::words(100 * weberThreshold(worst->logUnits), 1) + " percent contrast to be seen at all.";
    const double reserve = contrastReserve(usualPrintContrast, worst->logUnits);
    because += " Good black print has " + typed::words(reserve, 1) +
               " times that, enough to read: " + wordsOf(easeOfContrast(reserve)) + ".";
    if (band == ContrastBand::VeryPoor)
        because += " Print alone is unlikely to do: label by touch or sound first.";
    else if (band == ContrastBand::Severe)
        because += " More light, and labels three times the threshold size.";
    all.push_back(measured(Domain::Sight, "Contrast", wordsOf(band), because, contrastSource, {worst->from}));
    return worst;
}

void usableVisionFinding(const Case &record, const std::optional<BetterEye> &eye, SightMeaning &meaning) {
    const std::string topic = infoOf(Test::UsableVision).name;
    if (const Measurement *result = newestResult(record, Test::UsableVision)) {
        if (const auto uses = readYesNo(result->typed)) {
            meaning.usableVision = *uses;
            meaning.all.push_back(measured(Domain::Sight, topic, *uses ? "yes" : "no",
                                           *uses ? "Light on the shelf counts in the plan."
                                                 : "The plan does not count on sight.",
                                           "as told or seen", {result->id}));
            return;
        } else {
            meaning.all.push_back(notUnderstood(*result, uses.error()));
        }
    }
    if (!eye) {
        meaning.all.push_back(notMeasured(Domain::Sight, topic, "not known",
                                          "Neither asked nor measured. The plan does not count on sight.",
                                          "usual judgement"));
        return;
    }
    meaning.usableVision = eye->acuity.below < BelowChart::LightPerception;
    meaning.all.push_back(estimated(
        Domain::Sight, topic, meaning.usableVision ? "probably yes" : "probably no",
        "Not asked; taken from the acuity, " + wordsOf(eye->acuity) + ".", "usual judgement", eye->from));
}

} // namespace

SightMeaning sightMeaning(const Case &record) {
    SightMeaning meaning;
    const auto distance = acuityFinding(record, Test::DistanceAcuity, meaning.all);
    const auto nearEye = acuityFinding(record, Test::NearAcuity, meaning.all);
    sightContradictions(distance, nearEye, meaning.all);
    const auto field = fieldFinding(record, meaning.all);
    (void)fieldLossFinding(record, meaning.all);
    categoryFinding(distance, field, meaning.all);
    const auto contrast = contrastFinding(record, meaning.all);
    const auto &forPrint = nearEye ? nearEye : distance;
    const auto logContrast = contrast ? std::optional(contrast->logUnits) : std::nullopt;
    const PrintMeaning print = printMeaning(record, forPrint, logContrast);
    meaning.all.insert(meaning.all.end(), print.all.begin(), print.all.end());
    usableVisionFinding(record, distance ? distance : nearEye, meaning);
    toldFindings(record, meaning.all);
    if (forPrint)
        meaning.printAcuity = forPrint->acuity.logMar;
    meaning.belowChart = forPrint && !forPrint->acuity.logMar;
    meaning.contrastSensitivity = logContrast;
    meaning.readsLargePrint = print.readsLargePrint;
    meaning.paperSize = print.paperSize;
    if (field)
        meaning.fieldAcross = field->across;
    return meaning;
}

} // namespace model
