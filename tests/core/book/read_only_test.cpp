// SPDX-License-Identifier: GPL-3.0-or-later
// A book that lies where nothing can be written is read, and says so to whoever edits it.
#include "core/book/book.h"
#include "core/book/book_fixture.h"
#include "core/book/database.h"
#include "core/book/exchange.h"
#include "core/book/pairings.h"
#include "core/book/search.h"
#include "core/book/season.h"
#include "fixture/without_rights.h"

#include <gtest/gtest.h>

namespace lapwright::book {
namespace {

namespace fs = std::filesystem;
using fixture::WithoutRights;

// May be read by all, and written by nobody.
class ReadOnlyFolder {
  public:
    explicit ReadOnlyFolder(const Folder& folder) : path_(folder.path()) {
        for (const auto& entry : fs::directory_iterator(path_))
            fs::permissions(entry, fs::perms(0444));
        fs::permissions(path_, fs::perms(0555));
    }
    ReadOnlyFolder(const ReadOnlyFolder&) = delete;
    ReadOnlyFolder& operator=(const ReadOnlyFolder&) = delete;
    ~ReadOnlyFolder() { fs::permissions(path_, fs::perms(0755)); }

  private:
    fs::path path_;
};

std::vector<std::string> names_in(const Folder& folder) {
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(folder.path()))
        names.push_back(entry.path().filename().string());
    std::ranges::sort(names);
    return names;
}

void expect_read_and_not_edited(const std::string& path, const OpenOptions& options) {
    Book book = open_book(path, options);
    EXPECT_TRUE(book.read_only());
    ASSERT_EQ(search(book)->size(), 2U);
    const SessionId id = search(book)->front().id;
    EXPECT_EQ(season_of_track(book, "Ternbank")->size(), 2U);
    EXPECT_TRUE(pairing_list(book)->empty());
    EXPECT_FALSE(read_recording(book, id)->channels.empty());
    EXPECT_TRUE(book.check()->whole());
    const auto refused = remove_session(book, id);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, base::ErrorCode::file_not_writable);
    EXPECT_EQ(base::one_line(refused.error()),
              path + ": the book cannot be written here: nothing was changed — copy it to a "
                     "folder that you may write, and open the copy");
    EXPECT_EQ(search(book)->size(), 2U);
}

void begin_with_two_sessions(const std::string& path) {
    Book book = open_book(path);
    add_named(book, "first", {.track = "Ternbank"});
    add_named(book, "second", {.track = "Ternbank"});
}

TEST(ReadOnlyBook, OnePutWhereNothingCanBeWrittenIsRead) {
    const Folder folder;
    const Folder elsewhere;
    fs::permissions(elsewhere.path(), fs::perms(0777));
    const std::string path = folder.file("a book? 50 % of it"); // its name must not become part of a URI
    begin_with_two_sessions(path);
    const ReadOnlyFolder closed(folder);
    const WithoutRights meanwhile;
    expect_read_and_not_edited(path, {});
    {
        Book book = open_book(path);
        EXPECT_TRUE(export_book(book, elsewhere.file("copy")));
        Book theirs = open_book(elsewhere.file("theirs"));
        const auto merged = merge_from(theirs, path);
        ASSERT_TRUE(merged.ok()) << base::one_line(merged.error());
        EXPECT_EQ(merged->sessions, 2);
        EXPECT_EQ(search(theirs)->size(), 2U);
    }
    EXPECT_EQ(names_in(folder), std::vector<std::string>{"a book? 50 % of it"});
    EXPECT_FALSE(Book::open(folder.file("another")).ok());
}

TEST(ReadOnlyBook, AFileWithoutWritePermissionIsReadAndNothingIsLaidBesideIt) {
    const Folder folder;
    const std::string path = folder.file("book");
    begin_with_two_sessions(path);
    fs::permissions(folder.path(), fs::perms(0777));
    fs::permissions(path, fs::perms(0444));
    const WithoutRights meanwhile;
    expect_read_and_not_edited(path, {});
    EXPECT_EQ(names_in(folder), std::vector<std::string>{"book"});
}

TEST(ReadOnlyBook, EditsThatAreStillInALogAreNotPassedOver) {
    const Folder folder;
    const std::string path = folder.file("book");
    {
        Book book = open_book(path);
        add_named(book, "first");
        for (const char* const ending : {"", "-wal"}) // as a stick that was pulled out has it
            fs::copy_file(path + ending, folder.file("pulled") + ending);
    }
    const auto refused = Book::open(folder.file("pulled"), {.read_only = true});
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, base::ErrorCode::book_not_usable);
    EXPECT_NE(refused.error().what.find("in a log beside it"), std::string::npos);
    Book whole = open_book(folder.file("pulled"));
    EXPECT_EQ(search(whole)->size(), 1U);
}

TEST(ReadOnlyBook, WhatAnotherProgramWritesMeanwhileIsNoMixture) {
    const Folder folder;
    const std::string path = folder.file("book");
    begin_with_two_sessions(path);
    Book reader = open_book(path, {.read_only = true});
    EXPECT_EQ(search(reader)->size(), 2U);
    {
        Book writer = open_book(path);
        add_named(writer, "third");
        const auto during = search(reader);
        ASSERT_FALSE(during.ok());
        EXPECT_NE(during.error().what.find("another program is writing"), std::string::npos);
        // Whoever comes now reads by the writer's locks.
        Book beside = open_book(path, {.read_only = true});
        EXPECT_EQ(search(beside)->size(), 3U);
    }
    EXPECT_FALSE(search(reader).ok());
    Book again = open_book(path, {.read_only = true});
    EXPECT_EQ(search(again)->size(), 3U);
}

TEST(ReadOnlyBook, AnOlderOneSaysThatItCannotBeBroughtUpToDate) {
    const Folder folder;
    const std::string path = folder.file("book");
    begin_with_two_sessions(path);
    std::vector<Migration> steps(known_migrations().begin(), known_migrations().end());
    steps.push_back({steps.back().number + 1, "CREATE TABLE helmet (id INTEGER PRIMARY KEY)"});
    const auto old = Book::open(path, {.migrations = steps, .read_only = true});
    ASSERT_FALSE(old.ok());
    EXPECT_NE(old.error().what.find("older version"), std::string::npos);
    std::ofstream(folder.file("empty")) << "";
    EXPECT_FALSE(Book::open(folder.file("empty"), {.read_only = true}).ok());
    EXPECT_FALSE(Book::open(folder.file("none"), {.may_begin = false}).ok());
    EXPECT_FALSE(fs::exists(folder.file("none")));
}

} // namespace
} // namespace lapwright::book
