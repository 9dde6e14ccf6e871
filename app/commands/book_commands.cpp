// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/book_commands.h"

#include "app/commands/book_text.h"
#include "app/commands/conflict_text.h"
#include "app/commands/my_car.h"
#include "app/commands/output_file.h"
#include "app/commands/predictions.h"
#include "app/commands/recipes.h"
#include "app/commands/season_text.h"
#include "app/commands/sessions.h"
#include "core/analysis/car_season.h"
#include "core/analysis/common_track.h"
#include "core/analysis/corners_of_session.h"
#include "core/analysis/keep_session.h"
#include "core/analysis/known_track.h"
#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "core/book/conflicts.h"
#include "core/book/corners.h"
#include "core/book/tracks.h"
#include "core/import/text/day.h"
#include "core/workspace/own_files.h"
#include "core/workspace/reading.h"

#include <filesystem>
#include <ostream>

namespace lapwright::commands {
namespace {

using base::Error;
using base::ErrorCode;
using base::Result;

int refused(const Error& error, std::ostream& err) {
    err << base::one_line(error) << "\n";
    return 1;
}

// What a subcommand is called with, and where it prints.
struct Call {
    const BookArguments& arguments;
    book::Book& book;
    std::ostream& out;
    std::ostream& err;

    [[nodiscard]] int refuse(const Error& error) const { return refused(error, err); }

    template <typename Found>
    [[nodiscard]] int print(const Result<Found>& found, std::string (*json)(const Found&),
                            std::string (*table)(const Found&)) const {
        if (!found) return refuse(found.error());
        out << (arguments.json ? json(*found) : table(*found));
        return 0;
    }
};

bool begins_a_book(BookCommand command) {
    return command == BookCommand::add || command == BookCommand::merge || command == BookCommand::my_car;
}

Result<book::Book> open(const BookArguments& arguments) {
    const auto file = workspace::book_file(arguments.book_file);
    if (!file) return file.error();
    book::OpenOptions options;
    options.may_begin = begins_a_book(arguments.command);
    std::error_code ignored; // the book then says that it cannot be opened
    if (options.may_begin && arguments.book_file.empty())
        std::filesystem::create_directories(std::filesystem::path(*file).parent_path(), ignored);
    return book::Book::open(*file, options);
}

int list(const Call& call) {
    if (call.arguments.removed) return call.print(removed_sessions(call.book), removed_json, removed_table);
    book::Filter filter = call.arguments.filter;
    for (const std::string& word : call.arguments.files)
        filter.words += word + " ";
    const auto from = import::first_moment_of(call.arguments.from_text);
    if (!from) return call.refuse(from.error());
    const auto until = import::last_moment_of(call.arguments.until_text);
    if (!until) return call.refuse(until.error());
    filter.from_unix_s = *from;
    filter.until_unix_s = *until;
    return call.print(search(call.book, filter), list_json, list_table);
}

// The first that cannot be done ends it; what was done before it stays done.
int for_each_session(const Call& call, Result<void> (*edit_one)(book::Book&, book::SessionId),
                     const std::string& done) {
    for (const std::int64_t id : call.arguments.sessions) {
        if (const auto edited = edit_one(call.book, book::SessionId{id}); !edited) return call.refuse(edited.error());
        call.out << "session " << base::integer_text(id) << " " << done << "\n";
    }
    return 0;
}

int put_date(const Call& call) {
    const auto start = import::moment_of(call.arguments.date_text);
    if (!start) return call.refuse(start.error());
    const auto changed = change_start(call.book, book::SessionId{call.arguments.session}, *start);
    if (!changed) return call.refuse(changed.error());
    call.out << "session " << base::integer_text(call.arguments.session) << " is now of " << base::date_text(*start)
             << "\n";
    return 0;
}

int rename(const Call& call) {
    using book::NameTable;
    const BookArguments& arguments = call.arguments;
    const NameTable table = arguments.kind == "driver" ? NameTable::driver
                            : arguments.kind == "car"  ? NameTable::car
                                                       : NameTable::track;
    const book::Unite unite = arguments.unite ? book::Unite::yes : book::Unite::no;
    return call.print(book::rename(call.book, table, arguments.old_name, arguments.new_name, unite), renamed_json,
                      renamed_table);
}

// What is the same for all files of one call.
struct ToAdd {
    std::optional<track::TrackRecord> record;
    std::vector<import::KeptRecipe> recipes;
    std::optional<car::SetupSheet> setup;
    std::string conditions;
};

Result<ToAdd> to_add(const BookArguments& arguments, std::string& notes) {
    ToAdd all;
    if (!arguments.track_file.empty()) {
        auto record = track::read_track_record(arguments.track_file);
        if (!record) return record.error();
        all.record = std::move(record).value();
    }
    if (!arguments.setup_file.empty()) {
        auto setup = car::read_setup_sheet(arguments.setup_file);
        if (!setup) return setup.error();
        all.setup = std::move(setup).value();
    }
    auto recipes = recipes_for(arguments.recipe_files, arguments.files, notes);
    if (!recipes) return recipes.error();
    all.recipes = std::move(recipes).value();
    all.conditions = arguments.conditions;
    return all;
}

// The line of the first session that was driven on it.
Result<void> keep_line(book::Book& book, const std::shared_ptr<const analysis::Session>& session,
                       const track::TrackRecord& record) {
    const auto known = read_line(book, record.name);
    if (!known) return known.error();
    if (*known) return {};
    const std::vector sessions{session};
    const auto placed = analysis::place_together(sessions, record);
    if (!placed) return {}; // laps that make no line
    const auto line = analysis::line_to_keep(placed->track, sessions);
    return line ? put_track(book, record, line) : Result<void>();
}

// The sheet that was given for all files, else the one that lies beside this one, which is told.
analysis::SessionToKeep to_keep(const analysis::Session& session, const ToAdd& all, const car::SetupSheet& beside) {
    analysis::SessionToKeep wanted;
    wanted.session = &session;
    wanted.setup = beside;
    if (session.known_track) wanted.known_track = session.known_track->name;
    if (all.record) wanted.said_track = all.record->name;
    wanted.said_setup = all.setup;
    wanted.said_conditions = all.conditions;
    return wanted;
}

Result<AddedFile> add_file(book::Book& book, const std::string& file, const ToAdd& all, std::ostream& err) {
    std::string notes;
    auto beside = all.setup ? Result<car::SetupSheet>(car::SetupSheet{}) : setup_of(file, {}, notes);
    if (!beside) return beside.error();
    const auto session = workspace::read_session(
        file, {book.path(), all.record, all.recipes, all.setup.value_or(*beside), workspace::own_recipe_folder()});
    if (!session) return session.error();
    auto kept = analysis::keep_session(book, (*session)->source, to_keep(**session, all, *beside));
    if (!kept) return kept.error();
    if (all.record && !(*session)->laps.empty())
        if (const auto line = keep_line(book, *session, *all.record); !line) return line.error();
    err << notes;
    // Its samples are worth keeping where no lap is found.
    const auto& why = (*session)->why_no_laps;
    return AddedFile{file, kept->added, (*session)->laps.size(), why ? why->what : "", kept->renewed};
}

int add(const Call& call) {
    std::string notes;
    const auto all = to_add(call.arguments, notes);
    if (!all) return call.refuse(all.error());
    call.err << notes;
    if (all->record)
        if (const auto put = put_track(call.book, *all->record); !put) return call.refuse(put.error());
    std::vector<AddedFile> added;
    int status = 0;
    // A bad file keeps none of the others out.
    for (const std::string& file : call.arguments.files) {
        if (auto one = add_file(call.book, file, *all, call.err))
            added.push_back(std::move(one).value());
        else
            status = call.refuse(one.error());
    }
    call.out << (call.arguments.json ? added_json(added) : added_table(added));
    return status;
}

// Of one session; nothing where its track has gone meanwhile.
Result<std::size_t> measure_corners(book::Book& book, book::SessionId id) {
    const auto details = read_details(book, id);
    if (!details) return details.error();
    const auto record = read_track(book, details->track);
    if (!record) return record.error();
    if (!*record) return std::size_t{0};
    const auto session = workspace::read_session(id, {book.path(), **record, {}, {}, workspace::own_recipe_folder()});
    if (!session) return session.error();
    const auto laps = read_laps(book, id);
    if (!laps) return laps.error();
    const auto corners = analysis::corners_of_session(*session, **record, *laps);
    if (!corners) return corners.error();
    if (const auto put = put_corners(book, id, *corners); !put) return put.error();
    return corners->size();
}

int corners(const Call& call) {
    const auto sessions = sessions_without_corners(call.book);
    if (!sessions) return call.refuse(sessions.error());
    MeasuredCorners measured;
    int status = 0;
    for (const book::SessionId id : *sessions) {
        const auto count = measure_corners(call.book, id);
        if (!count) {
            status = call.refuse(count.error());
            continue;
        }
        ++measured.sessions;
        measured.corners += *count;
    }
    call.out << (call.arguments.json ? corners_json(measured) : corners_table(measured));
    return status;
}

int write_export(const Call& call) {
    const std::string& out_file = call.arguments.out_file;
    if (const auto may = check_output(out_file, {call.book.path()}, Renews::nothing); !may)
        return call.refuse(may.error());
    std::vector<book::SessionId> ids;
    for (const std::int64_t id : call.arguments.sessions)
        ids.push_back(book::SessionId{id});
    const auto written = ids.empty() ? export_book(call.book, out_file) : export_sessions(call.book, ids, out_file);
    if (!written) return call.refuse(written.error());
    call.err << out_file << " is written\n";
    return 0;
}

int print_table(const Call& call) {
    const auto table = read_table(call.book, call.arguments.table);
    if (!table) return call.refuse(table.error());
    call.out << table_csv(*table);
    return 0;
}

int settle(const Call& call) {
    if (const auto settled = settle_conflict(call.book, call.arguments.value); !settled)
        return call.refuse(settled.error());
    call.out << "settled; the next merge carries it to the other books\n";
    return 0;
}

int forget(const Call& call) {
    const auto forgotten = forget_removed(call.book);
    if (!forgotten) return call.refuse(forgotten.error());
    call.out << base::integer_text(*forgotten) << (*forgotten == 1 ? " removed session is" : " removed sessions are")
             << " gone for good\n";
    return 0;
}

int salvage_file(const BookArguments& arguments, std::ostream& out, std::ostream& err) {
    const auto file = workspace::book_file(arguments.book_file);
    if (!file) return refused(file.error(), err);
    const auto salvaged = book::salvage(*file);
    if (!salvaged) return refused(salvaged.error(), err);
    out << (arguments.json ? salvaged_json(*salvaged) : salvaged_table(*salvaged));
    return 0;
}

int carry_out(const Call& call) {
    const BookArguments& arguments = call.arguments;
    switch (arguments.command) {
    case BookCommand::list:
        return list(call);
    case BookCommand::season:
        return call.print(season_of_track(call.book, arguments.track, arguments.filter.car), season_json, season_table);
    case BookCommand::figures:
        return call.print(season_of_car(call.book, arguments.filter.car), figures_json, figures_table);
    case BookCommand::together:
        return call.print(analysis::car_season(call.book, arguments.filter.car), together_json, together_table);
    case BookCommand::pairings:
        return call.print(pairing_list(call.book), pairings_json, pairings_table);
    case BookCommand::predictions:
        return run_predictions(arguments, call.book, call.out, call.err);
    case BookCommand::driven:
        return run_driven(arguments, call.book, call.out, call.err);
    case BookCommand::take_back:
        return run_take_back(arguments, call.book, call.out, call.err);
    case BookCommand::remove:
        return for_each_session(call, &book::remove_session, "is out of the book; restore brings it back");
    case BookCommand::restore:
        return for_each_session(call, &book::restore_session, "is in the book again");
    case BookCommand::forget:
        return forget(call);
    case BookCommand::date:
        return put_date(call);
    case BookCommand::my_car:
        return run_my_car(arguments, call.book, call.out, call.err);
    case BookCommand::rename:
        return rename(call);
    case BookCommand::add:
        return add(call);
    case BookCommand::corners:
        return corners(call);
    case BookCommand::write_export:
        return write_export(call);
    case BookCommand::merge:
        return call.print(merge_from(call.book, arguments.files.front()), merged_json, merged_table);
    case BookCommand::conflicts:
        return call.print(conflicts(call.book), conflicts_json, conflicts_table);
    case BookCommand::settle:
        return settle(call);
    case BookCommand::table:
        return print_table(call);
    case BookCommand::check: {
        const auto health = call.book.check();
        const int status = call.print(health, health_json, health_table);
        return health && !health->whole() ? 1 : status;
    }
    case BookCommand::salvage:
        break;
    }
    return 2;
}

} // namespace

int run_book(const BookArguments& arguments, std::ostream& out, std::ostream& err) {
    if (arguments.command == BookCommand::salvage) return salvage_file(arguments, out, err);
    auto opened = open(arguments);
    if (!opened) return refused(opened.error(), err);
    book::Book book = std::move(opened).value();
    return carry_out({arguments, book, out, err});
}

} // namespace lapwright::commands
