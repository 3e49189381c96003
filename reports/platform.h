#pragma once
#include "model/result.h"
#include <filesystem>

/// What of this target depends on the operating system.
namespace reports {

/// What an error number of the system means for the person who wanted `path` written.
[[nodiscard]] model::Error fileError(int error, const std::filesystem::path &path);

} // namespace reports
