// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/whole_file.h"

#include <csignal>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <iterator>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

namespace lapwright::base {
namespace {

namespace fs = std::filesystem;

class WholeFile : public testing::Test {
  protected:
    WholeFile() {
        std::string pattern = (fs::temp_directory_path() / ("lapwright-" + std::string(6, 'X'))).string();
        folder = mkdtemp(pattern.data());
    }
    ~WholeFile() override { fs::remove_all(folder); }

    [[nodiscard]] std::string path(const char* name) const { return (folder / name).string(); }
    [[nodiscard]] std::string content(const char* name) const {
        std::ifstream stream(folder / name, std::ios::binary);
        return {std::istreambuf_iterator<char>(stream), {}};
    }
    [[nodiscard]] std::ptrdiff_t entries() const {
        return std::distance(fs::directory_iterator(folder), fs::directory_iterator());
    }

    fs::path folder;
};

TEST_F(WholeFile, ReplacesAnOlderOneAndLeavesNothingBeside) {
    ASSERT_TRUE(write_whole_file(path("a"), "older", "the table"));
    ASSERT_TRUE(write_whole_file(path("a"), std::string("new\0\n", 5), "the table"));
    EXPECT_EQ(content("a"), std::string("new\0\n", 5));
    EXPECT_EQ(entries(), 1);
}

TEST_F(WholeFile, AFullDiskKeepsTheOlderOne) {
    ASSERT_TRUE(write_whole_file(path("a"), "older", "the table"));
    rlimit before{};
    getrlimit(RLIMIT_FSIZE, &before);
    const auto handler = std::signal(SIGXFSZ, SIG_IGN);
    const rlimit small{1000, before.rlim_max};
    setrlimit(RLIMIT_FSIZE, &small);
    const auto written = write_whole_file(path("a"), std::string(5000, 'x'), "the table");
    setrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, handler);
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::file_not_writable);
    EXPECT_THAT(written.error().what, testing::StartsWith("the table cannot be written: "));
    EXPECT_EQ(content("a"), "older");
    EXPECT_EQ(entries(), 1);
}

TEST_F(WholeFile, FoldersPipesAndMissingPlacesAreRefused) {
    ASSERT_EQ(mkfifo(path("pipe").c_str(), 0600), 0);
    EXPECT_FALSE(write_whole_file(path("pipe"), "x", "it"));
    EXPECT_TRUE(fs::is_fifo(path("pipe")));
    EXPECT_FALSE(write_whole_file(folder.string(), "x", "it"));
    EXPECT_FALSE(write_whole_file(path("missing/a"), "x", "it"));
    EXPECT_EQ(entries(), 1);
}

TEST_F(WholeFile, FollowsALink) {
    ASSERT_TRUE(write_whole_file(path("a"), "older", "it"));
    fs::create_symlink(path("a"), path("link"));
    ASSERT_TRUE(write_whole_file(path("link"), "new", "it"));
    EXPECT_TRUE(fs::is_symlink(path("link")));
    EXPECT_EQ(content("a"), "new");
}

} // namespace
} // namespace lapwright::base
