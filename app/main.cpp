#include "app/command_line.h"
#include "app/window.h"
#include "model/platform.h"
#include <iostream>

int main(int argc, char **argv) {
    model::platform::protectProcess();
    return app::runCommand(argc, argv, {std::cin, std::cout, std::cerr},
                           [&](const app::WindowStart &start) { return app::runWindow(argc, argv, start); });
}
