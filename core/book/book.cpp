// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/book.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/book/database.h"
#include "core/book/migrate.h"
#include "core/book/samples.h"

#include <array>
#include <chrono>
#include <cstdint>
#include <cstring>
#include <filesystem>
#include <system_error>
#include <thread>

#include <map>
#include <memory>
#include <sqlite3.h>

namespace lapwright::book {
namespace {

using base::Error;
using base::ErrorCode;
using base::said;

constexpr int max_complaints = 100;

// All that lists are made of: small, so that checking them does not delay the opening.
constexpr std::array small_tables{"driver", "car",     "track", "session", "fact",   "warning",        "lap",  "split",
                                  "figure", "channel", "note",  "pairing", "my_car", "judged_by_hand", "said", "gone"};

bool holds_nothing(const std::string& path) {
    std::error_code none;
    return !std::filesystem::exists(path, none) ||
           (std::filesystem::is_regular_file(path, none) && std::filesystem::file_size(path, none) == 0);
}

Error no_such_book(const std::string& path) {
    return {ErrorCode::book_not_usable,
            {path, {}, {}},
            said("there is no such book"),
            said("check the name, or begin a book with \"lapwright book add\" or in the window")};
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
        static_cast<void>(database.take_outcome());
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
    return base::go_on(*static_cast<const base::Progress*>(progress), said("checking the book"), 0.5) ? 0 : 1;
}

using Texts = std::map<std::string, std::string>; // by name

// Tables behind a virtual one are written by SQLite, each version its own way.
constexpr const char* const written_here =
    "SELECT name, sql FROM sqlite_schema WHERE sql IS NOT NULL AND name NOT LIKE 'words\\_%' ESCAPE '\\' "
    "AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\'";

int put_row(void* texts, int, char** values, char**) {
    (*static_cast<Texts*>(texts))[values[0]] = values[1];
    return 0;
}

Texts texts_made_by(std::span<const Migration> migrations) {
    sqlite3* handle = nullptr;
    sqlite3_open(":memory:", &handle);
    const std::unique_ptr<sqlite3, int (*)(sqlite3*)> closes(handle, sqlite3_close);
    for (const Migration& step : migrations)
        sqlite3_exec(handle, std::string(step.sql).c_str(), nullptr, nullptr, nullptr);
    Texts texts;
    sqlite3_exec(handle, written_here, put_row, &texts, nullptr);
    return texts;
}

// The book's tables, views and indices are those that its migrations make: a flipped bit in their text is damage that
// no check of pages finds, and a list would later fail by it.  Further ones are left alone.
void check_schema(Database& database, std::span<const Migration> migrations) {
    Texts expected = texts_made_by(migrations);
    Rows rows(database, written_here, {});
    while (rows.next())
        if (const auto made = expected.find(rows.text(0)); made != expected.end() && made->second == rows.text(1))
            expected.erase(made);
    if (!expected.empty()) database.fail(error_of(SQLITE_CORRUPT, database.handle(), database.path()));
}

} // namespace

base::Result<void> refuse_as_file(const std::string& book_file, const std::string& file) {
    std::error_code unknown;
    if (book_file.empty() || !std::filesystem::equivalent(book_file, file, unknown)) return {};
    return Error{ErrorCode::file_not_readable,
                 {file, {}, {}},
                 said("this is the book itself"),
                 said("choose a logger's file, or look into the book's list")};
}

base::Result<Book> Book::open(const std::string& path, const OpenOptions& options) {
    if (!options.may_begin && holds_nothing(path)) return no_such_book(path);
    auto opened =
        Database::open(path, options.read_only ? Access::as_if_read_only : Access::edit_or_begin, options.wait_s);
    if (!opened) return opened.error();
    std::unique_ptr<Database> database = std::move(opened).value();
    // In a transaction, which holds off whoever is writing the first pages now.
    const auto entire = look(*database, [&](Database& book) {
        book.run("SELECT count(*) FROM sqlite_schema");
        if (is_cut_short(book)) book.fail(error_of(SQLITE_CORRUPT, nullptr, path));
    });
    if (!entire) return entire.error();
    if (!database->read_only()) keep_a_log(*database, options.wait_s);
    if (const auto kept = database->take_outcome(); !kept) return kept.error();
    const auto of_today =
        database->read_only() ? require_today(*database, options.migrations) : migrate(*database, options.migrations);
    if (!of_today) return of_today.error();
    check_schema(*database, options.migrations);
    check_small_tables(*database);
    if (const auto whole = database->take_outcome(); !whole) return whole.error();
    return Book(std::move(database));
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

base::Result<Health> Book::check(const base::Progress& progress) {
    Health health;
    if (progress)
        sqlite3_progress_handler(database_->handle(), 100'000, ask_progress, const_cast<base::Progress*>(&progress));
    const auto read = look(*database_, [&](Database& database) {
        Rows structure(database, "PRAGMA integrity_check(" + base::integer_text(max_complaints) + ")", {});
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
    if (!read && read.error().what == damaged_book)
        health.complaints.push_back(read.error().what);
    else if (!read)
        return read.error();
    if (health.complaints.size() > max_complaints) health.complaints.resize(max_complaints);
    return health;
}

} // namespace lapwright::book
