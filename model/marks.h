#pragma once
#include "model/id.h"
#include "model/kitchen.h"
#include "model/units.h"
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace model {

/// What a mark is read with.
enum class MarkMedium { Touch, Braille, LargePrint, SpokenTag };

/// A kind of mark in the kit. Features are in just-noticeable steps of a finger with normal feeling.
struct Marker {
    std::string key;      // stable name in the store
    std::string name;     // "two rubber bands"
    std::string feel;     // what the finger finds, in words
    std::string howToFix; // one sentence
    MarkMedium medium = MarkMedium::Touch;
    double size = 0, relief = 0, texture = 0;
    std::set<Surface> surfaces; // what it sticks to or goes round
    bool survivesFreezer = true;
    bool survivesWet = true;
    double fixMinutes = 1;
    double readSeconds = 1;
    double learnMinutes = 18;
    double cost = 0.1; // currency units, price of one
    bool magnetic = false, latex = false, adhesive = false, chokingSize = false;
    bool sharp = false;                              // sharp or rough on the skin
    std::optional<Celsius> heatLimit = std::nullopt; // it softens, chars or comes off above; none: not known
    std::string caution;
    friend bool operator==(const Marker &, const Marker &) = default;
};

/// A mark of the kit as it is changed for one client, or one of her therapist's own.
struct KitMark {
    Id id;
    Marker marker;     // takes the place of the program's mark with the same key
    bool inKit = true; // false: not at hand, so never planned
    friend bool operator==(const KitMark &, const KitMark &) = default;
};

/// The kit that the program starts with; every figure is a default of this program, shown and changeable.
[[nodiscard]] const std::vector<Marker> &markerKit();
/// The marker with this key, or nullptr.
[[nodiscard]] const Marker *markerOf(const std::string &key);
/// Chance that a finger takes `shown` for `other`: Phi(-d/2), d the distance of their features times
/// `sensitivity` (Thurstone). 1 for the same marker; a mark that carries its own text (braille, print, tag)
/// gives the chance that it is misread. `sensitivity` 1 for normal feeling, less for reduced.
[[nodiscard]] double confusion(const Marker &shown, const Marker &other, double sensitivity);
/// Chance that the mark is not noticed at all: taken for the bare surface.
[[nodiscard]] double missed(const Marker &marker, double sensitivity);

/// What a marker test says of each pair of marks, by kit key: posterior means.
struct MeasuredConfusion {
    std::map<std::pair<std::string, std::string>, double> taken; // both ways round
    std::map<std::string, double> missed;                        // taken for the bare surface
    friend bool operator==(const MeasuredConfusion &, const MeasuredConfusion &) = default;
};
/// The same chances, as measured where they were, else from the features.
[[nodiscard]] double confusion(const Marker &shown, const Marker &other, double sensitivity,
                               const MeasuredConfusion &measured);
[[nodiscard]] double missed(const Marker &marker, double sensitivity, const MeasuredConfusion &measured);

} // namespace model
