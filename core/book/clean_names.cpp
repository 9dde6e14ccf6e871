// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/clean_names.h"

#include "core/book/names.h"

#include <utility>
#include <vector>

namespace lapwright::book {
namespace {

void give_sessions(Database& database, const std::string& table, std::int64_t from, std::optional<std::int64_t> to) {
    database.run("UPDATE session SET " + table + "_id = ? WHERE " + table + "_id = ?", {to, from});
    database.run("DELETE FROM " + table + " WHERE id = ?", {from});
}

} // namespace

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

} // namespace lapwright::book
