// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/platform/files.h"

#include <gtest/gtest.h>

#include <chrono>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace lapwright::platform {
namespace {

namespace fs = std::filesystem;

// With letters that are no ASCII in every name.
class Files : public testing::Test {
  protected:
    Files() { fs::create_directories(folder); }
    ~Files() override { fs::remove_all(folder); }

    [[nodiscard]] std::string file(const std::string& name) const { return (folder / name).string(); }
    static std::string content(const std::string& path) {
        std::ostringstream text;
        text << std::ifstream(path, std::ios::binary).rdbuf();
        return text.str();
    }

    fs::path folder = fs::temp_directory_path() /
                      ("lapwright-\xC3\xA4-" + std::string(static_cast<std::size_t>(process_id() % 50), 'p'));
};

TEST_F(Files, ANewFileIsWholeAndTakesNoOthersPlace) {
    const std::string bytes("a\r\nb\n\0c", 7);
    ASSERT_FALSE(write_new(file("\xC3\xBC.txt"), bytes));
    EXPECT_EQ(content(file("\xC3\xBC.txt")), bytes);
    EXPECT_EQ(write_new(file("\xC3\xBC.txt"), "other"), std::errc::file_exists);
    EXPECT_EQ(content(file("\xC3\xBC.txt")), bytes);
    EXPECT_TRUE(write_new(file("no/such/folder"), "x"));
}

TEST_F(Files, ReplacingIsOneStep) {
    ASSERT_FALSE(write_new(file("new"), "new"));
    ASSERT_FALSE(write_new(file("old"), "old"));
    EXPECT_FALSE(flush(file("new")));
    EXPECT_FALSE(replace(file("new"), file("old")));
    EXPECT_FALSE(flush_folder(folder.string()));
    EXPECT_EQ(content(file("old")), "new");
    EXPECT_FALSE(fs::exists(file("new")));
    EXPECT_TRUE(replace(file("new"), file("old")));
    EXPECT_TRUE(flush(file("none")));
}

TEST_F(Files, AFileIsReadFromAnywhere) {
    ASSERT_FALSE(write_new(file("data"), "0123456789"));
    const ReadableFile data(file("data"));
    ASSERT_EQ(data.outcome(), ReadableFile::Outcome::good);
    EXPECT_EQ(data.size(), 10U);
    std::string piece(4, ' ');
    ASSERT_TRUE(data.read(3, piece.data(), piece.size()));
    EXPECT_EQ(piece, "3456");
    ASSERT_TRUE(data.read(0, piece.data(), piece.size()));
    EXPECT_EQ(piece, "0123");
    EXPECT_FALSE(data.read(7, piece.data(), piece.size()));
    EXPECT_EQ(ReadableFile(file("none")).outcome(), ReadableFile::Outcome::not_readable);
    EXPECT_EQ(ReadableFile(folder.string()).outcome(), ReadableFile::Outcome::no_file_of_data);
}

TEST_F(Files, AStampChangesWithTheFile) {
    EXPECT_FALSE(stamp_of(file("data")));
    ASSERT_FALSE(write_new(file("data"), "0123"));
    const auto before = stamp_of(file("data"));
    ASSERT_TRUE(before);
    EXPECT_EQ(before->size, 4);
    fs::last_write_time(file("data"), fs::last_write_time(file("data")) + std::chrono::seconds(1));
    EXPECT_EQ(stamp_of(file("data"))->changed_ns - before->changed_ns, 1'000'000'000);
    EXPECT_TRUE(may_write(file("data")));
    EXPECT_TRUE(may_write(folder.string()));
    EXPECT_FALSE(may_write(file("none")));
    EXPECT_FALSE(is_locked(file("data"), 0, 100));
    EXPECT_FALSE(is_locked(file("none"), 0, 100));
}

} // namespace
} // namespace lapwright::platform
