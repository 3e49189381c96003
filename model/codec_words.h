#pragma once
#include "model/case.h"
#include <array>

/// Words of the enumerations in the store, in the order of their values. Never change or reorder one.
namespace model::codec {

template<std::size_t N> using Words = std::array<const char *, N>;

constexpr Words<3> words(Answer /*type*/) {
    return {"not-asked", "yes", "no"};
}
constexpr Words<4> words(Basis /*type*/) {
    return {"measured", "told", "estimated", "usual"};
}
constexpr Words<3> words(BrailleGrade /*type*/) {
    return {"none", "uncontracted", "contracted"};
}
constexpr Words<4> words(Side /*type*/) {
    return {"not-stated", "right", "left", "both"};
}
constexpr Words<3> words(Storage /*type*/) {
    return {"dry", "fridge", "freezer"};
}
constexpr Words<8> words(UnitKind /*type*/) {
    return {"wall-cupboard", "base-cupboard", "drawer-stack", "larder",
            "worktop",       "fridge",        "freezer",      "rack"};
}
constexpr Words<7> words(WorkArea /*type*/) {
    return {"none", "hob", "prep", "sink", "fridge", "table", "entry"};
}
constexpr Words<4> words(Light /*type*/) {
    return {"not-asked", "bright", "fair", "dim"};
}
constexpr Words<15> words(Shape /*type*/) {
    return {"jar",  "bottle", "can",   "box",  "bag", "packet", "tub",  "canister",
            "tube", "mug",    "plate", "bowl", "pan", "tool",   "other"};
}
constexpr Words<9> words(Surface /*type*/) {
    return {"glass", "metal", "plastic", "card", "foil", "paper", "cloth", "ceramic", "wood"};
}
constexpr Words<4> words(MarkMedium /*type*/) {
    return {"touch", "braille", "large-print", "spoken-tag"};
}
constexpr Words<4> words(TouchAnswer /*type*/) {
    return {"same", "different", "unsure", "repeat"};
}
constexpr Words<3> words(Klass /*type*/) {
    return {"food", "chemical", "neither"};
}
constexpr Words<4> words(AllergenState /*type*/) {
    return {"contains", "may-contain", "read-none-listed", "not-checked"};
}
constexpr Words<3> words(DateKind /*type*/) {
    return {"none", "best-before", "use-by"};
}
constexpr Words<3> words(DateRegion /*type*/) {
    return {"not-asked", "europe-or-uk", "united-states"};
}

} // namespace model::codec
