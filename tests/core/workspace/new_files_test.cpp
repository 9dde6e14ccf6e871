// SPDX-License-Identifier: GPL-3.0-or-later
// Files that nobody has opened yet: told by what is in them, the newest first, whatever else lies beside them.
#include "core/workspace/new_files.h"

#include "core/book/book_fixture.h"
#include "tests/fixture/without_rights.h"

#include <chrono>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <random>
#include <sys/stat.h>

using namespace lapwright;
using namespace lapwright::workspace;

namespace {

namespace fs = std::filesystem;

std::string recording_text(double first_s, int rows = 60) {
    std::string text = "time (s),speed (km/h),latitude (deg),longitude (deg)\n";
    for (int i = 0; i < rows; ++i)
        text += std::to_string(first_s + 0.1 * i) + ",90.0,54.9" + std::to_string(100000 + 9 * i) + ",2.35\n";
    return text;
}

class NewFilesIn : public testing::Test {
  protected:
    std::string write(const std::string& name, const std::string& content, int age_s) {
        const fs::path path = folder.file(name);
        fs::create_directories(path.parent_path());
        std::ofstream(path, std::ios::binary) << content;
        fs::last_write_time(path, fs::file_time_type::clock::now() - std::chrono::seconds(age_s));
        return path.string();
    }
    [[nodiscard]] std::vector<std::string> names(const std::vector<SearchedFolder>& folders,
                                                 const std::set<KnownFile>& known = {}, std::size_t most = 50) const {
        std::vector<std::string> found;
        for (const NewFile& file : new_recordings(folders, known, most))
            found.push_back(fs::path(file.path).filename().string());
        return found;
    }
    [[nodiscard]] std::string root() const { return fs::path(folder.file("x")).parent_path().string(); }

    const book::Folder folder;
};

using Names = std::vector<std::string>;

} // namespace

TEST_F(NewFilesIn, TheNewestFirstAndOnlyRecordings) {
    write("old.csv", recording_text(0.0), 500);
    write("new.dat", recording_text(0.0), 10);
    write("between.log", recording_text(0.0), 100);
    write("letter.txt", std::string(3000, 'x') + "\nDear reader, the tyres are in the van.\n", 1);
    write("picture.csv", std::string(4000, '\0'), 1);
    write("setup.json", "{\"driver\": \"Wren Alder\", \"notes\": \"" + std::string(300, 'n') + "\"}", 1);
    write(".hidden.csv", recording_text(0.0), 1);
    write("empty.csv", "", 1);
    EXPECT_EQ(names({{root()}}), (Names{"new.dat", "between.log", "old.csv"}));
    EXPECT_EQ(names({{root()}}, {}, 2), (Names{"new.dat", "between.log"}));
    EXPECT_EQ(names({{root()}, {root()}}), (Names{"new.dat", "between.log", "old.csv"})) << "each once";
}

TEST_F(NewFilesIn, WhatIsKnownByNameAndSizeIsNotNew) {
    const std::string path = write("one.csv", recording_text(0.0), 10);
    write("two.csv", recording_text(0.0), 20);
    EXPECT_EQ(names({{root()}}, {{"one.csv", fs::file_size(path)}}), Names{"two.csv"});
    EXPECT_EQ(names({{root()}}, {{"one.csv", 7}}), (Names{"one.csv", "two.csv"})) << "another file of its name";
}

TEST_F(NewFilesIn, FoldersAreSearchedAsDeepAsAskedAndOldFilesWhereAsked) {
    write("a.csv", recording_text(0.0), 100'000);
    write("logs/b.csv", recording_text(0.0), 20);
    write("logs/day/c.csv", recording_text(0.0), 10);
    EXPECT_EQ(names({{root()}}), Names{"a.csv"});
    EXPECT_EQ(names({{root(), 1}}), (Names{"b.csv", "a.csv"}));
    EXPECT_EQ(names({{root(), 5}}), (Names{"c.csv", "b.csv", "a.csv"}));
    const double hour_ago_unix_s =
        std::chrono::duration<double>(std::chrono::system_clock::now().time_since_epoch()).count() - 3600.0;
    EXPECT_EQ(names({{root(), 5, hour_ago_unix_s}}), (Names{"c.csv", "b.csv"}));
}

TEST_F(NewFilesIn, WhatCannotBeReadIsPassedOver) {
    write("good.csv", recording_text(0.0), 10);
    const std::string closed = write("closed.csv", recording_text(0.0), 5);
    write("locked/inner.csv", recording_text(0.0), 5);
    fs::create_symlink("/nowhere/at/all.csv", folder.file("dangling.csv"));
    ASSERT_EQ(::mkfifo(folder.file("pipe.csv").c_str(), 0600), 0);
    fs::permissions(closed, fs::perms::none);
    fs::permissions(folder.file("locked"), fs::perms::none);
    fs::permissions(root(), fs::perms::all);
    {
        const fixture::WithoutRights without_rights;
        EXPECT_EQ(names({{root(), 3}}), Names{"good.csv"});
        EXPECT_TRUE(names({{"/nowhere/at/all"}}).empty());
    }
    fs::permissions(folder.file("locked"), fs::perms::owner_all);
}

TEST_F(NewFilesIn, OfFilesCutAnywhereAndOfBytesAtRandomNothingBreaks) {
    std::mt19937 draw(20261130);
    const std::string whole = recording_text(0.0, 4000);
    for (int i = 0; i < 40; ++i) {
        std::string content = whole.substr(0, 300 + draw() % (whole.size() - 300));
        for (int flips = static_cast<int>(draw() % 4); flips > 0; --flips)
            content[draw() % content.size()] = static_cast<char>(draw() % 256);
        const std::string path = write("cut.csv", content, 1);
        const auto size = fs::file_size(path);
        (void)new_recordings({{root()}}, {}, 5);
        EXPECT_EQ(fs::file_size(path), size);
    }
    write("cut.csv", whole, 1);
    EXPECT_EQ(names({{root()}}), Names{"cut.csv"}) << "longer than what is looked into";
}
