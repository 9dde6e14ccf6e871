// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/book_commands.h"

#include "app/commands/book_text.h"
#include "app/commands/my_car.h"
#include "app/commands/output_file.h"
#include "app/commands/recipes.h"
#include "app/commands/sessions.h"
#include "core/analysis/common_track.h"
#include "core/analysis/keep_session.h"
#include "core/analysis/known_track.h"
#include "core/base/number_text.h"
#include "core/base/wording.h"
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

Result<std::string> file_of(const BookArguments& arguments) {
    return arguments.book_file.empty() ? workspace::own_book() : Result<std::string>(arguments.book_file);
}

bool begins_a_book(BookCommand command) {
    return command == BookCommand::add || command == BookCommand::merge || command == BookCommand::my_car;
}

Result<book::Book> open(const BookArguments& arguments) {
    const auto file = file_of(arguments);
    if (!file) return file.error();
    book::OpenOptions options;
    options.may_begin = begins_a_book(arguments.command);
    std::error_code ignored; // the book then says that it cannot be opened
    if (options.may_begin && arguments.book_file.empty())
        std::filesystem::create_directories(std::filesystem::path(*file).parent_path(), ignored);
    return book::Book::open(*file, options);
}

int list_removed(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err) {
    const auto removed = removed_sessions(book);
    if (!removed) return refused(removed.error(), err);
    out << (arguments.json ? removed_json(*removed) : removed_table(*removed));
    return 0;
}

int list(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err) {
    if (arguments.removed) return list_removed(arguments, book, out, err);
    book::Filter filter = arguments.filter;
    for (const std::string& word : arguments.files)
        filter.words += word + " ";
    const auto from = import::first_moment_of(arguments.from_text);
    if (!from) return refused(from.error(), err);
    const auto until = import::last_moment_of(arguments.until_text);
    if (!until) return refused(until.error(), err);
    filter.from_unix_s = *from;
    filter.until_unix_s = *until;
    const auto found = search(book, filter);
    if (!found) return refused(found.error(), err);
    out << (arguments.json ? list_json(*found) : list_table(*found));
    return 0;
}

int season(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err) {
    const auto found = season_of_track(book, arguments.track, arguments.filter.car);
    if (!found) return refused(found.error(), err);
    out << (arguments.json ? season_json(*found) : season_table(*found));
    return 0;
}

int figures(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err) {
    const auto found = season_of_car(book, arguments.filter.car);
    if (!found) return refused(found.error(), err);
    out << (arguments.json ? figures_json(*found) : figures_table(*found));
    return 0;
}

int pairings(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err) {
    const auto found = pairing_list(book);
    if (!found) return refused(found.error(), err);
    out << (arguments.json ? pairings_json(*found) : pairings_table(*found));
    return 0;
}

// The first that cannot be done ends it; what was done before it stays done.
int for_each_session(const BookArguments& arguments, book::Book& book,
                     std::optional<Error> (*edit_one)(book::Book&, book::SessionId), const std::string& done,
                     std::ostream& out, std::ostream& err) {
    for (const std::int64_t id : arguments.sessions) {
        if (const auto problem = edit_one(book, book::SessionId{id})) return refused(*problem, err);
        out << "session " << base::integer_text(id) << " " << done << "\n";
    }
    return 0;
}

int put_date(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err) {
    const auto start = import::moment_of(arguments.date_text);
    if (!start) return refused(start.error(), err);
    const auto problem = change_start(book, book::SessionId{arguments.session}, *start);
    if (problem) return refused(*problem, err);
    out << "session " << base::integer_text(arguments.session) << " is now of " << base::date_text(*start) << "\n";
    return 0;
}

int rename(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err) {
    using book::NameTable;
    const NameTable table = arguments.kind == "driver" ? NameTable::driver
                            : arguments.kind == "car"  ? NameTable::car
                                                       : NameTable::track;
    const book::Unite unite = arguments.unite ? book::Unite::yes : book::Unite::no;
    const auto renamed = book::rename(book, table, arguments.old_name, arguments.new_name, unite);
    if (!renamed) return refused(renamed.error(), err);
    out << (arguments.json ? renamed_json(*renamed) : renamed_table(*renamed));
    return 0;
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
std::optional<Error> keep_line(book::Book& book, const std::shared_ptr<const analysis::Session>& session,
                               const track::TrackRecord& record) {
    const auto known = read_line(book, record.name);
    if (!known) return known.error();
    if (*known) return std::nullopt;
    const std::vector sessions{session};
    const auto placed = analysis::place_together(sessions, record);
    if (!placed) return std::nullopt; // laps that make no line
    const auto line = analysis::line_to_keep(placed->track, sessions);
    return line ? put_track(book, record, line) : std::nullopt;
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
        if (const auto problem = keep_line(book, *session, *all.record)) return *problem;
    err << notes;
    // Its samples are worth keeping where no lap is found.
    const auto& why = (*session)->why_no_laps;
    return AddedFile{file, kept->added, (*session)->laps.size(), why ? why->what : "", kept->renewed};
}

int add(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err) {
    std::string notes;
    const auto all = to_add(arguments, notes);
    if (!all) return refused(all.error(), err);
    err << notes;
    if (all->record)
        if (const auto problem = put_track(book, *all->record)) return refused(*problem, err);
    std::vector<AddedFile> added;
    int status = 0;
    // A bad file keeps none of the others out.
    for (const std::string& file : arguments.files) {
        if (auto one = add_file(book, file, *all, err))
            added.push_back(std::move(one).value());
        else
            status = refused(one.error(), err);
    }
    out << (arguments.json ? added_json(added) : added_table(added));
    return status;
}

int write_export(const BookArguments& arguments, book::Book& book, std::ostream& err) {
    if (const auto problem = refused_output(arguments.out_file, {book.path()}, Renews::nothing))
        return refused(*problem, err);
    std::vector<book::SessionId> ids;
    for (const std::int64_t id : arguments.sessions)
        ids.push_back(book::SessionId{id});
    const auto problem =
        ids.empty() ? export_book(book, arguments.out_file) : export_sessions(book, ids, arguments.out_file);
    if (problem) return refused(*problem, err);
    err << arguments.out_file << " is written\n";
    return 0;
}

int merge(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err) {
    const auto merged = merge_from(book, arguments.files.front());
    if (!merged) return refused(merged.error(), err);
    out << (arguments.json ? merged_json(*merged) : merged_table(*merged));
    return 0;
}

int forget(book::Book& book, std::ostream& out, std::ostream& err) {
    const auto forgotten = forget_removed(book);
    if (!forgotten) return refused(forgotten.error(), err);
    out << base::integer_text(*forgotten) << (*forgotten == 1 ? " removed session is" : " removed sessions are")
        << " gone for good\n";
    return 0;
}

int check(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err) {
    const auto health = book.check();
    if (!health) return refused(health.error(), err);
    out << (arguments.json ? health_json(*health) : health_table(*health));
    return health->whole() ? 0 : 1;
}

int salvage_file(const BookArguments& arguments, std::ostream& out, std::ostream& err) {
    const auto file = file_of(arguments);
    if (!file) return refused(file.error(), err);
    const auto salvaged = book::salvage(*file);
    if (!salvaged) return refused(salvaged.error(), err);
    out << (arguments.json ? salvaged_json(*salvaged) : salvaged_table(*salvaged));
    return 0;
}

} // namespace

int run_book(const BookArguments& arguments, std::ostream& out, std::ostream& err) {
    if (arguments.command == BookCommand::salvage) return salvage_file(arguments, out, err);
    auto opened = open(arguments);
    if (!opened) return refused(opened.error(), err);
    book::Book book = std::move(opened).value();
    switch (arguments.command) {
    case BookCommand::list:
        return list(arguments, book, out, err);
    case BookCommand::season:
        return season(arguments, book, out, err);
    case BookCommand::figures:
        return figures(arguments, book, out, err);
    case BookCommand::pairings:
        return pairings(arguments, book, out, err);
    case BookCommand::remove:
        return for_each_session(arguments, book, &book::remove_session, "is out of the book; restore brings it back",
                                out, err);
    case BookCommand::restore:
        return for_each_session(arguments, book, &book::restore_session, "is in the book again", out, err);
    case BookCommand::forget:
        return forget(book, out, err);
    case BookCommand::date:
        return put_date(arguments, book, out, err);
    case BookCommand::my_car:
        return run_my_car(arguments, book, out, err);
    case BookCommand::rename:
        return rename(arguments, book, out, err);
    case BookCommand::add:
        return add(arguments, book, out, err);
    case BookCommand::write_export:
        return write_export(arguments, book, err);
    case BookCommand::merge:
        return merge(arguments, book, out, err);
    case BookCommand::check:
        return check(arguments, book, out, err);
    case BookCommand::salvage:
        break;
    }
    return 2;
}

} // namespace lapwright::commands
