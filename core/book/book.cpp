// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/book.h"

#include "core/base/number_text.h"
#include "core/book/database.h"
#include "core/book/migrate.h"
#include "core/book/samples.h"
#include "core/book/schema_check.h"

#include <array>
#include <chrono>
#include <cstdint>
#include <cstring>
#include <filesystem>
#include <system_error>
#include <thread>

#include <sqlite3.h>

namespace lapwright::book {
namespace {

using base::Error;
using base::ErrorCode;

constexpr int most_complaints = 100;

// All that lists are made of: small, so that checking them does not delay the opening.
constexpr std::array small_tables{"driver", "car",    "track",   "session", "fact",    "warning", "lap",
                                  "split",  "figure", "channel", "note",    "pairing", "my_car"};

bool holds_nothing(const std::string& path) {
    std::error_code none;
    return !std::filesystem::exists(path, none) ||
           (std::filesystem::is_regular_file(path, none) && std::filesystem::file_size(path, none) == 0);
}

Error no_such_book(const std::string& path) {
    return {ErrorCode::book_not_usable,
            {path, {}, {}},
            "there is no such book",
            "check the name, or begin a book with \"lapwright book add\" or in the window"};
}

bool has_log(const std::string& path) {
    std::error_code none;
    const auto size = std::filesystem::file_size(path + "-wal", none);
    return !none && size > 0;
}

// The header counts the file's pages (the file format, 1.3.7): fewer are there when the file was cut.  Nothing is told
// while a log says otherwise.  Read through SQLite's own handle: closing any other handle on the file would give back
// the locks of all this process's windows on it (sqlite.org, "How To Corrupt An SQLite Database File", 2.2).
bool is_cut_short(const Database& database) {
    sqlite3_file* file = nullptr;
    sqlite3_file_control(database.handle(), "main", SQLITE_FCNTL_FILE_POINTER, static_cast<void*>(&file));
    std::array<unsigned char, 32> header{};
    sqlite3_int64 size = 0;
    if (!file || !file->pMethods || file->pMethods->xFileSize(file, &size) != SQLITE_OK ||
        file->pMethods->xRead(file, header.data(), static_cast<int>(header.size()), 0) != SQLITE_OK ||
        std::memcmp(header.data(), "SQLite", 6) != 0)
        return false;
    const std::int64_t page = header[16] << 8U | header[17];
    const std::int64_t pages = std::int64_t{header[28]} << 24U | header[29] << 16U | header[30] << 8U | header[31];
    return pages * (page == 1 ? 65536 : page) > size && !has_log(database.path());
}

// Two windows that begin with the same book at once both want it alone for this, and SQLite lets neither wait.
void keep_a_log(Database& database, double wait_s) {
    using namespace std::chrono_literals;
    const auto until = std::chrono::steady_clock::now() + std::chrono::duration<double>(wait_s);
    database.run("PRAGMA journal_mode = WAL");
    while (!database.well() && std::chrono::steady_clock::now() < until) {
        const int code = sqlite3_errcode(database.handle());
        if (code != SQLITE_BUSY && code != SQLITE_LOCKED) return;
        database.take_problem();
        std::this_thread::sleep_for(10ms);
        database.run("PRAGMA journal_mode = WAL");
    }
    // Whoever was told "done" finds it after a power cut too.
    database.run("PRAGMA synchronous = FULL");
}

void check_small_tables(Database& database) {
    for (const char* const table : small_tables) {
        Rows rows(database, "PRAGMA quick_check('" + std::string(table) + "')", {});
        while (rows.next())
            if (rows.text(0) != "ok") database.fail(error_of(SQLITE_CORRUPT, database.handle(), database.path()));
    }
}

int ask_progress(void* progress) {
    return base::go_on(*static_cast<const base::Progress*>(progress), "checking the book", 0.5) ? 0 : 1;
}

} // namespace

std::optional<base::Error> refuse_as_file(const std::string& book_file, const std::string& file) {
    std::error_code unknown;
    if (book_file.empty() || !std::filesystem::equivalent(book_file, file, unknown)) return std::nullopt;
    return Error{ErrorCode::file_not_readable,
                 {file, {}, {}},
                 "this is the book itself",
                 "choose a logger's file, or look into the book's list"};
}

base::Result<Book> Book::open(const std::string& path, const OpenOptions& options) {
    if (!options.may_begin && holds_nothing(path)) return no_such_book(path);
    const bool left_open = has_log(path);
    auto opened =
        Database::open(path, options.read_only ? Access::as_if_read_only : Access::edit_or_begin, options.wait_s);
    if (!opened) return opened.error();
    std::unique_ptr<Database> database = std::move(opened).value();
    // In a transaction, which holds off whoever is writing the first pages now.
    const auto cut = look(*database, [&](Database& book) {
        book.run("SELECT count(*) FROM sqlite_schema");
        if (is_cut_short(book)) book.fail(error_of(SQLITE_CORRUPT, nullptr, path));
    });
    if (cut) return *cut;
    if (database->read_only()) {
        if (auto problem = require_today(*database, options.migrations)) return *problem;
    } else {
        keep_a_log(*database, options.wait_s);
        if (auto problem = database->take_problem()) return *problem;
        if (auto problem = migrate(*database, options.migrations)) return *problem;
    }
    check_schema(*database, options.migrations);
    check_small_tables(*database);
    if (auto problem = database->take_problem()) return *problem;
    Book book(std::move(database));
    book.was_left_open_ = left_open;
    return book;
}

Book::Book(std::unique_ptr<Database> database) : database_(std::move(database)) {}
Book::Book(Book&&) noexcept = default;
Book& Book::operator=(Book&&) noexcept = default;
Book::~Book() = default;

const std::string& Book::path() const {
    return database_->path();
}

bool Book::read_only() const {
    return database_->read_only();
}

bool Book::was_left_open() const {
    return was_left_open_;
}

base::Result<Health> Book::check(const base::Progress& progress) {
    Health health;
    if (progress)
        sqlite3_progress_handler(database_->handle(), 100'000, ask_progress, const_cast<base::Progress*>(&progress));
    const auto problem = look(*database_, [&](Database& database) {
        Rows structure(database, "PRAGMA integrity_check(" + base::integer_text(most_complaints) + ")", {});
        while (structure.next())
            if (structure.text(0) != "ok") health.complaints.push_back(structure.text(0));
        Rows strays(database, "SELECT DISTINCT \"table\", parent FROM pragma_foreign_key_check", {});
        while (strays.next())
            health.complaints.push_back("a " + strays.text(0) + " belongs to a " + strays.text(1) +
                                        " that is not there");
        for (std::string& complaint : damaged_samples(database, progress))
            health.complaints.push_back(std::move(complaint));
    });
    sqlite3_progress_handler(database_->handle(), 0, nullptr, nullptr);
    // A file too damaged to be checked to its end is not whole, which is the answer.
    if (problem && problem->what == damaged_book)
        health.complaints.push_back(problem->what);
    else if (problem)
        return *problem;
    if (health.complaints.size() > most_complaints) health.complaints.resize(most_complaints);
    return health;
}

std::int64_t Book::edits_by_others() {
    const auto version = database_->one_whole("PRAGMA data_version");
    database_->take_problem();
    return version.value_or(0);
}

} // namespace lapwright::book
