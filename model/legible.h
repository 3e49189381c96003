#pragma once
#include "model/case.h"
#include "model/contrast.h"
#include "model/findings.h"
#include <string>
#include <vector>

/// Can a printed label be read where it stands?
namespace model {

enum class Legible { Works, WithLamp, No, NotKnown };
/// "works", "works with a lamp", "will not do", "not known".
[[nodiscard]] std::string wordsOf(Legible verdict);

/// Where eyes and label are when somebody stands before a shelf.
struct Sightline {
    Centimetres distance{}; // from eye to label
    double degrees = 0;     // below the horizontal; negative: above
    double seen = 1;        // share of a letter's height that is left by the slant, on the better side
    bool onTop = false;     // the top of the thing is seen better than its front
};
/// `ahead` is how far the label lies before the eye; 35 cm is an arm's length of somebody who leans close
/// (judgement). Straight geometry: h / cos, and the cosine of the slant for the front, its sine for the top.
[[nodiscard]] Sightline sightline(Centimetres eye, Centimetres label, Centimetres ahead = {35});

/// The largest bold type of the papers' face in which the words fit on a label, on up to three lines; 0.6 em
/// a letter and 1.25 em a line, a judgement for Noto Sans.
[[nodiscard]] Points largestFitting(const std::string &words, Millimetres width, Millimetres height);

struct LabelRow {
    Id place, thing;   // `thing` is empty for the edge of a shelf on which nothing stands
    std::string words; // what the label says
    Sightline line;
    std::optional<Points> needed; // in the light that is there; none: print will not do
    std::optional<Points> withLamp;
    Points fits{};
    std::optional<Points> taken;   // needed if it is taken in the hand to 25 cm, in good light
    Millimetres width{}, height{}; // room for the label
    Legible verdict = Legible::NotKnown;
    std::string because; // one or two sentences
};
struct LabelColours {
    Colour print{0, 0, 0}, ground{255, 255, 255};
};
/// Every label of the plan, or where things stand now without a plan, in the order of the walk. Twice the
/// threshold size in good light; three times in dim light or with a severe loss of contrast (common
/// practice). Contrast of the colours below 3 times the threshold: print will not do; between 3 and 4 only
/// with a lamp.
[[nodiscard]] std::vector<LabelRow> legibleHere(const Case &record, const Findings &findings,
                                                const LabelColours &colours = {});
/// False if the words have no room on the front or the lid of the thing in any size that this client reads,
/// even in the hand, 25 cm away and in good light. True while no acuity is known.
[[nodiscard]] bool printFitsOn(const Thing &thing, const std::string &words, const Findings &findings);
/// The row of one thing, or none.
[[nodiscard]] std::optional<LabelRow> legibleThing(const Case &record, const Findings &findings,
                                                   const Id &thing);

} // namespace model
