#include "model/print_size.h"
#include "model/findings_parts.h"
#include "model/read_measurement.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>
#include <cmath>

namespace model {

namespace {

constexpr const char *sizeSource = Sentence::later("h = 2 d tan(5 minutes of arc x 10^logMAR / 2), times the "
                                                   "reserve; 1 point = 25.4/72 mm; x-height 0.536 em");
constexpr const char *belowChartSource =
    Sentence::later("common practice: no print size from an acuity below the chart");
constexpr double usualReserve = 2, contrastReserve = 3;
constexpr Centimetres paperDistance{40};

std::string noPrint() {
    return Sentence::tr("print will not do");
}

std::string otherWays() {
    return Sentence::tr(" Mark by touch, sound or braille instead.");
}

std::string pointWords(Points size) {
    return Sentence::tr("{1} point", {typed::words(size.value, 1)});
}

bool lowContrast(std::optional<double> logContrast) {
    return logContrast && contrastBand(*logContrast) >= ContrastBand::Severe;
}

bool tooLittleContrastForPrint(std::optional<double> logContrast) {
    return logContrast && contrastBand(*logContrast) == ContrastBand::VeryPoor;
}

Finding labelFinding(const std::optional<BetterEye> &eye, std::optional<double> logContrast,
                     Centimetres distance) {
    const std::string topic = Sentence::tr("Label size at {1} cm", {typed::words(distance.value, 0)});
    if (!eye)
        return notMeasured(Domain::Sight, topic, Sentence::tr("not known"),
                           Sentence::tr("It needs an acuity."), Sentence::tr(sizeSource));
    if (!eye->acuity.logMar)
        return estimated(Domain::Sight, topic, noPrint(),
                         Sentence::tr("Acuity is {1}.{2}", {wordsOf(eye->acuity), otherWays()}),
                         Sentence::tr(belowChartSource), eye->from);
    const double reserve = lowContrast(logContrast) ? contrastReserve : usualReserve;
    const std::string inputs =
        Sentence::tr("{1}, {2} times the threshold size", {wordsOf(eye->acuity), typed::words(reserve, 0)});
    const auto size = printFor(*eye->acuity.logMar, distance, reserve);
    if (!size)
        return estimated(
            Domain::Sight, topic, noPrint(),
            Sentence::tr("From {1}: more than {2}.{3}", {inputs, pointWords(largestPrint), otherWays()}),
            Sentence::tr(sizeSource), eye->from);
    return estimated(Domain::Sight, topic, Sentence::tr("about {1}", {pointWords(*size)}),
                     Sentence::tr("From {1}. An estimate until it is read on the shelf.", {inputs}),
                     Sentence::tr(sizeSource), eye->from);
}

struct Trial {
    Points size;
    std::optional<Centimetres> distance;
    Id from;
    std::size_t days = 1;
};

/// The largest print that was needed for reading with ease: the worst recorded day.
std::optional<Trial> printTrial(const Case &record, std::vector<Finding> &all) {
    std::optional<Trial> largest;
    const auto results = countingResults(record, Test::PreferredPrint);
    for (const Measurement *result : results) {
        const auto size = readPoints(result->typed);
        const auto distance = readDistance(*result);
        if (!size || !distance)
            all.push_back(notUnderstood(*result, size ? distance.error() : size.error()));
        else if (!largest || largest->size < *size)
            largest = Trial{*size, *distance, result->id, results.size()};
    }
    return largest;
}

std::string trialWords(const Trial &trial) {
    std::string words = Sentence::tr("Read with ease in a trial: {1}", {pointWords(trial.size)});
    words += trial.distance ? Sentence::tr(" at {1} cm", {typed::words(trial.distance->value, 0)})
                            : Sentence::tr(", distance not written down");
    return trial.days > 1
               ? Sentence::tr("{1}; the largest of {2} results.", {words, std::to_string(trial.days)})
               : words + ".";
}

void paperFromTrial(const Trial &trial, PrintMeaning &meaning) {
    const std::string topic = Sentence::tr("Print size of papers");
    if (trial.size > largestPrint) {
        meaning.all.push_back(
            measured(Domain::Sight, topic, noPrint(),
                     Sentence::tr("{1} That is more than {2}.{3}",
                                  {trialWords(trial), pointWords(largestPrint), otherWays()}),
                     Sentence::tr("reading trial"), {trial.from}));
        return;
    }
    meaning.readsLargePrint = true;
    meaning.paperSize = std::max(smallestPaper, Points{std::ceil(trial.size.value)});
    const std::string least =
        trial.size < smallestPaper ? Sentence::tr(" Papers are never below 18 point.") : "";
    meaning.all.push_back(measured(
        Domain::Sight, topic, pointWords(meaning.paperSize), trialWords(trial) + least,
        Sentence::tr("reading trial; at least 18 point: ACB large print guidelines 2022"), {trial.from}));
}

void paperFromReading(const ReadingSize &reading, PrintMeaning &meaning) {
    const std::string topic = Sentence::tr("Print size of papers");
    const std::string size = pointWords(Points{std::ceil(reading.size.value)});
    const std::string distance = typed::words(reading.distance.value, 0);
    const std::string from =
        reading.critical
            ? Sentence::tr("The critical print size of the reading trial, {1}, at {2} cm.", {size, distance})
            : Sentence::tr("Twice the reading acuity of the reading trial, {1}, at {2} cm.",
                           {size, distance});
    if (reading.size > largestPrint) {
        meaning.all.push_back(measured(
            Domain::Sight, topic, noPrint(),
            Sentence::tr("{1} That is more than {2}.{3}", {from, pointWords(largestPrint), otherWays()}),
            Sentence::tr("reading trial"), {reading.from}));
        return;
    }
    meaning.readsLargePrint = true;
    meaning.paperSize = std::max(smallestPaper, Points{std::ceil(reading.size.value)});
    const std::string least =
        reading.size < smallestPaper ? Sentence::tr(" Papers are never below 18 point.") : "";
    meaning.all.push_back(measured(
        Domain::Sight, topic, pointWords(meaning.paperSize), from + least,
        Sentence::tr("reading trial; at least 18 point: ACB large print guidelines 2022"), {reading.from}));
}

/// A reading acuity more than three lines better or worse than the acuity that was entered.
void readingContradiction(const ReadingSize &reading, const std::optional<BetterEye> &eye,
                          std::vector<Finding> &all) {
    constexpr double threeLines = 0.3;
    if (!eye || (eye->acuity.logMar &&
                 std::abs(eye->acuity.logMar->value - reading.acuity.value) <= threeLines + 1e-9))
        return;
    std::vector<Id> from = eye->from;
    from.push_back(reading.from);
    all.push_back(measured(
        Domain::Sight, Sentence::tr("Contradiction"), Sentence::tr("reading trial and acuity do not agree"),
        Sentence::tr(
            "The trial says logMAR {1}, the acuity typed as {2} is {3}. Check both: they are kept as typed.",
            {typed::words(reading.acuity.value, 2, typed::Zeros::Keep), eye->typed, wordsOf(eye->acuity)}),
        Sentence::tr("comparison of two entries"), std::move(from)));
}

std::string whyNoPrint(const Acuity &acuity, const std::optional<Points> &size) {
    if (!acuity.logMar)
        return Sentence::tr("Acuity is {1}.", {wordsOf(acuity)});
    if (!size)
        return Sentence::tr("From {1} at 40 cm: more than {2}.", {wordsOf(acuity), pointWords(largestPrint)});
    return Sentence::tr("Contrast is too low for print alone.");
}

void paperFromAcuity(const std::optional<BetterEye> &eye, std::optional<double> logContrast,
                     PrintMeaning &meaning) {
    const std::string topic = Sentence::tr("Print size of papers");
    if (!eye) {
        meaning.all.push_back(notMeasured(Domain::Sight, topic, Sentence::tr("not known, papers at 18 point"),
                                          Sentence::tr("Neither a reading trial nor an acuity was entered."),
                                          Sentence::tr("ACB large print guidelines 2022")));
        return;
    }
    const auto size =
        eye->acuity.logMar ? printFor(*eye->acuity.logMar, paperDistance, usualReserve) : std::nullopt;
    if (!size || tooLittleContrastForPrint(logContrast)) {
        meaning.all.push_back(estimated(
            Domain::Sight, topic, noPrint(), whyNoPrint(eye->acuity, size) + otherWays(),
            eye->acuity.logMar ? Sentence::tr(sizeSource) : Sentence::tr(belowChartSource), eye->from));
        return;
    }
    meaning.readsLargePrint = true;
    meaning.paperSize = std::max(smallestPaper, *size);
    meaning.all.push_back(estimated(Domain::Sight, topic,
                                    Sentence::tr("about {1}", {pointWords(meaning.paperSize)}),
                                    Sentence::tr("From {1}, twice the threshold size at 40 cm, at least 18 "
                                                 "point. An estimate until a reading trial.",
                                                 {wordsOf(eye->acuity)}),
                                    Sentence::tr(sizeSource), eye->from));
}

/// Reading print far below the threshold of the acuity: one of the two must be wrong.
void contradiction(const std::optional<Trial> &trial, const std::optional<BetterEye> &eye,
                   std::vector<Finding> &all) {
    if (!trial || !eye)
        return;
    std::vector<Id> from = eye->from;
    from.push_back(trial->from);
    if (!eye->acuity.logMar) {
        all.push_back(measured(Domain::Sight, Sentence::tr("Contradiction"),
                               Sentence::tr("print read, but acuity is {1}", {wordsOf(eye->acuity)}),
                               Sentence::tr("Check which is right: both are kept as typed."),
                               Sentence::tr("comparison of two entries"), from));
        return;
    }
    const auto height = letterHeight(*eye->acuity.logMar, trial->distance.value_or(paperDistance), 1);
    const auto threshold =
        height ? pointSize(*height, paperXHeightRatio) : Result<Points>(tl::unexpected(height.error()));
    if (threshold && trial->size.value < 0.8 * threshold->value)
        all.push_back(measured(
            Domain::Sight, Sentence::tr("Contradiction"),
            Sentence::tr("print read is smaller than the acuity allows"),
            Sentence::tr(
                "Read {1}, but {2} needs at least {3} point there. Check both: they are kept as typed.",
                {pointWords(trial->size), wordsOf(eye->acuity), typed::words(threshold->value, 0)}),
            Sentence::tr("comparison of two entries"), from));
}

} // namespace

std::optional<Points> printFor(LogMar acuity, Centimetres distance, double reserve) {
    const auto size = letterHeight(acuity, distance, reserve).and_then([](Millimetres height) {
        return pointSize(height, paperXHeightRatio);
    });
    if (!size || *size > largestPrint)
        return std::nullopt;
    return Points{std::ceil(size->value - 1e-9)};
}

PrintMeaning printMeaning(const Case &record, const std::optional<BetterEye> &eye,
                          std::optional<double> logContrast) {
    PrintMeaning meaning;
    for (const Centimetres distance : {Centimetres{40}, Centimetres{60}})
        meaning.all.push_back(labelFinding(eye, logContrast, distance));
    const auto trial = printTrial(record, meaning.all);
    const auto reading = readingTrialFindings(record, meaning.all);
    if (reading) {
        paperFromReading(*reading, meaning);
        readingContradiction(*reading, eye, meaning.all);
    } else if (trial)
        paperFromTrial(*trial, meaning);
    else
        paperFromAcuity(eye, logContrast, meaning);
    contradiction(trial, eye, meaning.all);
    if (const auto chosen = record.client.media.printSize) {
        if (reading && *chosen < meaning.paperSize)
            meaning.all.push_back(measured(
                Domain::Sight, Sentence::tr("Contradiction"),
                Sentence::tr("print size chosen is smaller than the reading trial asks for"),
                Sentence::tr("Chosen {1}, the trial {2}. Clear the chosen size, and the trial sets it.",
                             {pointWords(*chosen), pointWords(meaning.paperSize)}),
                Sentence::tr("comparison of two entries"), {reading->from}));
        meaning.paperSize = *chosen;
        meaning.all.push_back(
            estimated(Domain::Sight, Sentence::tr("Print size chosen"), pointWords(*chosen),
                      Sentence::tr("Chosen for this client's papers; it stands before any computed size."),
                      Sentence::tr("therapist's choice"), {}));
    }
    return meaning;
}

} // namespace model
