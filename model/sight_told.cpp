#include "model/field_loss.h"
#include "model/findings_parts.h"
#include "model/notations.h"
#include "model/read_measurement.h"
#include "model/sentence.h"
#include "model/sight_parts.h"
#include "model/typed.h"
#include <cmath>

/// What of sight is told in words, and where two entries of sight contradict each other.
namespace model {

namespace {

void wordsFinding(const Case &record, Test test, const std::string &because, std::vector<Finding> &all) {
    const Measurement *result = newestResult(record, test);
    all.push_back(result
                      ? measured(Domain::Sight, Sentence::tr(infoOf(test).name), result->typed, because,
                                 Sentence::tr("as told"), {result->id})
                      : notMeasured(Domain::Sight, Sentence::tr(infoOf(test).name), Sentence::tr("not asked"),
                                    whyMissing(record, test), Sentence::tr("as told")));
}

void contradiction(const std::string &what, const std::string &why, std::vector<Id> from,
                   std::vector<Finding> &all) {
    all.push_back(measured(Domain::Sight, Sentence::tr("Contradiction"), what,
                           Sentence::tr("{1} Check both: they are kept as typed.", {why}),
                           Sentence::tr("comparison of two entries"), std::move(from)));
}

std::vector<Id> together(const BetterEye &a, const BetterEye &b) {
    std::vector<Id> from = a.from;
    from.insert(from.end(), b.from.begin(), b.from.end());
    return from;
}

} // namespace

std::optional<FieldLoss> fieldLossFinding(const Case &record, std::vector<Finding> &all) {
    const std::string topic = Sentence::tr(infoOf(Test::FieldLoss).name);
    const Measurement *result = newestResult(record, Test::FieldLoss);
    if (!result) {
        all.push_back(notMeasured(Domain::Sight, topic, Sentence::tr("not asked"),
                                  whyMissing(record, Test::FieldLoss), Sentence::tr("common practice")));
        return std::nullopt;
    }
    const auto loss = parseFieldLoss(result->typed);
    if (!loss) {
        all.push_back(notUnderstood(*result, loss.error()));
        return std::nullopt;
    }
    std::string because = adviceFor(*loss);
    because += because.empty()
                   ? Sentence::tr("No side of a shelf is better than another.")
                   : Sentence::tr(" Whether a side goes unnoticed is asked apart: this does not show it.");
    all.push_back(measured(Domain::Sight, topic, wordsOf(*loss), because,
                           Sentence::tr("common practice; half fields after Zihl 1995"), {result->id}));
    return *loss;
}

void toldFindings(const Case &record, std::vector<Finding> &all) {
    wordsFinding(record, Test::Glare,
                 Sentence::tr("In the words that were written down. Lamp below eye level or behind the "
                              "shoulder, matt worktop; some eyes need less light, not more."),
                 all);
    wordsFinding(record, Test::ColourVision,
                 Sentence::tr("In the words that were written down. No mark goes by colour alone."), all);
    wordsFinding(record, Test::Adaptation,
                 Sentence::tr("In the words that were written down. Wait that long before reading or "
                              "carrying; even light between hall and kitchen."),
                 all);
}

void sightContradictions(const std::optional<BetterEye> &distance, const std::optional<BetterEye> &nearEye,
                         std::vector<Finding> &all) {
    if (!distance || !nearEye)
        return;
    const Acuity &far = distance->acuity, &close = nearEye->acuity;
    const std::string both = Sentence::tr("Distance {1} ({2}), near {3} ({4}).",
                                          {wordsOf(far), distance->typed, wordsOf(close), nearEye->typed});
    if (far.logMar.has_value() != close.logMar.has_value()) {
        contradiction(Sentence::tr("one acuity is on a chart, the other below every chart"), both,
                      together(*distance, *nearEye), all);
        return;
    }
    constexpr double threeLines = 0.3;
    if (far.logMar && std::abs(far.logMar->value - close.logMar->value) > threeLines + 1e-9)
        contradiction(
            Sentence::tr("near and distance acuity differ by more than three lines"),
            Sentence::tr("{1} Reading glasses, the distance or the centre of the field may explain it.",
                         {both}),
            together(*distance, *nearEye), all);
}

} // namespace model
