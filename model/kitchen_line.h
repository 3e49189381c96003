#pragma once
#include "model/case.h"
#include "model/result.h"

/// The kitchen in words: units said in a line, changes of the walk, and the map said back.
namespace model {

/// A unit understood from words, with how many shelves or drawers were said.
struct UnitSaid {
    Unit unit;
    int places = 1;
    std::string doubt; // why it cannot be so, or empty
};

/// What was understood of a line, and what was not.
struct UnitsRead {
    std::vector<UnitSaid> units;
    std::string left;       // the parts not understood, as they were said; empty: all was understood
    std::string why;        // what is wrong with them, in sentences
    std::size_t before = 0; // so many units come before the first such part
};

/// Reads units in the order of the walk: "larder by the door 50 cm 4 shelves, worktop, wall cupboard left of
/// the cooker 2 shelves". A comma or semicolon ends a unit. "Corner" between two units begins a new wall. The
/// kind follows from its words, a work area from "sink", "cooker", "fridge", "table" and "door". Fails with
/// NotUnderstood or OutOfRange where no unit is understood.
[[nodiscard]] Result<UnitsRead> parseUnits(const std::string &line);

/// "Top shelf", "second drawer", "worktop": the usual name of a place of such a unit.
[[nodiscard]] std::string placeName(UnitKind kind, int order, int count);
/// A place of the usual size of its unit, marked usual.
[[nodiscard]] Place usualPlace(const Unit &unit, int order, int count);

/// Adds a unit with places of usual size, before `before` in the walk, or at its end for an empty id.
void addUnit(Case &record, Unit unit, int places, const Id &before);
/// A copy of the unit with its places and their sizes behind it, without its things; its id, or none.
[[nodiscard]] std::optional<Id> copyUnit(Case &record, const Id &unit);
/// Moves a unit in the walk, or a place within its unit, by one; false at an end.
bool moveBy(Case &record, const Id &part, int by);
/// Makes two places out of one, each half as high, the lower one new; things stay on the upper. Its id, or
/// none.
[[nodiscard]] std::optional<Id> splitPlace(Case &record, const Id &place);
/// Numbers units and places anew, in the order in which they stand.
void renumber(Case &record);

/// The map in sentences, from the door clockwise: "1, larder by the door, 50 cm wide, 4 shelves."
[[nodiscard]] std::vector<std::string> mapInWords(const Case &record);

} // namespace model
