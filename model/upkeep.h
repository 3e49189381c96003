#pragma once
#include "model/case.h"
#include "model/findings.h"

namespace model {

/// Who does a task.
enum class Doer { Client, Helper, Therapist, Together };
/// "a helper who reads print".
[[nodiscard]] std::string doerInWords(Doer who);

/// A task that keeps the plan alive, with its next date.
struct UpkeepTask {
    std::string task;
    std::optional<Date> due; // none: when it happens
    std::string when;        // "every week", "when a pack is opened"
    std::string source;      // publications, or "common practice", parted by "; "
    Doer who = Doer::Client;
    std::optional<Date> missed = std::nullopt; // the last date, if it was not noted as done
};

/// Tasks of the household: weekly fridge check, quarterly clean and audit on the days that the client chose,
/// what is due by date for the things, and habits.
[[nodiscard]] std::vector<UpkeepTask> upkeepTasks(const Case &record, Date on);
/// True where nobody should reach above the shoulder alone: falls, dizziness, weak or shaky hands.
[[nodiscard]] bool needsHelpUp(const Case &record);
/// Those for a sighted helper, with what is too heavy or too high for the client.
[[nodiscard]] std::vector<UpkeepTask> helperTasks(const Case &record, const Findings &findings, Date on);

/// What comes again: the next date after a day, and the last one up to it.
struct Round {
    std::optional<Date> before;
    Date next{};
};
[[nodiscard]] Round fridgeRound(const Case &record, Date on);
[[nodiscard]] Round quarterRound(const Case &record, Date on);

/// Reads a day of the month, 1 to 31; nothing: none. Fails with OutOfRange.
[[nodiscard]] Result<std::optional<int>> readRoundDay(const std::string &typed);

} // namespace model
