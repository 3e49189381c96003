#pragma once
#include "model/planning.h"
#include <string>

/// The hard rules in words.
namespace model {

/// First letter large.
[[nodiscard]] std::string sentenceCase(std::string text);
/// "2.0 minutes".
[[nodiscard]] std::string minutesInWords(MilliMinutes minutes);
/// A few words for a rule that a place breaks: "out of reach".
[[nodiscard]] std::string shortRule(const std::string &rule);
/// The whole sentence for a thing that may not stand in a place, and which fact to correct if it is wrong.
[[nodiscard]] std::string refusal(const PlanProblem &built, int item, int place, const std::string &rule);

} // namespace model
