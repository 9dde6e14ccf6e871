// SPDX-License-Identifier: GPL-3.0-or-later
// What is too large is refused in a sentence, and what is hostile costs no more than itself.
#include "core/import/formats/import.h"
#include "core/import/text/limits.h"

#include "core/base/number_text.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <random>
#include <string>

#if defined(__linux__)
#include <sys/resource.h>
#endif

namespace lapwright::import {
namespace {

std::string row_of(std::size_t columns, const std::string& cell) {
    std::string row;
    for (std::size_t i = 0; i < columns; ++i)
        row += (i > 0 ? "," : "") + cell;
    return row + "\n";
}

TEST(Limits, TooManyColumnsAreRefused) {
    const std::string text =
        row_of(max_columns + 10, "speed") + row_of(max_columns + 10, "1") + row_of(max_columns + 10, "2");
    const auto result = import_bytes(text, "wide.csv");
    ASSERT_FALSE(result.ok());
    EXPECT_EQ(result.error().code, base::ErrorCode::not_a_table);
    EXPECT_NE(base::one_line(result.error()).find("4096"), std::string::npos);
}

TEST(Limits, ALineBeyondTheLongestIsRefused) {
    std::string text = "time (s),speed (m/s)\n0.0,1\n0.1,2\n0.2,3\n";
    text += std::string(4 * longest_line_bytes, '7') + "\n0.3,4\n";
    const auto result = import_bytes(text, "long.csv");
    ASSERT_FALSE(result.ok());
    EXPECT_NE(base::one_line(result.error()).find("longer than 1 MiB"), std::string::npos);
}

TEST(Limits, ALongLineWithinThemCostsThatLine) {
    std::string text = "time (s),speed (m/s)\n0.0,1\n0.1,2\n0.2,3\n";
    text += std::string(longest_line_bytes / 2, '7') + "\n0.3,4\n";
    const auto result = import_bytes(text, "long.csv");
    ASSERT_TRUE(result.ok()) << base::one_line(result.error());
    EXPECT_EQ(result->find(recording::Meaning::speed)->size(), 4U);
}

TEST(Limits, AFolderIsNoFile) {
    const auto result = import_file(TEST_SOURCE_DIR);
    ASSERT_FALSE(result.ok());
    EXPECT_EQ(result.error().code, base::ErrorCode::file_not_readable);
}

// A million opening quotes, each in search of its end.
TEST(Limits, QuotesThatAreNeverClosedTakeNoLonger) {
    std::string text = "time (s),note,speed (m/s)\n";
    for (int i = 0; i < 100'000; ++i)
        text += std::to_string(i) + ",\"open,1\n";
    const auto result = import_bytes(text, "quotes.csv");
    ASSERT_TRUE(result.ok());
    EXPECT_EQ(result->find(recording::Meaning::speed)->size(), 100'000U);
}

#if defined(__linux__) && !defined(__SANITIZE_ADDRESS__) // which reserves all addresses
// Twelve times the file and 300 MB, in a process that gets no more.
void import_within_bound(const std::string& bytes) {
    std::size_t pages = 0;
    std::ifstream("/proc/self/statm") >> pages;
    const rlim_t bound = pages * 4096U + 12U * bytes.size() + 300'000'000U;
    const rlimit limit{bound, bound};
    setrlimit(RLIMIT_AS, &limit);
    Options options;
    options.threads = 2;
    const auto result = import_bytes(bytes, "drawn");
    const bool starved = !result.ok() && result.error().what.find("memory") != std::string::npos;
    std::_Exit(starved ? 1 : 0);
}

TEST(Limits, MemoryStaysWithinTwelveTimesTheFileAnd300MB) {
    std::mt19937_64 engine(11);
    const std::string header = "time (s)," + row_of(80, "channel");
    std::string line_ends = header + row_of(81, "1") + row_of(81, "2") + row_of(81, "3") + row_of(81, "4");
    line_ends += std::string(20'000'000, '\n');
    std::string early = "time (s),a,b,c,d,e,f,g\n";
    std::string blanks = header;
    std::string points = "<gpx><trk><trkseg>";
    for (int i = 0; i < 60'000; ++i) {
        const std::string time = base::fixed_text(0.01 * i, 2);
        early += time + (engine() % 2 == 0 ? ",1\n" : ",1,2\n");
        if (i % 2 == 0) {
            blanks += time;
            for (int k = 0; k < 80; ++k)
                blanks += engine() % 8 == 0 ? "," : ",1";
            blanks += '\n';
        }
        points += "<trkpt lat=\"52\" lon=\"1\"><time>2026-05-16T10:00:" + time.substr(0, 2) + "Z</time></trkpt>";
    }
    for (const std::string& bytes : {line_ends, early, blanks, points})
        EXPECT_EXIT(import_within_bound(bytes), testing::ExitedWithCode(0), "") << bytes.substr(0, 60);
}
#endif

} // namespace
} // namespace lapwright::import
