#pragma once
#include "model/result.h"
#include <filesystem>
#include <string>

/// What the command line asks of the operating system. Linux and macOS; Windows needs SetConsoleMode instead
/// of termios.
namespace app::terminal {

/// Where records lie if nobody says otherwise: the user's own data folder.
[[nodiscard]] std::filesystem::path defaultStore();

/// Asks on the terminal and does not show what is typed. Fails with Missing if there is no terminal.
[[nodiscard]] model::Result<std::string> askSecret(const std::string &prompt);

/// The first line of a file, pipe or descriptor ("/dev/fd/3"). Fails with Missing.
[[nodiscard]] model::Result<std::string> readSecret(const std::filesystem::path &path);

/// Overwrites the text, then empties it.
void wipe(std::string &secret);

} // namespace app::terminal
