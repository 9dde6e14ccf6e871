// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/book.h"

#include "core/base/number_text.h"
#include "core/book/database.h"
#include "core/book/migrate.h"
#include "core/book/samples.h"

#include <array>
#include <chrono>
#include <filesystem>
#include <fstream>
#include <string_view>
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
                                  "split",  "figure", "channel", "note",    "pairing", "recipe"};

bool has_log(const std::string& path) {
    std::error_code none;
    const auto size = std::filesystem::file_size(path + "-wal", none);
    return !none && size > 0;
}

// The header counts the file's pages (the file format, 1.3.7): fewer are there when the file was cut.  Nothing is told
// while a log says otherwise.
bool is_cut_short(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::array<char, 32> header{};
    if (!file.read(header.data(), header.size()) || std::string_view(header.data(), 6) != "SQLite") return false;
    const auto at = [&](std::size_t i) { return static_cast<std::uint64_t>(static_cast<unsigned char>(header[i])); };
    const std::uint64_t page = at(16) << 8U | at(17);
    const std::uint64_t pages = at(28) << 24U | at(29) << 16U | at(30) << 8U | at(31);
    std::error_code none;
    const auto size = std::filesystem::file_size(path, none);
    return !none && pages * (page == 1 ? 65536 : page) > size && !has_log(path);
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

base::Result<Book> Book::open(const std::string& path, const OpenOptions& options) {
    const bool left_open = has_log(path);
    if (!left_open && is_cut_short(path)) return error_of(SQLITE_CORRUPT, nullptr, path);
    auto opened = Database::open(path, Access::edit_or_begin, options.wait_s);
    if (!opened) return opened.error();
    std::unique_ptr<Database> database = std::move(opened).value();
    keep_a_log(*database, options.wait_s);
    if (auto problem = database->take_problem()) return *problem;
    if (auto problem = migrate(*database, options.migrations)) return *problem;
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
