// SPDX-License-Identifier: GPL-3.0-or-later
// Quoted cells in files of several pieces: whatever stands in the quotes, also line ends at the edge of two pieces,
// costs no row and moves no line number; and the last steps of an import can be called off like the first.
#include "core/import/formats/import.h"

#include "core/base/number_text.h"
#include "core/recording/warning_words.h"

#include <gtest/gtest.h>
#include <random>
#include <string>
#include <vector>

namespace lapwright::import {
namespace {

using recording::Meaning;

struct Written {
    std::string text = "time (s),note,speed (m/s)\n";
    std::vector<std::uint32_t> lines; // where each row begins
};

// Notes of up to `longest` characters, of which line ends, delimiters and doubled quotes are parts; the layout is told
// from the first lines, so the first rows have none.
Written rows_with_notes(std::size_t rows, std::size_t longest, unsigned seed) {
    std::mt19937 engine(seed);
    Written written;
    std::uint32_t line = 2;
    for (std::size_t i = 0; i < rows; ++i) {
        written.lines.push_back(line);
        std::string note;
        const std::size_t length = i < 500 ? 0 : engine() % (longest + 1);
        while (note.size() < length) {
            static constexpr const char* parts[]{"dry", " ", ",", "\n", "\"\"", "1.5,2\n", "#", "\r\n"};
            note += parts[engine() % std::size(parts)];
        }
        for (const char c : note)
            line += c == '\n' ? 1 : 0;
        written.text += base::integer_text(static_cast<std::int64_t>(i)) + ",\"" + note + "\"," +
                        base::integer_text(static_cast<std::int64_t>(i % 90)) + "\n";
        ++line;
    }
    return written;
}

void expect_every_row(const Written& written, unsigned threads) {
    Options options;
    options.threads = threads;
    const auto recording = import_bytes(written.text, "notes.csv", options);
    ASSERT_TRUE(recording.ok()) << base::one_line(recording.error());
    const auto* const speed = recording->find(Meaning::speed);
    ASSERT_NE(speed, nullptr);
    ASSERT_EQ(speed->size(), written.lines.size());
    for (std::size_t i = 0; i < speed->size(); ++i) {
        ASSERT_EQ((*speed->time_s)[i], static_cast<double>(i));
        ASSERT_EQ(speed->values[i], static_cast<double>(i % 90));
        ASSERT_EQ((*speed->source_lines)[i], written.lines[i]) << i;
    }
    EXPECT_TRUE(recording->warnings.empty()) << recording::words(recording->warnings[0]);
}

TEST(QuotedRows, LineEndsInQuotesCrossTheEdgesOfPieces) {
    for (const unsigned seed : {1U, 2U, 3U}) {
        // Some four mebibytes, so that a piece's edge lies inside a note more often than not.
        const Written written = rows_with_notes(2700, 3800, seed);
        ASSERT_GT(written.text.size(), std::size_t{3} << 20U);
        expect_every_row(written, 1);
        expect_every_row(written, 4);
    }
}

TEST(QuotedRows, ShortNotesAreReadByAllThreads) {
    const Written written = rows_with_notes(150'000, 12, 4);
    ASSERT_GT(written.text.size(), std::size_t{2} << 20U);
    expect_every_row(written, 1);
    expect_every_row(written, 3);
}

TEST(Import, CanBeCalledOffWhileChannelsArePutTogether) {
    std::string text = "time (s),speed (m/s),a,b,c\n";
    for (int i = 0; i < 1000; ++i)
        text += base::integer_text(i) + ",1,2,3,4\n";
    int steps = 0;
    const auto count = [&](std::string_view stage, double) {
        steps += stage == "putting channels together" ? 1 : 0;
        return true;
    };
    ASSERT_TRUE(import_bytes(text, "x.csv", {}, count).ok());
    EXPECT_GE(steps, 6) << "before each channel";
    for (int last = 1; last <= steps; ++last) {
        int seen = 0;
        const auto result = import_bytes(text, "x.csv", {}, [&](std::string_view stage, double) {
            seen += stage == "putting channels together" ? 1 : 0;
            return seen < last;
        });
        ASSERT_FALSE(result.ok());
        EXPECT_EQ(result.error().code, base::ErrorCode::cancelled);
    }
}

} // namespace
} // namespace lapwright::import
