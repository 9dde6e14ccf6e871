// SPDX-License-Identifier: GPL-3.0-or-later
// SQLite in this folder's own words.  The first thing that goes wrong stays as the database's problem and every later
// statement does nothing, so that an edit is written straight down and asked once, at its end, whether it held.
#pragma once

#include "core/base/error.h"
#include "core/base/result.h"
#include "core/base/translation.h"
#include "core/book/file_access.h"

#include <cstdint>
#include <functional>
#include <initializer_list>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>

struct sqlite3;
struct sqlite3_stmt;

namespace lapwright::book {

// Bytes of a blob; they must outlive the statement.
struct Blob {
    std::string_view bytes;
};

// One value that a statement is given; absent ones are NULL.
class Given {
  public:
    Given() = default;
    Given(std::int64_t value) : kind_(Kind::whole), whole_(value) {}
    Given(int value) : Given(static_cast<std::int64_t>(value)) {}
    Given(double value) : kind_(Kind::real), real_(value) {}
    Given(std::string_view value) : kind_(Kind::text), text_(value) {}
    Given(const std::string& value) : Given(std::string_view(value)) {}
    Given(const char* value) : Given(std::string_view(value)) {}
    Given(Blob value) : kind_(Kind::blob), text_(value.bytes) {}
    template <typename T>
    Given(const std::optional<T>& value) : Given(value ? Given(*value) : Given()) {}

    int bind(sqlite3_stmt* statement, int place) const;

  private:
    enum class Kind { none, whole, real, text, blob };
    Kind kind_ = Kind::none;
    std::int64_t whole_ = 0;
    double real_ = 0.0;
    std::string_view text_;
};

class Database;

// Rows of an answer: while (rows.next()) …  Columns count from 0.
class Rows {
  public:
    Rows(Database& database, std::string_view sql, std::initializer_list<Given> given);
    Rows(const Rows&) = delete;
    Rows& operator=(const Rows&) = delete;
    ~Rows();

    [[nodiscard]] bool next();
    [[nodiscard]] bool absent(int column) const;
    [[nodiscard]] std::int64_t whole(int column) const;
    [[nodiscard]] double real(int column) const;
    [[nodiscard]] std::optional<double> maybe_real(int column) const;
    [[nodiscard]] std::optional<std::int64_t> maybe_whole(int column) const;
    [[nodiscard]] std::string text(int column) const;
    [[nodiscard]] std::string_view blob(int column) const; // until the next row

  private:
    Database* database_;
    sqlite3_stmt* statement_ = nullptr;
};

// as_if_read_only: like a file that cannot be written.
enum class Access { edit_or_begin, edit, read, as_if_read_only };

class Database {
  public:
    // A file that cannot be written is opened for reading, whatever was asked for.
    [[nodiscard]] static base::Result<std::unique_ptr<Database>> open(const std::string& path, Access access,
                                                                      double wait_s);
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;
    ~Database();

    [[nodiscard]] const std::string& path() const { return path_; }
    // For ATTACH.
    [[nodiscard]] const std::string& name() const { return access_.name; }
    // Asked to edit, and can only read.
    [[nodiscard]] bool read_only() const { return !access_.writes; }
    // Read without locks, and another program wrote to the file since it was opened: what was read may be mixed.
    [[nodiscard]] bool written_meanwhile() const;
    [[nodiscard]] sqlite3* handle() const { return handle_; }

    void run(std::string_view sql, std::initializer_list<Given> given = {});
    // Several statements in one text.
    void run_script(std::string_view sql);
    [[nodiscard]] std::optional<std::int64_t> one_whole(std::string_view sql, std::initializer_list<Given> given = {});
    [[nodiscard]] std::int64_t last_id() const;
    [[nodiscard]] std::int64_t changed_rows() const;

    [[nodiscard]] bool well() const { return outcome_.ok(); }
    [[nodiscard]] const base::Result<void>& outcome() const { return outcome_; }
    void fail(base::Error error); // the first stays
    void fail_as_sqlite_says();
    // Of all since it was last asked: a problem is dealt with.
    base::Result<void> take_outcome() { return std::exchange(outcome_, {}); }

  private:
    Database(std::string path, FileAccess access, sqlite3* handle);
    std::string path_;
    FileAccess access_;
    FileState as_opened_;
    sqlite3* handle_;
    base::Result<void> outcome_;
};

enum class Transaction { edit, look };
[[nodiscard]] base::Result<void> within(Database& database, Transaction kind,
                                        const std::function<void(Database&)>& body);

// What the body answers, in a transaction that went well.
template <typename Body>
[[nodiscard]] auto within(Database& database, Transaction kind, const Body& body) {
    using Answer = std::invoke_result_t<const Body&, Database&>;
    if constexpr (std::is_void_v<Answer>) {
        return within(database, kind, std::function<void(Database&)>(body));
    } else {
        std::optional<Answer> answer;
        const auto done =
            within(database, kind, std::function<void(Database&)>([&](Database& own) { answer.emplace(body(own)); }));
        return done ? base::Result<Answer>(*std::move(answer)) : base::Result<Answer>(done.error());
    }
}

// What the body does is done whole, or undone and told.
template <typename Body>
[[nodiscard]] auto edit(Database& database, const Body& body) {
    return within(database, Transaction::edit, body);
}
// What the body reads is of one moment.
template <typename Body>
[[nodiscard]] auto look(Database& database, const Body& body) {
    return within(database, Transaction::look, body);
}

// What SQLite's result code means for the book at this path, for people.
[[nodiscard]] base::Error error_of(int code, sqlite3* handle, const std::string& path);
// The error says that the file is damaged or no book at all: see salvage.h.
inline constexpr const char* damaged_book = base::word("the book is damaged");

} // namespace lapwright::book
