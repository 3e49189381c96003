#include "model/contents_facts.h"
#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace model::words {
namespace {

const std::map<std::string, Surface> &materials() {
    static const std::map<std::string, Surface> all{
        {"glass", Surface::Glass},     {"plastic", Surface::Plastic}, {"metal", Surface::Metal},
        {"ceramic", Surface::Ceramic}, {"china", Surface::Ceramic},   {"card", Surface::Card},
        {"cardboard", Surface::Card},  {"paper", Surface::Paper},     {"wood", Surface::Wood},
        {"wooden", Surface::Wood},     {"cloth", Surface::Cloth},     {"foil", Surface::Foil}};
    return all;
}

/// Usual size and weight of a medium pack of each shape, and what it holds in g or ml. Common practice.
struct UsualPack {
    double width, depth, height, kg, holds;
};

UsualPack usualPack(Shape shape) {
    switch (shape) {
    case Shape::Jar:
        return {7.5, 7.5, 11, 0.55, 350};
    case Shape::Bottle:
        return {7, 7, 24, 0.65, 500};
    case Shape::Can:
        return {7.5, 7.5, 11, 0.48, 400};
    case Shape::Box:
        return {13, 7, 18, 0.5, 500};
    case Shape::Bag:
        return {14, 8, 18, 0.55, 500};
    case Shape::Packet:
        return {13, 4, 16, 0.25, 250};
    case Shape::Tub:
        return {11, 11, 8, 0.35, 300};
    case Shape::Canister:
        return {9, 9, 15, 0.4, 300};
    case Shape::Tube:
        return {5, 4, 17, 0.2, 180};
    case Shape::Mug:
        return {12, 9, 10, 0.35, 0};
    case Shape::Plate:
        return {26, 26, 3, 0.6, 0};
    case Shape::Bowl:
        return {20, 20, 9, 0.6, 0};
    case Shape::Pan:
        return {22, 36, 13, 1.3, 0};
    case Shape::Tool:
        return {6, 25, 5, 0.2, 0};
    case Shape::Other:
        return {18, 18, 15, 0.8, 0};
    }
    return {18, 18, 15, 0.8, 0};
}

Surface usualSurface(Shape shape) {
    switch (shape) {
    case Shape::Jar:
        return Surface::Glass;
    case Shape::Can:
    case Shape::Pan:
    case Shape::Tool:
        return Surface::Metal;
    case Shape::Box:
    case Shape::Canister:
        return Surface::Card;
    case Shape::Mug:
    case Shape::Plate:
    case Shape::Bowl:
        return Surface::Ceramic;
    case Shape::Bottle:
    case Shape::Bag:
    case Shape::Packet:
    case Shape::Tub:
    case Shape::Tube:
    case Shape::Other:
        return Surface::Plastic;
    }
    return Surface::Plastic;
}

double rounded(double cm) {
    return std::round(cm * 10) / 10;
}

void scale(Thing &thing, double ratio) {
    if (thing.weight)
        thing.weight = Kilograms{std::round(thing.weight->value * ratio * 1000) / 1000};
    for (auto *length : {&thing.width, &thing.depth, &thing.height}) {
        if (*length)
            (*length)->value = {rounded((*length)->value.value * std::cbrt(ratio))};
    }
}

double classRatio(const CatalogueThing *entry, const std::string &packSize) {
    const auto usual = entry != nullptr ? amountOf(entry->pack) : std::nullopt;
    const double unit = usual && entry->least > 0 ? *usual : 0;
    if (packSize == "small")
        return unit > 0 ? std::min(entry->least / unit, 1.0) : 0.5;
    if (packSize == "large")
        return unit > 0 ? std::max(entry->most / unit, 1.0) : 2.0;
    return 1;
}

} // namespace

bool isFact(const std::string &low) {
    static constexpr std::array names{"hot",    "heavy",   "sharp",  "poison",  "hazard", "medicine",
                                      "fridge", "freezer", "frozen", "chilled", "open",   "opened"};
    return materials().contains(low) || std::find(names.begin(), names.end(), low) != names.end();
}

void addAllergen(Thing &thing, const std::string &key, AllergenState state, const std::string &says) {
    for (auto &fact : thing.allergens) {
        if (fact.allergen != key)
            continue;
        if (state == AllergenState::Contains) {
            fact.state = state;
            thing.usual.erase("allergen:" + key);
        }
        if (!says.empty())
            fact.readBy = says;
        return;
    }
    thing.allergens.push_back({key, state, says});
}

bool applyFact(Thing &thing, const std::string &word) {
    if (const auto key = allergenFrom(word); !key.empty()) {
        addAllergen(thing, key, AllergenState::Contains, "");
    } else if (const auto found = materials().find(word); found != materials().end()) {
        thing.surface = found->second;
        thing.glass = thing.surface == Surface::Glass || thing.surface == Surface::Ceramic;
        thing.usual.erase("surface");
    } else if (word == "hot") {
        thing.hotUse = true;
    } else if (word == "sharp") {
        thing.sharp = true;
    } else if (word == "poison" || word == "hazard") {
        thing.hazard = true;
    } else if (word == "medicine") {
        thing.medicine = true;
    } else if (word == "fridge" || word == "freezer" || word == "chilled" || word == "frozen") {
        const bool cold = word == "fridge" || word == "chilled";
        thing.storage = cold ? Storage::Fridge : Storage::Freezer;
        thing.usual.erase("storage");
    } else if (word == "cupboard") {
        thing.storage = Storage::Dry;
        thing.usual.erase("storage");
    } else if (word == "heavy") {
        if (!thing.weight || thing.weight->value < heavyKg)
            thing.weight = Kilograms{heavyKg};
        thing.usual.insert("weight");
    } else if (const auto shape = anyShape(word)) {
        applyShape(thing, *shape);
    } else {
        return false;
    }
    return true;
}

void applyShape(Thing &thing, Shape shape) {
    thing.usual.erase("shape");
    if (thing.shape == shape)
        return;
    thing.shape = shape;
    thing.surface = usualSurface(shape);
    thing.glass = thing.surface == Surface::Glass || thing.surface == Surface::Ceramic;
    thing.usual.insert("surface");
}

void applyLength(Thing &thing, double length, const std::string &unit) {
    thing.packSize = shortNumber(length) + " " + unit;
    const bool across =
        thing.shape == Shape::Pan || thing.shape == Shape::Bowl || thing.shape == Shape::Plate;
    if (!across || !thing.width || thing.width->value.value <= 0)
        return;
    const double ratio = inCentimetres(length, unit) / thing.width->value.value;
    for (auto *side : {&thing.width, &thing.depth, &thing.height}) {
        if (*side)
            (*side)->value = {rounded((*side)->value.value * ratio)};
    }
    if (thing.weight)
        thing.weight = Kilograms{std::round(thing.weight->value * ratio * ratio * 1000) / 1000};
}

std::optional<double> amountOf(const std::string &packSize) {
    const auto parts = wordsOf(packSize);
    for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
        const auto value = numberFrom(parts[i].low);
        if (value && !sizeUnit(parts[i + 1].low).empty())
            return inBaseUnits(*value, sizeUnit(parts[i + 1].low));
    }
    return std::nullopt;
}

void applySize(Thing &thing, const CatalogueThing *entry, const std::string &packSize) {
    const auto amount = amountOf(packSize);
    thing.packSize = packSize;
    if (entry == nullptr) {
        const UsualPack pack = usualPack(thing.shape);
        const auto usual = [](double cm) { return Length{{cm}, "", Basis::Usual}; };
        thing.width = usual(pack.width);
        thing.depth = usual(pack.depth);
        thing.height = usual(pack.height);
        thing.weight = Kilograms{pack.kg};
        thing.usual.insert({"width", "depth", "height", "weight"});
        if (amount && pack.holds > 0)
            scale(thing, *amount / pack.holds);
        else if (!amount)
            scale(thing, classRatio(nullptr, packSize));
        return;
    }
    const auto usual = amountOf(entry->pack);
    if (amount && !usual)
        thing.weight = Kilograms{*amount / 1000};
    else if (amount)
        scale(thing, *amount / *usual);
    else
        scale(thing, classRatio(entry, packSize));
}

} // namespace model::words
