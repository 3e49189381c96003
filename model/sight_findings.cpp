#include "model/better_eye.h"
#include "model/contrast.h"
#include "model/findings_parts.h"
#include "model/notations.h"
#include "model/print_size.h"
#include "model/read_measurement.h"
#include "model/reading_ease.h"
#include "model/sentence.h"
#include "model/sight_parts.h"
#include "model/typed.h"
#include <algorithm>

namespace model {

namespace {

constexpr const char *acuitySource =
    Sentence::later("Bach, acuity cheat sheet: logMAR is log10 of the minimum angle in minutes of arc");
constexpr const char *categorySource = Sentence::later("WHO, ICD-10 (2010) H54 and ICD-11 (2018) 9D90");
constexpr const char *contrastSource =
    Sentence::later("Leat, Legge and Bullimore 1999 (1.50, 1.05); review of "
                    "reading and contrast (9 and 25 percent thresholds)");
constexpr double usualPrintContrast = 0.9;

std::string eyeWords(const BetterEye &eye) {
    std::string words = eye.side == Side::Both        ? Sentence::tr("both eyes open")
                        : eye.side == Side::NotStated ? Sentence::tr("eye not stated")
                                                      : Sentence::tr("{1} eye", {wordsOf(eye.side)});
    words += eye.withGlasses ? Sentence::tr(", with the usual glasses") : Sentence::tr(", without glasses");
    return eye.days > 1
               ? Sentence::tr("{1}; the worst of {2} recorded days", {words, std::to_string(eye.days)})
               : words;
}

/// "Chart: single letters." and what single signs mean; nothing if it was not said.
std::string chartWords(const std::string &chart) {
    if (chart.empty())
        return Sentence::tr(" The chart was not said.");
    const bool single = typed::tidy(chart).find("single") != std::string::npos;
    return Sentence::tr(
        " Chart: {1}.{2}",
        {chart,
         (single ? Sentence::tr(" Single signs can be read smaller than the same in rows (common practice).")
                 : "")});
}

/// The same acuity on other charts, the mean of several days, and for near the limit of the WHO.
std::string otherNotations(Test test, const BetterEye &eye) {
    const auto distance = test == Test::NearAcuity ? std::optional(Centimetres{40}) : std::nullopt;
    std::string words = Sentence::tr(" On other charts: {1}.", {allNotations(eye.acuity, distance)});
    if (const auto mean = meanAcuity(eye.ofDays); mean && eye.days > 1)
        words += Sentence::tr(" Mean of the days in logMAR: {1}.",
                              {typed::words(mean->value, 2, typed::Zeros::Keep)});
    if (test == Test::NearAcuity)
        words += nearImpairment(*eye.acuity.logMar)
                     ? Sentence::tr(" Worse than N6 at 40 cm: near vision impairment (WHO 2018).")
                     : Sentence::tr(" No worse than N6 at 40 cm (WHO 2018).");
    return words;
}

/// The acuity of one test, its finding, and a finding for each entry that cannot be read.
std::optional<BetterEye> acuityFinding(const Case &record, Test test, std::vector<Finding> &all) {
    const auto results = countingResults(record, test);
    const std::string topic = Sentence::tr("{1}, better eye", {Sentence::tr(infoOf(test).name)});
    for (const Measurement *result : results)
        if (const auto read = readAcuity(*result); !read)
            all.push_back(notUnderstood(*result, read.error()));
    const auto eye = betterEye(results);
    if (!eye) {
        all.push_back(notMeasured(Domain::Sight, topic, Sentence::tr("not measured"),
                                  whyMissing(record, test), Sentence::tr(acuitySource)));
        return eye;
    }
    const std::string at = eye->distance.empty() ? "" : Sentence::tr(" at {1}", {eye->distance});
    std::string because = Sentence::tr("Typed as {1}{2}: {3}.", {eye->typed, at, eyeWords(*eye)});
    if (eye->acuity.logMar)
        because += chartWords(eye->chart) + otherNotations(test, *eye);
    else
        because += Sentence::tr(" Below every chart, so no print size follows.");
    all.push_back(
        measured(Domain::Sight, topic, wordsOf(eye->acuity), because, Sentence::tr(acuitySource), eye->from));
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
        all.push_back(notMeasured(Domain::Sight, Sentence::tr("Field"), Sentence::tr("not measured"),
                                  whyMissing(record, Test::FieldExtent), Sentence::tr(categorySource)));
        return narrowest;
    }
    const std::string seen = typed::words(fieldWidth(narrowest->across, Centimetres{40}).value, 0);
    const bool small = isTubeField(narrowest->across);
    const std::string because =
        small ? Sentence::tr("At 40 cm about {1} mm are seen at once. Moderate size and high contrast near "
                             "the grip, not huge print; fixed places.",
                             {seen})
              : Sentence::tr("At 40 cm about {1} mm are seen at once.", {seen});
    all.push_back(measured(Domain::Sight, Sentence::tr("Field"),
                           Sentence::tr("{1} degrees across", {typed::words(narrowest->across, 1)}), because,
                           Sentence::tr("w = 2 d tan(angle / 2); advice: common practice"),
                           {narrowest->from}));
    return narrowest;
}

void categoryFinding(const std::optional<BetterEye> &eye, const std::optional<FieldResult> &field,
                     std::vector<Finding> &all) {
    const std::string topic = Sentence::tr("Category of vision impairment");
    if (!eye) {
        all.push_back(notMeasured(Domain::Sight, topic, Sentence::tr("not known"),
                                  Sentence::tr("It needs a distance acuity."), Sentence::tr(categorySource)));
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
            ? Sentence::tr(
                  "By the field: no more than 10 degrees round fixation. Acuity alone would say {1}.",
                  {wordsOf(acuityAlone)})
        : field ? Sentence::tr("By the acuity of the better eye; the field does not change it.")
                : Sentence::tr("By the acuity of the better eye; the field was not measured.");
    all.push_back(measured(Domain::Sight, topic, wordsOf(category),
                           Sentence::tr("{1} Not a diagnosis.", {because}), Sentence::tr(categorySource),
                           std::move(from)));
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
        all.push_back(notMeasured(Domain::Sight, Sentence::tr("Contrast"), Sentence::tr("not measured"),
                                  whyMissing(record, Test::ContrastSensitivity),
                                  Sentence::tr(contrastSource)));
        return worst;
    }
    const ContrastBand band = contrastBand(worst->logUnits);
    std::string because = Sentence::tr(
        "Log contrast sensitivity {1}: print needs more than {2} percent contrast to be seen at all.",
        {typed::words(worst->logUnits, 2), typed::words(100 * weberThreshold(worst->logUnits), 1)});
    const double reserve = contrastReserve(usualPrintContrast, worst->logUnits);
    because += Sentence::tr(" Good black print has {1} times that, enough to read: {2}.",
                            {typed::words(reserve, 1), wordsOf(easeOfContrast(reserve))});
    if (band == ContrastBand::VeryPoor)
        because += Sentence::tr(" Print alone is unlikely to do: label by touch or sound first.");
    else if (band == ContrastBand::Severe)
        because += Sentence::tr(" More light, and labels three times the threshold size.");
    all.push_back(measured(Domain::Sight, Sentence::tr("Contrast"), wordsOf(band), because,
                           Sentence::tr(contrastSource), {worst->from}));
    return worst;
}

void usableVisionFinding(const Case &record, const std::optional<BetterEye> &eye, SightMeaning &meaning) {
    const std::string topic = Sentence::tr(infoOf(Test::UsableVision).name);
    if (const Measurement *result = newestResult(record, Test::UsableVision)) {
        if (const auto uses = readYesNo(result->typed)) {
            meaning.usableVision = *uses;
            meaning.all.push_back(measured(Domain::Sight, topic,
                                           *uses ? Sentence::tr("yes") : Sentence::tr("no"),
                                           *uses ? Sentence::tr("Light on the shelf counts in the plan.")
                                                 : Sentence::tr("The plan does not count on sight."),
                                           Sentence::tr("as told or seen"), {result->id}));
            return;
        } else {
            meaning.all.push_back(notUnderstood(*result, uses.error()));
        }
    }
    if (!eye) {
        meaning.all.push_back(
            notMeasured(Domain::Sight, topic, Sentence::tr("not known"),
                        Sentence::tr("Neither asked nor measured. The plan does not count on sight."),
                        Sentence::tr("usual judgement")));
        return;
    }
    meaning.usableVision = eye->acuity.below < BelowChart::LightPerception;
    meaning.all.push_back(
        estimated(Domain::Sight, topic,
                  meaning.usableVision ? Sentence::tr("probably yes") : Sentence::tr("probably no"),
                  Sentence::tr("Not asked; taken from the acuity, {1}.", {wordsOf(eye->acuity)}),
                  Sentence::tr("usual judgement"), eye->from));
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
