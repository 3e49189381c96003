#pragma once
#include "model/findings.h"
#include <gmock/gmock.h>

/// Looking things up in findings, for tests.
namespace model::fixtures {

using Kind = model::Test; // a test body has a Test of its own

inline const Date visitDay{std::chrono::year{2026}, std::chrono::month{3}, std::chrono::day{20}};

/// The first finding whose topic starts so.
[[nodiscard]] Finding about(const Findings &findings, const std::string &topic);
[[nodiscard]] bool mentions(const Findings &findings, const std::string &topic);
/// The first caution that holds the words.
[[nodiscard]] Caution cautionWith(const Findings &findings, const std::string &words);
[[nodiscard]] bool cautions(const Findings &findings, const std::string &words);
/// Findings of a client with nothing untoward but these results.
[[nodiscard]] Findings with(std::vector<Measurement> measurements);

} // namespace model::fixtures
