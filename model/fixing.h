#pragma once
#include "model/kitchen.h"
#include "model/marks.h"
#include "model/sentence.h"
#include <string>
#include <vector>

/// Where on a thing its mark sits, and how it is held there. All of it is common practice.
namespace model {

/// How a mark is held, as its facts tell: a magnet is laid, a sticky mark stuck, a text is a label; what goes
/// round cloth or paper is tied, what neither sticks nor is tied and still holds on card is drawn, the rest
/// goes round.
enum class Hold { Round, Tied, Stuck, Drawn, Laid, Label };
[[nodiscard]] Hold holdOf(const Marker &marker);

/// What a mark says: which thing of a shelf this is, or a meaning that is the same everywhere.
enum class MarkRole { Code, Meaning };

/// Said of everything that can hurt.
inline constexpr const char *keepWarnings =
    Sentence::later("Do not cover the warnings that are printed on the pack.");

struct Fixing {
    std::string where;              // said after the mark's name: "on top", "round the neck"
    std::string instead;            // a sentence if the mark is fixed in another way than is usual; or empty
    std::string whenEmpty;          // a sentence; empty for what is not used up
    bool toThePot = false;          // it comes off whole and waits in the return pot
    std::vector<std::string> notes; // sentences: heat, wet, cold, food side, warnings on the pack
    friend bool operator==(const Fixing &, const Fixing &) = default;
};
[[nodiscard]] Fixing fixingOf(const Thing &thing, const Marker &marker, MarkRole role = MarkRole::Code);
/// All of it in sentences, with the mark's own way of fixing where nothing takes its place.
[[nodiscard]] std::string fixingWords(const Fixing &fixing, const Marker &marker);

/// Room for braille on the thing or on the card that its label is.
struct BrailleFace {
    std::string where; // "along the side"
    Millimetres width{}, height{};
    bool oneLine = false; // on a curve: lengthwise, one line
    friend bool operator==(const BrailleFace &, const BrailleFace &) = default;
};
/// A card on a neck or a clip is 76 by 38 mm, a default of this program.
[[nodiscard]] BrailleFace brailleFace(const Thing &thing);

} // namespace model
