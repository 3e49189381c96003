#include "model/field_loss.h"
#include "model/findings_parts.h"
#include "model/notations.h"
#include "model/read_measurement.h"
#include "model/sight_parts.h"
#include "model/typed.h"
#include <cmath>

/// What of sight is told in words, and where two entries of sight contradict each other.
namespace model {

namespace {

void wordsFinding(const Case &record, Test test, const std::string &because, std::vector<Finding> &all) {
    const Measurement *result = newestResult(record, test);
    all.push_back(
        result ? measured(Domain::Sight, infoOf(test).name, result->typed, because, "as told", {result->id})
               : notMeasured(Domain::Sight, infoOf(test).name, "not asked", whyMissing(record, test),
                             "as told"));
}

void contradiction(const std::string &what, const std::string &why, std::vector<Id> from,
                   std::vector<Finding> &all) {
    all.push_back(measured(Domain::Sight, "Contradiction", what, why + " Check both: they are kept as typed.",
                           "comparison of two entries", std::move(from)));
}

std::vector<Id> together(const BetterEye &a, const BetterEye &b) {
    std::vector<Id> from = a.from;
    from.insert(from.end(), b.from.begin(), b.from.end());
    return from;
}

} // namespace

std::optional<FieldLoss> fieldLossFinding(const Case &record, std::vector<Finding> &all) {
    const std::string topic = infoOf(Test::FieldLoss).name;
    const Measurement *result = newestResult(record, Test::FieldLoss);
    if (!result) {
        all.push_back(notMeasured(Domain::Sight, topic, "not asked", whyMissing(record, Test::FieldLoss),
                                  "common practice"));
        return std::nullopt;
    }
    const auto loss = parseFieldLoss(result->typed);
    if (!loss) {
        all.push_back(notUnderstood(*result, loss.error()));
        return std::nullopt;
    }
    std::string because = adviceFor(*loss);
    because += because.empty() ? "No side of a shelf is better than another."
                               : " Whether a side goes unnoticed is asked apart: this does not show it.";
    all.push_back(measured(Domain::Sight, topic, wordsOf(*loss), because,
                           "common practice; half fields after Zihl 1995", {result->id}));
    return *loss;
}

void toldFindings(const Case &record, std::vector<Finding> &all) {
    wordsFinding(record, Test::Glare,
                 "In the words that were written down. Lamp below eye level or behind the shoulder, matt "
                 "worktop; some eyes need less light, not more.",
                 all);
    wordsFinding(record, Test::ColourVision,
                 "In the words that were written down. No mark goes by colour alone.", all);
    wordsFinding(record, Test::Adaptation,
                 "In the words that were written down. Wait that long before reading or carrying; even light "
                 "between hall and kitchen.",
                 all);
}

void sightContradictions(const std::optional<BetterEye> &distance, const std::optional<BetterEye> &nearEye,
                         std::vector<Finding> &all) {
    if (!distance || !nearEye)
        return;
    const Acuity &far = distance->acuity, &close = nearEye->acuity;
    const std::string both = "Distance " + wordsOf(far) + " (" + distance->typed + "), near " +
                             wordsOf(close) + " (" + nearEye->typed + ").";
    if (far.logMar.has_value() != close.logMar.has_value()) {
        contradiction("one acuity is on a chart, the other below every chart", both,
                      together(*distance, *nearEye), all);
        return;
    }
    constexpr double threeLines = 0.3;
    if (far.logMar && std::abs(far.logMar->value - close.logMar->value) > threeLines + 1e-9)
        contradiction("near and distance acuity differ by more than three lines",
                      both + " Reading glasses, the distance or the centre of the field may explain it.",
                      together(*distance, *nearEye), all);
}

} // namespace model
