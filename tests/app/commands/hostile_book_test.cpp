// SPDX-License-Identifier: GPL-3.0-or-later
// A friend's book in which somebody or a disk has written anything at all: it is merged or refused with a sentence, and
// the book that takes it in answers every question as before.
#include "app/commands/commands.h"

#include "core/book/book.h"
#include "core/book/my_car.h"
#include "core/book/notes.h"
#include "core/book/pairings.h"
#include "core/book/search.h"
#include "core/book/season.h"
#include "core/book/sessions.h"
#include "core/book/sha256.h"
#include "core/book/tracks.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <random>
#include <sqlite3.h>
#include <sstream>
#include <unistd.h>

using namespace lapwright;
using nlohmann::json;

namespace {

namespace fs = std::filesystem;

// As SQL: huge, tiny, of another kind, with control codes, with JSON that is beyond all bounds.
const std::vector<std::string> nasty{"9223372036854775807",
                                     "-9223372036854775808",
                                     "1e999",
                                     "-1e308",
                                     "1e-308",
                                     "NULL",
                                     "''",
                                     "x'00ff1b5b324a'",
                                     "'a' || char(27) || '[2J' || char(10) || char(7) || 'b'",
                                     "char(0) || 'z'",
                                     "'{\"mass_kg\": 1e999, \"items\": [[[[1]]]]}'",
                                     "'{\"driver\": \"\x1b[2J\", \"mass_kg\": 900}'",
                                     "replace(hex(zeroblob(20000)), '00', 'long ')",
                                     "-1",
                                     "0",
                                     "'\xff\xfe broken'"};

class HostileBook : public testing::Test {
  protected:
    void SetUp() override {
        const fs::path memory = "/dev/shm";
        folder = (::access(memory.c_str(), W_OK) == 0 ? memory : fs::temp_directory_path()) /
                 ("lapwright-hostile-" + std::to_string(::getpid()));
        fs::create_directories(folder);
        fill("mine", "mine");
        fill("good", "theirs");
    }
    void TearDown() override { fs::remove_all(folder); }

    [[nodiscard]] std::string file(const std::string& name) const { return (folder / name).string(); }

    void fill(const std::string& book_name, const std::string& source) const {
        auto opened = book::Book::open(file(book_name));
        ASSERT_TRUE(opened.ok());
        book::Book book = std::move(opened).value();
        std::vector<book::SessionId> ids;
        for (const std::string day : {"1", "2"}) {
            recording::Recording r;
            r.source_file = source + day + ".csv";
            r.start_unix_s = 1.77e9;
            r.duration_s = 4.0;
            r.facts = {{"Logger", "seven"}};
            r.warnings = {
                {.kind = recording::WarningKind::gaps, .of = "Speed", .seen = {1, {3}}, .figures = {2.0, 2.0}}};
            r.splits_s = {1.5};
            const auto stamps = std::make_shared<const std::vector<double>>(std::vector<double>{0.0, 1.0, 2.0, 4.0});
            r.channels = {{"Speed",
                           recording::Meaning::speed,
                           base::Unit::metre_per_second,
                           "m/s",
                           stamps,
                           {10.0, 11.0, 12.0, 13.0},
                           nullptr}};
            car::SetupSheet sheet;
            sheet.tyre = "soft";
            sheet.mass = car::Mass{900.0};
            sheet.items = {{"wing", day}};
            const std::vector<lap::Lap> laps{{1, lap::LapKind::flying, 0.0, 90.0, 0.01, true, ""},
                                             {2, lap::LapKind::flying, 90.0, 181.0, 0.01, true, ""}};
            const auto added = book::add_session(book, {source + day + ".csv", 10, book::sha256_of(source + day)}, r,
                                                 {"Wren Alder", "Plover", "Ternbank", 1.77e9, "dry", sheet}, laps);
            ASSERT_TRUE(added.ok());
            ids.push_back(added->id);
            ASSERT_TRUE(book::put_note(book, {"", {.session = added->id, .lap = 1}, "loose", 10.0}).ok());
            ASSERT_TRUE(book::put_figures(book, added->id, {{"grip", 1.2, 1.1, 1.3, "data"}}));
        }
        ASSERT_TRUE(book::put_pairing(book, {ids[0], 1, ids[1], 2, "both", "A ahead", 100.0}).ok());
        track::TrackRecord record;
        record.name = "Ternbank";
        record.gate = {{0.95, 0.04, 12.0}, 1.25, 18.0};
        ASSERT_TRUE(book::put_track(book, record));
        ASSERT_TRUE(book::put_my_car(book, car::Names{"Wren Alder", "Plover"}));
    }

    // Whether SQLite took it: rules of the tables are switched off, the kinds of keys are not.
    [[nodiscard]] bool spoil(const std::string& sql) const {
        sqlite3* handle = nullptr;
        sqlite3_open(file("theirs").c_str(), &handle);
        for (const char* off : {"PRAGMA ignore_check_constraints = ON", "PRAGMA foreign_keys = OFF"})
            sqlite3_exec(handle, off, nullptr, nullptr, nullptr);
        const bool done = sqlite3_exec(handle, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK;
        sqlite3_close(handle);
        return done;
    }
    [[nodiscard]] std::vector<std::pair<std::string, std::string>> columns() const {
        std::vector<std::pair<std::string, std::string>> all;
        sqlite3* handle = nullptr;
        sqlite3_open(file("good").c_str(), &handle);
        const auto keep = [](void* to, int, char** values, char**) {
            static_cast<std::vector<std::pair<std::string, std::string>>*>(to)->emplace_back(values[0], values[1]);
            return 0;
        };
        sqlite3_exec(handle,
                     "SELECT m.name, c.name FROM sqlite_schema AS m JOIN pragma_table_info(m.name) AS c "
                     "WHERE m.type = 'table' AND m.name NOT LIKE 'words%'",
                     keep, &all, nullptr);
        sqlite3_close(handle);
        return all;
    }
    int call(std::vector<std::string> words) {
        words.insert(words.begin(), {"book", "--book", file("taking")});
        out.str("");
        err.str("");
        return commands::run(words, out, err);
    }
    // The book answers, in JSON that is JSON and in text that commands no terminal.
    void expect_answers(const std::string& what) {
        const std::vector<std::vector<std::string>> questions{
            {"list"}, {"season", "Ternbank"}, {"figures", "Plover"}, {"pairings"}, {"list", "--removed"}};
        for (std::vector<std::string> words : questions) {
            EXPECT_EQ(call(words), 0) << what << ": " << words.front() << ": " << err.str();
            EXPECT_EQ(out.str().find('\x1b'), std::string::npos) << what << ": " << words.front();
            words.emplace_back("--json");
            EXPECT_EQ(call(words), 0) << what << ": " << words.front() << ": " << err.str();
            EXPECT_TRUE(json::accept(out.str())) << what << ": " << words.front() << ": " << out.str();
        }
        EXPECT_LE(call({"together", "Plover"}), 1) << what; // it may hold no lap that tells anything
        EXPECT_EQ((out.str() + err.str()).find('\x1b'), std::string::npos) << what;
        EXPECT_EQ(call({"list", "--json"}), 0);
        EXPECT_GE(json::parse(out.str())["sessions"].size(), 2U) << what << ": mine are there";
        EXPECT_EQ(call({"my-car"}), 0);
        EXPECT_EQ(out.str(), "Wren Alder — Plover is yours\n") << what;
        auto book = book::Book::open(file("taking"));
        ASSERT_TRUE(book.ok()) << what;
        book::Book opened = std::move(book).value();
        const auto health = opened.check();
        ASSERT_TRUE(health.ok()) << what;
        for (const std::string& complaint : health->complaints)
            EXPECT_NE(complaint.find("are damaged"), std::string::npos) << what << ": " << complaint;
        const auto sessions = book::search(opened);
        ASSERT_TRUE(sessions.ok()) << what;
        for (const book::SessionSummary& one : *sessions) {
            EXPECT_TRUE(book::read_details(opened, one.id).ok()) << what;
            EXPECT_TRUE(book::read_recording(opened, one.id).ok()) << what;
            EXPECT_TRUE(book::read_laps(opened, one.id).ok()) << what;
            EXPECT_TRUE(book::notes_of_session(opened, one.id).ok()) << what;
        }
        EXPECT_TRUE(book::tracks(opened).ok()) << what;
    }
    void take_in(const std::string& what) {
        for (const char* const log : {"taking-wal", "taking-shm"})
            fs::remove(file(log));
        fs::copy_file(file("mine"), file("taking"), fs::copy_options::overwrite_existing);
        const int status = call({"merge", file("theirs")});
        if (status != 0) {
            EXPECT_EQ(status, 1) << what;
            EXPECT_EQ(std::ranges::count(err.str(), '\n'), 1) << what << ": " << err.str();
            ++refused;
        } else {
            ++merged;
        }
        expect_answers(what);
    }
    void fresh_theirs() const {
        for (const char* const log : {"theirs-wal", "theirs-shm"})
            fs::remove(file(log));
        fs::copy_file(file("good"), file("theirs"), fs::copy_options::overwrite_existing);
    }

    fs::path folder;
    std::ostringstream out;
    std::ostringstream err;
    int merged = 0;
    int refused = 0;
};

} // namespace

TEST_F(HostileBook, AnyColumnMayHoldAnythingAtAll) {
    const auto all = columns();
    ASSERT_GT(all.size(), 60U);
    std::mt19937_64 engine(23);
    for (int i = 0; i < 160; ++i) {
        const auto& [table, column] = all[engine() % all.size()];
        fresh_theirs();
        const std::string sql = "UPDATE " + table + " SET " + column + " = " + nasty[engine() % nasty.size()] +
                                (engine() % 2 == 0 ? "" : " WHERE rowid = 1");
        if (spoil(sql)) take_in(sql);
    }
    EXPECT_GT(merged, 60);
}

TEST_F(HostileBook, DamagedSamplesCostTheirChannelsAlone) {
    for (const char* bytes : {"x''", "x'00'", "zeroblob(100000)", "substr(bytes, 1, 3)", "'text'"}) {
        fresh_theirs();
        ASSERT_TRUE(spoil(std::string("UPDATE block SET bytes = ") + bytes));
        take_in(bytes);
    }
    for (const char* count : {"-1", "1e18", "9223372036854775807", "0"}) {
        fresh_theirs();
        ASSERT_TRUE(spoil(std::string("UPDATE block SET count = ") + count));
        take_in(count);
    }
}

TEST_F(HostileBook, AnotherVersionOrAnotherOwnerIsSaid) {
    for (const char* pragma : {"user_version = 0", "user_version = 999", "user_version = -5", "user_version = 1",
                               "application_id = 7", "application_id = 0"}) {
        fresh_theirs();
        ASSERT_TRUE(spoil(std::string("PRAGMA ") + pragma));
        take_in(pragma);
        EXPECT_EQ(refused, 1) << pragma;
        refused = 0;
    }
    fresh_theirs();
    ASSERT_TRUE(spoil("DROP TABLE lap; CREATE VIEW lap AS SELECT * FROM lap"));
    take_in("a view in the place of a table");
    fresh_theirs();
    ASSERT_TRUE(spoil("CREATE TRIGGER t AFTER UPDATE ON session BEGIN DELETE FROM lap; END"));
    take_in("a trigger");
}
