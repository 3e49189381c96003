#pragma once
#include "model/search_state.h"

namespace model {

/// Places everything that is nowhere yet, the hardest first, each where it adds least, and puts on the
/// marks that are not free to choose. May break rules
/// between things (overfull places, chemicals beside food), but no rule of one item. Everything must have an
/// allowed place.
void construct(SearchState &state);

} // namespace model
