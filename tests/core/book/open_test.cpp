// SPDX-License-Identifier: GPL-3.0-or-later
// Opening: a new book, an older schema, a newer one, a stranger's file, and two windows on one book.
#include "core/book/book.h"

#include "core/book/book_fixture.h"
#include "core/book/database.h"
#include "core/book/migrate.h"
#include "core/book/notes.h"
#include "core/book/search.h"

#include <gtest/gtest.h>

#include <array>
#include <sqlite3.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace lapwright::book {
namespace {

// A step that builds a table anew, which is the hardest that SQLite asks for.
constexpr const char* const next_step = R"(
    CREATE TABLE session_new AS SELECT * FROM session;
    ALTER TABLE note ADD COLUMN weight REAL NOT NULL DEFAULT 1.5;
    DROP TABLE session_new;
    CREATE TABLE helmet (id INTEGER PRIMARY KEY, name TEXT NOT NULL);
    INSERT INTO helmet (name) SELECT name FROM driver;
)";

std::vector<Migration> with_next(const char* sql) {
    std::vector<Migration> steps(known_migrations().begin(), known_migrations().end());
    steps.push_back({steps.back().number + 1, sql});
    return steps;
}

std::string next_copy(const std::string& path) {
    return path + ".schema-" + base::integer_text(known_migrations().back().number);
}

TEST(Migrations, AReleasedStepIsNeverChanged) {
    const std::array released{"02e7f86acbcc4cc0b1cf87c1b707f42a66ef269bd296b3ae1a7cc09e3f02a08c",
                              "8340f19461ff3700ec01ca181b1f8e08b4fb58f3f9458fbaafef6e9fe444960b",
                              "4e1de2c76b0a961b2623ef2d95c5e883809ff516802d9b97380506c89f2d92ba",
                              "970e4c0104cb39bd0ca8655f918ebe2d96a8798ec49adf4d116d4195baaac484",
                              "0ede714aaf578b5fd420f19aecf2828a8afd9a658c5b7c20d2e656b509dfedb7",
                              "d3e7f6be1f5c71d642639fb10a949b3d29eb0257e0f945dcc6fdd86e5fd9a5c0",
                              "86f4cdd44b460229bd403478998f0ddfa80a4cad3cc6686754dd0bb995cf023c",
                              "5cc6b5f7db8dae6e8b795b066e513a2aa3ca9f980079a40296fea97d23e02dab",
                              "5233427b7077148ca96fddfe86fecc4cb5a904e447d47590b66516f6a578fc29",
                              "80280ec4e4f83b439bd8cd5a4f6992a9c688ceac68408f620a9d651ac104c0b8",
                              "93aa57d4a609153bdf205f5beb0fcb3b6c036515011a9d4431a2d3022bd52ca9",
                              "18618dfeca0ae80c41998fa844d3e2a7116001474022332869a64cc41f09f827"};
    ASSERT_EQ(known_migrations().size(), released.size());
    for (std::size_t i = 0; i < released.size(); ++i)
        EXPECT_EQ(hex_text(sha256_of(known_migrations()[i].sql)), released[i]);
}

// A book as the first n steps made it, with one row in it.
TEST(Migrations, ABookOfEveryReleasedSchemaOpens) {
    for (std::size_t n = 1; n <= known_migrations().size(); ++n) {
        const Folder folder;
        const std::string path = folder.file("book");
        sqlite3* handle = nullptr;
        ASSERT_EQ(sqlite3_open(path.c_str(), &handle), SQLITE_OK);
        std::string sql;
        for (const Migration& step : known_migrations().first(n))
            sql += std::string(step.sql);
        sql += "INSERT INTO driver (name) VALUES ('Wren Alder');"
               "INSERT INTO session (checksum, file_name, size_bytes, driver_id, conditions, tyre, setup, setup_words, "
               "duration_s, file_driver, file_car, file_track) VALUES (zeroblob(32), 'old.csv', 5, 1, 'dry', '', '{}', "
               "'', 12.5, '', '', ''); PRAGMA application_id = " +
               base::integer_text(book_mark) +
               "; PRAGMA user_version = " + base::integer_text(static_cast<std::int64_t>(n));
        ASSERT_EQ(sqlite3_exec(handle, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(handle);
        sqlite3_close(handle);

        Book book = open_book(path);
        ASSERT_EQ(search(book)->size(), 1U);
        EXPECT_EQ(search(book)->at(0).driver, "Wren Alder");
        EXPECT_TRUE(book.check()->whole());
        EXPECT_EQ(std::filesystem::exists(path + ".schema-" + base::integer_text(static_cast<std::int64_t>(n))),
                  n < known_migrations().size());
    }
}

TEST(Migrations, AStepKeepsACopyOfTheBookBeforeIt) {
    const Folder folder;
    const std::string path = folder.file("book");
    SessionId id{};
    {
        Book book = open_book(path);
        id = add_named(book, "a", {"Wren Alder", "", "", {}, "", {}});
        static_cast<void>(put_note(book, {"", {.session = id}, "loose", 1.0}));
    }
    const auto steps = with_next(next_step);
    {
        auto book = Book::open(path, {.migrations = steps, .wait_s = 5.0});
        ASSERT_TRUE(book.ok()) << base::one_line(book.error());
        Book now = std::move(book).value();
        EXPECT_EQ(notes_of_session(now, id)->size(), 1U);
        EXPECT_EQ(now.database().one_whole("SELECT count(*) FROM helmet"), 1);
        EXPECT_TRUE(now.check()->whole());
    }
    Book before = open_book(next_copy(path));
    EXPECT_EQ(search(before)->at(0).notes, 1);
    expect_same(*read_recording(before, id), small_recording(1, 40));

    const auto old = Book::open(path);
    ASSERT_FALSE(old.ok());
    EXPECT_NE(old.error().what.find("newer version"), std::string::npos);
}

TEST(Migrations, AStepThatFailsChangesNothing) {
    const Folder folder;
    const std::string path = folder.file("book");
    {
        Book book = open_book(path);
        add_named(book, "a");
    }
    const auto steps = with_next("ALTER TABLE note ADD COLUMN weight REAL; CREATE TABLE nonsense (");
    EXPECT_FALSE(Book::open(path, {.migrations = steps, .wait_s = 5.0}).ok());
    EXPECT_FALSE(std::filesystem::exists(next_copy(path)));
    Book book = open_book(path);
    EXPECT_EQ(search(book)->size(), 1U);
    EXPECT_FALSE(put_note(book, {"", {}, "", 0.0}).ok());
    EXPECT_TRUE(book.check()->whole());
}

TEST(Open, AStrangersFileIsLeftAlone) {
    const Folder folder;
    const std::string text = folder.file("text");
    std::ofstream(text, std::ios::binary) << std::string(9000, 'x');
    EXPECT_FALSE(Book::open(text).ok());
    EXPECT_EQ(std::filesystem::file_size(text), 9000U);

    const std::string other = folder.file("other");
    sqlite3* handle = nullptr;
    ASSERT_EQ(sqlite3_open(other.c_str(), &handle), SQLITE_OK);
    sqlite3_exec(handle, "CREATE TABLE session (id)", nullptr, nullptr, nullptr);
    sqlite3_close(handle);
    const auto book = Book::open(other);
    ASSERT_FALSE(book.ok());
    EXPECT_EQ(book.error().what, "this file is no book");
    EXPECT_EQ(book.error().code, base::ErrorCode::book_not_usable);
    EXPECT_FALSE(Book::open(folder.file("no/such/folder/book")).ok());
    EXPECT_FALSE(Book::open(folder.path().string()).ok());
}

TEST(TwoWindows, SeeEachOthersEdits) {
    const Folder folder;
    Book one = open_book(folder.file("book"));
    Book two = open_book(folder.file("book"));
    const SessionId id = add_named(one, "a");
    EXPECT_EQ(search(two)->at(0).id, id);
    ASSERT_TRUE(remove_session(two, id));
    EXPECT_TRUE(search(one)->empty());
}

TEST(TwoWindows, AnEditWaitsForTheOthersAndGivesUpWithASentence) {
    const Folder folder;
    Book one = open_book(folder.file("book"));
    auto opened = Book::open(folder.file("book"), {.migrations = known_migrations(), .wait_s = 0.05});
    ASSERT_TRUE(opened.ok());
    Book two = std::move(opened).value();
    const auto edited = edit(one.database(), [&](Database&) {
        const auto added = add_session(two, source_named("a"), small_recording(), {}, {});
        ASSERT_FALSE(added.ok());
        EXPECT_EQ(added.error().what, "another window is busy with the book: nothing was changed");
        EXPECT_TRUE(search(two).ok()); // reading goes on
    });
    EXPECT_TRUE(edited);
    EXPECT_TRUE(add_session(two, source_named("a"), small_recording(), {}, {}).ok());
}

// A window reads on several connections; when one of them ends, the window has the book open still.
TEST(TwoWindows, AnotherProgramThatEndsLeavesTheLogToTheWindow) {
    const Folder folder;
    const std::string path = folder.file("book");
    std::array<int, 2> pipe{};
    ASSERT_EQ(::pipe(pipe.data()), 0);
    const pid_t other_program = ::fork(); // before anything is open: SQLite's handles must not be inherited
    ASSERT_GE(other_program, 0);
    if (other_program == 0) {
        ::close(pipe[1]);
        char go = 0;
        const bool told = ::read(pipe[0], &go, 1) == 1;
        const bool good = told && Book::open(path).ok(); // and closed again
        ::_exit(good ? 0 : 1);
    }
    ::close(pipe[0]);
    Book window = open_book(path);
    const SessionId first = add_named(window, "a");
    {
        const Book second_connection = open_book(path);
    }
    ASSERT_EQ(::write(pipe[1], "g", 1), 1);
    ::close(pipe[1]);
    int status = 0;
    ASSERT_EQ(::waitpid(other_program, &status, 0), other_program);
    EXPECT_EQ(status, 0);
    EXPECT_TRUE(std::filesystem::exists(path + "-wal")) << "the log that the window writes was taken from it";
    ASSERT_TRUE(put_note(window, {"", {.session = first}, "after", 1.0}).ok());
    const Book another = open_book(path);
    EXPECT_TRUE(window.check()->whole());
}

TEST(Book, IsNotReadAsALoggersFile) {
    const Folder folder;
    const Book book = open_book(folder.file("book"));
    const auto refusal = refuse_as_file(book.path(), (folder.path() / "." / "book").string());
    ASSERT_FALSE(refusal);
    EXPECT_EQ(refusal.error().what, "this is the book itself");
    EXPECT_TRUE(refuse_as_file(book.path(), folder.file("session.csv")));
    EXPECT_TRUE(refuse_as_file("", folder.file("book")));
}

TEST(TwoWindows, EditAtOnceAndLoseNothing) {
    const Folder folder;
    const std::string path = folder.file("book");
    SessionId id{};
    {
        Book book = open_book(path);
        id = add_named(book, "a");
    }
    constexpr int each = 25;
    const auto work = [&](const std::string& who) {
        Book book = open_book(path);
        for (int i = 0; i < each; ++i)
            EXPECT_TRUE(put_note(book, {"", {.session = id}, who + base::integer_text(i), 1.0}).ok());
    };
    std::thread other(work, "b");
    work("a");
    other.join();
    Book book = open_book(path);
    EXPECT_EQ(notes_of_session(book, id)->size(), 2U * each);
    EXPECT_TRUE(book.check()->whole());
}

TEST(TwoWindows, BeginOneBookAtOnce) {
    for (int i = 0; i < 10; ++i) {
        const Folder folder;
        const auto begin = [&] {
            const auto opened = Book::open(folder.file("book"));
            EXPECT_TRUE(opened.ok()) << base::one_line(opened.error());
        };
        std::thread other(begin);
        begin();
        other.join();
        Book book = open_book(folder.file("book"));
        EXPECT_TRUE(names(book).ok());
    }
}

} // namespace
} // namespace lapwright::book
