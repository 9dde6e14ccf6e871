// SPDX-License-Identifier: GPL-3.0-or-later
// "lapwright batch": many recordings or pairings, one result file each, in pieces that any number of workers share.
//
// A result appears whole or not at all; what is there already is passed over, so that a worker that was killed, or
// found the disk full, is started again with the same words.  A job that fails leaves its reason beside the results
// (NAME.failed.json), is told, and is tried again the next time; the others are done.
#pragma once

#include "app/commands/batch_jobs.h"

#include <iosfwd>
#include <string>

namespace CLI {
class App;
}

namespace lapwright::commands {

struct BatchArguments {
    std::string list_file;   // empty: the sessions of a track in the book
    std::string of_track;    // its name
    std::string book_file;   // empty: the person's own
    bool every_pair = false; // of the list's recordings
    std::string out_folder;
    std::string shard = "1/1"; // as it was written, checked
    std::string track_file;    // empty: none
    double step_m = 1.0;       // grid of the traces
};

[[nodiscard]] CLI::App* add_batch(CLI::App& app, BatchArguments& arguments);

// Progress and refusals are told to `err` as they come.  Exit status: 0 all of the piece is done, 1 something failed.
[[nodiscard]] int run_batch(const BatchArguments& arguments, std::ostream& err);

} // namespace lapwright::commands
