#pragma once
#include "model/search_state.h"

namespace model {

/// Takes every change of one line (place, code, both) and every exchange of two that lowers the cost of a
/// legal placement, until none is left. With more than 400 things no exchanges, place and code one after the
/// other, three times at most. Of placements that cost the same it goes to the smaller (places, codes)
/// vector.
void polish(SearchState &state);

} // namespace model
