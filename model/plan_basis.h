#pragma once
#include "model/case.h"
#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace model {

/// What a plan was worked out from: a mark of each unit, place, thing, answer and result, by its kind and id.
/// It tells what has changed since, without keeping a second copy of the record.
struct PlanBasis {
    Id plan;
    std::map<std::string, std::uint64_t> marks;
    friend bool operator==(const PlanBasis &, const PlanBasis &) = default;
};

/// What the plan of this record would be worked out from now. `other` shares the kitchen, or nullptr.
[[nodiscard]] PlanBasis planBasis(const Case &record, const Case *other = nullptr);

/// For the settings of the records. What cannot be read is none.
[[nodiscard]] std::string planBasesText(const std::vector<PlanBasis> &bases);
[[nodiscard]] std::vector<PlanBasis> planBasesFrom(const std::string &text);

/// What has changed since, in few words: "1 unit added", "3 things changed". Empty: nothing that a plan rests
/// on.
[[nodiscard]] std::vector<std::string> changedSince(const PlanBasis &then, const Case &now);
/// The same by the plan alone, for one whose basis was not kept: things that it does not know, things and
/// places that are gone.
[[nodiscard]] std::vector<std::string> changedSince(const Plan &then, const Case &now);

} // namespace model
