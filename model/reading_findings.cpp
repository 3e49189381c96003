#include "model/findings_parts.h"
#include "model/print_size.h"
#include "model/read_measurement.h"
#include "model/reading_trial.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>
#include <cmath>

namespace model {

namespace {

constexpr const char *trialSource = Sentence::later(
    "reading acuity and speed: Minnesota Laboratory for Low-Vision Research; critical size and "
    "maximum speed: curve of ARVO abstract 2413112, fitted");
constexpr double reserveWithoutCurve = 2;

std::string speedWords(double wordsPerMinute) {
    if (wordsPerMinute >= 160)
        return Sentence::tr("high fluent");
    if (wordsPerMinute >= 80)
        return Sentence::tr("fluent");
    return wordsPerMinute >= 40 ? Sentence::tr("a few words at a time") : Sentence::tr("word by word");
}

std::optional<Points> pointsFor(LogMar size, Centimetres distance, double reserve) {
    const auto points = letterHeight(size, distance, reserve).and_then([](Millimetres height) {
        return pointSize(height, paperXHeightRatio);
    });
    return points ? std::optional(*points) : std::nullopt;
}

std::string logMarWords(LogMar value) {
    return Sentence::tr("logMAR {1}", {typed::words(value.value, 2, typed::Zeros::Keep)});
}

void speedFindings(const ReadingResult &result, Points critical, const Measurement &from,
                   std::vector<Finding> &all) {
    const std::string bound = result.stillRising
                                  ? Sentence::tr(" Speed still rose at the largest line: both are at least "
                                                 "this much; try larger print or a shorter distance.")
                                  : "";
    all.push_back(measured(
        Domain::Sight, Sentence::tr("Critical print size"),
        Sentence::tr("{1}, {2} point", {logMarWords(*result.critical), typed::words(critical.value, 0)}),
        Sentence::tr("The smallest print that is read at nine tenths of the full speed.{1}", {bound}),
        Sentence::tr(trialSource), {from.id}));
    all.push_back(measured(Domain::Sight, Sentence::tr("Maximum reading speed"),
                           Sentence::tr("{1} words a minute", {typed::words(*result.maximum, 0)}),
                           Sentence::tr("That is {1}.{2}", {speedWords(*result.maximum), bound}),
                           Sentence::tr(trialSource), {from.id}));
}

} // namespace

std::optional<ReadingSize> readingTrialFindings(const Case &record, std::vector<Finding> &all) {
    const Measurement *from = newestResult(record, Test::ReadingTrial);
    if (!from)
        return std::nullopt;
    const auto distance = readDistance(*from);
    const auto sentences = parseTrial(from->typed);
    const auto result =
        sentences ? readingResult(*sentences) : Result<ReadingResult>(tl::unexpected(sentences.error()));
    if (!result || !distance) {
        all.push_back(notUnderstood(*from, result ? distance.error() : result.error()));
        return std::nullopt;
    }
    if (!*distance) {
        all.push_back(notUnderstood(
            *from,
            Error{ErrorCode::Missing,
                  Sentence::tr("No distance for the reading trial. Enter it, for example 40 cm. Kept.")}));
        return std::nullopt;
    }
    const std::string at = Sentence::tr(" at {1} cm", {typed::words((*distance)->value, 0)});
    all.push_back(
        measured(Domain::Sight, Sentence::tr("Reading acuity"), logMarWords(result->acuity) + at,
                 Sentence::tr("From {1} sentences.{2}", {std::to_string(sentences->size()),
                                                         (result->why.empty() ? "" : " " + result->why)}),
                 Sentence::tr(trialSource), {from->id}));
    const auto size = result->critical ? pointsFor(*result->critical, **distance, 1)
                                       : pointsFor(result->acuity, **distance, reserveWithoutCurve);
    if (!size)
        return std::nullopt;
    if (result->critical)
        speedFindings(*result, *size, *from, all);
    return ReadingSize{*size, **distance, result->acuity, result->critical.has_value(), from->id};
}

} // namespace model
