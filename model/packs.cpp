#include "model/packs.h"
#include <algorithm>
#include <cmath>
#include <sstream>

namespace model {
namespace {

/// Of a fresh thing, in g; defaults of this program.
constexpr double pieceInBag = 150;
constexpr double pieceInTub = 100;
/// From this count on, pieces are meant and not packs, whatever the pack holds; a default of this program.
constexpr int manyPieces = 10;

/// Two eggs are two eggs; two tea bags are two boxes of them.
bool isCountedInPieces(const Thing &usual) {
    return usual.group == "fresh" || usual.group == "bakery" || usual.sub == "eggs";
}

/// "box 80 bags" as 80 and "bags".
struct PackWords {
    double number = 0;
    std::string unit;
};

PackWords packWords(const CatalogueThing &entry) {
    std::istringstream words(entry.pack);
    std::string shape;
    PackWords out;
    words >> shape >> out.number >> out.unit;
    return out;
}

bool isMeasured(const std::string &unit) {
    return unit == "g" || unit == "kg" || unit == "ml" || unit == "l" || unit == "m";
}

/// Pieces in the usual pack by which such a count is divided, 0 if the count is one of packs.
double piecesCounted(const CatalogueThing &entry, int count) {
    const double pieces = piecesInPack(entry);
    if (!isCountedInPieces(entry.usual)) {
        const bool many = count >= manyPieces || (count > 2 && count * 3 >= pieces);
        return many ? pieces : 0;
    }
    const auto [number, unit] = packWords(entry);
    const bool fresh = entry.usual.group == "fresh" && (unit == "g" || unit == "kg");
    const double grams = unit == "kg" ? number * 1000 : number;
    return fresh ? grams / (entry.usual.shape == Shape::Bag ? pieceInBag : pieceInTub) : pieces;
}

} // namespace

double piecesInPack(const CatalogueThing &entry) {
    const auto [number, unit] = packWords(entry);
    return isMeasured(unit) || number <= 1 ? 0 : number;
}

std::string pieceInPack(const CatalogueThing &entry) {
    return piecesInPack(entry) > 0 ? packWords(entry).unit : "";
}

int packsOf(const Thing &thing) {
    const int count = std::max(1, thing.count.value_or(1));
    const bool packSaid = !thing.usual.contains("shape") || !thing.packSize.empty();
    const auto *entry = packSaid || count == 1 ? nullptr : findInCatalogue(thing.like);
    const double pieces = entry != nullptr ? piecesCounted(*entry, count) : 0;
    if (pieces <= 1)
        return count;
    return std::min(count, static_cast<int>(std::ceil(count / pieces)));
}

} // namespace model
