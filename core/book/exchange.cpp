// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/exchange.h"

#include "core/base/check.h"
#include "core/base/translation.h"
#include "core/book/copy_file.h"
#include "core/book/database.h"
#include "core/book/names.h"
#include "core/book/said.h"
#include "core/book/unite.h"

#include <filesystem>
#include <system_error>
#include <utility>
#include <vector>

namespace lapwright::book {
namespace {

using base::Error;
using base::ErrorCode;
using base::Result;
using base::said;

void give_sessions(Database& database, const std::string& table, std::int64_t from, std::optional<std::int64_t> to) {
    database.run("UPDATE session SET " + table + "_id = ? WHERE " + table + "_id = ?", {to, from});
    database.run("DELETE FROM " + table + " WHERE id = ?", {from});
}

// The names of a book that came from elsewhere, as this program would have put them in (see names.h).  Two names that
// become the same are one; one that holds nothing is none.
void clean_names(Database& database) {
    for (const NameTable kind : {NameTable::driver, NameTable::car, NameTable::track}) {
        const std::string table = table_text(kind);
        std::vector<std::pair<std::int64_t, std::string>> unclean;
        {
            Rows rows(database, "SELECT id, name FROM " + table, {});
            while (rows.next())
                if (const std::string name = rows.text(1); plain_name(name) != name)
                    unclean.emplace_back(rows.whole(0), plain_name(name));
        }
        for (const auto& [id, name] : unclean) {
            const auto same = database.one_whole("SELECT id FROM " + table + " WHERE name = ?", {name});
            if (name.empty() || same)
                give_sessions(database, table, id, same);
            else
                database.run("UPDATE " + table + " SET name = ? WHERE id = ?", {name, id});
        }
    }
}

// The book that SQLite opens by `name`, attached as "other" while the body runs.
Result<void> with_other(Database& database, const std::string& name, const std::function<void(Database&)>& body) {
    database.run("ATTACH ? AS other", {name});
    if (auto attached = database.take_outcome(); !attached) return attached;
    auto done = edit(database, body);
    database.run("DETACH other");
    auto late = database.take_outcome();
    return done ? late : done;
}

// A new book under a name of its own, with what was chosen of this one.
Result<void> write_part(const std::string& from, const std::string& partial, const Coming& chosen) {
    auto part = Book::open(partial);
    if (!part) return part.error();
    Book book = std::move(part).value();
    Database& database = book.database();
    auto united = with_other(database, from, [&](Database& into) { static_cast<void>(unite(into, chosen)); });
    if (!united) return united;
    database.run("PRAGMA journal_mode = DELETE"); // one file, without a log beside it
    return database.take_outcome();
}

Result<void> write_whole(Book& book, const std::string& path, const Coming& chosen) {
    std::error_code unknown;
    if (std::filesystem::equivalent(path, book.path(), unknown))
        return Error{ErrorCode::file_not_writable,
                     {path, {}, {}},
                     said("the book cannot be exported onto itself"),
                     said("choose another file name")};
    const std::string partial = partial_name(path);
    remove_book_file(partial);
    auto done = write_part(book.database().name(), partial, chosen);
    if (done) done = appear(partial, path);
    remove_book_file(partial);
    return !done && done.error().place.file == partial ? told_of(done.error(), path) : done;
}

// A copy of another book with today's schema and clean names.
Result<void> made_ours(const std::string& copy) {
    auto opened = Book::open(copy);
    if (!opened) return opened.error();
    Book other = std::move(opened).value();
    return edit(other.database(), [](Database& database) {
        clean_names(database);
        say_all(database);
    });
}

} // namespace

Result<void> export_sessions(Book& book, std::span<const SessionId> sessions, const std::string& path) {
    return write_whole(book, path, {sessions});
}

Result<void> export_book(Book& book, const std::string& path) {
    return write_whole(book, path, {});
}

Result<Merged> merge_from(Book& book, const std::string& path) {
    std::error_code unknown;
    if (!std::filesystem::is_regular_file(path, unknown))
        return Error{
            ErrorCode::file_not_readable, {path, {}, {}}, said("there is no such file"), said("check the name")};
    if (std::filesystem::equivalent(path, book.path(), unknown))
        return Error{ErrorCode::book_not_usable,
                     {path, {}, {}},
                     said("this is the book itself"),
                     said("name the other book's file")};
    // The other file may be older, lie on a disk that cannot be written, and shall never be changed: a copy is read.
    const std::string copy = partial_name(book.path() + ".incoming");
    Merged merged;
    auto done = copy_book(path, copy);
    if (done) done = made_ours(copy);
    if (done)
        done =
            with_other(book.database(), sqlite_name(copy), [&](Database& into) { merged = unite(into, {{}, true}); });
    remove_book_file(copy);
    if (done) return merged;
    return done.error().place.file == copy ? told_of(done.error(), path) : done.error();
}

} // namespace lapwright::book
