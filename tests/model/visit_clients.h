#pragma once
#include "model/case.h"
#include <vector>

/// The invented clients who break a naive program, each in an invented kitchen. Nobody real is meant.
namespace model::fixtures {

/// The six people of the five kitchens; the couple share one kitchen, each with a record of his own.
[[nodiscard]] std::vector<Case> visitClients();

} // namespace model::fixtures
