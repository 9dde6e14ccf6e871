// SPDX-License-Identifier: GPL-3.0-or-later
// A folder that goes away, and sessions as an import makes them: decimal text in a file's units turned into SI.
#pragma once

#include "core/base/number_text.h"
#include "core/book/book.h"
#include "core/book/sessions.h"
#include "core/book/sha256.h"
#include "core/recording/recording.h"
#include "core/recording/warning_words.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <memory>
#include <random>
#include <string>
#include <unistd.h>
#include <vector>

namespace lapwright::book {

// In memory where there is such a place: flushing to a slow disk is not what is tested.
class Folder {
  public:
    Folder() {
        namespace fs = std::filesystem;
        const fs::path memory = "/dev/shm";
        const fs::path where = ::access(memory.c_str(), W_OK) == 0 ? memory : fs::temp_directory_path();
        std::string pattern = (where / "lapwright-book-").string() + std::string(6, 'X');
        path_ = ::mkdtemp(pattern.data());
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() { std::filesystem::remove_all(path_); }

    [[nodiscard]] std::string file(const std::string& name) const { return (path_ / name).string(); }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

  private:
    std::filesystem::path path_;
};

// A column of numbers as a logger would write it, read as the import reads it.
inline std::vector<double> column(std::size_t count, double middle, double swing, int decimals, base::Unit unit,
                                  std::uint64_t seed) {
    std::mt19937_64 engine(seed);
    std::vector<double> values(count);
    for (std::size_t i = 0; i < count; ++i) {
        const double noise = static_cast<double>(engine() >> 11U) * 0x1p-53 - 0.5;
        const double value = middle + swing * (std::sin(0.01 * static_cast<double>(i)) + 0.01 * noise);
        values[i] = base::to_si(*base::parse_number(base::fixed_text(value, decimals)), unit);
    }
    return values;
}

inline recording::Recording small_recording(std::uint64_t seed = 1, std::size_t rows = 500) {
    recording::Recording recording;
    recording.source_file = "saturday-" + base::integer_text(static_cast<std::int64_t>(seed)) + ".csv";
    recording.driver = "Wren Alder";
    recording.car = "Plover";
    recording.track = "Ternbank";
    recording.start_unix_s = 1.778926803e9 + 3600.0 * static_cast<double>(seed);
    recording.facts = {{"Logger", "seven"}, {"", "a line of its own"}};
    recording.warnings = {{.kind = recording::WarningKind::stamps_duplicated, .seen = {2, {17, 19}}},
                          {.kind = recording::WarningKind::zone_unknown}};
    recording.splits_s = {3.25, 7.5};
    std::vector<double> time_s(rows);
    std::vector<std::uint32_t> lines(rows);
    for (std::size_t i = 0; i < rows; ++i) {
        time_s[i] = (36000.0 + static_cast<double>(i) * 4.0 / 100.0) - 36000.0;
        lines[i] = static_cast<std::uint32_t>(i + 9);
    }
    recording.duration_s = time_s.back();
    const auto stamps = std::make_shared<const std::vector<double>>(time_s);
    const auto source_lines = std::make_shared<const std::vector<std::uint32_t>>(lines);
    const auto add = [&](const char* name, recording::Meaning meaning, base::Unit unit, double middle, double swing,
                         int decimals) {
        recording.channels.push_back({name, meaning, unit, std::string(base::symbol(unit)), stamps,
                                      column(rows, middle, swing, decimals, unit, seed + recording.channels.size()),
                                      source_lines});
    };
    add("Lat", recording::Meaning::latitude, base::Unit::degree, 54.9, 0.004, 7);
    add("Speed", recording::Meaning::speed, base::Unit::kilometre_per_hour, 120.0, 60.0, 2);
    add("Lat acc", recording::Meaning::lateral_acceleration, base::Unit::standard_gravity, 0.0, 1.2, 3);
    add("Throttle", recording::Meaning::throttle, base::Unit::percent, 50.0, 50.0, 1);
    add("Oil", recording::Meaning::other, base::Unit::celsius, 100.0, 8.0, 1);
    recording.channels.back().source_lines = nullptr;
    return recording;
}

inline Source source_named(const std::string& name) {
    return {name + ".csv", 1000 + name.size(), sha256_of(name)};
}

inline std::vector<lap::Lap> some_laps(double fastest_s = 90.0) {
    return {{0, lap::LapKind::out, 0.0, 100.5, {}, false, "out lap"},
            {1, lap::LapKind::flying, 100.5, 100.5 + fastest_s + 1.25, 0.011, true, ""},
            {2, lap::LapKind::flying, 200.0, 200.0 + fastest_s, 0.012, true, ""},
            {3, lap::LapKind::flying, 300.0, 300.0 + fastest_s + 9.0, 0.5, false, "slower than the others"},
            {4, lap::LapKind::in, 400.0, 500.0, {}, false, "in lap"}};
}

inline Book open_book(const std::string& path, const OpenOptions& options = {}) {
    auto book = Book::open(path, options);
    EXPECT_TRUE(book.ok()) << (book.ok() ? "" : base::one_line(book.error()));
    base::check(book.ok(), "the test's book does not open");
    return std::move(book).value();
}

inline SessionId add_named(Book& book, const std::string& name, const SessionDetails& details = {},
                           const std::vector<lap::Lap>& laps = some_laps()) {
    const auto added = add_session(book, source_named(name), small_recording(name.size(), 40), details, laps);
    EXPECT_TRUE(added.ok()) << (added.ok() ? "" : base::one_line(added.error()));
    return added.ok() ? added->id : SessionId{};
}

// To the last bit, and what was shared is shared.
inline void expect_same(const recording::Recording& read, const recording::Recording& written) {
    EXPECT_EQ(read.driver, written.driver);
    EXPECT_EQ(read.car, written.car);
    EXPECT_EQ(read.track, written.track);
    EXPECT_EQ(read.start_unix_s, written.start_unix_s);
    EXPECT_EQ(read.facts, written.facts);
    EXPECT_EQ(read.splits_s, written.splits_s);
    EXPECT_EQ(read.duration_s, written.duration_s);
    ASSERT_EQ(read.warnings.size(), written.warnings.size());
    for (std::size_t i = 0; i < read.warnings.size(); ++i) {
        EXPECT_EQ(read.warnings[i].kind, written.warnings[i].kind);
        EXPECT_EQ(recording::words(read.warnings[i]), recording::words(written.warnings[i]));
        EXPECT_EQ(read.warnings[i].line(), written.warnings[i].line());
    }
    const auto same_bits = [](double a, double b) {
        return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b);
    };
    ASSERT_EQ(read.channels.size(), written.channels.size());
    for (std::size_t i = 0; i < read.channels.size(); ++i) {
        const recording::Channel& a = read.channels[i];
        const recording::Channel& b = written.channels[i];
        EXPECT_EQ(a.name, b.name);
        EXPECT_EQ(a.meaning, b.meaning);
        EXPECT_EQ(a.source_unit, b.source_unit);
        EXPECT_EQ(a.source_unit_text, b.source_unit_text);
        EXPECT_TRUE(std::ranges::equal(a.values, b.values, same_bits)) << b.name;
        EXPECT_TRUE(std::ranges::equal(*a.time_s, *b.time_s, same_bits)) << b.name;
        ASSERT_EQ(a.source_lines == nullptr, b.source_lines == nullptr);
        if (a.source_lines) {
            EXPECT_EQ(*a.source_lines, *b.source_lines);
        }
        EXPECT_EQ(a.time_s == read.channels[0].time_s, b.time_s == written.channels[0].time_s);
    }
}

} // namespace lapwright::book
