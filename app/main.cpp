// SPDX-License-Identifier: GPL-3.0-or-later
// lapwright: a subcommand runs without a display, anything else opens the workstation.
#include "app/commands/commands.h"
#ifdef LAPWRIGHT_WINDOW
#include "ui/window/run.h"
#include "ui/window/write_sheet.h"
#endif

#include <malloc.h>

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

// Ensembles come and go in blocks of megabytes. Given back to the system at every release, they are handed out again as
// zeroed pages: a sixth of the time of a comparison (mallopt(3)).
void keep_released_memory() {
    constexpr int mebibyte = 1 << 20;
    mallopt(M_MMAP_THRESHOLD, 1024 * mebibyte);
    mallopt(M_TRIM_THRESHOLD, 512 * mebibyte);
    mallopt(M_TOP_PAD, 64 * mebibyte);
}

} // namespace

int main(int argc, char** argv) {
    keep_released_memory();
    const std::vector<std::string> words(argv + 1, argv + argc);
#ifdef LAPWRIGHT_WINDOW
    if (lapwright::commands::wish(words) == lapwright::commands::Wish::open_window) {
        return lapwright::window::run(argc, argv);
    }
#endif
    return lapwright::commands::run(words, std::cout, std::cerr, sheet_writer());
}
