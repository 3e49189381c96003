#pragma once
#include "app/window.h"
#include <functional>
#include <iosfwd>

namespace app {

/// Where the command line reads and writes.
struct Streams {
    std::istream &in;
    std::ostream &out;
    std::ostream &err;
};

/// Does what the arguments ask for; without a command it calls `openWindow`. What goes wrong is one sentence
/// on `err`. Returns the exit status: 0 done, 1 it could not be done, 2 usage or bad input.
int runCommand(int argc, const char *const *argv, const Streams &streams,
               const std::function<int(const WindowStart &)> &openWindow);

} // namespace app
