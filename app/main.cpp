// SPDX-License-Identifier: GPL-3.0-or-later
// lapwright: a subcommand runs without a display, anything else opens the workstation.
#include "app/commands/commands.h"
#ifdef LAPWRIGHT_WINDOW
#include "ui/window/run.h"
#endif

#include <iostream>
#include <string>
#include <vector>

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
#ifdef LAPWRIGHT_WINDOW
    if (lapwright::commands::wish(words) == lapwright::commands::Wish::open_window) {
        return lapwright::window::run(argc, argv);
    }
#endif
    return lapwright::commands::run(words, std::cout, std::cerr);
}
