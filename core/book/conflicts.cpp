// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/conflicts.h"

#include "core/base/number_text.h"
#include "core/book/names.h"
#include "core/book/said.h"
#include "core/book/session_rows.h"
#include "core/book/sha256.h"

#include <algorithm>
#include <optional>

namespace lapwright::book {
namespace {

using base::Result;

constexpr std::size_t key_digits = 8;

std::string value_text(const Rows& rows, bool number) {
    return number ? base::exact_text(rows.real(3)) : rows.text(0);
}

// Of those that are the same name or text the latest.
std::vector<SaidValue> values_of(Database& database, const ConflictRow& row) {
    std::vector<SaidValue> values;
    Rows rows(database,
              "SELECT value, said_unix_s, typeof(value) IN ('real', 'integer'), value FROM said WHERE subject = ? AND "
              "field = ? AND NOT replaced ORDER BY said_unix_s DESC, value DESC",
              {row.subject, row.field});
    const bool names = row.field == "driver" || row.field == "car" || row.field == "track";
    while (rows.next()) {
        const std::string value = value_text(rows, rows.whole(2) != 0);
        const auto same = [&](const SaidValue& other) {
            return names ? same_name(other.value, value) : other.value == value;
        };
        if (std::ranges::any_of(values, same)) continue;
        const std::string all = row.subject + "\n" + row.field + "\n" + value;
        values.push_back({hex_text(sha256_of(all)).substr(0, key_digits), value, rows.real(1), values.empty()});
    }
    return values;
}

std::optional<std::int64_t> id_of_subject(Database& database, const ConflictRow& row) {
    return row.subject.starts_with("session ")
               ? database.one_whole("SELECT id FROM session WHERE 'session ' || lower(hex(checksum)) = ?",
                                    {row.subject})
               : database.one_whole("SELECT id FROM track WHERE 'track ' || lower(name) = ?", {row.subject});
}

// A start is a number; a value is said as it was.
void say_again(Database& database, const ConflictRow& row, const std::string& value) {
    const auto number = row.field == "start" ? base::parse_number(value) : std::nullopt;
    say(database, row.subject, row.field, number ? Given(*number) : Given(value), now_unix_s());
}

void show_in_rows(Database& database, const ConflictRow& row, const std::string& value) {
    if (row.subject.starts_with("note ")) {
        database.run(
            "UPDATE note SET text = ?1, changed_unix_s = (SELECT max(said_unix_s) FROM said WHERE subject = ?2) "
            "WHERE 'note ' || uid = ?2",
            {value, row.subject});
        return;
    }
    const auto id = id_of_subject(database, row);
    if (!id) return;
    if (row.subject.starts_with("track ")) return settle_track(database, *id);
    settle_session(database, *id);
    forget_unused_names(database);
    index_words(database, SessionId{*id});
}

} // namespace

std::vector<ConflictRow> conflict_rows(Database& database) {
    std::vector<ConflictRow> all;
    Rows rows(
        database,
        "SELECT subject, field, coalesce((SELECT file_name FROM session WHERE removed_unix_s IS NULL AND 'session ' "
        "|| lower(hex(checksum)) = subject), (SELECT name FROM track WHERE 'track ' || lower(name) = subject), "
        "(SELECT 'a note' FROM note WHERE 'note ' || uid = subject)) AS about FROM conflict WHERE about IS NOT NULL "
        "ORDER BY about, subject, field",
        {});
    while (rows.next())
        all.push_back({rows.text(0), rows.text(1), rows.text(2)});
    return all;
}

Result<std::vector<Conflict>> conflicts(Book& book) {
    return look(book.database(), [](Database& database) {
        std::vector<Conflict> all;
        for (const ConflictRow& row : conflict_rows(database))
            all.push_back({row.about, row.field, values_of(database, row)});
        return all;
    });
}

Result<void> settle_conflict(Book& book, const std::string& key) {
    return edit(book.database(), [&](Database& database) {
        for (const ConflictRow& row : conflict_rows(database))
            for (const SaidValue& one : values_of(database, row)) {
                if (one.key != key) continue;
                say_again(database, row, one.value);
                return show_in_rows(database, row, one.value);
            }
        database.fail({base::ErrorCode::book_not_usable,
                       {database.path(), {}, {}},
                       "no conflict has a value \"" + key + "\" (any more)",
                       "look at \"lapwright book conflicts\" for those that there are"});
    });
}

} // namespace lapwright::book
