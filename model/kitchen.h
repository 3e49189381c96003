#pragma once
#include "model/client.h"
#include "model/id.h"
#include "model/units.h"
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace model {

enum class Storage { Dry, Fridge, Freezer };
enum class UnitKind { WallCupboard, BaseCupboard, DrawerStack, Larder, Worktop, Fridge, Freezer, Rack };
/// Where work is done; a unit may stand at one of these.
enum class WorkArea { None, Hob, Prep, Sink, Fridge, Table, Entry };
enum class Light { NotAsked, Bright, Fair, Dim };

/// One cupboard column. Units are kept in the order of the walk: clockwise from the door.
struct Unit {
    Id id;
    int order = 0;    // place in the walk, from 0
    std::string name; // "wall cupboard left of the cooker"
    UnitKind kind{};
    WorkArea area = WorkArea::None;     // nearest work area
    std::optional<Length> width;        // outer width; with the walk it gives the position along the wall
    std::string colour;                 // colour of the front or inside
    Answer lockable = Answer::NotAsked; // not asked counts as no
    friend bool operator==(const Unit &, const Unit &) = default;
};

/// A shelf, drawer or stretch of worktop in a unit: what a thing can stand on.
struct Place {
    Id id;
    Id unit;
    int order = 0;    // from the top, from 0
    std::string name; // "top shelf", "second drawer"
    bool drawer = false;
    bool counter = false;                      // open above: no limit of height
    std::optional<Length> width, depth, clear; // inside run width, depth, clear height
    std::optional<Length> height;              // above the finished floor
    Storage storage = Storage::Dry;
    Light light = Light::NotAsked; // not asked counts as dim
    bool own = false;              // the client's own bin or place: nothing of others stands there
    friend bool operator==(const Place &, const Place &) = default;
};

/// A dial, a row of buttons or a touch panel.
struct Control {
    std::string name;                  // "oven dial"; empty: its only control
    std::vector<std::string> settings; // that are used: "off", "180"
    friend bool operator==(const Control &, const Control &) = default;
};

/// Something with controls: cooker, microwave, washing machine, kettle ...
struct Appliance {
    Id id;
    std::string name;
    std::vector<Control> controls;
    std::optional<Celsius> heat; // beside the controls after an hour's use; none: not measured
    friend bool operator==(const Appliance &, const Appliance &) = default;
};

enum class Shape {
    Jar,
    Bottle,
    Can,
    Box,
    Bag,
    Packet,
    Tub,
    Canister,
    Tube,
    Mug,
    Plate,
    Bowl,
    Pan,
    Tool,
    Other
};
enum class Surface { Glass, Metal, Plastic, Card, Foil, Paper, Cloth, Ceramic, Wood };
/// Food, chemical (cleaning, washing, garden), or neither.
enum class Klass { Food, Chemical, Neither };
enum class AllergenState { Contains, MayContain, ReadNoneListed, NotChecked };

struct AllergenFact {
    std::string allergen; // key of allergens()
    AllergenState state = AllergenState::NotChecked;
    std::string readBy; // for ReadNoneListed: who read the pack, and when
    friend bool operator==(const AllergenFact &, const AllergenFact &) = default;
};

enum class DateKind { None, BestBefore, UseBy };

/// One kind of thing in the kitchen; several packs alike are one thing with a count.
struct Thing {
    Id id;
    std::string name;
    std::optional<int> count; // none: not given
    std::string group;        // general: "baking"
    std::string sub;          // specific: "sugars"
    Shape shape = Shape::Other;
    Surface surface = Surface::Plastic;
    std::optional<Length> width, depth, height;
    std::optional<Kilograms> weight;
    std::optional<double> usesPerWeek;
    std::optional<double> refillsPerWeek;
    double sound = 0.5; // 0 silent to 1 loud when shaken
    Storage storage = Storage::Dry;
    Klass klass = Klass::Food;
    std::vector<AllergenFact> allergens;
    bool glass = false;  // breakable
    bool hazard = false; // poison, caustic, flammable, sharp
    bool medicine = false;
    bool sharp = false;
    bool hotUse = false;     // handled hot
    bool spoilsMeal = false; // a mix-up ruins the meal
    DateKind dateKind = DateKind::None;
    std::optional<Date> bestBefore; // as read on the pack
    std::optional<int> keepingRow;  // row of the keeping-time data
    WorkArea area = WorkArea::None; // where it is used
    std::optional<Id> place;        // where it stands now
    int keep = 0;                   // wish to stay: 0 none .. 3 must stay
    std::string markInUse;          // mark that is on it already and works
    std::string doubt;              // question that is still open: "shape and size?"
    std::string said;               // her own words on the contents line, while a doubt is open
    std::string like;               // the catalogue's name of what its usual facts come from; may be empty
    std::string packSize;           // as said: "400 g", "large"; empty: the usual one
    std::string note;               // what else she said of it: "part used"
    std::string directions;         // how to prepare it, as read on the pack
    std::vector<std::string> dietFacts; // of Diet::facts, as read on the pack
    bool own = false;                   // the client's own: it belongs into her own bin
    std::set<std::string> usual;        // names of facts taken from the catalogue, not from the pack
    friend bool operator==(const Thing &, const Thing &) = default;
};

} // namespace model
