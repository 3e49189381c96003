#pragma once
#include "model/measurement.h"
#include "model/sight.h"
#include <optional>
#include <string>
#include <vector>

namespace model {

/// The acuity that the plan goes by: the better eye with the usual glasses; of several days the worst one.
struct BetterEye {
    Acuity acuity;
    std::string typed;
    std::string distance; // as typed; may be empty
    std::string chart;    // in words; may be empty
    Side side = Side::NotStated;
    bool withGlasses = false;
    int days = 1;               // recorded days that count
    std::vector<Id> from;       // all results that were looked at
    std::vector<Acuity> ofDays; // the better eye of each recorded day
};

/// None if no result can be read. Results without glasses count only if there is none with glasses.
[[nodiscard]] std::optional<BetterEye> betterEye(const std::vector<const Measurement *> &results);

} // namespace model
