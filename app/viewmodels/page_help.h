#pragma once
#include "app/viewmodels/key_model.h"

namespace app {

/// What is done on a page and its keys as they are set now, a line each.
[[nodiscard]] QString helpFor(const QString &page, const KeyModel &keys);

} // namespace app
