// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/exchange.h"

#include "core/base/check.h"
#include "core/book/clean_names.h"
#include "core/book/copy_file.h"
#include "core/book/database.h"
#include "core/book/unite.h"

#include <filesystem>
#include <system_error>

namespace lapwright::book {
namespace {

using base::Error;
using base::ErrorCode;
using base::Result;

using Chosen = std::optional<std::span<const SessionId>>;

// The book that SQLite opens by `name`, attached as "other" while the body runs.
std::optional<Error> with_other(Database& database, const std::string& name,
                                const std::function<void(Database&)>& body) {
    database.run("ATTACH ? AS other", {name});
    if (auto problem = database.take_problem()) return problem;
    auto problem = edit(database, body);
    database.run("DETACH other");
    auto late = database.take_problem();
    return problem ? problem : late;
}

// A new book under a name of its own, with what was chosen of this one.
std::optional<Error> write_part(const std::string& from, const std::string& partial, const Chosen& chosen) {
    auto part = Book::open(partial);
    if (!part) return part.error();
    Book book = std::move(part).value();
    Database& database = book.database();
    auto problem = with_other(database, from, [&](Database& into) { static_cast<void>(unite(into, chosen)); });
    if (problem) return problem;
    database.run("PRAGMA journal_mode = DELETE"); // one file, without a log beside it
    return database.take_problem();
}

std::optional<Error> write_whole(Book& book, const std::string& path, const Chosen& chosen) {
    std::error_code unknown;
    if (std::filesystem::equivalent(path, book.path(), unknown))
        return Error{ErrorCode::file_not_writable,
                     {path, {}, {}},
                     "the book cannot be exported onto itself",
                     "choose another file name"};
    const std::string partial = partial_name(path);
    remove_book_file(partial);
    auto problem = write_part(book.database().name(), partial, chosen);
    if (!problem) problem = appear(partial, path);
    remove_book_file(partial);
    // The partial file's name is nobody's business.
    if (problem && problem->place.file == partial) problem->place.file = path;
    return problem;
}

// A copy of another book with today's schema and clean names.
std::optional<Error> made_ours(const std::string& copy) {
    auto opened = Book::open(copy);
    if (!opened) return opened.error();
    Book other = std::move(opened).value();
    return edit(other.database(), clean_names);
}

} // namespace

std::optional<Error> export_sessions(Book& book, std::span<const SessionId> sessions, const std::string& path) {
    return write_whole(book, path, sessions);
}

std::optional<Error> export_book(Book& book, const std::string& path) {
    return write_whole(book, path, std::nullopt);
}

Result<Merged> merge_from(Book& book, const std::string& path) {
    std::error_code unknown;
    if (!std::filesystem::is_regular_file(path, unknown))
        return Error{ErrorCode::file_not_readable, {path, {}, {}}, "there is no such file", "check the name"};
    if (std::filesystem::equivalent(path, book.path(), unknown))
        return Error{
            ErrorCode::book_not_usable, {path, {}, {}}, "this is the book itself", "name the other book's file"};
    // The other file may be older, lie on a disk that cannot be written, and shall never be changed: a copy is read.
    const std::string copy = partial_name(book.path() + ".incoming");
    Merged merged;
    auto problem = copy_book(path, copy);
    if (!problem) problem = made_ours(copy);
    if (!problem)
        problem =
            with_other(book.database(), sqlite_name(copy), [&](Database& into) { merged = unite(into, std::nullopt); });
    remove_book_file(copy);
    if (!problem) return merged;
    if (problem->place.file == copy) problem->place.file = path;
    return *problem;
}

} // namespace lapwright::book
