#pragma once
#include "model/search_state.h"

namespace model {

/// Takes every change of one line (place, code, both) and every exchange of two that lowers the cost of a
/// legal placement, until none is left; with more than
/// 400 things no exchanges. Of placements that cost the same it goes to the smaller (places,
/// codes) vector.
void polish(SearchState &state);

} // namespace model
