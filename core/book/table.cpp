// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/table.h"

#include "core/base/translation.h"
#include "core/book/database.h"

#include <algorithm>
#include <sqlite3.h>

namespace lapwright::book {
namespace {

using base::said;

std::vector<std::string> columns_of(Database& database, const std::string& name) {
    std::vector<std::string> columns;
    Rows rows(database, "SELECT name FROM pragma_table_info('" + name + "')", {});
    while (rows.next())
        columns.push_back(rows.text(0));
    return columns;
}

TableValue value_of(const Rows& rows, int column, const std::string& type) {
    if (type == "null") return {};
    if (type == "integer") return rows.whole(column);
    if (type == "real") return rows.real(column);
    return rows.text(column);
}

// Each column with its type behind it.
std::string query(const std::vector<std::string>& columns, const std::string& name) {
    std::string sql;
    for (const std::string& column : columns)
        sql += (sql.empty() ? "SELECT " : ", ") + column + ", typeof(" + column + ")";
    return sql + " FROM " + name;
}

} // namespace

base::Result<BookTable> read_table(Book& book, const std::string& name) {
    if (std::ranges::find(table_names, name) == table_names.end())
        return base::Error{base::ErrorCode::book_not_usable,
                           {book.path(), {}, {}},
                           "the book has no table \"" + name + "\"",
                           said("take one of those that \"lapwright book table --help\" names")};
    Database& database = book.database();
    // Opening the book held its views against those that this program makes: what they call is this program's wish.
    database.run("PRAGMA trusted_schema = ON");
    auto table = look(database, [&](Database& from) {
        BookTable read{columns_of(from, name), {}};
        Rows rows(from, query(read.columns, name), {});
        while (rows.next()) {
            std::vector<TableValue>& row = read.rows.emplace_back();
            for (int i = 0; i < static_cast<int>(read.columns.size()); ++i)
                row.push_back(value_of(rows, 2 * i, rows.text(2 * i + 1)));
        }
        return read;
    });
    database.run("PRAGMA trusted_schema = OFF");
    return table;
}

} // namespace lapwright::book
