// SPDX-License-Identifier: GPL-3.0-or-later
// The disk is full: one clear sentence, and the book is as it was.  Once by SQLite's own limit of pages, once in a
// child process whose files may not grow (RLIMIT_FSIZE), where the write itself fails as on a full disk.
#include "core/book/book_fixture.h"
#include "core/book/database.h"
#include "core/book/exchange.h"
#include "core/book/notes.h"
#include "core/book/search.h"

#include <gtest/gtest.h>

#include <csignal>
#include <functional>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace lapwright::book {
namespace {

constexpr const char* const sentence = "the disk is full or cannot be written: nothing was changed in the book";

// Runs the body where no file may grow beyond so many bytes; what it answers must be 0.
void with_limit(std::size_t bytes, const std::function<int()>& body) {
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
        ::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{bytes, bytes};
        ::_exit(::setrlimit(RLIMIT_FSIZE, &limit) == 0 ? body() : 99);
    }
    int status = 0;
    ASSERT_EQ(::waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFEXITED(status));
    EXPECT_EQ(WEXITSTATUS(status), 0);
}

void expect_healthy(const std::string& path, std::size_t sessions) {
    Book book = open_book(path);
    EXPECT_TRUE(book.check()->whole());
    const auto found = search(book);
    ASSERT_TRUE(found.ok());
    EXPECT_EQ(found->size(), sessions);
    for (const SessionSummary& session : *found) {
        const auto recording = read_recording(book, session.id);
        ASSERT_TRUE(recording.ok()) << base::one_line(recording.error());
        EXPECT_EQ(recording->channels.size(), 5U);
    }
}

TEST(FullDisk, PagesRunOut) {
    const Folder folder;
    Book book = open_book(folder.file("book"));
    const SessionId id = add_named(book, "first");
    book.database().run("PRAGMA max_page_count = " +
                        base::integer_text(*book.database().one_whole("PRAGMA page_count") + 20));
    std::size_t added = 1;
    std::optional<base::Error> problem;
    for (int i = 0; i < 100 && !problem; ++i) {
        const auto one = add_session(book, source_named(base::integer_text(i)), small_recording(1, 2000), {}, {});
        if (one.ok())
            ++added;
        else
            problem = one.error();
    }
    ASSERT_TRUE(problem.has_value());
    EXPECT_EQ(problem->what, sentence);
    EXPECT_EQ(problem->code, base::ErrorCode::file_not_writable);
    EXPECT_EQ(search(book)->size(), added);
    EXPECT_EQ(read_laps(book, id)->size(), 5U);
    book.database().run("PRAGMA max_page_count = 1000000"); // room was made
    EXPECT_TRUE(add_session(book, source_named("after"), small_recording(1, 2000), {}, {}).ok());
    EXPECT_TRUE(book.check()->whole());
}

TEST(FullDisk, TheWriteFails) {
    const Folder folder;
    const std::string path = folder.file("book");
    {
        Book book = open_book(path);
        add_named(book, "first");
    }
    const std::size_t room = std::filesystem::file_size(path) + 120'000;
    with_limit(room, [&] {
        auto opened = Book::open(path);
        if (!opened) return 1;
        Book book = std::move(opened).value();
        for (int i = 0; i < 200; ++i) {
            const auto one = add_session(book, source_named(base::integer_text(i)), small_recording(1, 2000), {}, {});
            if (one.ok()) continue;
            // It goes on working: reading, and a later edit fails the same way or fits.
            const auto found = search(book);
            std::ofstream(folder.file("count")) << found->size();
            return one.error().what == sentence && found->size() > 1 ? 0 : 2;
        }
        return 3;
    });
    std::size_t count = 0;
    std::ifstream(folder.file("count")) >> count;
    expect_healthy(path, count);
}

TEST(FullDisk, AnExportLeavesNothingBehind) {
    const Folder folder;
    const std::string path = folder.file("book");
    {
        Book book = open_book(path);
        for (int i = 0; i < 8; ++i)
            static_cast<void>(add_session(book, source_named(base::integer_text(i)), small_recording(1, 5000), {}, {}));
    }
    with_limit(std::filesystem::file_size(path) / 2, [&] {
        auto book = Book::open(path);
        if (!book) return 1;
        Book open = std::move(book).value();
        const auto exported = export_book(open, folder.file("part"));
        return !exported && exported.error().code == base::ErrorCode::file_not_writable ? 0 : 2;
    });
    EXPECT_FALSE(std::filesystem::exists(folder.file("part")));
    for (const auto& entry : std::filesystem::directory_iterator(folder.path()))
        EXPECT_EQ(entry.path().string().find(".part"), std::string::npos) << entry.path();
    expect_healthy(path, 8);
}

TEST(FullDisk, AMigrationLeavesTheOldBook) {
    const Folder folder;
    const std::string path = folder.file("book");
    {
        Book book = open_book(path);
        for (int i = 0; i < 8; ++i)
            static_cast<void>(add_session(book, source_named(base::integer_text(i)), small_recording(1, 5000), {}, {}));
    }
    std::vector<Migration> steps(known_migrations().begin(), known_migrations().end());
    steps.push_back({steps.back().number + 1, "ALTER TABLE note ADD COLUMN weight REAL;"});
    with_limit(std::filesystem::file_size(path) / 2, [&] {
        const auto book = Book::open(path, {.migrations = steps, .wait_s = 1.0});
        return !book.ok() && book.error().code == base::ErrorCode::file_not_writable ? 0 : 2;
    });
    for (const auto& entry : std::filesystem::directory_iterator(folder.path()))
        EXPECT_EQ(entry.path().filename().string().find("schema"), std::string::npos) << entry.path();
    expect_healthy(path, 8);
}

} // namespace
} // namespace lapwright::book
