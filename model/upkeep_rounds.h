#pragma once
#include "model/upkeep.h"

namespace model {

/// The tasks that come again by the calendar.
void addRounds(const Case &record, Date on, std::vector<UpkeepTask> &out);

} // namespace model
