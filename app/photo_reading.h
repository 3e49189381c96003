#pragma once
#include "model/result.h"
#include <QString>
#include <cstdint>
#include <vector>

namespace app {

/// Longest side of a photograph that is kept, in pixels.
inline constexpr int longestPhotoSide = 1600;

/// A picture file scaled down to at most `longestPhotoSide`, turned upright, as JPEG without place, time or
/// other data of the camera. Fails with Missing, NotUnderstood, OutOfRange (more than 50 MB).
[[nodiscard]] model::Result<std::vector<std::uint8_t>> photoFrom(const QString &path);

} // namespace app
