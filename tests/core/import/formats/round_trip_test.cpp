// SPDX-License-Identifier: GPL-3.0-or-later
// A property: a table written in any dialect is read back equal, to the last bit where no unit is converted.
#include "core/import/formats/import.h"

#include "core/base/number_text.h"
#include "core/recording/warning_words.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <string>

namespace lapwright::import {
namespace {

using recording::Meaning;

struct Dialect {
    char delimiter = ',';
    char decimal_mark = '.';
    bool quotes = false;
    bool mark = false; // of byte order
    int spaces = 0;    // behind a delimiter
    std::string line_end = "\n";
    int encoding = 0; // 0 UTF-8, 1 UTF-16 little, 2 UTF-16 big
    std::size_t preamble = 0;
    bool units_in_row = false;
    double blank_share = 0.0;
};

Dialect random_dialect(std::mt19937_64& engine) {
    Dialect dialect;
    constexpr std::string_view delimiters = ",;\t|";
    constexpr std::array<const char*, 3> ends{"\n", "\r\n", "\r"};
    dialect.delimiter = delimiters[engine() % delimiters.size()];
    dialect.quotes = engine() % 4 == 0;
    dialect.decimal_mark = (dialect.delimiter != ',' || dialect.quotes) && engine() % 2 == 0 ? ',' : '.';
    dialect.mark = engine() % 4 == 0;
    dialect.spaces = static_cast<int>(engine() % 3);
    dialect.line_end = ends[engine() % ends.size()];
    dialect.encoding = static_cast<int>(engine() % 4) % 3;
    dialect.preamble = engine() % 6;
    dialect.units_in_row = engine() % 3 == 0;
    dialect.blank_share = engine() % 2 == 0 ? 0.0 : 0.3;
    return dialect;
}

struct Table {
    std::vector<double> time_s;
    std::vector<std::optional<double>> speed_mps;
    std::vector<std::optional<double>> lateral_mps2;
};

Table random_table(std::mt19937_64& engine, double blank_share) {
    std::uniform_real_distribution<double> real(-1.0, 1.0);
    Table table;
    const std::size_t rows = 40 + engine() % 3000;
    double time_s = 0.0;
    const auto rounded = [&](double value) {
        const int decimals = static_cast<int>(engine() % 6);
        return base::parse_number(base::fixed_text(value, 1 + decimals));
    };
    for (std::size_t i = 0; i < rows; ++i) {
        table.time_s.push_back(*base::parse_number(base::fixed_text(time_s, 4)));
        time_s += 0.0125;
        const bool blank = i > 30 && 0.5 * (real(engine) + 1.0) < blank_share;
        table.speed_mps.push_back(blank ? std::nullopt : rounded(40.0 + 39.0 * real(engine)));
        table.lateral_mps2.push_back(rounded(12.0 * real(engine)));
    }
    return table;
}

std::string written(double value, const Dialect& dialect) {
    std::string text = base::exact_text(value);
    if (text.find('e') != std::string::npos) text = base::fixed_text(value, 12);
    std::ranges::replace(text, '.', dialect.decimal_mark);
    return text;
}

std::string utf16(const std::string& utf8, bool little, bool mark) {
    std::string bytes;
    const auto put = [&](unsigned unit) {
        const char low = static_cast<char>(unit & 0xFFU);
        const char high = static_cast<char>(unit >> 8U);
        bytes += little ? low : high;
        bytes += little ? high : low;
    };
    if (mark) put(0xFEFF);
    for (const char c : utf8)
        put(static_cast<unsigned char>(c));
    return bytes;
}

std::string write(const Table& table, const Dialect& dialect) {
    std::string text;
    for (std::size_t i = 0; i < dialect.preamble; ++i)
        text += "Remark " + base::integer_text(static_cast<std::int64_t>(i)) + ": none" + dialect.line_end;
    const auto row = [&](const std::vector<std::string>& cells) {
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (i > 0) text += dialect.delimiter + std::string(static_cast<std::size_t>(dialect.spaces), ' ');
            text += dialect.quotes && !cells[i].empty() ? "\"" + cells[i] + "\"" : cells[i];
        }
        text += dialect.line_end;
    };
    if (dialect.units_in_row) {
        row({"time", "speed", "lateral acceleration"});
        row({"s", "m/s", "m/s2"});
    } else {
        row({"time (s)", "speed (m/s)", "lateral acceleration (m/s2)"});
    }
    for (std::size_t i = 0; i < table.time_s.size(); ++i)
        row({written(table.time_s[i], dialect), table.speed_mps[i] ? written(*table.speed_mps[i], dialect) : "",
             table.lateral_mps2[i] ? written(*table.lateral_mps2[i], dialect) : ""});
    if (dialect.encoding > 0) return utf16(text, dialect.encoding == 1, dialect.mark);
    return (dialect.mark ? "\xEF\xBB\xBF" : "") + text;
}

void expect_channel(const recording::Recording& recording, Meaning meaning, const Table& table,
                    const std::vector<std::optional<double>>& column) {
    const auto* const channel = recording.find(meaning);
    ASSERT_NE(channel, nullptr);
    std::size_t k = 0;
    for (std::size_t i = 0; i < column.size(); ++i) {
        if (!column[i]) continue;
        ASSERT_LT(k, channel->size());
        ASSERT_EQ(channel->values[k], *column[i]) << i;
        ASSERT_EQ((*channel->time_s)[k], table.time_s[i]) << i;
        ++k;
    }
    ASSERT_EQ(k, channel->size());
}

TEST(RoundTrip, ATableInAnyDialectIsReadBackEqual) {
    std::mt19937_64 engine(20260516);
    for (int i = 0; i < 200; ++i) {
        const Dialect dialect = random_dialect(engine);
        const Table table = random_table(engine, dialect.blank_share);
        const std::string text = write(table, dialect);
        SCOPED_TRACE("case " + std::to_string(i) + ": " + text.substr(0, 300));
        Options options;
        options.threads = 1 + static_cast<unsigned>(i % 2);
        const auto recording = import_bytes(text, "round.csv", options);
        ASSERT_TRUE(recording.ok()) << base::one_line(recording.error());
        expect_channel(*recording, Meaning::speed, table, table.speed_mps);
        expect_channel(*recording, Meaning::lateral_acceleration, table, table.lateral_mps2);
        if (testing::Test::HasFatalFailure()) return;
    }
}

// The same rows, whatever the number of threads and pieces.
TEST(RoundTrip, ThreadsChangeNothing) {
    std::string text = "time (s),speed (m/s),note\n";
    for (int i = 0; i < 200'000; ++i) {
        text += base::fixed_text(i / 100.0, 2) + "," + base::fixed_text((i * 7919 % 10'000) / 100.0, 2) + ",x\n";
        if (i % 1000 == 0) text += "\n# pause\nbroken line\n";
    }
    Options one;
    one.threads = 1;
    Options four;
    four.threads = 4;
    const auto a = import_bytes(text, "a", one);
    const auto b = import_bytes(text, "a", four);
    ASSERT_TRUE(a.ok() && b.ok());
    ASSERT_EQ(a->channels.size(), b->channels.size());
    EXPECT_EQ(a->channels[0].values, b->channels[0].values);
    EXPECT_EQ(*a->channels[0].source_lines, *b->channels[0].source_lines);
    EXPECT_EQ(a->channels[0].size(), 200'000U);
    EXPECT_EQ(a->channels[0].source_lines->back(), 200'001U + 3U * 200U);
    EXPECT_EQ(a->warnings.size(), b->warnings.size());
    EXPECT_EQ(recording::words(a->warnings.front()), recording::words(b->warnings.front()));
}

} // namespace
} // namespace lapwright::import
