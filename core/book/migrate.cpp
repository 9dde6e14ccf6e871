// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/migrate.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/book/copy_file.h"

#include <filesystem>
#include <system_error>

namespace lapwright::book {
namespace {

using base::Error;
using base::ErrorCode;
using base::Result;
using base::said;

Error refused(const std::string& path, const std::string& what, const std::string& remedy) {
    return {ErrorCode::book_not_usable, {path, {}, {}}, what, remedy};
}

// 0: nothing is in the file yet.
std::int64_t version_of(Database& database) {
    return database.one_whole("PRAGMA user_version").value_or(0);
}

int newest(std::span<const Migration> migrations) {
    return migrations.empty() ? 0 : migrations.back().number;
}

void refuse_strangers(Database& database, std::span<const Migration> migrations) {
    const std::int64_t mark = database.one_whole("PRAGMA application_id").value_or(0);
    const bool empty = database.one_whole("SELECT count(*) FROM sqlite_master").value_or(0) == 0;
    if (!database.well()) return;
    if (!(empty && version_of(database) == 0 && mark == 0) && mark != book_mark)
        database.fail(no_book(database.path()));
    else if (version_of(database) > newest(migrations))
        database.fail(newer_book(database.path()));
}

std::string name_of_copy(const std::string& path, std::int64_t version) {
    const std::string plain = path + ".schema-" + base::integer_text(version);
    std::string name = plain;
    for (int i = 2; std::filesystem::exists(name); ++i)
        name = plain + "-" + base::integer_text(i);
    return name;
}

} // namespace

Error no_book(const std::string& path) {
    return refused(path, said("this file is no book"), said("name another file"));
}

Error newer_book(const std::string& path) {
    return refused(path, said("the book was written by a newer version of the program"),
                   said("install the newer version"));
}

Result<void> require_today(Database& database, std::span<const Migration> migrations) {
    return look(database, [&](Database& book) {
        refuse_strangers(book, migrations);
        const std::int64_t version = version_of(book);
        if (!book.well() || version == newest(migrations)) return;
        book.fail(
            version == 0
                ? no_book(book.path())
                : refused(book.path(),
                          said("the book was written by an older version of the program and cannot be brought up to "
                               "date here, because it cannot be written"),
                          said("copy it to a folder that you may write, and open the copy")));
    });
}

Result<void> migrate(Database& database, std::span<const Migration> migrations) {
    // At one moment: another window may be beginning the book.
    const auto known = look(database, [&](Database& book) { refuse_strangers(book, migrations); });
    if (!known || version_of(database) == newest(migrations)) return known ? database.take_outcome() : known;

    // A step may build a table anew under an old name, which references must not follow.
    database.run("PRAGMA foreign_keys = OFF");
    std::string copy;
    const auto migrated = edit(database, [&](Database& book) {
        refuse_strangers(book, migrations);
        const std::int64_t before = version_of(book); // another window may have been first
        if (!book.well() || before == newest(migrations)) return;
        if (before > 0) {
            copy = name_of_copy(book.path(), before);
            if (const auto copied = copy_book(book.path(), copy); !copied) {
                copy.clear();
                return book.fail(copied.error());
            }
        }
        for (const Migration& step : migrations)
            if (step.number > before) book.run_script(step.sql);
        if (book.one_whole("SELECT count(*) FROM pragma_foreign_key_check").value_or(0) != 0)
            book.fail(refused(book.path(), std::string(damaged_book), said("let the program save what can be read")));
        book.run("PRAGMA application_id = " + base::integer_text(book_mark));
        book.run("PRAGMA user_version = " + base::integer_text(newest(migrations)));
    });
    if (!migrated && !copy.empty()) {
        std::error_code ignored;
        std::filesystem::remove(copy, ignored);
    }
    database.run("PRAGMA foreign_keys = ON");
    const auto late = database.take_outcome();
    return migrated ? late : migrated;
}

} // namespace lapwright::book
