#include "model/better_eye.h"
#include "model/findings_parts.h"
#include "model/print_size.h"
#include "model/read_measurement.h"
#include "model/typed.h"
#include <algorithm>

namespace model {

namespace {

const std::string acuitySource =
    "Bach, acuity cheat sheet: logMAR is log10 of the minimum angle in minutes of arc";
const std::string categorySource = "WHO, ICD-10 (2010) H54 and ICD-11 (2018) 9D90";
const std::string contrastSource = "Leat, Legge and Bullimore 1999 (1.50, 1.05); review of reading and "
                                   "contrast (9 and 25 percent thresholds)";
constexpr double smallFieldDegrees = 20;

std::string eyeWords(const BetterEye &eye) {
    std::string words = eye.side == Side::Both        ? "both eyes open"
                        : eye.side == Side::NotStated ? "eye not stated"
                                                      : wordsOf(eye.side) + " eye";
    words += eye.withGlasses ? ", with the usual glasses" : ", without glasses";
    return eye.days > 1 ? words + "; the worst of " + std::to_string(eye.days) + " recorded days" : words;
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
    const std::string because = eye->acuity.logMar ? "Typed as " + eye->typed + ": " + eyeWords(*eye) + "."
                                                   : "Typed as " + eye->typed + ": " + eyeWords(*eye) +
                                                         ". Below every chart, so no print size follows.";
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
    const bool small = narrowest->across <= smallFieldDegrees;
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
    const VisionCategory category = visionCategory(eye->acuity, eye->typed, across);
    const VisionCategory acuityAlone = visionCategory(eye->acuity, eye->typed, std::nullopt);
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

void glareFinding(const Case &record, std::vector<Finding> &all) {
    const Measurement *result = newestResult(record, Test::Glare);
    all.push_back(result ? measured(Domain::Sight, infoOf(Test::Glare).name, result->typed,
                                    "In the words that were written down.", "as told", {result->id})
                         : notMeasured(Domain::Sight, infoOf(Test::Glare).name, "not asked",
                                       whyMissing(record, Test::Glare), "as told"));
}

} // namespace

SightMeaning sightMeaning(const Case &record) {
    SightMeaning meaning;
    const auto distance = acuityFinding(record, Test::DistanceAcuity, meaning.all);
    const auto nearEye = acuityFinding(record, Test::NearAcuity, meaning.all);
    const auto field = fieldFinding(record, meaning.all);
    categoryFinding(distance, field, meaning.all);
    const auto contrast = contrastFinding(record, meaning.all);
    const auto &forPrint = nearEye ? nearEye : distance;
    const auto logContrast = contrast ? std::optional(contrast->logUnits) : std::nullopt;
    const PrintMeaning print = printMeaning(record, forPrint, logContrast);
    meaning.all.insert(meaning.all.end(), print.all.begin(), print.all.end());
    usableVisionFinding(record, distance ? distance : nearEye, meaning);
    glareFinding(record, meaning.all);
    meaning.readsLargePrint = print.readsLargePrint;
    meaning.paperSize = print.paperSize;
    if (field)
        meaning.fieldAcross = field->across;
    return meaning;
}

} // namespace model
