#pragma once
#include "model/result.h"
#include <filesystem>

/// What of this target depends on the operating system.
namespace reports {

/// A function of a library that lies in lib/feltmark beside the folder of the program, or one folder higher;
/// it stays loaded. Null if it is not there.
[[nodiscard]] void *fromLibrary(const char *library, const char *function);

/// What an error number of the system means for the person who wanted `path` written.
[[nodiscard]] model::Error fileError(int error, const std::filesystem::path &path);

} // namespace reports
