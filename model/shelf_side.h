#pragma once
#include "model/case.h"

namespace model {

/// Whether shelves are counted from the right: for a client who does not attend to the left, as the note of
/// that answer says, the count begins on the attended side. Else from the left. Source: common practice.
[[nodiscard]] bool countsFromRight(const Case &record);

} // namespace model
