// SPDX-License-Identifier: GPL-3.0-or-later
// What is too large is refused in a sentence, and what is hostile costs no more than itself.
#include "core/import/import.h"
#include "core/import/limits.h"

#include <gtest/gtest.h>

#include <string>

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
        row_of(most_columns + 10, "speed") + row_of(most_columns + 10, "1") + row_of(most_columns + 10, "2");
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

} // namespace
} // namespace lapwright::import
