#include "model/field_loss.h"
#include "model/findings.h"
#include "model/fingers.h"
#include "model/read_measurement.h"
#include "model/reading_trial.h"
#include "model/sentence.h"
#include "model/touch.h"
#include "model/typed.h"

namespace model {

namespace {

using Said = Result<std::string>;

std::string plainNumber(double value) {
    return typed::words(value, 2);
}

Said sayAcuity(const Measurement &measurement) {
    return readAcuity(measurement).map([](const Acuity &acuity) {
        return acuity.logMar
                   ? wordsOf(acuity)
                   : Sentence::tr("{1}, below every chart: no print size follows", {wordsOf(acuity)});
    });
}

Said sayContrast(const Measurement &measurement) {
    return readContrast(measurement.typed).map([](double value) {
        return Sentence::tr("log contrast sensitivity {1}, {2}",
                            {plainNumber(value), wordsOf(contrastBand(value))});
    });
}

Said sayField(const Measurement &measurement) {
    return readField(measurement.typed).map([](double value) {
        return Sentence::tr("{1} degrees across", {plainNumber(value)});
    });
}

Said sayPrint(const Measurement &measurement) {
    const auto points = readPoints(measurement.typed);
    const auto distance = readDistance(measurement);
    if (!points)
        return tl::unexpected(points.error());
    if (!distance)
        return tl::unexpected(distance.error());
    const std::string said = Sentence::tr("{1} point", {plainNumber(points->value)});
    return *distance ? Sentence::tr("{1} at {2} cm", {said, plainNumber((*distance)->value)})
                     : Sentence::tr("{1}, distance not given", {said});
}

Said sayTrial(const Measurement &measurement) {
    return parseTrial(measurement.typed).map([](const auto &sentences) {
        return Sentence::tr("{1} sentences", {std::to_string(sentences.size())});
    });
}

Said sayWords(const Measurement &measurement) {
    return typed::tidy(measurement.typed).empty()
               ? Said(fail(ErrorCode::NotUnderstood,
                           Sentence::tr("Nothing was typed. Say it in words, or why it was not tested.")))
               : Said(measurement.typed);
}

Said sayFilament(const Measurement &measurement) {
    return parseFilament(measurement.typed).map([&](FeelingBand band) {
        const auto filament = filamentOf(measurement.typed);
        return filament ? wordsOf(*filament) + ", " + wordsOf(band) : wordsOf(band);
    });
}

Said sayTwoPoint(const Measurement &measurement) {
    return parseTwoPoint(measurement.typed).map([&](const TwoPoint &two) {
        const std::string spacing = two.spacing ? Sentence::tr("{1} mm", {plainNumber(two.spacing->value)})
                                                : Sentence::tr("no spacing told");
        return measurement.test == Test::TwoPointStatic ? spacing + ", " + wordsOf(two.grade) : spacing;
    });
}

Said sayShapes(const Measurement &measurement) {
    return parseShapes(measurement.typed).map([](const ShapesNamed &shapes) {
        return Sentence::tr("{1} of {2} named", {std::to_string(shapes.right), std::to_string(shapes.tried)});
    });
}

Said sayNamed(const Measurement &measurement) {
    return parseNamed(measurement.typed).map([](const ShapesNamed &named) {
        const std::string count =
            Sentence::tr("{1} of {2}", {std::to_string(named.right), std::to_string(named.tried)});
        return count + (couldBeGuessing(named) ? Sentence::tr(", guessing could do as well")
                                               : Sentence::tr(", better than guessing"));
    });
}

Said sayMarks(const Measurement &measurement) {
    return readMarks(measurement.typed).map([](const std::vector<std::string> &keys) -> std::string {
        if (keys.empty())
            return Sentence::tr("no pair of marks told apart");
        return keys.size() == 1 ? Sentence::tr("1 mark, so no pair")
                                : Sentence::tr("{1} marks told apart", {std::to_string(keys.size())});
    });
}

Said sayHeight(const Measurement &measurement) {
    return readHeight(measurement).map([](Centimetres height) {
        return Sentence::tr("{1} cm", {typed::words(height.value, 1)});
    });
}

Said sayWeight(const Measurement &measurement) {
    return readWeight(measurement.typed).map([](Kilograms weight) {
        return Sentence::tr("{1} kg", {plainNumber(weight.value)});
    });
}

} // namespace

Result<std::string> readBack(const Measurement &measurement) {
    if (!measurement.notTestedBecause.empty() && typed::tidy(measurement.typed).empty())
        return Sentence::tr("not tested: {1}", {measurement.notTestedBecause});
    switch (measurement.test) {
    case Test::DistanceAcuity:
    case Test::NearAcuity:
        return sayAcuity(measurement);
    case Test::ContrastSensitivity:
        return sayContrast(measurement);
    case Test::FieldExtent:
        return sayField(measurement);
    case Test::PreferredPrint:
        return sayPrint(measurement);
    case Test::FieldLoss:
        return parseFieldLoss(measurement.typed).map([](const FieldLoss &loss) { return wordsOf(loss); });
    case Test::ReadingTrial:
        return sayTrial(measurement);
    case Test::Glare:
    case Test::ColourVision:
    case Test::Adaptation:
        return sayWords(measurement);
    case Test::UsableVision:
        return readYesNo(measurement.typed).map([](bool yes) {
            return yes ? Sentence::tr("yes") : Sentence::tr("no");
        });
    case Test::Monofilament:
        return sayFilament(measurement);
    case Test::TwoPointStatic:
    case Test::TwoPointMoving:
        return sayTwoPoint(measurement);
    case Test::Temperature:
    case Test::SharpDull:
        return sayNamed(measurement);
    case Test::ShapeNaming:
        return sayShapes(measurement);
    case Test::BrailleReading:
        return parseBrailleReading(measurement.typed).map([](const BrailleReading &braille) {
            return wordsOf(braille);
        });
    case Test::ReadingFinger:
        return parseReadingFinger(measurement.typed).map([](const HandFinger &which) {
            return wordsOf(which);
        });
    case Test::AcceptedMarks:
        return sayMarks(measurement);
    case Test::Stature:
    case Test::KnuckleHeight:
    case Test::ShoulderHeight:
    case Test::ReachLow:
    case Test::ReachHigh:
    case Test::EyeHeight:
        return sayHeight(measurement);
    case Test::SafeLift:
        return sayWeight(measurement);
    case Test::Posture:
        return readPosture(measurement.typed).map([](Posture posture) {
            return posture == Posture::Standing ? Sentence::tr("standing") : Sentence::tr("seated");
        });
    case Test::Soles:
        return readSoles(measurement.typed).map([](Centimetres height) {
            return Sentence::tr("{1} cm", {typed::words(height.value, 1)});
        });
    case Test::LiftFigures:
        return readLiftFigures(measurement.typed).map([](Sex sex) {
            return sex == Sex::Female ? Sentence::tr("women's figures") : Sentence::tr("men's figures");
        });
    }
    return fail(ErrorCode::NotUnderstood, Sentence::tr("This test is not known."));
}

} // namespace model
