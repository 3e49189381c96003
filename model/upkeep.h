#pragma once
#include "model/case.h"

namespace model {

/// A task that keeps the plan alive, with its next date.
struct UpkeepTask {
    std::string task;
    std::optional<Date> due; // none: when it happens
    std::string when;        // "every week", "when a pack is opened"
    std::string source;      // publication, or "common practice"
};

/// Tasks of the household: weekly fridge check, quarterly clean and audit, and what is due by date for the
/// things.
[[nodiscard]] std::vector<UpkeepTask> upkeepTasks(const Case &record, Date on);

} // namespace model
