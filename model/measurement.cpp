#include "model/measurement.h"
#include <algorithm>
#include <cassert>

namespace model {

const std::vector<TestInfo> &testInfos() {
    static const std::vector<TestInfo> infos{
        {Test::DistanceAcuity, Domain::Sight, "distance-acuity", "Distance acuity",
         "For example 6/24, 20/80, 0.6 logMAR, CF, HM, LP, NLP", true, false},
        {Test::NearAcuity, Domain::Sight, "near-acuity", "Near acuity",
         "For example N12, 1.6 M or 0.6 logMAR, and the distance", true, true},
        {Test::ContrastSensitivity, Domain::Sight, "contrast", "Contrast sensitivity",
         "Log units, for example 1.05", false, false},
        {Test::FieldExtent, Domain::Sight, "field", "Field, widest extent in the better eye",
         "Degrees across, for example 120", false, false},
        {Test::FieldLoss, Domain::Sight, "field-loss", "Part of the field that is missing",
         "Left, right, upper, lower, centre, all round, or none", false, false},
        {Test::PreferredPrint, Domain::Sight, "preferred-print", "Print read with ease",
         "Points, for example 24, and the distance", false, true},
        {Test::ReadingTrial, Domain::Sight, "reading-trial", "Reading trial",
         "Seconds and wrong words, line by line", false, true},
        {Test::Glare, Domain::Sight, "glare", "Glare and light", "In words: what dazzles, what helps", false,
         false},
        {Test::ColourVision, Domain::Sight, "colours", "Colours", "In words: which are mixed up", false,
         false},
        {Test::Adaptation, Domain::Sight, "adaptation", "From light to dark and back",
         "In words: how long until used to it", false, false},
        {Test::UsableVision, Domain::Sight, "usable-vision", "Uses sight to find things in the kitchen",
         "Yes or no", false, false},
        {Test::Monofilament, Domain::Touch, "monofilament", "Monofilament, lightest felt",
         "Marking on the handle, for example 3.61", true, false},
        {Test::TwoPointStatic, Domain::Touch, "two-point-static", "Two points, held still",
         "Millimetres, for example 5, or one point only", true, false},
        {Test::TwoPointMoving, Domain::Touch, "two-point-moving", "Two points, moving",
         "Millimetres, for example 4", true, false},
        {Test::Temperature, Domain::Touch, "temperature", "Warm or cold named by touch",
         "Right of tried, for example 9/10", true, false},
        {Test::SharpDull, Domain::Touch, "sharp-dull", "Sharp or dull named by touch",
         "Right of tried, for example 9/10", true, false},
        {Test::ShapeNaming, Domain::Touch, "shapes", "Shapes named by touch",
         "Right of tried, for example 4/5", true, false},
        {Test::BrailleReading, Domain::Touch, "braille-reading", "Braille",
         "Reads, learning or no; then contracted or uncontracted, jumbo or plain, and words a minute", false,
         false},
        {Test::ReadingFinger, Domain::Touch, "reading-finger", "Finger that reads marks",
         "Hand and finger, for example right index", false, false},
        {Test::AcceptedMarks, Domain::Touch, "accepted-marks", "Marks told apart in the marker test",
         "Names of the marks, with commas", false, false},
        {Test::Stature, Domain::Reach, "stature", "Stature", "For example 162 cm or 5 ft 4 in", false, false},
        {Test::KnuckleHeight, Domain::Reach, "knuckle", "Knuckle height, arm hanging", "For example 72 cm",
         false, false},
        {Test::ShoulderHeight, Domain::Reach, "shoulder", "Shoulder height", "For example 131 cm", false,
         false},
        {Test::ReachLow, Domain::Reach, "reach-low", "Lowest height reached with ease", "For example 30 cm",
         false, false},
        {Test::ReachHigh, Domain::Reach, "reach-high", "Highest height reached with ease",
         "For example 175 cm", false, false},
        {Test::EyeHeight, Domain::Reach, "eye", "Eye height", "For example 150 cm", false, false},
        {Test::SafeLift, Domain::Reach, "lift", "Heaviest thing lifted safely", "Kilograms, for example 1.5",
         false, false},
        {Test::Posture, Domain::Reach, "posture", "Works standing or seated", "Standing or seated", false,
         false},
        {Test::Soles, Domain::Reach, "soles", "Soles worn at home", "Height, for example 2 cm, or none",
         false, false},
        {Test::LiftFigures, Domain::Reach, "lift-figures", "Weights safe to lift: whose figures",
         "The lifting guidance has lower figures for women, higher ones for men; women's count until it is "
         "said",
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
