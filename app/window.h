#pragma once
#include <filesystem>

namespace app {

/// What the window opens with.
struct WindowStart {
    std::filesystem::path store; // folder of the records
    bool demo = false;           // the invented clients instead of the records
    bool timed = false;          // says "ready" at the first frame with a focused field, and ends
};

/// Opens the window and runs until it is closed. Returns the exit status.
int runWindow(int argc, char **argv, const WindowStart &start);

} // namespace app
