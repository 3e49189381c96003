#pragma once
#include "app/session.h"
#include "app/viewmodels/step_model.h"

namespace app {

/// The steps of the visit with what is open in each, in words.
[[nodiscard]] std::vector<Step> visitSteps(const Session &session);

} // namespace app
