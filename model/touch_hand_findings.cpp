#include "model/touch_hand_findings.h"
#include "model/typed.h"

namespace model {

namespace {

const std::string guessSource = "binomial tail against guessing, 5 percent; meaning: common practice";
const std::string brailleSource = "Bernbaum, Albert and McGarry 1989, Arch Neurol 46:1179";

std::string countWords(const ShapesNamed &named) {
    return std::to_string(named.right) + " of " + std::to_string(named.tried) + " named";
}

struct NamedTest {
    Test test;
    const char *topic, *told, *notTold;
};

constexpr NamedTest warmOrCold{Test::Temperature, "Warm or cold, ", "Told better than by guessing.",
                               "No better than guessing: no test of heat by touch, hot things by place and "
                               "sound."};
constexpr NamedTest sharpOrDull{
    Test::SharpDull, "Sharp or dull, ", "Told better than by guessing.",
    "No better than guessing: nothing sharp or rough as a mark, knives sheathed."};

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
            guess && count->right == count->tried ? " Too few were asked: ask for more." : "";
        meaning.all.push_back(measured(Domain::Touch, named.topic + handWords(*result), countWords(*count),
                                       (guess ? named.notTold : named.told) + few, guessSource,
                                       {result->id}));
    }
}

std::string brailleAdvice(const BrailleReading &braille, const std::string &wideAt) {
    std::string words;
    if (braille.skill == BrailleSkill::Learning)
        words = "Marks first; labels of one or two letters as the learning goes on.";
    else if (braille.skill == BrailleSkill::No)
        words = "Marks, sound or print carry the plan.";
    else
        words = "Let the client read one label at its place before many are made.";
    if (braille.skill != BrailleSkill::No && !wideAt.empty())
        words += " Two points are told apart only above 5 mm (" + wideAt +
                 "): " + (braille.form == BrailleForm::Jumbo ? "jumbo cells, as said." : "try jumbo cells.");
    return words;
}

/// What the client's page says of braille, in the same words.
std::string recordedBraille(const Case &record) {
    if (!record.client.readsBraille)
        return "does not read braille";
    switch (record.client.media.braille) {
    case BrailleGrade::Uncontracted:
        return "reads uncontracted braille";
    case BrailleGrade::Contracted:
        return "reads contracted braille";
    case BrailleGrade::None:
        return "reads braille, grade not set";
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
                measured(Domain::Touch, "Two points moving, " + handWords(*result),
                         two->spacing ? typed::words(two->spacing->value, 1) + " mm" : wordsOf(two->grade),
                         "Always smaller than held still; it is not graded here.",
                         "Louis and others 1984, J Hand Surg 9A:552", {result->id}));
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
        const std::string few = shapes->tried < 5 ? " Fewer than 5 shapes were tried: too few to tell." : "";
        all.push_back(measured(
            Domain::Touch, "Shapes by touch, " + handWords(*result), countWords(*shapes),
            (usual ? "As usual: container shape can carry meaning."
                   : "Below the usual 9 in 10: do not rely on container shape alone.") +
                few,
            "university page on bedside examination: 90 to 100 percent of at least 5 objects", {result->id}));
    }
}

void namedFindings(const Case &record, TouchMeaning &meaning) {
    namedFinding(record, warmOrCold, meaning);
    namedFinding(record, sharpOrDull, meaning);
}

void brailleFindings(const Case &record, const std::string &wideAt, TouchMeaning &meaning) {
    meaning.readsBraille = record.client.readsBraille;
    const std::string wide = wideAt.empty() ? "as told" : brailleSource;
    const Measurement *result = newestResult(record, Test::BrailleReading);
    if (result) {
        const auto braille = parseBrailleReading(result->typed);
        if (!braille) {
            meaning.all.push_back(notUnderstood(*result, braille.error()));
        } else {
            std::string because = brailleAdvice(*braille, wideAt);
            if ((braille->skill == BrailleSkill::Reads) != record.client.readsBraille)
                because = "Contradictory: the client's page says that she " + recordedBraille(record) +
                          ". The papers and labels follow that page until it is corrected. " + because;
            meaning.all.push_back(
                measured(Domain::Touch, "Braille", wordsOf(*braille), because, wide, {result->id}));
            return;
        }
    }
    if (!meaning.readsBraille) {
        meaning.all.push_back(estimated(Domain::Touch, "Braille", recordedBraille(record),
                                        "As recorded for the client.", "as told", {}));
        return;
    }
    meaning.all.push_back(
        estimated(Domain::Touch, "Braille", recordedBraille(record),
                  wideAt.empty() ? "As told. Let the client read one label at its place before many are made."
                                 : "As told. Two points are told apart only above 5 mm (" + wideAt +
                                       "), so let the client read a label before many are made.",
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
    all.push_back(measured(Domain::Touch, infoOf(Test::ReadingFinger).name, wordsOf(*which),
                           "What follows for marks and braille goes by this finger.", "as told or seen",
                           {result->id}));
    return *which;
}

std::string usualForAge(const Case &record, const Measurement &result) {
    if (!record.client.born || !result.date)
        return {};
    const int age = ageInYears(*record.client.born, *result.date);
    constexpr int youngestMeasured = 18;
    if (age < youngestMeasured)
        return {};
    return " Usual at " + std::to_string(age) + " years: about " + typed::words(usualTwoPoint(age).value, 1) +
           " mm (Stevens 1992, J Gerontol 47:P35).";
}

} // namespace model
