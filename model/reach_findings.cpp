#include "model/findings_parts.h"
#include "model/lift_words.h"
#include "model/reach.h"
#include "model/read_measurement.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>

namespace model {

namespace {

constexpr const char *zoneSource =
    Sentence::later("share of stature: Pheasant 1996, Drillis and Contini 1966; zones: common practice");
constexpr const char *seatedSource =
    Sentence::later("ADA 2010 Standards, 308.2 and 308.3; usual judgement for knuckle and shoulder");
constexpr const char *judgement = Sentence::later("usual judgement, no source");
constexpr Kilograms usualHeavy{2.0}, weakHeavy{1.0};
constexpr Centimetres seatedKnuckle{55}, seatedShoulder{105}, seatedEye{118};
// With dizziness and no measured reach: the plan's stretch zones and no further.
constexpr Centimetres stretchBelow{35}, stretchAbove{20};

std::string cm(Centimetres height) {
    return Sentence::tr("{1} cm", {typed::words(height.value, 1)});
}

/// True if a note of the safety questions tells of a wheelchair. The finding says so, since words can be
/// misread.
bool wheelchairTold(const SafetyFacts &safety) {
    return std::any_of(safety.answers.begin(), safety.answers.end(), [](const auto &entry) {
        const std::string note = typed::tidy(entry.second.note);
        const auto at = note.find("wheelchair");
        if (at == std::string::npos)
            return false;
        const std::string before = note.substr(0, at);
        return before.find("no ") == std::string::npos && before.find("not ") == std::string::npos &&
               before.find("without ") == std::string::npos;
    });
}

/// What stands in for heights that were not measured, and why.
struct StandIn {
    Centimetres knuckle{75}, shoulder{140}, low{30}, high{185}, eye{150};
    Basis basis = Basis::Usual;
    std::string because = Sentence::tr("Neither measured nor estimated from stature: a usual value.");
    std::string kept; // a sentence more, for what is reached but not for the eyes
    std::string source = Sentence::tr(judgement);
    std::vector<Id> from;
};

/// Height of what is worn on the feet at home; nothing unless it was entered.
Centimetres solesOf(const Case &record) {
    const Measurement *result = newestResult(record, Test::Soles);
    const auto soles = result ? readSoles(result->typed) : Result<Centimetres>(Centimetres{0});
    return soles.value_or(Centimetres{0});
}

/// Seated if so entered, or, without an entry, if a note tells of a wheelchair; and why.
std::optional<std::string> whySeated(const Case &record) {
    if (const Measurement *result = newestResult(record, Test::Posture)) {
        const auto posture = readPosture(result->typed);
        if (posture)
            return *posture == Posture::Seated ? std::optional<std::string>(Sentence::tr(
                                                     "Works seated: reach from a chair. Measure it there."))
                                               : std::nullopt;
    }
    if (wheelchairTold(record.safety))
        return Sentence::tr("A note says wheelchair: seated reach. Measure it from the chair.");
    return std::nullopt;
}

StandIn fromStature(const Case &record, Date on, Centimetres stature, const Id &from) {
    const auto age = record.client.born ? std::optional(ageInYears(*record.client.born, on)) : std::nullopt;
    const BodyHeights body = bodyHeights(stature, age);
    const Centimetres soles = solesOf(record);
    StandIn values{body.knuckle + soles,
                   body.shoulder + soles,
                   body.lowerLeg,
                   body.overhead + soles,
                   body.eye + soles,
                   Basis::Estimated,
                   {},
                   {},
                   Sentence::tr(zoneSource),
                   {from}};
    values.because =
        Sentence::tr("Estimated from a stature of {1}{2}",
                     {cm(stature), (soles.value > 0 ? Sentence::tr(" and soles of {1}.", {cm(soles)})
                                                    : Sentence::tr(", without shoes."))});
    if (!age)
        values.because += Sentence::tr(" Age not known: from 75 years on take 10 cm off the highest reach.");
    else if (*age >= 75)
        values.because += Sentence::tr(" 10 cm taken off the highest reach from 75 years on.");
    return values;
}

StandIn standIn(const Case &record, Date on, std::vector<Finding> &all) {
    if (const auto seated = whySeated(record))
        return {seatedKnuckle,
                seatedShoulder,
                seatedLowReach,
                *seatedHighReach(Approach::Side, Centimetres{0}, Centimetres{0}),
                seatedEye,
                Basis::Usual,
                *seated,
                {},
                Sentence::tr(seatedSource),
                {}};
    StandIn values;
    if (const Measurement *result = newestResult(record, Test::Stature)) {
        if (const auto stature = readHeight(*result)) {
            all.push_back(measured(Domain::Reach, Sentence::tr("Stature"), cm(*stature),
                                   Sentence::tr("Typed as {1}.", {result->typed}),
                                   Sentence::tr("measured or told"), {result->id}));
            values = fromStature(record, on, *stature, result->id);
        } else {
            all.push_back(notUnderstood(*result, stature.error()));
        }
    }
    if (record.safety.answer(SafetyQuestion::DizzyLookingUpOrBending) == Answer::Yes) {
        values.low = std::max(values.low, values.knuckle - stretchBelow);
        values.high = std::min(values.high, values.shoulder + stretchAbove);
        values.kept = Sentence::tr(" Kept between {1} and {2} because looking up or bending makes dizzy.",
                                   {cm(values.low), cm(values.high)});
    }
    return values;
}

ReachValue heightFinding(const Case &record, Test test, Centimetres standInValue, const StandIn &values,
                         std::vector<Finding> &all) {
    const std::string topic = Sentence::tr(infoOf(test).name);
    if (const Measurement *result = newestResult(record, test)) {
        if (const auto height = readHeight(*result)) {
            all.push_back(measured(Domain::Reach, topic, cm(*height),
                                   Sentence::tr("Typed as {1}.", {result->typed}), Sentence::tr("measured"),
                                   {result->id}));
            return {*height, Basis::Measured};
        } else {
            all.push_back(notUnderstood(*result, height.error()));
        }
    }
    if (values.basis == Basis::Estimated)
        all.push_back(estimated(Domain::Reach, topic, Sentence::tr("about {1}", {cm(standInValue)}),
                                values.because + values.kept, values.source, values.from));
    else
        all.push_back(notMeasured(Domain::Reach, topic,
                                  Sentence::tr("not measured; the plan takes {1}", {cm(standInValue)}),
                                  values.because + values.kept, values.source));
    return {standInValue, values.basis};
}

/// Measured, or from the shoulder that was measured, or as the other heights.
ReachValue eyeFinding(const Case &record, ReachMeaning &meaning, StandIn values) {
    const bool fromShoulder =
        values.basis == Basis::Usual && meaning.shoulder.basis == Basis::Measured && !whySeated(record);
    if (fromShoulder) {
        values.eye = meaning.shoulder.value * (bodyHeights({1}, {}).eye / bodyHeights({1}, {}).shoulder);
        values.basis = Basis::Estimated;
        values.because = Sentence::tr("Estimated from the shoulder height that was measured.");
        values.source = Sentence::tr(zoneSource);
    }
    values.kept.clear();
    return heightFinding(record, Test::EyeHeight, values.eye, values, meaning.all);
}

void heavyFinding(const Case &record, ReachMeaning &meaning) {
    const std::string topic = Sentence::tr("Heavy things");
    const std::string rule = Sentence::tr(" Anything as heavy stands between knuckle and shoulder.");
    if (const Measurement *result = newestResult(record, Test::SafeLift)) {
        if (const auto weight = readWeight(result->typed)) {
            meaning.heavyLimit = *weight;
            meaning.heavyLimitBasis = Basis::Measured;
            meaning.all.push_back(
                measured(Domain::Reach, topic, Sentence::tr("from {1} kg", {typed::words(weight->value, 2)}),
                         Sentence::tr("Heaviest thing lifted safely: {1}.{2}", {result->typed, rule}),
                         Sentence::tr("measured"), {result->id}));
            return;
        } else {
            meaning.all.push_back(notUnderstood(*result, weight.error()));
        }
    }
    const bool weak = record.safety.answer(SafetyQuestion::WeakOrShakyHands) == Answer::Yes;
    meaning.heavyLimit = weak ? weakHeavy : usualHeavy;
    const std::string why =
        weak ? Sentence::tr("Not measured; hands are weak or shaky, so half the usual limit.")
             : Sentence::tr("Not measured.");
    const auto said = liftFiguresSaid(record);
    const Kilograms filter = filterFigure(ReachZone::High, said.value_or(Sex::Female), Arms::Out) * 0.5;
    meaning.all.push_back(notMeasured(
        Domain::Reach, topic,
        Sentence::tr("not measured; the plan takes {1} kg", {typed::words(meaning.heavyLimit.value, 1)}),
        Sentence::tr(
            "{1}{2} Below the lifting filter for a frail person there ({3} kg with arms out from elbow to "
            "shoulder, half of it; {4}), which is made for healthy workers with two free hands.",
            {why, rule, typed::words(filter.value, 1), figuresWords(said)}),
        Sentence::tr("{1}; lifting filter: HSE, INDG143 rev 4", {Sentence::tr(judgement)})));
}

/// Posture and soles as they were entered; nothing if they were not.
void toldReach(const Case &record, Test test, std::vector<Finding> &all) {
    const Measurement *result = newestResult(record, test);
    if (!result)
        return;
    const auto said = readBack(*result);
    all.push_back(said ? measured(Domain::Reach, Sentence::tr(infoOf(test).name), *said,
                                  Sentence::tr("Typed as {1}.", {result->typed}),
                                  Sentence::tr("seen or told"), {result->id})
                       : notUnderstood(*result, said.error()));
}

void envelopeFinding(ReachMeaning &meaning) {
    const auto low = meaning.reachLow.value, high = meaning.reachHigh.value;
    if (low >= high || meaning.knuckle.value >= meaning.shoulder.value)
        return; // a contradiction is said instead
    const bool all = meaning.knuckle.basis == Basis::Measured && meaning.shoulder.basis == Basis::Measured &&
                     meaning.reachLow.basis == Basis::Measured && meaning.reachHigh.basis == Basis::Measured;
    const std::string answer =
        Sentence::tr("{1} to {2}, with ease {3} to {4}",
                     {cm(low), cm(high), cm(meaning.knuckle.value), cm(meaning.shoulder.value)});
    const std::string because = Sentence::tr(
        "Daily and heavy things stand where it is easy, light and rare ones up to the ends of the reach.");
    meaning.all.push_back(all ? measured(Domain::Reach, Sentence::tr("Within reach"), answer, because,
                                         Sentence::tr("measured; zones: common practice"), {})
                              : estimated(Domain::Reach, Sentence::tr("Within reach"), answer,
                                          Sentence::tr("{1} Not all of it was measured.", {because}),
                                          Sentence::tr(zoneSource), {}));
}

void contradictions(const ReachMeaning &reach, std::vector<Finding> &all) {
    const auto flag = [&](const std::string &what) {
        all.push_back(notMeasured(Domain::Reach, Sentence::tr("Contradiction"), what,
                                  Sentence::tr("Check both: they are kept as typed."),
                                  Sentence::tr("comparison of two entries")));
    };
    if (reach.knuckle.value >= reach.shoulder.value)
        flag(Sentence::tr("knuckle height is not below shoulder height"));
    if (reach.reachLow.value >= reach.reachHigh.value)
        flag(Sentence::tr("lowest reach is not below highest reach"));
}

} // namespace

ReachMeaning reachMeaning(const Case &record, Date on) {
    ReachMeaning meaning;
    const StandIn values = standIn(record, on, meaning.all);
    meaning.knuckle = heightFinding(record, Test::KnuckleHeight, values.knuckle, values, meaning.all);
    meaning.shoulder = heightFinding(record, Test::ShoulderHeight, values.shoulder, values, meaning.all);
    meaning.reachLow = heightFinding(record, Test::ReachLow, values.low, values, meaning.all);
    meaning.reachHigh = heightFinding(record, Test::ReachHigh, values.high, values, meaning.all);
    meaning.eye = eyeFinding(record, meaning, values);
    for (const Test test : {Test::Posture, Test::Soles, Test::LiftFigures})
        toldReach(record, test, meaning.all);
    envelopeFinding(meaning);
    heavyFinding(record, meaning);
    meaning.all.push_back(liftRulesFinding(record));
    contradictions(meaning, meaning.all);
    return meaning;
}

} // namespace model
