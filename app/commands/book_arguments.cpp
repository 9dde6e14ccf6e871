// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/book_arguments.h"

#include "core/book/table.h"

#include <CLI/CLI.hpp>
#include <string>
#include <tuple>
#include <vector>

namespace lapwright::commands {
namespace {

CLI::App* add_one(CLI::App& book, BookArguments& arguments, BookCommand command, const std::string& name,
                  const std::string& what) {
    CLI::App* one = book.add_subcommand(name, what);
    one->fallthrough(); // --book may stand behind it too
    one->callback([&arguments, command] { arguments.command = command; });
    return one;
}

void add_json(CLI::App& app, BookArguments& arguments) {
    app.add_flag("--json", arguments.json, "one JSON document on standard output, SI units");
}

void add_filter(CLI::App& list, BookArguments& arguments) {
    book::Filter& filter = arguments.filter;
    list.add_option("words", arguments.files, "words that must all stand somewhere: names, notes, setup, conditions");
    list.add_option("--driver", filter.driver, "whole name of the driver");
    list.add_option("--car", filter.car, "whole name of the car");
    list.add_option("--track", filter.track, "whole name of the track");
    list.add_option("--tyre", filter.tyre, "tyre of the setup sheet");
    list.add_option("--from", arguments.from_text, "first day, as 2026-05-16 (UTC)");
    list.add_option("--until", arguments.until_text, "last day");
}

} // namespace

CLI::App* add_book(CLI::App& app, BookArguments& arguments) {
    CLI::App* book = app.add_subcommand("book", "the season's book: its sessions, and what a friend sent");
    book->require_subcommand(1);
    book->add_option("--book", arguments.book_file, "the book's file (default: the person's own)")
        ->check([](const std::string& file) { return file.empty() ? "the file's name is empty" : std::string(); });

    CLI::App* list = add_one(*book, arguments, BookCommand::list, "list", "sessions, all or those that fit");
    add_filter(*list, arguments);
    list->add_flag("--removed", arguments.removed, "the removed sessions instead, all of them");
    add_json(*list, arguments);

    CLI::App* season = add_one(*book, arguments, BookCommand::season, "season", "a track's sessions through time");
    season->add_option("track", arguments.track, "the track's name")->required();
    season->add_option("--car", arguments.filter.car, "this car's alone");
    add_json(*season, arguments);

    CLI::App* figures = add_one(*book, arguments, BookCommand::figures, "figures",
                                "a car's grip, downforce, drag and power through time, as the Causes page fitted them");
    figures->add_option("car", arguments.filter.car, "the car's name")->required();
    add_json(*figures, arguments);

    CLI::App* together =
        add_one(*book, arguments, BookCommand::together, "together",
                "a car's figures from all its sessions at once, and what each change of its setup did");
    together->add_option("car", arguments.filter.car, "the car's name")->required();
    add_json(*together, arguments);

    CLI::App* rename =
        add_one(*book, arguments, BookCommand::rename, "rename", "another name for a driver, a car or a track");
    rename->add_option("kind", arguments.kind, "driver, car or track")
        ->required()
        ->check(CLI::IsMember({"driver", "car", "track"}));
    rename->add_option("old", arguments.old_name, "the name that it has")->required();
    rename->add_option("new", arguments.new_name, "the name that it gets")->required();
    rename->add_flag("--unite", arguments.unite, "where another has the new name already: the two are one");
    add_json(*rename, arguments);

    CLI::App* mine = add_one(*book, arguments, BookCommand::my_car, "my-car",
                             "which car is yours, so that \"try next\" speaks to its driver; with a name: this one is");
    mine->add_option("car", arguments.my_car.car, "its name");
    mine->add_option("--driver", arguments.my_car.driver, "your name, where others drive such a car too");
    mine->add_flag("--forget", arguments.forget, "none is")->excludes("car")->excludes("--driver");
    add_json(*mine, arguments);

    CLI::App* date = add_one(*book, arguments, BookCommand::date, "date", "when a session was driven");
    date->add_option("session", arguments.session, "its id as the list has it")->required();
    date->add_option("when", arguments.date_text, "as 2026-05-16 or \"2026-05-16 10:20\" (UTC)")->required();

    add_json(*add_one(*book, arguments, BookCommand::pairings, "pairings", "the pairings that the window kept"),
             arguments);
    add_json(*add_one(*book, arguments, BookCommand::predictions, "predictions",
                      "what was predicted and kept, what happened then, and how often it held"),
             arguments);
    CLI::App* driven = add_one(*book, arguments, BookCommand::driven, "driven",
                               "says which sessions were driven with what a prediction changed");
    driven->add_option("prediction", arguments.prediction, "its id as predictions has it")->required();
    driven->add_option("sessions", arguments.sessions, "ids as the list has them (default: by the setup sheets again)");
    add_one(*book, arguments, BookCommand::take_back, "take-back", "takes a prediction out of the book")
        ->add_option("prediction", arguments.prediction, "its id as predictions has it")
        ->required();
    for (const auto& [command, name, what] :
         {std::tuple(BookCommand::remove, "remove", "takes sessions out of the book, with their notes and pairings"),
          std::tuple(BookCommand::restore, "restore", "brings removed sessions back, as they were")})
        add_one(*book, arguments, command, name, what)
            ->add_option("sessions", arguments.sessions, "ids as the list has them")
            ->required();

    add_one(*book, arguments, BookCommand::forget, "forget",
            "deletes for good what was removed, and gives its room in the file back");

    CLI::App* add =
        add_one(*book, arguments, BookCommand::add, "add",
                "puts sessions into the book, each once; what is given with one that is there is put to it");
    add->add_option("files", arguments.files, "logger files")->required();
    add->add_option("--setup", arguments.setup_file, "their setup sheet (JSON)");
    add->add_option("--track", arguments.track_file, "track file with the gate, kept in the book");
    add->add_option("--conditions", arguments.conditions, "in words");
    add->add_option("--recipe", arguments.recipe_files, "what the columns of a kind of file mean")
        ->allow_extra_args(false);
    add_json(*add, arguments);

    add_json(*add_one(*book, arguments, BookCommand::corners, "corners",
                      "measures the flying laps in the corners of their tracks, for the table corner_figures"),
             arguments);

    CLI::App* part =
        add_one(*book, arguments, BookCommand::write_export, "export", "writes sessions as one file for a friend");
    part->add_option("sessions", arguments.sessions, "ids as the list has them (default: the whole book)");
    part->add_option("--out", arguments.out_file, "the file to write")->required();

    CLI::App* merge = add_one(*book, arguments, BookCommand::merge, "merge", "takes in what another book has");
    merge->add_option("file", arguments.files, "the other book")->expected(1)->required();
    add_json(*merge, arguments);

    add_json(*add_one(*book, arguments, BookCommand::conflicts, "conflicts",
                      "where two people said different things of one session, track or note"),
             arguments);
    add_one(*book, arguments, BookCommand::settle, "settle", "takes one of the values of a conflict for good")
        ->add_option("value", arguments.value, "its key as conflicts has it")
        ->required();

    CLI::App* table = add_one(*book, arguments, BookCommand::table, "table",
                              "a table of the book for other tools, as comma-separated text in SI units; sqlite3 reads "
                              "the same by its name");
    table->add_option("name", arguments.table, "which one")
        ->required()
        ->check(CLI::IsMember(std::vector<std::string>(book::table_names.begin(), book::table_names.end())));
    table->add_flag("--csv", arguments.csv, "comma-separated text (RFC 4180), which is also the default");

    add_json(*add_one(*book, arguments, BookCommand::check, "check", "reads the whole book for damage"), arguments);
    add_json(*add_one(*book, arguments, BookCommand::salvage, "salvage", "saves what a damaged book still holds"),
             arguments);
    return book;
}

} // namespace lapwright::commands
