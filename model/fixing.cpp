#include "model/fixing.h"
#include "model/kit.h"
#include "model/plan_safety.h"
#include "model/rule_words.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>

namespace model {
namespace {

bool isPile(Shape shape) {
    return shape == Shape::Plate || shape == Shape::Bowl || shape == Shape::Mug;
}

bool isClipped(Shape shape) {
    return shape == Shape::Bag || shape == Shape::Packet;
}

bool hasHandle(Shape shape) {
    return shape == Shape::Pan || shape == Shape::Tool || shape == Shape::Mug;
}

bool goesRound(Hold hold) {
    return hold == Hold::Round || hold == Hold::Tied;
}

/// Cutlery in its tray, knives in their block, spoons in a pot: more than 10 cm wide or cutlery by name.
bool isSet(const Thing &thing) {
    constexpr Centimetres wide{10};
    return thing.shape == Shape::Tool &&
           (thing.sub == "cutlery" || (thing.width && thing.width->value > wide));
}

/// Spots as they are written: rules ask for their words, and fixingOf() says them in the language of the
/// window.
///
/// A row of tins is told by its tops, so what warns sits at the front.
std::string onCan(const Marker &marker, MarkRole role) {
    switch (holdOf(marker)) {
    case Hold::Round:
        return Sentence::later("round the upper third");
    case Hold::Tied:
        return Sentence::later("round the tin, just under the top rim");
    case Hold::Stuck:
    case Hold::Drawn:
    case Hold::Laid:
        return role == MarkRole::Meaning ? Sentence::later("at the front, just under the top rim")
                                         : Sentence::later("on top");
    case Hold::Label:
        break;
    }
    return marker.medium == MarkMedium::SpokenTag
               ? Sentence::later("on a card under a band, clear of the metal")
               : Sentence::later("on a card at the front, under a band");
}

/// A lid can change its jar, so what warns sits on the jar itself.
std::string onLidded(const Marker &marker, MarkRole role, const std::string &neck) {
    switch (holdOf(marker)) {
    case Hold::Round:
    case Hold::Tied:
        return neck;
    case Hold::Label:
        return Sentence::later("on a card tied to the neck");
    case Hold::Stuck:
    case Hold::Drawn:
    case Hold::Laid:
        break;
    }
    return role == MarkRole::Meaning ? Sentence::later("at the front, just under the lid")
                                     : Sentence::later("on the lid");
}

std::string onBottle(const Marker &marker) {
    if (goesRound(holdOf(marker)))
        return Sentence::later("round the neck");
    return holdOf(marker) == Hold::Label ? Sentence::later("on a card tied to the neck")
                                         : Sentence::later("at the front, close to the neck");
}

std::string onTube(const Marker &marker) {
    if (goesRound(holdOf(marker)))
        return Sentence::later("round the cap end");
    return holdOf(marker) == Hold::Label ? Sentence::later("on a card tied to the cap end")
                                         : Sentence::later("at the front, close to the cap end");
}

std::string onHandle(const Thing &thing, const Marker &marker) {
    if (isSet(thing))
        return Sentence::later("on the front of its tray, block or pot");
    if (goesRound(holdOf(marker)))
        return Sentence::later("round the end of the handle");
    if (thing.shape == Shape::Tool && !thing.hotUse && holdOf(marker) != Hold::Label)
        return Sentence::later("at the end of the handle");
    return Sentence::later("on the edge of the shelf or drawer, in front of it");
}

std::string onOther(const Thing &thing, const Marker &marker) {
    if (thing.hotUse)
        return goesRound(holdOf(marker)) ? Sentence::later("round the handle")
                                         : Sentence::later("at the grip, away from heat and steam");
    if (thing.klass == Klass::Food)
        return Sentence::later("on the clip or the basket that it is kept in, at the front");
    return Sentence::later("where the hand meets it first, at the front");
}

std::string usualSpot(const Thing &thing, const Marker &marker, MarkRole role) {
    if (marker.medium == MarkMedium::Braille)
        return brailleFace(thing).where;
    switch (thing.shape) {
    case Shape::Can:
        return onCan(marker, role);
    case Shape::Jar:
        return onLidded(marker, role, Sentence::later("round the neck, under the lid"));
    case Shape::Tub:
        if (holdOf(marker) == Hold::Label)
            return Sentence::later("on the lid");
        return onLidded(marker, role, Sentence::later("round the tub, under the rim"));
    case Shape::Canister:
        return goesRound(holdOf(marker)) ? Sentence::later("round the canister, under the lid")
                                         : Sentence::later("at the front of the canister, not on its lid");
    case Shape::Bottle:
        return onBottle(marker);
    case Shape::Tube:
        return onTube(marker);
    case Shape::Box:
        if (role == MarkRole::Meaning)
            return Sentence::later("at the front, in the top left corner");
        return holdOf(marker) == Hold::Label
                   ? Sentence::later("on a card upright at the front, above the flap")
                   : Sentence::later("upright at the front, above the flap");
    case Shape::Bag:
    case Shape::Packet:
        return holdOf(marker) == Hold::Label ? Sentence::later("on a card on the clip")
                                             : Sentence::later("on the clip that closes it");
    case Shape::Mug:
        return goesRound(holdOf(marker)) ? Sentence::later("round the handle")
                                         : Sentence::later("on the edge of the shelf, in front");
    case Shape::Plate:
    case Shape::Bowl:
        return Sentence::later("on the edge of the shelf, in front of the pile");
    case Shape::Pan:
    case Shape::Tool:
        return onHandle(thing, marker);
    case Shape::Other:
        return onOther(thing, marker);
    }
    return {};
}

/// The mark itself touches the thing: not a clip, a card, a handle or the edge of the shelf.
bool touchesThing(const Thing &thing, const Marker &marker) {
    return holdOf(marker) != Hold::Label && !isClipped(thing.shape) && !isPile(thing.shape) && !isSet(thing);
}

std::string tagSpot(const Thing &thing) {
    if (thing.shape == Shape::Box)
        return Sentence::later("on a card tag, upright at the front above the flap");
    if (hasHandle(thing.shape))
        return Sentence::later("on a card tag, tied to the handle");
    return Sentence::later("on a card tag, tied or clipped on at the front");
}

std::string degrees(Celsius heat) {
    return Sentence::tr("{1} C", {typed::words(heat.value, 0)});
}

bool isWashedUp(const Thing &thing) {
    return touchesFood(thing) && (hasHandle(thing.shape) || isPile(thing.shape));
}

void addHeat(const Thing &thing, const Marker &marker, std::vector<std::string> &notes) {
    if (!thing.hotUse)
        return;
    const std::string oven =
        thing.shape == Shape::Pan ? Sentence::tr(", and take it off before the oven.") : ".";
    notes.push_back(Sentence::tr(
        "{1}: keep it from heat and steam{2}",
        {(marker.heatLimit ? Sentence::tr("It does not stand more than {1}", {degrees(*marker.heatLimit)})
                           : Sentence::tr("How much heat it stands is not known")),
         oven}));
}

void addColdAndWet(const Thing &thing, const Marker &marker, std::vector<std::string> &notes) {
    if (thing.storage == Storage::Freezer && !marker.survivesFreezer)
        notes.emplace_back(Sentence::tr("It does not last in the freezer: feel it at each use, and change it "
                                        "when it is brittle or loose."));
    if (thing.storage != Storage::Dry && marker.adhesive)
        notes.emplace_back(
            Sentence::tr("Stick it on dry, clean and room-warm, 24 hours before it goes into the cold."));
    if (thing.storage != Storage::Dry && !marker.survivesWet)
        notes.emplace_back(
            Sentence::tr("It does not stand wet: keep it under clear film, or change it when it is damp."));
    if (thing.klass == Klass::Chemical && !marker.survivesWet)
        notes.emplace_back(
            Sentence::tr("It does not stand wet: dry the pack first, and keep it clear of what runs down."));
    if (isWashedUp(thing) && !marker.survivesWet)
        notes.emplace_back(Sentence::tr("Take it off before washing up."));
}

void addCare(const Thing &thing, Fixing &fixing) {
    std::vector<std::string> &notes = fixing.notes;
    if (isWashedUp(thing) && !fixing.where.starts_with("on the "))
        notes.emplace_back(Sentence::tr("Never where food or a lip touches it."));
    if (thing.sharp)
        notes.emplace_back(
            Sentence::tr("Cover the blade while you fix it, and keep the mark off the blade."));
    if (thing.hazard)
        notes.push_back(Sentence::tr(keepWarnings));
    if (thing.medicine)
        notes.emplace_back(Sentence::tr("Never over the pharmacy's label: ask the pharmacist."));
}

void addJarRule(const Fixing &fixing, const Thing &thing, std::vector<std::string> &notes) {
    if (fixing.where == "on the lid" && thing.shape == Shape::Jar)
        notes.emplace_back(
            Sentence::tr("Close one jar before you open the next: the mark goes with the lid."));
}

bool isUsedUp(const Thing &thing) {
    return thing.klass != Klass::Neither && !hasHandle(thing.shape) && !isPile(thing.shape);
}

/// What becomes of the mark when the pack is empty.
void addWhenEmpty(const Thing &thing, const Marker &marker, Fixing &fixing) {
    if (!isUsedUp(thing))
        return;
    if (thing.shape == Shape::Canister) {
        fixing.whenEmpty = Sentence::tr("It stays on the canister, never on the refill pack. Empty and wash "
                                        "the canister before it is filled again.");
        return;
    }
    if (isClipped(thing.shape)) {
        fixing.toThePot = true;
        fixing.whenEmpty = Sentence::tr("When it is empty, the clip with its mark goes into the return pot.");
        return;
    }
    const bool stays =
        (holdOf(marker) == Hold::Stuck || holdOf(marker) == Hold::Drawn) && fixing.instead.empty();
    fixing.toThePot = !stays;
    fixing.whenEmpty =
        stays ? Sentence::tr("It goes out with the empty pack: the next pack gets a new one.")
              : Sentence::tr("When it is empty, take the mark off and put it into the return pot.");
}

} // namespace

Hold holdOf(const Marker &marker) {
    if (marker.medium != MarkMedium::Touch)
        return Hold::Label;
    if (marker.magnetic)
        return Hold::Laid;
    if (marker.adhesive)
        return Hold::Stuck;
    const auto &on = marker.surfaces;
    if (on.contains(Surface::Cloth) || on.contains(Surface::Paper) || on.contains(Surface::Foil))
        return Hold::Tied;
    return on.contains(Surface::Card) || on.contains(Surface::Wood) ? Hold::Drawn : Hold::Round;
}

Fixing fixingOf(const Thing &thing, const Marker &marker, MarkRole role) {
    Fixing fixing;
    fixing.where = usualSpot(thing, marker, role);
    const bool box = thing.shape == Shape::Box && goesRound(holdOf(marker));
    if (touchesThing(thing, marker) && (box || !marker.surfaces.contains(thing.surface))) {
        fixing.where = tagSpot(thing);
        fixing.instead =
            box ? Sentence::tr("Nothing goes round a box without bending it, so the same mark goes on a tag.")
                : Sentence::tr("It does not hold on {1}, so the same mark goes on a tag.",
                               {wordsOf(thing.surface)});
    } else if (isClipped(thing.shape) && goesRound(holdOf(marker))) {
        fixing.where = Sentence::later("round the clip that closes it");
    } else if (isPile(thing.shape) && goesRound(holdOf(marker)) && thing.shape != Shape::Mug) {
        fixing.where = Sentence::later("on a card on the edge of the shelf, in front of the pile");
    }
    addHeat(thing, marker, fixing.notes);
    addColdAndWet(thing, marker, fixing.notes);
    addCare(thing, fixing);
    addJarRule(fixing, thing, fixing.notes);
    addWhenEmpty(thing, marker, fixing);
    fixing.where = Sentence::tr(fixing.where);
    return fixing;
}

std::string fixingWords(const Fixing &fixing, const Marker &marker) {
    std::string words = sentenceCase(marker.name) + ", " + fixing.where + ".";
    if (!fixing.instead.empty())
        words += " " + fixing.instead;
    if (holdOf(marker) == Hold::Label)
        words += Sentence::tr(" It faces outward.");
    for (const std::string &note : fixing.notes)
        words += " " + note;
    return fixing.whenEmpty.empty() ? words : words + " " + fixing.whenEmpty;
}

BrailleFace brailleFace(const Thing &thing) {
    constexpr double share = 0.8; // of a face that is free of folds, seams and edges
    const auto size = [](const std::optional<Length> &length, double usual) {
        return (length ? length->value.value : usual) * 10 * share;
    };
    const Millimetres width{size(thing.width, 7)}, height{size(thing.height, 12)};
    switch (thing.shape) {
    case Shape::Can:
        return {Sentence::later("along the side, from the bottom up"), height, {12.7}, true};
    case Shape::Box:
        return {Sentence::later("on a card upright at the front, above the flap"), width, {38}};
    case Shape::Tub:
        return {Sentence::later("on the lid"), width, {size(thing.depth, 7)}};
    case Shape::Canister:
        return {Sentence::later("along the side of the canister, from the bottom up"), height, {12.7}, true};
    case Shape::Jar:
    case Shape::Bottle:
    case Shape::Tube:
        return {Sentence::later("on a card tied to the neck"), {76}, {38}};
    case Shape::Bag:
    case Shape::Packet:
        return {Sentence::later("on a card on the clip"), {76}, {38}};
    case Shape::Mug:
    case Shape::Plate:
    case Shape::Bowl:
    case Shape::Pan:
    case Shape::Tool:
    case Shape::Other:
        break;
    }
    return {Sentence::later("on the edge of the shelf, in front of it"), {100}, {18}};
}

} // namespace model
