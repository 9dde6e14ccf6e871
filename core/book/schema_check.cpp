// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/schema_check.h"

#include <map>
#include <memory>
#include <string>

#include <sqlite3.h>

namespace lapwright::book {
namespace {

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

} // namespace

void check_schema(Database& database, std::span<const Migration> migrations) {
    Texts expected = texts_made_by(migrations);
    Rows rows(database, written_here, {});
    while (rows.next())
        if (const auto made = expected.find(rows.text(0)); made != expected.end() && made->second == rows.text(1))
            expected.erase(made);
    if (!expected.empty()) database.fail(error_of(SQLITE_CORRUPT, database.handle(), database.path()));
}

} // namespace lapwright::book
