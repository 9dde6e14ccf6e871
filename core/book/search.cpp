// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/search.h"

#include "core/book/names.h"
#include "core/book/session_rows.h"

namespace lapwright::book {
namespace {

using base::Result;

bool is_letter(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte >= 0x80 || (byte >= '0' && byte <= '9') || (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z');
}

// Each word as FTS5 has it: quoted, so that nothing in it is an operator, with a star for "begins with".
std::string match_of(const std::string& words) {
    std::string match;
    std::string word;
    for (const char c : words + " ") {
        if (is_letter(c)) {
            word += c;
        } else if (!word.empty()) {
            match += "\"" + word + "\"* ";
            word.clear();
        }
    }
    return match;
}

std::vector<std::string> column_of_names(Database& database, const char* column) {
    std::vector<std::string> all;
    const std::string name = column;
    Rows rows(database,
              "SELECT DISTINCT " + name + " FROM summary WHERE " + name + " <> '' ORDER BY " + name + " COLLATE NOCASE",
              {});
    while (rows.next())
        all.push_back(rows.text(0));
    return all;
}

} // namespace

Result<std::vector<SessionSummary>> search(Book& book, const Filter& filter) {
    const std::string match = match_of(filter.words);
    return look(book.database(), [&](Database& database) {
        std::vector<SessionSummary> found;
        Rows rows(database,
                  "SELECT " + std::string(summary_columns) +
                      " FROM summary WHERE (?1 = '' OR driver = ?1 COLLATE NOCASE) AND "
                      "(?2 = '' OR car = ?2 COLLATE NOCASE) AND (?3 = '' OR track = ?3 COLLATE NOCASE) AND "
                      "(?4 = '' OR tyre = ?4 COLLATE NOCASE) AND (?5 IS NULL OR start_unix_s >= ?5) AND "
                      "(?6 IS NULL OR start_unix_s <= ?6) AND "
                      "(?7 = '' OR id IN (SELECT rowid FROM words WHERE words MATCH ?7)) "
                      "ORDER BY start_unix_s IS NULL, start_unix_s DESC, id DESC",
                  {trimmed(filter.driver), trimmed(filter.car), trimmed(filter.track), trimmed(filter.tyre),
                   filter.from_unix_s, filter.until_unix_s, match});
        while (rows.next())
            found.push_back(summary_of(rows));
        return found;
    });
}

Result<SessionSummary> read_summary(Book& book, SessionId id) {
    return look(book.database(), [&](Database& database) {
        require_session(database, id);
        Rows rows(database, "SELECT " + std::string(summary_columns) + " FROM summary WHERE id = ?",
                  {static_cast<std::int64_t>(id)});
        return rows.next() ? summary_of(rows) : SessionSummary{};
    });
}

Result<Names> names(Book& book) {
    return look(book.database(), [](Database& database) {
        return Names{column_of_names(database, "driver"), column_of_names(database, "car"),
                     column_of_names(database, "track"), column_of_names(database, "tyre")};
    });
}

} // namespace lapwright::book
