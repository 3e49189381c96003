#pragma once
#include "model/case.h"
#include "model/findings.h"
#include <string>
#include <vector>

/// Which settings of an appliance get a mark, and which mark. Never on what gets hot.
namespace model {

/// Off and the two used most [common practice]; more marks on one control are not counted in a hurry
/// (judgement).
inline constexpr std::size_t mostMarkedSettings = 3;

struct SettingMark {
    std::string control, setting;
    std::string marker; // key of the kit
    friend bool operator==(const SettingMark &, const SettingMark &) = default;
};

struct ApplianceMarks {
    Id appliance;
    std::vector<SettingMark> marks;    // in the order of the controls
    std::vector<std::string> unmarked; // "oven: 220": settings that stay without a mark; `told` says why
    std::vector<std::string> told;     // sentences: heat, which mark was left out and why
    friend bool operator==(const ApplianceMarks &, const ApplianceMarks &) = default;
};

/// "Off" has one mark on every appliance, the other settings another: how far the control is turned tells
/// which. Both stick to a hard surface, are told apart by this client, mean nothing else, and stand the heat
/// that was measured beside the controls.
[[nodiscard]] std::vector<ApplianceMarks> applianceMarks(const Case &record, const Findings &findings);

/// Sentences that stand wherever controls are marked: cold and switched off, what is never marked, and whom
/// the program defers to.
[[nodiscard]] std::vector<std::string> applianceCautions(const Case &record);

/// True unless its name says that nothing beside its controls gets hot, as of a washing machine.
[[nodiscard]] bool mayGetHot(const std::string &name);

} // namespace model
