// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/database.h"

#include "core/base/translation.h"
#include "core/book/book.h"

#include <utility>

#include <sqlite3.h>

namespace lapwright::book {
namespace {

using base::Error;
using base::ErrorCode;
using base::Result;
using base::said;
using base::word;

// A quota or a limit of file size comes as a failed write, a full disk also as shared memory that cannot grow.
bool is_disk_full(int code) {
    return (code & 0xff) == SQLITE_FULL || code == SQLITE_IOERR_WRITE || code == SQLITE_IOERR_SHMSIZE;
}

constexpr const char* busy = word("another window is busy with the book: nothing was changed");
constexpr const char* disk_fails = word("the disk did not read or write: nothing was changed in the book");

// SQLite's texts are UTF-8 or nothing.
std::string words_of(sqlite3* handle, int code) {
    const char* const words = handle ? sqlite3_errmsg(handle) : sqlite3_errstr(code);
    return words ? words : "";
}

} // namespace

bool may_succeed_later(const Error& refusal) {
    return refusal.code == ErrorCode::file_not_writable || refusal.what == busy || refusal.what == disk_fails;
}

Error error_of(int code, sqlite3* handle, const std::string& path) {
    const auto error = [&](ErrorCode kind, const std::string& what, const std::string& remedy) {
        return Error{kind, {path, {}, {}}, what, remedy};
    };
    if (is_disk_full(code))
        return error(ErrorCode::file_not_writable,
                     said("the disk is full or cannot be written: nothing was changed in the book"),
                     said("make room on the disk and do it again"));
    switch (code & 0xff) {
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        return error(ErrorCode::book_not_usable, std::string(damaged_book),
                     said("let the program save what can be read"));
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return error(ErrorCode::book_not_usable, std::string(busy), said("do it again in a moment"));
    case SQLITE_CANTOPEN:
        return error(ErrorCode::book_not_usable, said("the book cannot be opened"),
                     said("check its folder and your rights to it"));
    case SQLITE_READONLY:
    case SQLITE_PERM:
    case SQLITE_AUTH:
        return error(ErrorCode::file_not_writable, said("the book cannot be written here: nothing was changed"),
                     said("copy it to a folder that you may write, and open the copy"));
    case SQLITE_IOERR:
        return error(ErrorCode::book_not_usable, std::string(disk_fails), said("check the disk"));
    case SQLITE_CONSTRAINT:
        return error(ErrorCode::book_not_usable, said("this belongs to something that is not in the book (any more)"),
                     said("look at the book's list again"));
    case SQLITE_INTERRUPT:
        return base::Error{ErrorCode::cancelled, {}, said("the work was cancelled"), ""};
    default:
        return error(ErrorCode::book_not_usable, said("the book answers: %1", {words_of(handle, code)}), "");
    }
}

int Given::bind(sqlite3_stmt* statement, int place) const {
    switch (kind_) {
    case Kind::none:
        return sqlite3_bind_null(statement, place);
    case Kind::whole:
        return sqlite3_bind_int64(statement, place, whole_);
    case Kind::real:
        return sqlite3_bind_double(statement, place, real_);
    case Kind::text:
        return sqlite3_bind_text64(statement, place, text_.empty() ? "" : text_.data(), text_.size(), SQLITE_TRANSIENT,
                                   SQLITE_UTF8);
    case Kind::blob:
        return sqlite3_bind_blob64(statement, place, text_.empty() ? "" : text_.data(), text_.size(), SQLITE_STATIC);
    }
    return SQLITE_MISUSE;
}

Rows::Rows(Database& database, std::string_view sql, std::initializer_list<Given> given) : database_(&database) {
    if (!database.well()) return;
    int code = sqlite3_prepare_v2(database.handle(), sql.data(), static_cast<int>(sql.size()), &statement_, nullptr);
    int place = 0;
    for (const Given& value : given)
        if (code == SQLITE_OK) code = value.bind(statement_, ++place);
    if (code != SQLITE_OK) database.fail(error_of(code, database.handle(), database.path()));
}

Rows::~Rows() {
    sqlite3_finalize(statement_);
}

bool Rows::next() {
    if (!database_->well()) return false;
    const int code = sqlite3_step(statement_);
    if (code == SQLITE_ROW) return true;
    if (code != SQLITE_DONE) database_->fail(error_of(code, database_->handle(), database_->path()));
    return false;
}

bool Rows::absent(int column) const {
    return sqlite3_column_type(statement_, column) == SQLITE_NULL;
}

std::int64_t Rows::whole(int column) const {
    return sqlite3_column_int64(statement_, column);
}

double Rows::real(int column) const {
    return sqlite3_column_double(statement_, column);
}

std::optional<double> Rows::maybe_real(int column) const {
    return absent(column) ? std::nullopt : std::optional(real(column));
}

std::optional<std::int64_t> Rows::maybe_whole(int column) const {
    return absent(column) ? std::nullopt : std::optional(whole(column));
}

std::string Rows::text(int column) const {
    return std::string(blob(column));
}

std::string_view Rows::blob(int column) const {
    const auto* const bytes = static_cast<const char*>(sqlite3_column_blob(statement_, column));
    const int size = sqlite3_column_bytes(statement_, column);
    return bytes ? std::string_view(bytes, static_cast<std::size_t>(size)) : std::string_view();
}

base::Result<std::unique_ptr<Database>> Database::open(const std::string& path, Access access, double wait_s) {
    auto way = access_to(path, access == Access::as_if_read_only);
    if (!way) return way.error();
    const int may = access == Access::read || !way->writes ? SQLITE_OPEN_READONLY
                    : access == Access::edit               ? SQLITE_OPEN_READWRITE
                                                           : SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE;
    sqlite3* handle = nullptr;
    const int code = sqlite3_open_v2(way->name.c_str(), &handle,
                                     may | SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE | SQLITE_OPEN_URI, nullptr);
    if (code != SQLITE_OK) {
        Error error = error_of(code, handle, path);
        sqlite3_close(handle);
        return error;
    }
    std::unique_ptr<Database> database(new Database(path, std::move(way).value(), handle));
    sqlite3_busy_timeout(handle, static_cast<int>(wait_s * 1000.0));
    // What a schema from elsewhere says is data, not program.
    database->run("PRAGMA trusted_schema = OFF");
    database->run("PRAGMA cell_size_check = ON");
    database->run("PRAGMA foreign_keys = ON");
    if (const auto set = database->take_outcome(); !set) return set.error();
    return database;
}

Database::Database(std::string path, FileAccess access, sqlite3* handle)
    : path_(std::move(path)), access_(std::move(access)),
      as_opened_(access_.without_locks ? state_of(path_) : FileState{}), handle_(handle) {}

bool Database::written_meanwhile() const {
    if (!access_.without_locks) return false;
    const FileState now = state_of(path_);
    return now.has_log || now != as_opened_;
}

Database::~Database() {
    sqlite3_close(handle_);
}

void Database::run(std::string_view sql, std::initializer_list<Given> given) {
    Rows rows(*this, sql, given);
    while (rows.next()) {
    }
}

void Database::run_script(std::string_view sql) {
    if (!well()) return;
    if (const int code = sqlite3_exec(handle_, std::string(sql).c_str(), nullptr, nullptr, nullptr); code != SQLITE_OK)
        fail(error_of(code, handle_, path_));
}

std::optional<std::int64_t> Database::one_whole(std::string_view sql, std::initializer_list<Given> given) {
    Rows rows(*this, sql, given);
    return rows.next() ? rows.maybe_whole(0) : std::nullopt;
}

std::int64_t Database::last_id() const {
    return sqlite3_last_insert_rowid(handle_);
}

std::int64_t Database::changed_rows() const {
    return sqlite3_changes64(handle_);
}

void Database::fail(Error error) {
    if (well()) outcome_ = std::move(error);
}

void Database::fail_as_sqlite_says() {
    fail(error_of(sqlite3_extended_errcode(handle_), handle_, path_));
}

Result<void> within(Database& database, Transaction kind, const std::function<void(Database&)>& body) {
    if (kind == Transaction::edit && database.read_only()) return error_of(SQLITE_READONLY, nullptr, database.path());
    database.run(kind == Transaction::edit ? "BEGIN IMMEDIATE" : "BEGIN");
    if (auto begun = database.take_outcome(); !begun) return begun;
    body(database);
    if (database.written_meanwhile())
        database.fail({ErrorCode::book_not_usable,
                       {database.path(), {}, {}},
                       said("another program is writing to the book, which can only be read here"),
                       said("open it again")});
    database.run("COMMIT");
    auto done = database.take_outcome();
    // A full disk may have rolled it back already.
    if (!done && sqlite3_get_autocommit(database.handle()) == 0) {
        database.run("ROLLBACK");
        static_cast<void>(database.take_outcome());
    }
    return done;
}

} // namespace lapwright::book
