#pragma once
#include "model/contents.h"

namespace model {

/// How many packs of a thing stand there, 1 if it was not counted.
///
/// "6 eggs" are pieces, one box of them; "6 boxes of eggs" are packs. Eggs, rolls and fresh fruit and
/// vegetables are counted in pieces unless a pack or its size was said.
[[nodiscard]] int packsOf(const Thing &thing);

} // namespace model
