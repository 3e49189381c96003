#pragma once
#include "model/contents.h"

namespace model {

/// How many packs of a thing stand there, 1 if it was not counted.
///
/// "6 eggs" are pieces, one box of them; "6 boxes of eggs" are packs. Eggs, rolls and fresh fruit and
/// vegetables are counted in pieces unless a pack or its size was said. Of what is sold many in a pack, such
/// as tea bags, a small count is of packs and a large one of pieces: 2 boxes, but 80 bags.
[[nodiscard]] int packsOf(const Thing &thing);
/// Pieces in the usual pack: 80 of "box 80 bags", 0 if it is measured or holds one.
[[nodiscard]] double piecesInPack(const CatalogueThing &entry);
/// What is counted in the usual pack, as it is written there: "bags"; empty if it is measured or holds one.
[[nodiscard]] std::string pieceInPack(const CatalogueThing &entry);

} // namespace model
