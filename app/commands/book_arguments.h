// SPDX-License-Identifier: GPL-3.0-or-later
// What "lapwright book …" asks for.
#pragma once

#include "core/book/search.h"
#include "core/car/names.h"

#include <cstdint>
#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace lapwright::commands {

enum class BookCommand {
    list,
    season,
    figures,
    together,
    pairings,
    predictions,
    driven,
    take_back,
    rename,
    my_car,
    date,
    remove,
    restore,
    forget,
    add,
    corners,
    write_export,
    merge,
    conflicts,
    settle,
    table,
    check,
    salvage
};

struct BookArguments {
    BookCommand command{};
    std::string book_file; // empty: the person's own
    book::Filter filter;   // of the list
    bool removed = false;  // the list of what was removed, instead
    std::string from_text; // dates as they were written
    std::string until_text;
    std::string track; // whose season
    std::string kind;  // of the names that are changed: "driver", "car", "track"
    std::string old_name;
    std::string new_name;
    bool unite = false;
    car::Names my_car;        // to be kept; both empty: only told
    bool forget = false;      // it
    std::int64_t session = 0; // that gets a date
    std::int64_t prediction = 0;
    std::string date_text;
    std::vector<std::string> files;
    std::vector<std::int64_t> sessions; // to export (none: all), to remove or to bring back
    std::string out_file;
    std::string table; // for other tools
    bool csv = false;  // as it is printed anyway
    std::string value; // that settles a conflict: its key
    std::string setup_file;
    std::string track_file;
    std::string conditions;
    std::vector<std::string> recipe_files;
    bool json = false;
};

// Adds the subcommand to the program's; the answer says afterwards whether it was named, and the arguments which one.
[[nodiscard]] CLI::App* add_book(CLI::App& app, BookArguments& arguments);

} // namespace lapwright::commands
