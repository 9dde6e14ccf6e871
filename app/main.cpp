// SPDX-License-Identifier: GPL-3.0-or-later
// lapwright: a subcommand runs without a display, anything else opens the workstation.
#include "app/commands/commands.h"
#include "core/platform/program.h"
#ifdef LAPWRIGHT_WINDOW
#include "ui/window/run.h"
#include "ui/window/write_sheet.h"
#endif

#include <iostream>
#include <string>
#include <vector>

namespace {

lapwright::commands::SheetWriter sheet_writer() {
#ifdef LAPWRIGHT_WINDOW
    return [](const lapwright::sheet::Sheet& sheet, const lapwright::commands::SheetRequest& request) {
        return lapwright::window::write_sheet(sheet, request.path, request.us_letter, request.all_segments);
    };
#else
    return {};
#endif
}

} // namespace

int main(int argc, char** argv) {
    lapwright::platform::prepare_large_heap();
    lapwright::platform::print_bytes_as_they_are();
    const std::vector<std::string> words = lapwright::platform::words_of(argc, argv);
#ifdef LAPWRIGHT_WINDOW
    if (lapwright::commands::wish(words) == lapwright::commands::Wish::open_window) {
        return lapwright::window::run(argc, argv);
    }
#endif
    return lapwright::commands::run(words, std::cout, std::cerr, sheet_writer());
}
