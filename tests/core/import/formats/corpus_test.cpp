// SPDX-License-Identifier: GPL-3.0-or-later
// The corpus: small files written by hand, one a dialect or
// defect, each with what must come out beside it in NAME.expect:
//
//   driver|car|track TEXT        start 2026-05-16T10:20:03Z    duration S       facts COUNT
//   times MEANING S…             values MEANING SI…            lines MEANING N… first MEANING SI    count MEANING N
//   splits S…                    warn CODE [LINE]              error CODE
//
// "~1e-9" at the end of a line is the tolerance of its numbers (relative, and absolute below 1); without it they are
// good to 1e-12.  The warnings must be exactly the ones that stand there.
#include "core/import/formats/import.h"

#include "core/base/number_text.h"
#include "core/recording/warning_words.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>

namespace lapwright::import {
namespace {

using recording::Channel;
using recording::Recording;

const std::filesystem::path corpus = std::filesystem::path(TEST_SOURCE_DIR) / "core/import/corpus";

const std::map<std::string, base::ErrorCode> error_codes{
    {"not_a_table", base::ErrorCode::not_a_table},
    {"time_not_usable", base::ErrorCode::time_not_usable},
};

struct Expected {
    std::string key;
    std::vector<std::string> words;
    std::string rest;
    double tolerance = 1e-12;
};

std::vector<Expected> read_expected(const std::filesystem::path& path) {
    std::ifstream file(path);
    std::vector<Expected> all;
    for (std::string line; std::getline(file, line);) {
        Expected expected;
        std::istringstream words(line);
        words >> expected.key;
        expected.rest = line.size() > expected.key.size() ? line.substr(expected.key.size() + 1) : "";
        for (std::string word; words >> word;) {
            if (word.front() == '~')
                expected.tolerance = base::parse_number(word.substr(1)).value_or(0.0);
            else
                expected.words.push_back(word);
        }
        all.push_back(std::move(expected));
    }
    return all;
}

std::vector<double> numbers(const std::vector<std::string>& words, std::size_t from) {
    std::vector<double> values;
    for (std::size_t i = from; i < words.size(); ++i)
        values.push_back(base::parse_number(words[i]).value_or(std::nan("")));
    return values;
}

void expect_near(const std::vector<double>& found, const std::vector<double>& wanted, double tolerance,
                 const std::string& what) {
    ASSERT_EQ(found.size(), wanted.size()) << what;
    for (std::size_t i = 0; i < wanted.size(); ++i)
        EXPECT_NEAR(found[i], wanted[i], tolerance * std::max(1.0, std::abs(wanted[i]))) << what << " [" << i << "]";
}

void expect_channel(const Recording& recording, const Expected& expected) {
    const std::string what = expected.key + " " + expected.words.at(0);
    const auto meaning = recording::parse_meaning(expected.words.at(0));
    ASSERT_TRUE(meaning) << what;
    const Channel* const channel = recording.find(*meaning);
    ASSERT_NE(channel, nullptr) << what;
    ASSERT_EQ(channel->time_s->size(), channel->size()) << what;
    const auto wanted = numbers(expected.words, 1);
    if (expected.key == "values")
        expect_near(channel->values, wanted, expected.tolerance, what);
    else if (expected.key == "times")
        expect_near(*channel->time_s, wanted, expected.tolerance, what);
    else if (expected.key == "first")
        expect_near({channel->values.front()}, wanted, expected.tolerance, what);
    else if (expected.key == "count")
        EXPECT_EQ(static_cast<double>(channel->size()), wanted.at(0)) << what;
    else
        expect_near({channel->source_lines->begin(), channel->source_lines->end()}, wanted, 0.0, what);
}

void expect_one(const Recording& recording, const Expected& expected) {
    if (expected.key == "driver")
        EXPECT_EQ(recording.driver, expected.rest);
    else if (expected.key == "car")
        EXPECT_EQ(recording.car, expected.rest);
    else if (expected.key == "track")
        EXPECT_EQ(recording.track, expected.rest);
    else if (expected.key == "start")
        EXPECT_EQ(recording.start_unix_s ? recording::utc_text(*recording.start_unix_s) : "none", expected.rest);
    else if (expected.key == "duration")
        expect_near({recording.duration_s}, numbers(expected.words, 0), expected.tolerance, "duration");
    else if (expected.key == "splits")
        expect_near(recording.splits_s, numbers(expected.words, 0), expected.tolerance, "splits");
    else if (expected.key == "facts")
        EXPECT_EQ(static_cast<double>(recording.facts.size()), numbers(expected.words, 0).at(0));
    else
        expect_channel(recording, expected);
}

void expect_warnings(const Recording& recording, const std::vector<Expected>& all) {
    std::vector<std::string> found;
    std::vector<std::string> wanted;
    std::string told;
    for (const Expected& expected : all) {
        if (expected.key != "warn") continue;
        const bool with_line = expected.words.size() > 1;
        wanted.push_back(expected.words.at(0) + (with_line ? ":" + expected.words[1] : ""));
    }
    for (const auto& warning : recording.warnings) {
        const std::string kind(recording::name(warning.kind));
        const auto line = warning.line();
        const std::string with_line = kind + (line ? ":" + base::integer_text(static_cast<std::int64_t>(*line)) : "");
        found.push_back(std::ranges::find(wanted, with_line) != wanted.end() ? with_line : kind);
        told += kind + ": " + recording::words(warning) + "\n";
    }
    std::ranges::sort(found);
    std::ranges::sort(wanted);
    EXPECT_EQ(found, wanted) << told;
}

TEST(Corpus, EveryFileComesOutAsWritten) {
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(corpus)) {
        if (entry.path().extension() != ".expect") continue;
        ++files;
        SCOPED_TRACE(entry.path().stem().string());
        const auto expected = read_expected(entry.path());
        auto input = entry.path();
        const auto result = import_file(input.replace_extension(".txt").string());
        const auto error = std::ranges::find(expected, "error", &Expected::key);
        if (error != expected.end()) {
            EXPECT_FALSE(result.ok());
            if (!result.ok()) {
                EXPECT_EQ(result.error().code, error_codes.at(error->words.at(0)));
            }
            continue;
        }
        EXPECT_TRUE(result.ok()) << (result.ok() ? "" : base::one_line(result.error()));
        if (!result.ok()) continue;
        for (const Expected& one : expected)
            if (one.key != "warn") expect_one(*result, one);
        expect_warnings(*result, expected);
    }
    EXPECT_GT(files, 80U);
}

} // namespace
} // namespace lapwright::import
