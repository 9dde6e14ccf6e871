// SPDX-License-Identifier: GPL-3.0-or-later
// A whole book is told by a copy in the state of one moment (SQLite's backup), for another window may be writing.  Of a
// damaged one the file's bytes are copied, and the copy is read: reading alone would already let SQLite write to it.
#include "core/book/salvage.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/book/book.h"
#include "core/book/copy_file.h"
#include "core/book/database.h"
#include "core/book/migrate.h"
#include "core/book/rescue_rows.h"
#include "core/book/samples.h"
#include "core/platform/files.h"

#include <filesystem>
#include <fstream>
#include <system_error>

namespace lapwright::book {
namespace {

using base::said;

namespace fs = std::filesystem;
using base::Error;
using base::ErrorCode;
using base::Result;

// SQLite's file format, section 1.3: the header's 100 bytes begin page 1.
constexpr std::size_t header_bytes = 100;
constexpr std::size_t page_bytes = 4096;

Error not_written(const std::string& path) {
    return {ErrorCode::file_not_writable,
            {path, {}, {}},
            said("the book cannot be saved: there is no room or no right to write beside it"),
            said("make room on the disk, or copy the book to another disk")};
}

std::string free_name(const std::string& path) {
    std::string name = path + ".damaged";
    for (int i = 2; fs::exists(name); ++i)
        name = path + ".damaged-" + base::integer_text(i);
    return name;
}

// The file with its log, in which the last edits may still be.
bool copied(const std::string& from, const std::string& to) {
    remove_book_file(to);
    std::error_code problem;
    fs::copy_file(from, to, problem);
    if (!problem && fs::exists(from + "-wal")) fs::copy_file(from + "-wal", to + "-wal", problem);
    return !problem;
}

// Puts the beginning of an empty book in the place of the file's own.
void replace_beginning(const std::string& path, const std::string& empty, std::size_t bytes) {
    std::string beginning(bytes, '\0');
    std::ifstream(std::filesystem::path(empty), std::ios::binary)
        .read(beginning.data(), static_cast<std::streamsize>(bytes));
    // How many pages there are: nothing, which lets SQLite ask the file's size (the file format, 1.3.7).
    for (std::size_t i = 28; i < 32; ++i)
        beginning[i] = '\0';
    std::fstream(path, std::ios::binary | std::ios::in | std::ios::out)
        .write(beginning.data(), static_cast<std::streamsize>(bytes));
}

bool shows_sessions(const std::string& path) {
    auto opened = Database::open(path, Access::edit, 0.0);
    if (!opened) return false;
    Database& database = **opened;
    database.run("PRAGMA writable_schema = ON");
    Rows rows(database, "SELECT id FROM session", {});
    return rows.next() || database.well();
}

// Whose file the copy is, as far as SQLite can still tell: a book of this program's, or why it is not to be touched.
enum class Owner { unknown, ours, newer_program, stranger };

Owner owner_of(const std::string& work) {
    auto opened = Database::open(work, Access::edit, 0.0);
    if (!opened) return Owner::unknown;
    Database& database = **opened;
    database.run("PRAGMA writable_schema = ON"); // reads what it can of a file that was cut
    const auto mark = database.one_whole("PRAGMA application_id");
    const auto version = database.one_whole("PRAGMA user_version");
    if (!database.well()) return Owner::unknown;
    if (mark == book_mark) return version > known_migrations().back().number ? Owner::newer_program : Owner::ours;
    // The mark itself may be what is damaged.
    static_cast<void>(database.one_whole("SELECT length(checksum) + length(file_name) FROM session"));
    return database.well() ? Owner::ours : Owner::stranger;
}

// Of a copy in the state of one moment; unknown where SQLite cannot make one.
Owner owner_of_backup(const std::string& path, const std::string& work) {
    return copy_book(path, work) ? owner_of(work) : Owner::unknown;
}

// SQLite holds a lock on a range of the file as long as a book with a log is
// open (os_unix.c: SHARED_FIRST, SHARED_SIZE). Asked where this process itself
// has no connection to the book: closing the file would give its locks away.
bool is_open_elsewhere(const std::string& path) {
    return platform::is_locked(path, 0x40000002, 510);
}

bool is_whole(const std::string& work) {
    bool whole = false;
    if (auto opened = Book::open(work)) {
        Book book = std::move(opened).value();
        const auto health = book.check();
        whole = health.ok() && health->whole();
    }
    std::error_code ignored;
    for (const Migration& step : known_migrations()) // an older book was copied before its schema changed
        fs::remove(work + ".schema-" + base::integer_text(step.number), ignored);
    return whole;
}

// Tries the file as it is, then with another header, then with another first page (where SQLite keeps what tables there
// are, and which is the same in every book that was never made smaller).
void mend_beginning(const std::string& damaged, const std::string& work, const std::string& empty) {
    for (const std::size_t bytes : {std::size_t{0}, header_bytes, page_bytes}) {
        if (bytes > 0) {
            if (!copied(damaged, work)) return;
            replace_beginning(work, empty, bytes);
        }
        if (shows_sessions(work)) return;
        remove_book_file(work + "-shm");
    }
}

// The damaged file gets its new name and the new one takes its place.
Result<void> exchange_files(const std::string& path, const std::string& kept, const std::string& fresh) {
    std::error_code problem;
    fs::create_hard_link(path, kept, problem);
    if (problem) { // not every file system has them
        problem.clear();
        fs::rename(path, kept, problem);
    }
    if (problem) return not_written(path);
    if (fs::exists(path + "-wal")) fs::rename(path + "-wal", kept + "-wal", problem);
    std::error_code ignored;
    fs::remove(path + "-shm", ignored);
    return appear(fresh, path);
}

Result<void> fill(const std::string& fresh, const std::string& work, Salvaged& salvaged) {
    auto opened = Book::open(fresh);
    if (!opened) return opened.error();
    Book book = std::move(opened).value();
    Database& into = book.database();
    into.run("PRAGMA foreign_keys = OFF");
    auto rescued = edit(into, [&](Database& database) {
        salvaged.losses = rescue_rows(work, database);
        const auto count = [&](const char* what) {
            return static_cast<int>(database.one_whole("SELECT count(*) FROM " + std::string(what)).value_or(0));
        };
        salvaged.sessions = count("session WHERE removed_unix_s IS NULL");
        salvaged.removed_sessions = count("session WHERE removed_unix_s IS NOT NULL");
        salvaged.notes = count("note");
        salvaged.damaged_channels = count_damaged_channels(database);
    });
    if (!rescued) return rescued;
    if (salvaged.damaged_channels > 0)
        salvaged.losses.push_back(base::integer_text(salvaged.damaged_channels) +
                                  (salvaged.damaged_channels == 1 ? " channel is" : " channels are") +
                                  " damaged: import their files again");
    into.run("PRAGMA journal_mode = DELETE"); // opening the book makes it a log again
    return into.take_outcome();
}

Result<void> begin_book(const std::string& path) {
    const auto begun = Book::open(path);
    return begun ? Result<void>() : begun.error();
}

// What a copy of the file still holds, in a new book; no new book where the copy is whole.
Result<void> read_copy(const std::string& path, const std::string& work, const std::string& fresh, Salvaged& salvaged) {
    std::error_code unknown;
    if (!fs::exists(path, unknown))
        return Error{
            ErrorCode::file_not_readable, {path, {}, {}}, said("there is no such file"), said("check the name")};
    if (!fs::is_regular_file(path, unknown)) return no_book(path);
    if (const auto owner = owner_of_backup(path, work); owner == Owner::ours && is_whole(work)) {
        salvaged.was_whole = true;
        return {};
    }
    if (is_open_elsewhere(path))
        return Error{ErrorCode::book_not_usable,
                     {path, {}, {}},
                     said("the book is damaged, and open in another window or program"),
                     said("close it there and do it again")};
    if (!copied(path, work)) return not_written(path);
    const Owner owner = owner_of(work);
    if (owner == Owner::stranger) return no_book(path);
    if (owner == Owner::newer_program) return newer_book(path);
    if (owner == Owner::ours && is_whole(work)) {
        salvaged.was_whole = true;
        return {};
    }
    if (!copied(path, work)) return not_written(path); // as it was before it was looked at
    const std::string empty = partial_name(path + ".empty");
    remove_book_file(empty);
    const auto begun = begin_book(empty);
    if (begun) mend_beginning(path, work, empty);
    remove_book_file(empty);
    if (!begun) return begun.error();
    const auto filled = fill(fresh, work, salvaged);
    if (filled && owner == Owner::unknown && salvaged.sessions + salvaged.removed_sessions == 0)
        return no_book(path); // nothing says that it ever was one
    return filled;
}

} // namespace

bool is_damage(const Error& error) {
    return error.what == damaged_book;
}

Result<Salvaged> salvage(const std::string& path) {
    const std::string work = partial_name(path + ".reading");
    const std::string fresh = partial_name(path + ".saved");
    remove_book_file(fresh);
    Salvaged salvaged;
    auto done = read_copy(path, work, fresh, salvaged);
    remove_book_file(work);
    if (done && !salvaged.was_whole) {
        salvaged.kept_as = free_name(path);
        done = exchange_files(path, salvaged.kept_as, fresh);
    }
    remove_book_file(fresh);
    if (!done) return told_of(done.error(), path);
    return salvaged;
}

} // namespace lapwright::book
