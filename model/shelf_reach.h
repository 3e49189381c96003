#pragma once
#include "model/case.h"
#include "model/findings.h"
#include <string>
#include <vector>

namespace model {

enum class ReachEase { Easy, Stretch, Out };
/// How one place is reached, and why.
struct ShelfReach {
    Id place;
    ReachEase ease = ReachEase::Easy;
    std::string because; // "128 cm, between knuckle (70 cm) and shoulder (131 cm, estimated)."
    friend bool operator==(const ShelfReach &, const ShelfReach &) = default;
};
[[nodiscard]] std::string wordsOf(ReachEase ease);
/// Every place of the kitchen in the order of the walk. Easy lies between knuckle and shoulder, a stretch
/// within the reach, out beyond it. Seated, what lies behind a worktop has the lower limit of ADA 2010,
/// 308.2. A height that was not measured is the usual one and said to be.
[[nodiscard]] std::vector<ShelfReach> shelfReaches(const Case &record, const Findings &findings);

} // namespace model
