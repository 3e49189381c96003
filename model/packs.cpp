#include "model/packs.h"
#include <algorithm>
#include <cmath>
#include <sstream>

namespace model {
namespace {

/// Of a fresh thing, in g; defaults of this program.
constexpr double pieceInBag = 150;
constexpr double pieceInTub = 100;

/// Two tea bags are two boxes of them; two eggs are two eggs.
bool isCountedInPieces(const Thing &usual) {
    return usual.group == "fresh" || usual.group == "bakery" || usual.sub == "eggs";
}

/// Pieces in the usual pack: 6 of "box 6 eggs" and of "bag 6", 0 if it is not counted so.
double piecesIn(const CatalogueThing &entry) {
    if (!isCountedInPieces(entry.usual))
        return 0;
    std::istringstream words(entry.pack);
    std::string shape, unit;
    double number = 0;
    words >> shape >> number >> unit;
    const bool measured = unit == "g" || unit == "kg" || unit == "ml" || unit == "l";
    if (!measured)
        return number > 1 ? number : 0;
    const bool fresh = entry.usual.group == "fresh" && (unit == "g" || unit == "kg");
    const double grams = unit == "kg" ? number * 1000 : number;
    return fresh ? grams / (entry.usual.shape == Shape::Bag ? pieceInBag : pieceInTub) : 0;
}

} // namespace

int packsOf(const Thing &thing) {
    const int count = std::max(1, thing.count.value_or(1));
    const bool packSaid = !thing.usual.contains("shape") || !thing.packSize.empty();
    const auto *entry = packSaid || count == 1 ? nullptr : findInCatalogue(thing.like);
    const double pieces = entry != nullptr ? piecesIn(*entry) : 0;
    if (pieces <= 1)
        return count;
    return std::min(count, static_cast<int>(std::ceil(count / pieces)));
}

} // namespace model
