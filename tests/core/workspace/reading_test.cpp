// SPDX-License-Identifier: GPL-3.0-or-later
// A session is the same from its file, from a copy of it, and out of the book.
#include "core/workspace/reading.h"

#include "core/book/book_fixture.h"
#include "core/book/search.h"
#include "core/workspace/book_connection.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

using namespace lapwright;
using namespace lapwright::workspace;

namespace {

const std::string sample = TEST_SOURCE_DIR "/../sample-sessions/plover-saturday-2.csv";

} // namespace

TEST(Reading, IsOneSessionFromItsFileFromACopyAndOutOfTheBook) {
    const book::Folder folder;
    const std::string copy = folder.file("copy.csv");
    std::filesystem::copy_file(sample, copy);
    std::ofstream(folder.file("copy.setup.json")) << R"({"driver": "Wren Alder"})";
    ReadingOptions options;
    options.book_file = folder.file("book.sqlite");
    const auto read = read_session(sample, options);
    ASSERT_TRUE(read);
    const auto read_copy = read_session(copy, options);
    ASSERT_TRUE(read_copy);
    EXPECT_EQ(key_of(**read), key_of(**read_copy));
    EXPECT_EQ((*read_copy)->source.file_name, "copy.csv");
    EXPECT_EQ((*read_copy)->recording->driver, "Wren Alder") << "by the setup sheet beside it";
    ReadingOptions said = options;
    said.setup = car::SetupSheet{};
    EXPECT_EQ((*read_session(copy, said))->recording->driver, "") << "the file itself names nobody";

    BookConnection book(options.book_file);
    ASSERT_TRUE(book.open());
    ASSERT_TRUE(book.keep({copy, *read_copy}));
    const auto summaries = book::search(book.book());
    ASSERT_EQ(summaries->size(), 1U);
    const auto from_book = read_session(summaries->front().id, options);
    ASSERT_TRUE(from_book);
    EXPECT_EQ(key_of(**from_book), key_of(**read));
    EXPECT_EQ((*from_book)->recording->driver, "Wren Alder");
    ASSERT_EQ((*from_book)->laps.size(), (*read)->laps.size());
    for (std::size_t i = 0; i < (*read)->laps.size(); ++i)
        EXPECT_EQ((*from_book)->laps[i].time_s(), (*read)->laps[i].time_s());
}

TEST(Reading, WhatCannotBeReadIsASentence) {
    EXPECT_FALSE(read_session(std::string("/nowhere/run.csv"), {}));
    EXPECT_FALSE(read_session(book::SessionId{1}, {})) << "there is no book";
    const book::Folder folder;
    ReadingOptions options;
    options.book_file = folder.file("book.sqlite");
    BookConnection book(options.book_file);
    ASSERT_TRUE(book.open());
    EXPECT_FALSE(read_session(book::SessionId{99}, options));
    EXPECT_FALSE(read_session(options.book_file, options)) << "the book itself is no session";
}
