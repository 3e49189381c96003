#include "model/field_loss.h"
#include "model/findings.h"
#include "model/fingers.h"
#include "model/read_measurement.h"
#include "model/reading_trial.h"
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
        return acuity.logMar ? wordsOf(acuity)
                             : wordsOf(acuity) + ", below every chart: no print size follows";
    });
}

Said sayContrast(const Measurement &measurement) {
    return readContrast(measurement.typed).map([](double value) {
        return "log contrast sensitivity " + plainNumber(value) + ", " + wordsOf(contrastBand(value));
    });
}

Said sayField(const Measurement &measurement) {
    return readField(measurement.typed).map([](double value) {
        return plainNumber(value) + " degrees across";
    });
}

Said sayPrint(const Measurement &measurement) {
    const auto points = readPoints(measurement.typed);
    const auto distance = readDistance(measurement);
    if (!points)
        return tl::unexpected(points.error());
    if (!distance)
        return tl::unexpected(distance.error());
    const std::string said = plainNumber(points->value) + " point";
    return *distance ? said + " at " + plainNumber((*distance)->value) + " cm"
                     : said + ", distance not given";
}

Said sayTrial(const Measurement &measurement) {
    return parseTrial(measurement.typed).map([](const auto &sentences) {
        return std::to_string(sentences.size()) + " sentences";
    });
}

Said sayWords(const Measurement &measurement) {
    return typed::tidy(measurement.typed).empty()
               ? Said(fail(ErrorCode::NotUnderstood,
                           "Nothing was typed. Say it in words, or why it was not tested."))
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
        const std::string spacing = two.spacing ? plainNumber(two.spacing->value) + " mm" : "no spacing told";
        return measurement.test == Test::TwoPointStatic ? spacing + ", " + wordsOf(two.grade) : spacing;
    });
}

Said sayShapes(const Measurement &measurement) {
    return parseShapes(measurement.typed).map([](const ShapesNamed &shapes) {
        return std::to_string(shapes.right) + " of " + std::to_string(shapes.tried) + " named";
    });
}

Said sayNamed(const Measurement &measurement) {
    return parseNamed(measurement.typed).map([](const ShapesNamed &named) {
        const std::string count = std::to_string(named.right) + " of " + std::to_string(named.tried);
        return count + (couldBeGuessing(named) ? ", guessing could do as well" : ", better than guessing");
    });
}

Said sayMarks(const Measurement &measurement) {
    return readMarks(measurement.typed).map([](const std::vector<std::string> &keys) -> std::string {
        if (keys.empty())
            return "no pair of marks told apart";
        return keys.size() == 1 ? "1 mark, so no pair" : std::to_string(keys.size()) + " marks told apart";
    });
}

Said sayHeight(const Measurement &measurement) {
    return readHeight(measurement).map([](Centimetres height) {
        return typed::words(height.value, 1) + " cm";
    });
}

Said sayWeight(const Measurement &measurement) {
    return readWeight(measurement.typed).map([](Kilograms weight) {
        return plainNumber(weight.value) + " kg";
    });
}

} // namespace

Result<std::string> readBack(const Measurement &measurement) {
    if (!measurement.notTestedBecause.empty() && typed::tidy(measurement.typed).empty())
        return "not tested: " + measurement.notTestedBecause;
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
        return readYesNo(measurement.typed).map([](bool yes) -> std::string { return yes ? "yes" : "no"; });
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
            return posture == Posture::Standing ? "standing" : "seated";
        });
    case Test::Soles:
        return readSoles(measurement.typed).map([](Centimetres height) {
            return typed::words(height.value, 1) + " cm";
        });
    case Test::LiftFigures:
        return readLiftFigures(measurement.typed).map([](Sex sex) {
            return sex == Sex::Female ? "women's figures" : "men's figures";
        });
    }
    return fail(ErrorCode::NotUnderstood, "This test is not known.");
}

} // namespace model
