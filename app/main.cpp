// SPDX-License-Identifier: GPL-3.0-or-later
// lapwright: a subcommand runs without a display, anything else opens the workstation.
#include "app/commands/commands.h"
#ifdef LAPWRIGHT_WINDOW
#include "ui/sheet/write_pdf.h"
#include "ui/window/run.h"
#endif

#include <iostream>
#include <string>
#include <vector>

namespace {

lapwright::commands::SheetWriter sheet_writer() {
#ifdef LAPWRIGHT_WINDOW
    return [](const lapwright::sheet::Sheet& sheet, const lapwright::commands::SheetRequest& request) {
        using namespace lapwright::paper;
        const PaperSize size = request.us_letter ? PaperSize::us_letter : PaperSize::a4;
        return write_pdf_without_window(sheet, request.path, {size, request.all_segments});
    };
#else
    return {};
#endif
}

} // namespace

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
#ifdef LAPWRIGHT_WINDOW
    if (lapwright::commands::wish(words) == lapwright::commands::Wish::open_window) {
        return lapwright::window::run(argc, argv);
    }
#endif
    return lapwright::commands::run(words, std::cout, std::cerr, sheet_writer());
}
