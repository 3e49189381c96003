#include "model/touch_hand_findings.h"
#include "model/sentence.h"
#include "model/typed.h"

namespace model {

namespace {

constexpr const char *guessSource =
    Sentence::later("binomial tail against guessing, 5 percent; meaning: common practice");
constexpr const char *brailleSource =
    Sentence::later("Bernbaum, Albert and McGarry 1989, Arch Neurol 46:1179");

std::string countWords(const ShapesNamed &named) {
    return Sentence::tr("{1} of {2} named", {std::to_string(named.right), std::to_string(named.tried)});
}

struct NamedTest {
    Test test;
    const char *topic, *told, *notTold;
};

constexpr NamedTest warmOrCold{
    Test::Temperature, Sentence::later("Warm or cold, {1}"), Sentence::later("Told better than by guessing."),
    Sentence::later("No better than guessing: no test of heat by touch, hot things by place and sound.")};
constexpr NamedTest sharpOrDull{
    Test::SharpDull, Sentence::later("Sharp or dull, {1}"), Sentence::later("Told better than by guessing."),
    Sentence::later("No better than guessing: nothing sharp or rough as a mark, knives sheathed.")};

void namedFinding(const Case &record, const NamedTest &named, TouchMeaning &meaning) {
    for (const Measurement *result : countingResults(record, named.test)) {
        const auto count = parseNamed(result->typed);
        if (!count) {
            meaning.all.push_back(notUnderstood(*result, count.error()));
            continue;
        }
        const bool guess = couldBeGuessing(*count);
        if (guess && named.test == Test::SharpDull) {
            meaning.protectionReduced = true;
            meaning.reducedFrom.push_back(result->id);
        }
        const std::string few =
            guess && count->right == count->tried ? Sentence::tr(" Too few were asked: ask for more.") : "";
        meaning.all.push_back(measured(
            Domain::Touch, Sentence::tr(named.topic, {handWords(*result)}), countWords(*count),
            Sentence::tr(guess ? named.notTold : named.told) + few, Sentence::tr(guessSource), {result->id}));
    }
}

std::string brailleAdvice(const BrailleReading &braille, const std::string &wideAt) {
    std::string words;
    if (braille.skill == BrailleSkill::Learning)
        words = Sentence::tr("Marks first; labels of one or two letters as the learning goes on.");
    else if (braille.skill == BrailleSkill::No)
        words = Sentence::tr("Marks, sound or print carry the plan.");
    else
        words = Sentence::tr("Let the client read one label at its place before many are made.");
    if (braille.skill != BrailleSkill::No && !wideAt.empty())
        words +=
            Sentence::tr(" Two points are told apart only above 5 mm ({1}): {2}",
                         {wideAt, (braille.form == BrailleForm::Jumbo ? Sentence::tr("jumbo cells, as said.")
                                                                      : Sentence::tr("try jumbo cells."))});
    return words;
}

/// What the client's page says of braille, in the same words.
std::string recordedBraille(const Case &record) {
    if (!record.client.readsBraille)
        return Sentence::tr("does not read braille");
    switch (record.client.media.braille) {
    case BrailleGrade::Uncontracted:
        return Sentence::tr("reads uncontracted braille");
    case BrailleGrade::Contracted:
        return Sentence::tr("reads contracted braille");
    case BrailleGrade::None:
        return Sentence::tr("reads braille, grade not set");
    }
    return {};
}

} // namespace

std::string handWords(const Measurement &result) {
    return wordsOf(whichFinger(result));
}

void movingTwoPointFindings(const Case &record, std::vector<Finding> &all) {
    for (const Measurement *result : countingResults(record, Test::TwoPointMoving)) {
        const auto two = parseTwoPoint(result->typed);
        if (!two)
            all.push_back(notUnderstood(*result, two.error()));
        else
            all.push_back(
                measured(Domain::Touch, Sentence::tr("Two points moving, {1}", {handWords(*result)}),
                         two->spacing ? Sentence::tr("{1} mm", {typed::words(two->spacing->value, 1)})
                                      : wordsOf(two->grade),
                         Sentence::tr("Always smaller than held still; it is not graded here."),
                         Sentence::tr("Louis and others 1984, J Hand Surg 9A:552"), {result->id}));
    }
}

void shapeFindings(const Case &record, std::vector<Finding> &all) {
    for (const Measurement *result : countingResults(record, Test::ShapeNaming)) {
        const auto shapes = parseShapes(result->typed);
        if (!shapes) {
            all.push_back(notUnderstood(*result, shapes.error()));
            continue;
        }
        const bool usual = 10 * shapes->right >= 9 * shapes->tried;
        const std::string few =
            shapes->tried < 5 ? Sentence::tr(" Fewer than 5 shapes were tried: too few to tell.") : "";
        all.push_back(measured(
            Domain::Touch, Sentence::tr("Shapes by touch, {1}", {handWords(*result)}), countWords(*shapes),
            (usual ? Sentence::tr("As usual: container shape can carry meaning.")
                   : Sentence::tr("Below the usual 9 in 10: do not rely on container shape alone.")) +
                few,
            Sentence::tr("university page on bedside examination: 90 to 100 percent of at least 5 objects"),
            {result->id}));
    }
}

void namedFindings(const Case &record, TouchMeaning &meaning) {
    namedFinding(record, warmOrCold, meaning);
    namedFinding(record, sharpOrDull, meaning);
}

void brailleFindings(const Case &record, const std::string &wideAt, TouchMeaning &meaning) {
    meaning.readsBraille = record.client.readsBraille;
    const std::string wide = wideAt.empty() ? Sentence::tr("as told") : Sentence::tr(brailleSource);
    const Measurement *result = newestResult(record, Test::BrailleReading);
    if (result) {
        const auto braille = parseBrailleReading(result->typed);
        if (!braille) {
            meaning.all.push_back(notUnderstood(*result, braille.error()));
        } else {
            std::string because = brailleAdvice(*braille, wideAt);
            if ((braille->skill == BrailleSkill::Reads) != record.client.readsBraille)
                because = Sentence::tr("Contradictory: the client's page says that she {1}. The papers and "
                                       "labels follow that page until it is corrected. {2}",
                                       {recordedBraille(record), because});
            meaning.all.push_back(measured(Domain::Touch, Sentence::tr("Braille"), wordsOf(*braille), because,
                                           wide, {result->id}));
            return;
        }
    }
    if (!meaning.readsBraille) {
        meaning.all.push_back(estimated(Domain::Touch, Sentence::tr("Braille"), recordedBraille(record),
                                        Sentence::tr("As recorded for the client."), Sentence::tr("as told"),
                                        {}));
        return;
    }
    meaning.all.push_back(estimated(
        Domain::Touch, Sentence::tr("Braille"), recordedBraille(record),
        wideAt.empty()
            ? Sentence::tr("As told. Let the client read one label at its place before many are made.")
            : Sentence::tr("As told. Two points are told apart only above 5 mm ({1}), so let the client read "
                           "a label before many are made.",
                           {wideAt}),
        wide, {}));
}

std::optional<HandFinger> readingFinger(const Case &record, std::vector<Finding> &all) {
    const Measurement *result = newestResult(record, Test::ReadingFinger);
    if (!result)
        return std::nullopt;
    const auto which = parseReadingFinger(result->typed);
    if (!which) {
        all.push_back(notUnderstood(*result, which.error()));
        return std::nullopt;
    }
    all.push_back(measured(Domain::Touch, Sentence::tr(infoOf(Test::ReadingFinger).name), wordsOf(*which),
                           Sentence::tr("What follows for marks and braille goes by this finger."),
                           Sentence::tr("as told or seen"), {result->id}));
    return *which;
}

std::string usualForAge(const Case &record, const Measurement &result) {
    if (!record.client.born || !result.date)
        return {};
    const int age = ageInYears(*record.client.born, *result.date);
    constexpr int youngestMeasured = 18;
    if (age < youngestMeasured)
        return {};
    return Sentence::tr(" Usual at {1} years: about {2} mm (Stevens 1992, J Gerontol 47:P35).",
                        {std::to_string(age), typed::words(usualTwoPoint(age).value, 1)});
}

} // namespace model
