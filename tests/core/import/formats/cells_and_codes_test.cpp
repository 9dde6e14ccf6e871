// SPDX-License-Identifier: GPL-3.0-or-later
// Cells that bear their unit, codes for "no value", characters at the edge of what is kept, lines that are no rows.
#include "core/import/formats/import.h"

#include "core/base/number_text.h"
#include "core/import/columns/sentinels.h"
#include "core/import/text/limits.h"
#include "core/import/vocabulary/measured_text.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace lapwright::import {
namespace {

using base::Unit;
using recording::Meaning;
using recording::Recording;

bool is_told(const Recording& recording, const std::string& code, std::optional<std::uint64_t> line = {}) {
    return std::ranges::any_of(recording.warnings, [&](const auto& warning) {
        return recording::name(warning.kind) == code && (!line || warning.line() == line);
    });
}

TEST(MeasuredText, ReadsANumberAndItsUnit) {
    struct Case {
        std::string_view cell;
        double value;
        Unit unit;
    };
    for (const auto& [cell, value, unit] :
         std::initializer_list<Case>{{"48km/h", 48.0, Unit::kilometre_per_hour},
                                     {"-0.5 g", -0.5, Unit::standard_gravity},
                                     {"1.5e1 m/s", 15.0, Unit::metre_per_second},
                                     {"21 °C", 21.0, Unit::celsius},
                                     {"3500rpm", 3500.0, Unit::revolution_per_minute}}) {
        const auto measured = read_measured(cell, {});
        ASSERT_TRUE(measured) << cell;
        EXPECT_DOUBLE_EQ(measured->value, value) << cell;
        EXPECT_EQ(measured->unit, unit) << cell;
    }
    for (const std::string_view cell : {"48", "km/h", "12A", "Car 7", "7 of 9", "1:20 s", ""})
        EXPECT_FALSE(read_measured(cell, {})) << cell;
}

TEST(MeasuredText, EachCellIsReadInItsOwnUnit) {
    std::string text = "time,speed,distance\n";
    for (int i = 0; i < 200; ++i)
        text += base::fixed_text(0.1 * i, 1) + " s," + (i % 2 == 0 ? "36 km/h" : "10 m/s") + "," +
                (i < 100 ? base::integer_text(i) + " m" : base::fixed_text(0.001 * i, 3) + " km") + "\n";
    const auto recording = import_bytes(text, "cells.csv");
    ASSERT_TRUE(recording.ok()) << base::one_line(recording.error());
    const auto* const speed = recording->find(Meaning::speed);
    const auto* const distance = recording->find(Meaning::distance);
    ASSERT_TRUE(speed && distance);
    for (std::size_t i = 0; i < 200; ++i) {
        EXPECT_NEAR(speed->values[i], 10.0, 1e-9);
        EXPECT_NEAR(distance->values[i], static_cast<double>(i), 1e-9);
        EXPECT_NEAR((*speed->time_s)[i], 0.1 * static_cast<double>(i), 1e-9);
    }
}

// Drawn: a code among values that are far from it is taken out, each time, and nothing else is.
TEST(Sentinels, AreTakenOutAndNothingElse) {
    std::mt19937_64 engine(2);
    constexpr std::array codes{-1.0, -999.0, 9999.0, -9999.0, 65535.0, 999.0};
    for (int drawn = 0; drawn < 60; ++drawn) {
        const double code = codes[engine() % codes.size()];
        const bool coded = engine() % 2 == 0;
        std::string text = "time (s),speed (m/s)\n";
        std::size_t absent = 0;
        for (int i = 0; i < 300; ++i) {
            const bool blank = coded && engine() % 20 == 0;
            absent += blank ? 1 : 0;
            const double speed = static_cast<double>(engine() % 600) / 10.0;
            text += base::fixed_text(0.1 * i, 1) + "," + base::fixed_text(blank ? code : speed, 1) + "\n";
        }
        const auto recording = import_bytes(text, "codes.csv");
        ASSERT_TRUE(recording.ok());
        const auto* const channel = recording->find(Meaning::speed);
        ASSERT_NE(channel, nullptr);
        EXPECT_EQ(channel->size(), 300U - absent) << code;
        EXPECT_LT(*std::ranges::max_element(channel->values), 61.0) << code;
        EXPECT_GE(*std::ranges::min_element(channel->values), 0.0) << code;
        EXPECT_EQ(is_told(*recording, "no_value_code"), absent > 0) << code;
    }
}

TEST(Sentinels, AReverseGearAndAColdMorningAreValues) {
    const std::vector<double> gear{-1.0, 0.0, 1.0, 2.0};
    EXPECT_FALSE(sentinel_among(gear, Meaning::gear));
    const std::vector<double> temperature{-1.0, 0.5, 3.0};
    EXPECT_FALSE(sentinel_among(temperature, Meaning::air_temperature));
    const std::vector<double> revolutions{999.0, 900.0, 6500.0};
    EXPECT_FALSE(sentinel_among(revolutions, Meaning::engine_speed));
}

// A receiver without a fix writes zeros while the car goes on: with positions of 0, 0, blank or held.
TEST(ZerosInMotion, ASpeedThatNoCarCanLoseIsLeftOut) {
    std::mt19937_64 engine(5);
    for (const char* position : {"0.0,0.0", ",", "54.1000000,2.3000000"}) {
        for (const double step_s : {0.04, 0.1}) {
            std::string text = "time (s),lat,lon,speed (m/s),course (deg)\n";
            const int from = 200 + static_cast<int>(engine() % 100);
            const int to = from + 1 + static_cast<int>(engine() % 15);
            double latitude_deg = 54.1;
            for (int row = 0; row < 600; ++row) {
                const bool lost = row < 7 || (row >= from && row < to);
                const double speed_mps = 40.0 + 5.0 * std::sin(0.02 * row);
                latitude_deg += speed_mps * step_s / 111'300.0; // metres of a degree there
                text += base::fixed_text(step_s * row, 2) + ",";
                text += lost ? std::string(position) + ",0.00,0.0\n"
                             : base::fixed_text(latitude_deg, 8) + ",2.3000000," + base::fixed_text(speed_mps, 2) +
                                   ",0.0\n";
            }
            const auto recording = import_bytes(text, "lost.csv");
            ASSERT_TRUE(recording.ok()) << base::one_line(recording.error());
            const auto* const speed = recording->find(Meaning::speed);
            ASSERT_NE(speed, nullptr);
            EXPECT_EQ(speed->size(), static_cast<std::size_t>(600 - 7 - (to - from))) << position;
            EXPECT_GT(*std::ranges::min_element(speed->values), 30.0) << position;
        }
    }
}

TEST(ZerosInMotion, ACarThatStopsStands) {
    std::string text = "time (s),speed (m/s)\n";
    for (int row = 0; row < 600; ++row)
        text += base::fixed_text(0.1 * row, 1) + "," +
                base::fixed_text(std::abs(std::max(0.0, 20.0 - 0.5 * row) + std::max(0.0, 0.3 * (row - 400))), 2) +
                "\n";
    const auto recording = import_bytes(text, "stop.csv");
    ASSERT_TRUE(recording.ok());
    EXPECT_EQ(recording->find(Meaning::speed)->size(), 600U);
}

TEST(Facts, AreNeverCutInsideACharacter) {
    for (std::size_t length = longest_fact_bytes - 4; length <= longest_fact_bytes + 4; ++length) {
        const std::string fact(length, 'x');
        const std::string text = "Note: " + fact + "äöü€😀\n\ntime (s),speed (m/s)\n0.0,1\n0.1,2\n0.2,3\n0.3,4\n";
        const std::string track =
            "<gpx><metadata><desc>" + fact +
            "äöü€😀</desc></metadata><trk><trkseg>"
            "<trkpt lat='52' lon='1'><time>2026-05-16T10:00:00Z</time></trkpt>"
            "<trkpt lat='52.001' lon='1'><time>2026-05-16T10:00:09Z</time></trkpt></trkseg></trk></gpx>";
        for (const std::string& bytes : {text, track}) {
            const auto recording = import_bytes(bytes, "facts");
            ASSERT_TRUE(recording.ok()) << base::one_line(recording.error());
            ASSERT_FALSE(recording->facts.empty());
            const std::string& kept = recording->facts.front().second;
            std::size_t behind = length;
            for (const std::size_t size : {2U, 2U, 2U, 3U, 4U})
                if (behind + size <= longest_fact_bytes)
                    behind += size;
                else
                    break;
            EXPECT_EQ(kept.size(), std::min(behind, longest_fact_bytes)) << length;
        }
    }
}

TEST(Rows, CommentsAndASecondHeaderAreTold) {
    const auto commented = import_bytes("time (s),speed (m/s)\n0.0,1\n# pit\n0.1,2\n0.2,3\n0.3,4\n", "comments.csv");
    ASSERT_TRUE(commented.ok());
    EXPECT_TRUE(is_told(*commented, "comments_skipped", 3));
    const auto doubled =
        import_bytes("time (s),speed (m/s)\ntime (s),speed (m/s)\n0.0,1\n0.1,2\n0.2,3\n0.3,4\n", "doubled.csv");
    ASSERT_TRUE(doubled.ok());
    EXPECT_TRUE(is_told(*doubled, "header_repeated", 1));
    EXPECT_EQ(doubled->find(Meaning::speed)->size(), 4U);
}

} // namespace
} // namespace lapwright::import
