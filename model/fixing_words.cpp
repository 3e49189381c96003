#include "model/planning.h"

namespace model {
namespace {

/// The spot on a thing of this shape where a hand finds a mark first.
std::string spotOn(Shape shape) {
    switch (shape) {
    case Shape::Can:
        return "On top of the tin";
    case Shape::Jar:
    case Shape::Canister:
    case Shape::Tub:
        return "On the lid, or round the neck";
    case Shape::Bottle:
    case Shape::Tube:
        return "Round the neck, or on the cap";
    case Shape::Box:
    case Shape::Packet:
        return "Upright above the flap, so that it does not stick out";
    case Shape::Bag:
        return "On the clip of the bag";
    case Shape::Mug:
    case Shape::Plate:
    case Shape::Bowl:
        return "On the edge of the shelf in front of the pile, not where food touches";
    case Shape::Pan:
    case Shape::Tool:
        return "On the handle, away from the heat";
    case Shape::Other:
        return "Where the hand meets it first";
    }
    return "";
}

} // namespace

std::string fixingWords(const Thing &thing, const Marker &marker) {
    if (!marker.surfaces.contains(thing.surface))
        return "The surface does not take it: fix the same mark on a card or a clip, and that to the pack; "
               "or on the "
               "canister that is refilled, not on the bag.";
    std::string out = spotOn(thing.shape) + ". " + marker.howToFix;
    if (thing.storage != Storage::Dry && marker.adhesive)
        out += " Stick it on dry and warm, a day before it goes into the cold.";
    return out;
}

} // namespace model
