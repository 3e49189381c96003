#pragma once
#include "model/case.h"
#include "model/findings.h"
#include "model/planning.h"
#include <string>
#include <vector>

namespace model {

/// The rules of today that the shown plan breaks, one sentence each, the first ones: after an answer, a thing
/// or a client was added that the plan did not know. Empty while it holds, without a plan, and where
/// whyLine() says that it has other things or places.
[[nodiscard]] std::vector<std::string> brokenToday(const Case &record, const Findings &findings);
/// The same for a plan whose reasons are at hand.
[[nodiscard]] std::vector<std::string> brokenToday(const WhyLines &lines);

} // namespace model
