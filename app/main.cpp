// SPDX-License-Identifier: GPL-3.0-or-later
// lapwright: a subcommand runs without a display, anything else opens the workstation.
#include "app/commands/commands.h"

#include <iostream>
#include <string>
#include <vector>

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
    return lapwright::commands::run(words, std::cout, std::cerr);
}
