#pragma once
#include <QString>

namespace app {

/// What is done on a page and its keys, a line each.
[[nodiscard]] QString helpFor(const QString &page);

} // namespace app
