// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/rescue_rows.h"

#include "core/book/said.h"

#include <algorithm>
#include <array>
#include <memory>

#include <sqlite3.h>

namespace lapwright::book {
namespace {

struct Table {
    const char* name;
    const char* key;      // in whose order it lies
    const char* key_down; // the same backwards
    bool numbered;        // by one whole number
    const char* what;     // in words
};

constexpr std::array tables{
    Table{"driver", "id", "id DESC", true, "names of drivers"},
    Table{"car", "id", "id DESC", true, "names of cars"},
    Table{"track", "id", "id DESC", true, "tracks"},
    Table{"session", "id", "id DESC", true, "sessions"},
    Table{"fact", "session_id, place", "session_id DESC, place DESC", false, "facts of files"},
    Table{"warning", "session_id, place", "session_id DESC, place DESC", false, "warnings of imports"},
    Table{"lap", "session_id, place", "session_id DESC, place DESC", false, "laps"},
    Table{"block", "id", "id DESC", true, "samples"},
    Table{"channel", "session_id, place", "session_id DESC, place DESC", false, "channels"},
    Table{"split", "session_id, place", "session_id DESC, place DESC", false, "splits of recordings"},
    Table{"figure", "session_id, name", "session_id DESC, name DESC", false, "fitted figures"},
    Table{"corner", "session_id, lap_place, place", "session_id DESC, lap_place DESC, place DESC", false,
          "corner figures"},
    Table{"video_file", "session_id, part", "session_id DESC, part DESC", false, "places of videos"},
    Table{"video_step", "session_id", "session_id DESC", false, "offsets of videos"},
    Table{"video_place", "ends_checksum, size_bytes, path", "ends_checksum DESC, size_bytes DESC, path DESC", false,
          "other places of videos"},
    Table{"judged_by_hand", "session_id, at_s", "session_id DESC, at_s DESC", false, "laps judged by hand"},
    Table{"pairing", "id", "id DESC", true, "pairings"},
    Table{"gap_curve", "session_a, lap_a, session_b, lap_b", "session_a DESC, lap_a DESC, session_b DESC, lap_b DESC",
          false, "pictures of pairings"},
    Table{"outline", "session_id", "session_id DESC", false, "pictures of sessions"},
    Table{"prediction", "id", "id DESC", true, "predictions"},
    Table{"note", "id", "id DESC", true, "notes"},
    Table{"said", "subject, field, said_unix_s, value", "subject DESC, field DESC, said_unix_s DESC, value DESC", false,
          "names and setups that were replaced"},
    Table{"gone", "subject", "subject DESC", false, "marks of removed notes, pairings and predictions"},
};

// Numbers beyond the highest one that was seen are not tried.
constexpr std::int64_t max_tries = 200'000;

using Prepared = std::unique_ptr<sqlite3_stmt, int (*)(sqlite3_stmt*)>;

Prepared prepare(sqlite3* handle, const std::string& sql) {
    sqlite3_stmt* statement = nullptr;
    sqlite3_prepare_v2(handle, sql.c_str(), -1, &statement, nullptr);
    return {statement, sqlite3_finalize};
}

// The columns that both books have: the damaged one may have an older schema.
std::vector<std::string> common_columns(sqlite3* from, sqlite3* into, const char* table) {
    const auto columns = [&](sqlite3* handle) {
        std::vector<std::string> names;
        const Prepared rows = prepare(handle, "SELECT name FROM pragma_table_info('" + std::string(table) + "')");
        while (rows && sqlite3_step(rows.get()) == SQLITE_ROW)
            names.emplace_back(reinterpret_cast<const char*>(sqlite3_column_text(rows.get(), 0)));
        return names;
    };
    const auto theirs = columns(from);
    auto common = columns(into);
    std::erase_if(common, [&](const std::string& name) { return std::ranges::find(theirs, name) == theirs.end(); });
    return common;
}

// The book is older than the table: it is known to end without it.
bool never_had(sqlite3* from, const char* table) {
    const Prepared rows = prepare(from, "SELECT 1 FROM sqlite_schema WHERE name = ?");
    if (!rows) return false;
    sqlite3_bind_text(rows.get(), 1, table, -1, SQLITE_STATIC);
    if (sqlite3_step(rows.get()) != SQLITE_DONE) return false;
    sqlite3_reset(rows.get());
    sqlite3_bind_text(rows.get(), 1, "session", -1, SQLITE_STATIC);
    return sqlite3_step(rows.get()) == SQLITE_ROW;
}

class Rescue {
  public:
    Rescue(sqlite3* from, Database& into, const Table& table) : from_(from), into_(into), table_(table) {
        std::string marks;
        for (const std::string& column : common_columns(from, into.handle(), table.name)) {
            columns_ += (columns_.empty() ? "" : ", ") + column;
            marks += marks.empty() ? "?" : ", ?";
        }
        if (columns_.empty()) return;
        // What was read from one end already, or breaks a rule of the table, is passed over.
        insert_ = prepare(into.handle(), "INSERT OR IGNORE INTO " + std::string(table.name) + " (" + columns_ +
                                             ") VALUES (" + marks + ")");
    }

    // Whether every row was read.
    bool run() {
        if (!insert_) return false;
        if (read_all(table_.key)) return true;
        const bool rest = read_all(table_.key_down);
        if (table_.numbered && !rest) read_between();
        return false;
    }

  private:
    std::string select() const { return "SELECT " + columns_ + " FROM " + table_.name; }

    void keep(sqlite3_stmt* row) {
        sqlite3_stmt* const insert = insert_.get();
        for (int i = 0; i < sqlite3_column_count(row); ++i)
            sqlite3_bind_value(insert, i + 1, sqlite3_column_value(row, i));
        const int code = sqlite3_step(insert);
        if (code != SQLITE_DONE) into_.fail(error_of(code, into_.handle(), into_.path()));
        sqlite3_reset(insert);
        sqlite3_clear_bindings(insert);
    }

    bool read_all(const char* order) {
        const Prepared rows = prepare(from_, select() + " ORDER BY " + order);
        if (!rows) return false;
        int code = sqlite3_step(rows.get());
        for (; code == SQLITE_ROW && into_.well(); code = sqlite3_step(rows.get())) {
            if (table_.numbered) highest_ = std::max<std::int64_t>(highest_, sqlite3_column_int64(rows.get(), 0));
            keep(rows.get());
        }
        return code == SQLITE_DONE;
    }

    void read_between() {
        const Prepared row = prepare(from_, select() + " WHERE id = ?");
        if (!row) return;
        const Prepared known = prepare(into_.handle(), "SELECT 1 FROM " + std::string(table_.name) + " WHERE id = ?");
        for (std::int64_t id = 1; id < std::min(highest_, max_tries) && into_.well(); ++id) {
            sqlite3_bind_int64(known.get(), 1, id);
            const bool there = sqlite3_step(known.get()) == SQLITE_ROW;
            sqlite3_reset(known.get());
            if (there) continue;
            sqlite3_bind_int64(row.get(), 1, id);
            if (sqlite3_step(row.get()) == SQLITE_ROW) keep(row.get());
            sqlite3_reset(row.get());
        }
    }

    sqlite3* from_;
    Database& into_;
    const Table& table_;
    std::string columns_;
    Prepared insert_{nullptr, sqlite3_finalize};
    std::int64_t highest_ = 0;
};

void leave_out_strays(Database& database) {
    for (const std::string name : {"driver", "car", "track"})
        database.run("UPDATE session SET " + name + "_id = NULL WHERE " + name + "_id NOT IN (SELECT id FROM " + name +
                     ")");
    for (const char* const part : {"fact", "warning", "lap", "block", "channel", "split", "figure", "corner",
                                   "video_file", "video_step", "judged_by_hand", "outline"})
        database.run("DELETE FROM " + std::string(part) + " WHERE session_id NOT IN (SELECT id FROM session)");
    for (const char* const of_two : {"pairing", "gap_curve"})
        database.run("DELETE FROM " + std::string(of_two) +
                     " WHERE session_a NOT IN (SELECT id FROM session) OR session_b NOT IN (SELECT id FROM session)");
    database.run("DELETE FROM note WHERE (session_id IS NOT NULL AND session_id NOT IN (SELECT id FROM session)) OR "
                 "(pairing_id IS NOT NULL AND pairing_id NOT IN (SELECT id FROM pairing))");
    database.run("INSERT INTO words (rowid, text) SELECT session_id, text FROM found_by");
}

} // namespace

std::vector<std::string> rescue_rows(const std::string& damaged, Database& into) {
    std::vector<std::string> losses;
    auto opened = Database::open(damaged, Access::edit, 0.0);
    if (!opened) return {"nothing could be read"};
    Database& from = **opened;
    from.run("PRAGMA writable_schema = ON"); // then a file that ends early is read as far as it goes
    for (const Table& table : tables)
        if (into.well() && !never_had(from.handle(), table.name) && !Rescue(from.handle(), into, table).run())
            losses.push_back("not all " + std::string(table.what) + " could be read");
    leave_out_strays(into);
    say_all(into);
    return losses;
}

} // namespace lapwright::book
