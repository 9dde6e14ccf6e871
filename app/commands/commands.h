// SPDX-License-Identifier: GPL-3.0-or-later
// The command line: parse, call core, print.  One file a subcommand.
#pragma once

#include "core/base/result.h"
#include "core/sheet/sheet.h"

#include <functional>
#include <iosfwd>
#include <string>
#include <vector>

namespace lapwright::commands {

// What the words on the command line ask for.
enum class Wish { run_command, open_window };

// Without a subcommand (bare file names may stand there) the window is wanted.
[[nodiscard]] Wish wish(const std::vector<std::string>& words);

// How a sheet becomes a file; painting needs fonts, which only a build with the window has.
struct SheetRequest {
    std::string path;
    bool us_letter = false;
    bool all_segments = false;
};
using SheetWriter = std::function<base::Result<void>(const sheet::Sheet&, const SheetRequest&)>;

// Runs a subcommand; the exit status: 0 done, 1 the input cannot be used, 2 the command line is wrong.
[[nodiscard]] int run(const std::vector<std::string>& words, std::ostream& out, std::ostream& err,
                      const SheetWriter& write_sheet = {});

} // namespace lapwright::commands
