// SPDX-License-Identifier: GPL-3.0-or-later
// What the words of a command line ask for.
#pragma once

#include "app/commands/batch.h"
#include "app/commands/book_arguments.h"
#include "core/base/display.h"
#include "core/causes/explanation.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::commands {

enum class Command { laps, compare, causes, wing, sheet, trial, learn, traces, recipe, video, book, batch, version };

// One side's video on the sheet.
struct VideoArguments {
    std::vector<std::string> files; // in their order
    std::optional<double> offset_s; // the video begins so long behind the recording; absent: found
};

struct Arguments {
    Command command{};
    std::vector<std::string> files;
    std::optional<int> lap_a;
    std::optional<int> lap_b;
    std::vector<std::string> also_files; // further sessions beside the two
    std::vector<int> also_laps;          // as many numbers as there are files, or none
    std::string track_file;              // empty: none
    std::vector<std::string> recipe_files;
    std::string setup_a; // setup sheets, empty: none
    std::string setup_b;
    std::optional<double> mass_a_kg; // go before the sheets'
    std::optional<double> mass_b_kg;
    std::optional<causes::Side> my_car;       // whom "try next" speaks to
    std::string other_track;                  // a recording of the track that is asked about; empty: this one
    std::optional<double> drag_per_downforce; // of a wing: what a square metre costs
    std::optional<causes::Side> keep;         // whose wing's prediction goes into the book
    std::optional<double> keep_downforce_m2;  // which step of it; absent: the quickest
    std::vector<std::string> keep_with;       // items of the setup that will say so: "wing angle=7 deg"
    double step_m = 1.0;
    base::UnitSystem units = base::UnitSystem::metric;
    bool json = false;
    bool csv = false;                 // of compare, causes and traces
    std::string out_file;             // of the sheet
    std::vector<std::size_t> changed; // of a trial: which of the files, from 1
    VideoArguments video_a;           // of the sheet
    VideoArguments video_b;
    std::vector<std::string> still_moments{"turn-in", "slowest", "full-throttle"};
    std::string still_corner; // empty: the deciding one
    bool us_letter = false;
    bool all_segments = false;
    BookArguments book;
    BatchArguments batch;
};

// The arguments, or what to print: help (status 0) or a sentence (status 2).
struct Parsed {
    std::optional<Arguments> arguments;
    std::string message;
    int status = 0;
};

[[nodiscard]] Parsed parse(const std::vector<std::string>& words);

} // namespace lapwright::commands
