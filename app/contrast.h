#pragma once
#include <QColor>

namespace app {

/// Contrast ratio of two colours, 1 to 21: W3C, Web Content Accessibility Guidelines 2.2, section 6.
[[nodiscard]] double contrastRatio(const QColor &a, const QColor &b);

} // namespace app
