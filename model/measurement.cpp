#include "model/measurement.h"
#include "model/sentence.h"
#include <algorithm>
#include <cassert>

namespace model {

const std::vector<TestInfo> &testInfos() {
    static const std::vector<TestInfo> infos{
        {Test::DistanceAcuity, Domain::Sight, "distance-acuity", Sentence::later("Distance acuity"),
         Sentence::later("For example 6/24, 20/80, 0.6 logMAR, CF, HM, LP, NLP"), true, false},
        {Test::NearAcuity, Domain::Sight, "near-acuity", Sentence::later("Near acuity"),
         Sentence::later("For example N12, 1.6 M or 0.6 logMAR, and the distance"), true, true},
        {Test::ContrastSensitivity, Domain::Sight, "contrast", Sentence::later("Contrast sensitivity"),
         Sentence::later("Log units, for example 1.05"), false, false},
        {Test::FieldExtent, Domain::Sight, "field", Sentence::later("Field, widest extent in the better eye"),
         Sentence::later("Degrees across, for example 120"), false, false},
        {Test::FieldLoss, Domain::Sight, "field-loss", Sentence::later("Part of the field that is missing"),
         Sentence::later("Left, right, upper, lower, centre, all round, or none"), false, false},
        {Test::PreferredPrint, Domain::Sight, "preferred-print", Sentence::later("Print read with ease"),
         Sentence::later("Points, for example 24, and the distance"), false, true},
        {Test::ReadingTrial, Domain::Sight, "reading-trial", Sentence::later("Reading trial"),
         Sentence::later("Seconds and wrong words, line by line"), false, true},
        {Test::Glare, Domain::Sight, "glare", Sentence::later("Glare and light"),
         Sentence::later("In words: what dazzles, what helps"), false, false},
        {Test::ColourVision, Domain::Sight, "colours", Sentence::later("Colours"),
         Sentence::later("In words: which are mixed up"), false, false},
        {Test::Adaptation, Domain::Sight, "adaptation", Sentence::later("From light to dark and back"),
         Sentence::later("In words: how long until used to it"), false, false},
        {Test::UsableVision, Domain::Sight, "usable-vision",
         Sentence::later("Uses sight to find things in the kitchen"), Sentence::later("Yes or no"), false,
         false},
        {Test::Monofilament, Domain::Touch, "monofilament", Sentence::later("Monofilament, lightest felt"),
         Sentence::later("Marking on the handle, for example 3.61"), true, false},
        {Test::TwoPointStatic, Domain::Touch, "two-point-static", Sentence::later("Two points, held still"),
         Sentence::later("Millimetres, for example 5, or one point only"), true, false},
        {Test::TwoPointMoving, Domain::Touch, "two-point-moving", Sentence::later("Two points, moving"),
         Sentence::later("Millimetres, for example 4"), true, false},
        {Test::Temperature, Domain::Touch, "temperature", Sentence::later("Warm or cold named by touch"),
         Sentence::later("Right of tried, for example 9/10"), true, false},
        {Test::SharpDull, Domain::Touch, "sharp-dull", Sentence::later("Sharp or dull named by touch"),
         Sentence::later("Right of tried, for example 9/10"), true, false},
        {Test::ShapeNaming, Domain::Touch, "shapes", Sentence::later("Shapes named by touch"),
         Sentence::later("Right of tried, for example 4/5"), true, false},
        {Test::BrailleReading, Domain::Touch, "braille-reading", Sentence::later("Braille"),
         Sentence::later(
             "Reads, learning or no; then contracted or uncontracted, jumbo or plain, and words a minute"),
         false, false},
        {Test::ReadingFinger, Domain::Touch, "reading-finger", Sentence::later("Finger that reads marks"),
         Sentence::later("Hand and finger, for example right index"), false, false},
        {Test::AcceptedMarks, Domain::Touch, "accepted-marks",
         Sentence::later("Marks told apart in the marker test"),
         Sentence::later("Names of the marks, with commas"), false, false},
        {Test::Stature, Domain::Reach, "stature", Sentence::later("Stature"),
         Sentence::later("For example 162 cm or 5 ft 4 in"), false, false},
        {Test::KnuckleHeight, Domain::Reach, "knuckle", Sentence::later("Knuckle height, arm hanging"),
         Sentence::later("For example 72 cm"), false, false},
        {Test::ShoulderHeight, Domain::Reach, "shoulder", Sentence::later("Shoulder height"),
         Sentence::later("For example 131 cm"), false, false},
        {Test::ReachLow, Domain::Reach, "reach-low", Sentence::later("Lowest height reached with ease"),
         Sentence::later("For example 30 cm"), false, false},
        {Test::ReachHigh, Domain::Reach, "reach-high", Sentence::later("Highest height reached with ease"),
         Sentence::later("For example 175 cm"), false, false},
        {Test::EyeHeight, Domain::Reach, "eye", Sentence::later("Eye height"),
         Sentence::later("For example 150 cm"), false, false},
        {Test::SafeLift, Domain::Reach, "lift", Sentence::later("Heaviest thing lifted safely"),
         Sentence::later("Kilograms, for example 1.5"), false, false},
        {Test::Posture, Domain::Reach, "posture", Sentence::later("Works standing or seated"),
         Sentence::later("Standing or seated"), false, false},
        {Test::Soles, Domain::Reach, "soles", Sentence::later("Soles worn at home"),
         Sentence::later("Height, for example 2 cm, or none"), false, false},
        {Test::LiftFigures, Domain::Reach, "lift-figures",
         Sentence::later("Weights safe to lift: whose figures"),
         Sentence::later("The lifting guidance has lower figures for women, higher ones for men; women's "
                         "count until it is said"),
         false, false},
    };
    return infos;
}

const TestInfo &infoOf(Test test) {
    const auto &all = testInfos();
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto &i) { return i.test == test; });
    assert(found != all.end());
    return *found;
}

} // namespace model
