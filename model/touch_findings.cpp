#include "model/sentence.h"
#include "model/touch_hand_findings.h"
#include "model/typed.h"
#include <algorithm>
#include <limits>
#include <map>

namespace model {

namespace {

constexpr const char *filamentSource =
    Sentence::later("Semmes-Weinstein bands of the hand, kit instructions of 2011 (PMC7873561, table 1)");
constexpr const char *twoPointSource =
    Sentence::later("grades attributed to ASSH and ASHT; gap: common practice, 1.5 times, at least 3 mm");
constexpr const char *sensitivitySource =
    Sentence::later("a default of this program; groups of a simulation, not of clients");

/// What one finger gave: the worst recorded of each test.
struct Tested {
    std::optional<FeelingBand> feeling;
    std::optional<TwoPoint> twoPoint;
    std::vector<Id> from;
};
using Fingers = std::map<HandFinger, Tested>;

/// "3.61, 0.4 g" for a filament of the kit, else as typed.
std::string forceWords(const std::string &typed) {
    const auto filament = filamentOf(typed);
    return filament ? wordsOf(*filament) : typed;
}

void filamentFindings(const Case &record, Fingers &fingers, TouchMeaning &meaning) {
    const auto results = countingResults(record, Test::Monofilament);
    for (const Measurement *result : results) {
        const auto band = parseFilament(result->typed);
        if (!band) {
            meaning.all.push_back(notUnderstood(*result, band.error()));
            continue;
        }
        Tested &finger = fingers[whichFinger(*result)];
        finger.feeling = finger.feeling ? std::max(*finger.feeling, *band) : *band;
        finger.from.push_back(result->id);
        const bool reduced = protectionReduced(*band);
        if (reduced) {
            meaning.protectionReduced = true;
            meaning.reducedFrom.push_back(result->id);
        }
        meaning.all.push_back(measured(
            Domain::Touch, Sentence::tr("Feeling, {1}", {handWords(*result)}), wordsOf(*band),
            Sentence::tr(
                "Lightest filament felt: {1}.{2}",
                {forceWords(result->typed),
                 (reduced ? Sentence::tr(" Nothing sharp or rough, and no test of heat by touch.") : "")}),
            Sentence::tr(filamentSource), {result->id}));
    }
    if (results.empty())
        meaning.all.push_back(
            notMeasured(Domain::Touch, Sentence::tr("Feeling"), Sentence::tr("not measured"),
                        whyMissing(record, Test::Monofilament), Sentence::tr(filamentSource)));
}

std::string twoPointBecause(const TwoPoint &two) {
    if (!two.spacing)
        return Sentence::tr("Two points were never told from one: marks need large, different shapes.");
    std::string words =
        Sentence::tr("Told apart at {1} mm: features of one mark stand at least {2} mm apart.",
                     {typed::words(two.spacing->value, 1), typed::words(smallestGap(*two.spacing).value, 1)});
    if (two.spacing->value > 5)
        words += Sentence::tr(
            " Above 5 mm braille may be hard to read: try it (Bernbaum, Albert and McGarry 1989).");
    return words;
}

void twoPointFindings(const Case &record, Fingers &fingers, std::vector<Finding> &all) {
    const auto results = countingResults(record, Test::TwoPointStatic);
    for (const Measurement *result : results) {
        const auto two = parseTwoPoint(result->typed);
        if (!two) {
            all.push_back(notUnderstood(*result, two.error()));
            continue;
        }
        Tested &finger = fingers[whichFinger(*result)];
        if (!finger.twoPoint || finger.twoPoint->grade < two->grade)
            finger.twoPoint = *two;
        finger.from.push_back(result->id);
        all.push_back(measured(Domain::Touch, Sentence::tr("Two points still, {1}", {handWords(*result)}),
                               wordsOf(two->grade), twoPointBecause(*two) + usualForAge(record, *result),
                               Sentence::tr(twoPointSource), {result->id}));
    }
    if (results.empty())
        all.push_back(notMeasured(Domain::Touch, Sentence::tr("Two points still"),
                                  Sentence::tr("not measured"), whyMissing(record, Test::TwoPointStatic),
                                  Sentence::tr(twoPointSource)));
}

double sensitivityOf(const Tested &finger) {
    double value = 1.0;
    if (finger.feeling)
        value = std::min(value, sensitivityOf(*finger.feeling));
    if (finger.twoPoint)
        value = std::min(value, sensitivityOf(finger.twoPoint->grade));
    return value;
}

/// The finger that the findings go by, and why it is this one.
struct Chosen {
    Fingers::const_iterator finger;
    std::string why;
};

/// The finger that reads, if it was tested, else the best one. `fingers` is not empty.
Chosen fingerToGoBy(const Fingers &fingers, const std::optional<HandFinger> &reading) {
    if (reading)
        if (const auto found = fingers.find(*reading); found != fingers.end())
            return {found, Sentence::tr("Of the finger that reads: {1}.", {wordsOf(*reading)})};
    const auto best = std::max_element(fingers.begin(), fingers.end(), [](const auto &a, const auto &b) {
        return sensitivityOf(a.second) < sensitivityOf(b.second);
    });
    const std::string which = wordsOf(best->first);
    std::string why = fingers.size() > 1 ? Sentence::tr("Of the best that was tested: {1}.", {which})
                                         : Sentence::tr("Of the one that was tested: {1}.", {which});
    if (reading)
        why += Sentence::tr(" The finger that reads ({1}) was not tested.", {wordsOf(*reading)});
    return {best, why};
}

std::string fingerWords(double sensitivity) {
    return sensitivity >= 1 ? Sentence::tr("that of a good finger")
                            : Sentence::tr("about {1} times a good finger", {typed::words(sensitivity, 1)});
}

/// With no result: reduced if so told, a little reduced if not asked.
double toldSensitivity(Answer reduced) {
    switch (reduced) {
    case Answer::NotAsked:
        return 0.8;
    case Answer::Yes:
        return 0.5;
    case Answer::No:
        return 1.0;
    }
    return 0.5;
}

void sensitivityFinding(const Case &record, const Fingers &fingers, const std::optional<HandFinger> &reading,
                        TouchMeaning &meaning) {
    const Answer told = record.safety.answer(SafetyQuestion::ReducedProtectiveFeeling);
    const std::string topic = Sentence::tr("Sensitivity for marks");
    if (fingers.empty()) {
        meaning.sensitivity = toldSensitivity(told);
        const std::string why = told == Answer::NotAsked ? Sentence::tr("Neither tested nor asked about.")
                                : told == Answer::Yes
                                    ? Sentence::tr("Not tested; reduced feeling was told.")
                                    : Sentence::tr("Not tested; no reduced feeling was told.");
        meaning.all.push_back(notMeasured(Domain::Touch, topic,
                                          Sentence::tr("taken as {1}", {fingerWords(meaning.sensitivity)}),
                                          why, Sentence::tr(sensitivitySource)));
        return;
    }
    const Chosen chosen = fingerToGoBy(fingers, reading);
    meaning.sensitivity = sensitivityOf(chosen.finger->second);
    std::string why = chosen.why;
    if (told == Answer::Yes && meaning.sensitivity > 0.5) {
        meaning.sensitivity = 0.5;
        why += Sentence::tr(" Reduced feeling was told, so the lower value stands.");
    }
    meaning.all.push_back(estimated(Domain::Touch, topic, fingerWords(meaning.sensitivity), why,
                                    Sentence::tr(sensitivitySource), chosen.finger->second.from));
}

void protectionFinding(const Case &record, TouchMeaning &meaning) {
    const Answer told = record.safety.answer(SafetyQuestion::ReducedProtectiveFeeling);
    const std::string topic = Sentence::tr("Protective feeling in the hands");
    const std::string rules = Sentence::tr(" Nothing sharp or rough, no test of heat by touch; a touch mark "
                                           "alone never tells a danger: add place and container shape.");
    if (meaning.protectionReduced)
        meaning.all.push_back(measured(Domain::Touch, topic, Sentence::tr("reduced"),
                                       Sentence::tr("Found by filament or by sharp and dull.{1}", {rules}),
                                       Sentence::tr(filamentSource), meaning.reducedFrom));
    else if (told == Answer::Yes)
        meaning.all.push_back(estimated(Domain::Touch, topic, Sentence::tr("reduced"),
                                        Sentence::tr("As told.{1}", {rules}), Sentence::tr("common practice"),
                                        {}));
    else if (told == Answer::NotAsked)
        meaning.all.push_back(
            notMeasured(Domain::Touch, topic, Sentence::tr("not asked, taken as reduced"),
                        Sentence::tr("Until it is asked the careful answer stands.{1}", {rules}),
                        Sentence::tr("common practice")));
    else
        meaning.all.push_back(
            estimated(Domain::Touch, topic, Sentence::tr("not reduced, as told"),
                      Sentence::tr("Confirm with filaments before sharp or hot things are sorted by touch."),
                      Sentence::tr("common practice"), {}));
}

/// The finger at which two points are told apart only above 5 mm, or never: the one that reads, else the one
/// that tells them apart best. Empty if they are told apart closer, or were not tested there.
std::string wideSpacingAt(const Fingers &fingers, const std::optional<HandFinger> &reading) {
    const auto spacing = [](const Tested &finger) {
        return finger.twoPoint && finger.twoPoint->spacing ? finger.twoPoint->spacing->value
                                                           : std::numeric_limits<double>::infinity();
    };
    const std::pair<const HandFinger, Tested> *best = nullptr;
    for (const auto &finger : fingers) {
        if (!finger.second.twoPoint)
            continue;
        if (reading && finger.first == *reading) {
            best = &finger;
            break;
        }
        if (!best || spacing(finger.second) < spacing(best->second))
            best = &finger;
    }
    constexpr double brailleIsHard = 5; // mm
    return best && spacing(best->second) > brailleIsHard ? wordsOf(best->first) : std::string();
}

} // namespace

TouchMeaning touchMeaning(const Case &record) {
    TouchMeaning meaning;
    Fingers fingers;
    const auto reading = readingFinger(record, meaning.all);
    filamentFindings(record, fingers, meaning);
    twoPointFindings(record, fingers, meaning.all);
    movingTwoPointFindings(record, meaning.all);
    namedFindings(record, meaning);
    shapeFindings(record, meaning.all);
    protectionFinding(record, meaning);
    sensitivityFinding(record, fingers, reading, meaning);
    brailleFindings(record, wideSpacingAt(fingers, reading), meaning);
    return meaning;
}

} // namespace model
