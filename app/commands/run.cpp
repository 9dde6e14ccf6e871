// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/commands.h"

#include <algorithm>
#include <array>
#include <ostream>
#include <string_view>

namespace lapwright::commands {
namespace {

constexpr std::array<std::string_view, 4> subcommands{"laps", "compare", "causes", "sheet"};

} // namespace

Wish wish(const std::vector<std::string>& words) {
    const bool known = !words.empty() && std::ranges::find(subcommands, words.front()) != subcommands.end();
    return known ? Wish::run_command : Wish::open_window;
}

int run(const std::vector<std::string>&, std::ostream&, std::ostream& err) {
    err << "lapwright: this build knows no such command\n";
    return 2;
}

} // namespace lapwright::commands
