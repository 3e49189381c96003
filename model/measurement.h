#pragma once
#include "model/date.h"
#include "model/id.h"
#include <optional>
#include <string>
#include <vector>

namespace model {

enum class Domain { Sight, Touch, Reach };

/// What was measured. Units and notations: see testInfo().
enum class Test {
    // Sight
    DistanceAcuity,
    NearAcuity,
    ContrastSensitivity, // log units
    FieldExtent,         // degrees across, better eye
    FieldLoss,           // words: left, right, upper, lower, centre, all round, none
    PreferredPrint,      // points, read with ease at the stated distance
    ReadingTrial,        // "1.3: 4.2 s, 0 wrong; ...", see reading_trial.h
    Glare,               // words
    ColourVision,        // words
    Adaptation,          // words: from light to dark and back
    UsableVision,        // yes or no: uses sight to find things in the kitchen
    // Touch
    Monofilament,   // marking, e.g. 3.61
    TwoPointStatic, // mm
    TwoPointMoving, // mm
    Temperature,    // warm or cold named, right of tried
    SharpDull,      // sharp or dull named, right of tried
    ShapeNaming,    // right of tried, e.g. 4/5
    BrailleReading, // in words: reads, learning or not; grade, form, speed
    ReadingFinger,  // hand and finger: "right index"
    AcceptedMarks,  // names of marks told apart, separated by commas
    // Reach
    Stature,
    KnuckleHeight,
    ShoulderHeight,
    ReachLow,  // lowest height reached with ease
    ReachHigh, // highest height reached with ease
    EyeHeight,
    SafeLift,    // kg, heaviest thing lifted safely
    Posture,     // standing or seated
    Soles,       // height of what is worn on the feet at home
    LiftFigures, // of the lifting filter: women's or men's
};

enum class Side { NotStated, Right, Left, Both };

/// One result as it was entered. "Not tested" is a result too: `notTestedBecause` holds the reason and
/// `typed` is empty. What it means is worked out in findings.h, never stored.
struct Measurement {
    Id id;
    Test test{};
    Side side = Side::NotStated;
    std::string typed; // value with unit or notation, as typed: "6/24", "20/80-2", "0.6 logMAR", "142 cm"
    std::string distanceTyped; // test distance as typed, where it matters
    std::string chart;         // acuity: what was shown, in words: "letters in rows", "tumbling E, single"
    std::string method;        // chart or kit, light, and what else belongs to it
    std::string finger;        // touch: which finger
    bool withGlasses = false;  // sight: with the usual glasses
    std::optional<Date> date;
    std::string notTestedBecause;
    friend bool operator==(const Measurement &, const Measurement &) = default;
};

/// The words of one test: name, what to type, and in which unit.
struct TestInfo {
    Test test{};
    Domain domain{};
    std::string key;    // stable name in the store
    std::string name;   // "Distance acuity"
    std::string hint;   // "For example 6/24, 20/80, 0.6 logMAR, CF at 1 m"
    bool sided = false; // asked for right, left and both
    bool atDistance = false;
};
[[nodiscard]] const std::vector<TestInfo> &testInfos();
[[nodiscard]] const TestInfo &infoOf(Test test);

} // namespace model
