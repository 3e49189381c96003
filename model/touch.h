#pragma once
#include "model/result.h"
#include "model/units.h"
#include <optional>
#include <string>
#include <vector>

namespace model {

/// Bands of the hand for the lightest filament that is felt, best first.
enum class FeelingBand {
    Normal,
    DiminishedLightTouch,
    DiminishedProtective,
    LossOfProtective,
    DeepPressureOnly,
    NotFelt, // heavier than the heaviest filament
};

/// One filament of the kit. Marking and force are stored both: kits of today differ from the old formula.
struct Filament {
    double marking = 0;
    GramsForce target;
    FeelingBand band{};
};

/// The 20 filaments with target forces of the kit instructions of 2011 (PMC7873561, table 1).
[[nodiscard]] const std::vector<Filament> &filaments();

/// Reads "3.61", "0.4 g" (a target force of the kit) or "not felt".
/// Fails with NotUnderstood, or OutOfRange for a filament that does not exist, naming the nearest.
[[nodiscard]] Result<FeelingBand> parseFilament(const std::string &typed);
/// The filament of the kit that was typed, or none for "not felt" and for one that does not exist.
[[nodiscard]] std::optional<Filament> filamentOf(const std::string &typed);
/// "3.61, 0.4 g".
[[nodiscard]] std::string wordsOf(const Filament &filament);
/// "diminished light touch".
[[nodiscard]] std::string wordsOf(FeelingBand band);
/// True from "diminished protective sensation" on: the hand may not notice a cut or a burn in time.
[[nodiscard]] bool protectionReduced(FeelingBand band);

/// Grades of static two-point discrimination at a fingertip, best first.
enum class TwoPointGrade { Normal, Fair, Poor, Protective, Anaesthetic };

/// A result of the two-point test: the smallest spacing, or none if the two were never told from one.
struct TwoPoint {
    std::optional<Millimetres> spacing;
    TwoPointGrade grade{};
};

/// normal x < 6; fair 6 <= x <= 10; poor 10 < x <= 15; protective above.
/// Source: grading attributed to the American Societies for Surgery of the Hand and of Hand Therapists.
[[nodiscard]] TwoPointGrade twoPointGrade(Millimetres spacing);
/// Reads "5", "5 mm", "one point only" or "nothing felt". Fails with NotUnderstood or OutOfRange (1 to 30
/// mm).
[[nodiscard]] Result<TwoPoint> parseTwoPoint(const std::string &typed);
[[nodiscard]] std::string wordsOf(TwoPointGrade grade);

/// Smallest gap between the features of one mark: the larger of 3 mm and 1.5 times the static spacing.
/// Source: common practice.
[[nodiscard]] Millimetres smallestGap(Millimetres staticSpacing);

/// Mean static threshold of the index finger at an age, forced choice; nearest of the three groups measured
/// (18-33, 41-63, 66-91 years). Source: Stevens 1992, J Gerontol 47:P35.
[[nodiscard]] Millimetres usualTwoPoint(int age);

/// Marking by the old formula, log10 of ten times the force in mg, and back. Kits of today differ: only for
/// comparison. Source: Semmes, Weinstein, Ghent & Teuber 1960.
[[nodiscard]] double markingByFormula(GramsForce force);
[[nodiscard]] GramsForce forceByFormula(double marking);

/// Shapes named by touch.
struct ShapesNamed {
    int right = 0;
    int tried = 0;
};
/// Reads "4/5" or "4 of 5". Fails with NotUnderstood or OutOfRange.
[[nodiscard]] Result<ShapesNamed> parseShapes(const std::string &typed);

/// Reads "9/10" or "9 of 10" of a test with two answers, such as sharp or dull. Fails like parseShapes().
[[nodiscard]] Result<ShapesNamed> parseNamed(const std::string &typed);
/// True if guessing between two answers does as well in more than 5 of 100 series (binomial tail).
[[nodiscard]] bool couldBeGuessing(const ShapesNamed &named);

enum class BrailleSkill { No, Learning, Reads };
enum class BrailleForm { NotSaid, Plain, Jumbo };
/// What a client can do with braille.
struct BrailleReading {
    BrailleSkill skill{};
    std::optional<bool> contracted;
    BrailleForm form{};
    std::optional<int> wordsPerMinute;
};
/// Reads "reads contracted, 80 words a minute", "learning, jumbo" or "no". Fails with NotUnderstood, naming
/// the word; OutOfRange unless 1 to 400 words a minute, or for a speed of one who does not read.
[[nodiscard]] Result<BrailleReading> parseBrailleReading(const std::string &typed);
/// "reads contracted braille, 80 words a minute".
[[nodiscard]] std::string wordsOf(const BrailleReading &braille);

/// Sensitivity for the confusion of marks: 1 a finger with normal feeling. A default of this program, from
/// the groups of a simulation and not from clients.
[[nodiscard]] double sensitivityOf(FeelingBand band);
[[nodiscard]] double sensitivityOf(TwoPointGrade grade);

} // namespace model
