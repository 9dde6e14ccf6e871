// SPDX-License-Identifier: GPL-3.0-or-later
// The log takes words of the source and numbers, nothing else, and stays small.
#include "core/workspace/event_log.h"

#include "core/book/book_fixture.h"

#include <concepts>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <regex>
#include <thread>

using namespace lapwright;
using namespace lapwright::workspace;

namespace {

std::string content(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

} // namespace

// What is only known while the program runs does not become words of the log.
static_assert(!std::convertible_to<std::string, FixedWords>);
static_assert(!std::convertible_to<std::string_view, FixedWords>);
static_assert(!std::default_initializable<FixedWords>);

TEST(TheLog, IsALineAnEventWithItsMoment) {
    const book::Folder folder;
    {
        EventLog log(folder.file("state/log"));
        log.add("a session was read", {{"channels", 12}, {"seconds", 0.25}, {"laps", NAN}, {"without a clock"}});
        log.add("the window was closed");
    }
    const std::regex lines(
        R"(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ a session was read, channels 12, seconds 0\.[23], laps none, without a clock
\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ the window was closed
)");
    EXPECT_TRUE(std::regex_match(content(folder.file("state/log/lapwright.log")), lines))
        << content(folder.file("state/log/lapwright.log"));
    EventLog(folder.file("state/log")).add("again");
    EXPECT_NE(content(folder.file("state/log/lapwright.log")).find("closed\n"), std::string::npos) << "it goes on";
}

TEST(TheLog, IsStartedAnewBeforeItGrowsBeyondItsSizeAndKeepsTheLastOnes) {
    const book::Folder folder;
    EventLog log(folder.path().string(), 1000);
    for (int i = 0; i < 400; ++i)
        log.add("event", {{"number", static_cast<double>(i)}});
    int files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
        EXPECT_LE(entry.file_size(), 1000U);
        ++files;
    }
    EXPECT_EQ(files, 1 + EventLog::kept_files);
    EXPECT_NE(content(folder.file("lapwright.log")).find("number 399"), std::string::npos);
    EXPECT_NE(content(folder.file("lapwright.log.3")).find("number"), std::string::npos);
}

TEST(TheLog, WithoutAFolderOrWhereNothingCanBeWrittenDoesNothing) {
    EventLog("").add("event");
    const book::Folder folder;
    std::ofstream(folder.file("a file")) << "x";
    EventLog log(folder.file("a file"));
    log.add("event");
    EXPECT_EQ(content(folder.file("a file")), "x");
}

TEST(TheLog, TakesLinesOfManyThreadsWhole) {
    const book::Folder folder;
    EventLog log(folder.path().string());
    std::vector<std::thread> threads;
    for (int t = 0; t < 4; ++t)
        threads.emplace_back([&] {
            for (int i = 0; i < 200; ++i)
                log.add("event", {{"number", static_cast<double>(i)}});
        });
    for (auto& thread : threads)
        thread.join();
    const std::string text = content(folder.file("lapwright.log"));
    EXPECT_EQ(std::ranges::count(text, '\n'), 800);
    const std::regex line(R"(\S+Z event, number \d+)");
    std::istringstream lines(text);
    for (std::string one; std::getline(lines, one);)
        EXPECT_TRUE(std::regex_match(one, line)) << one;
}
