// SPDX-License-Identifier: GPL-3.0-or-later
// Which column gives the stamps: drawn tables in which counters, distances and coarse clocks stand beside the real one,
// in every order.
#include "core/import/formats/import.h"

#include "core/base/number_text.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <random>

namespace lapwright::import {
namespace {

using recording::Meaning;

struct Column {
    std::string header;
    std::function<std::string(int)> cell;
};

std::string padded(int value) {
    return (value < 10 ? "0" : "") + base::integer_text(value);
}

std::string moment(int row, const std::string& date) {
    return date + " 10:" + padded(row / 600) + ":" + padded(row / 10 % 60) + "." + base::integer_text(row % 10) + "00";
}

// Tenths of a second a row, whichever of them it is.
const std::vector<Column> clocks{
    {"dt", [](int row) { return moment(row, "2026-05-16"); }},
    {"Device Time", [](int row) { return moment(row, "16-May-2026"); }},
    {"when", [](int row) { return moment(row, "16. Mai 2026"); }},
    {"time", [](int row) { return base::fixed_text(0.1 * row, 1); }},
    {"elapsed_ms", [](int row) { return base::integer_text(100 * row); }},
    {"unix", [](int row) { return base::fixed_text(1.7e9 + 0.1 * row, 1); }},
    {"timestamp", [](int row) { return base::integer_text(1'700'000'000'000 + 100 * row) + "000000"; }},
    {"Time", [](int row) { return base::fixed_text(45792.4 + 0.1 * row / 86400.0, 9); }},
};

const std::vector<Column> others{
    {"", [](int row) { return base::integer_text(row); }},
    {"index", [](int row) { return base::integer_text(row + 1); }},
    {"s_m", [](int row) { return base::fixed_text(1.5 * row, 2); }},
    {"odo (km)", [](int row) { return base::fixed_text(0.0015 * row, 4); }},
    {"GPS Time",
     [](int row) { return "Sat May 16 10:" + padded(row / 600) + ":" + padded(row / 10 % 60) + " GMT 2026"; }},
    {"frame", [](int row) { return base::integer_text(3 * row); }},
};

TEST(TimeChoice, TakesTheClockWhateverStandsBesideIt) {
    std::mt19937_64 engine(7);
    for (int table = 0; table < 60; ++table) {
        const Column& clock = clocks[engine() % clocks.size()];
        std::vector<Column> columns{clock, {"speed (m/s)", [](int row) { return base::integer_text(10 + row % 7); }}};
        for (const Column& other : others)
            if (engine() % 2 == 0) columns.push_back(other);
        std::ranges::shuffle(columns, engine);
        std::string text;
        for (int row = -1; row < 900; ++row) {
            for (std::size_t i = 0; i < columns.size(); ++i)
                text += (i > 0 ? "," : "") + (row < 0 ? columns[i].header : columns[i].cell(row));
            text += '\n';
        }
        const auto recording = import_bytes(text, "drawn.csv");
        ASSERT_TRUE(recording.ok()) << text.substr(0, 200) << base::one_line(recording.error());
        const auto* const speed = recording->find(Meaning::speed);
        ASSERT_NE(speed, nullptr) << text.substr(0, 200);
        ASSERT_EQ(speed->size(), 900U) << text.substr(0, 200);
        for (std::size_t i = 0; i < speed->size(); ++i)
            ASSERT_NEAR((*speed->time_s)[i], 0.1 * static_cast<double>(i), 2e-4) << text.substr(0, 200);
    }
}

TEST(TimeChoice, PutsHoursMinutesAndSecondsTogether) {
    std::string text = "year,month,day,hour,minute,second,speed (m/s)\n";
    for (int row = 0; row < 1500; ++row)
        text += "2026,5,16,10," + base::integer_text(row / 600) + "," + base::fixed_text(0.1 * (row % 600), 1) + "," +
                base::integer_text(row % 9) + "\n";
    const auto recording = import_bytes(text, "columns.csv");
    ASSERT_TRUE(recording.ok()) << base::one_line(recording.error());
    EXPECT_NEAR(recording->duration_s, 149.9, 1e-6);
    EXPECT_TRUE(recording->splits_s.empty());
}

// Date and clock under one name, or names of rows under none: the names behind them stay with their columns.
TEST(TimeChoice, KeepsNamesOverTheirColumnsWhereOneIsMissing) {
    std::string parted = "timestamp lat lon v\n";
    std::string numbered = "time lat lon v\n";
    for (int row = 0; row < 300; ++row) {
        const std::string rest =
            " 52." + base::integer_text(100000 + 5 * row) + " 1.250000 " + base::integer_text(10 + row % 3) + "\n";
        parted += "2026-05-16 10:00:" + padded(row / 10) + "." + base::integer_text(row % 10) + rest;
        numbered += base::integer_text(row + 1) + " " + base::fixed_text(0.1 * row, 1) + rest;
    }
    for (const std::string& text : {parted, numbered}) {
        const auto recording = import_bytes(text, "short.txt");
        ASSERT_TRUE(recording.ok()) << text.substr(0, 60) << base::one_line(recording.error());
        const auto* const latitude = recording->find(Meaning::latitude);
        ASSERT_NE(latitude, nullptr) << text.substr(0, 60);
        EXPECT_NEAR(latitude->values.front(), 52.1 * 3.14159265358979 / 180.0, 1e-9) << text.substr(0, 60);
        EXPECT_NEAR(recording->duration_s, 29.9, 1e-6) << text.substr(0, 60);
    }
}

TEST(TimeChoice, TakesNoCounterForAClock) {
    for (const char* header : {"", "index", "s_m"}) {
        std::string text = std::string(header) + ",speed (m/s)\n";
        for (int row = 0; row < 50; ++row)
            text += base::integer_text(row) + "," + base::integer_text(row % 9) + "\n";
        const auto recording = import_bytes(text, "counter.csv");
        ASSERT_FALSE(recording.ok()) << header;
        EXPECT_EQ(recording.error().code, base::ErrorCode::time_not_usable);
    }
}

// The lap's own time alone, in whatever words and with whatever share of a step the lap begins: end to end.
TEST(TimeChoice, TakesTheTimeOfTheLapWhereNothingElseTellsTheTime) {
    std::mt19937_64 engine(11);
    for (const char* header : {"Lap Time (s)", "laptime", "Rundenzeit [s]", "current lap time"}) {
        for (const double step_s : {0.04, 0.1}) {
            std::string text = std::string("lap,") + header + ",speed (m/s)\n";
            std::size_t rows = 0;
            for (int lap = 1; lap < 5; ++lap) {
                const double begins_s = step_s * static_cast<double>(engine() % 100) / 100.0;
                const int count = 200 + static_cast<int>(engine() % 100);
                for (int row = 0; row < count; ++row, ++rows)
                    text += base::integer_text(lap) + "," + base::fixed_text(begins_s + step_s * row, 3) + "," +
                            base::integer_text(row % 9) + "\n";
            }
            const auto recording = import_bytes(text, "laps.csv");
            ASSERT_TRUE(recording.ok()) << header << base::one_line(recording.error());
            EXPECT_NEAR(recording->duration_s, step_s * static_cast<double>(rows - 1), 1e-2) << header;
            EXPECT_TRUE(std::ranges::any_of(
                recording->warnings, [](const auto& w) { return w.kind == recording::WarningKind::time_per_lap; }));
        }
    }
}

// A lap's final time in every row of the lap is no clock.
TEST(TimeChoice, ALapTimeThatStandsStillIsNoClock) {
    std::string text = "lap,Lap Time (s),speed (m/s)\n";
    for (int row = 0; row < 400; ++row)
        text += base::integer_text(row / 100) + "," + base::fixed_text(91.2 + row / 100, 3) + "," +
                base::integer_text(row % 9) + "\n";
    const auto recording = import_bytes(text, "laps.csv");
    ASSERT_FALSE(recording.ok());
    EXPECT_EQ(recording.error().code, base::ErrorCode::time_not_usable);
}

TEST(TimeChoice, GoesOnPastMidnightWhateverTheFormOfTheClock) {
    for (const char* header : {"Time of Day (s)", "time (s)", "Clock (s)"}) {
        std::string text = std::string(header) + ",speed (m/s)\n";
        for (int row = 0; row < 400; ++row)
            text +=
                base::fixed_text(std::fmod(86380.0 + 0.1 * row, 86400.0), 1) + "," + base::integer_text(row % 9) + "\n";
        const auto recording = import_bytes(text, "midnight.csv");
        ASSERT_TRUE(recording.ok()) << header;
        EXPECT_NEAR(recording->duration_s, 39.9, 1e-6) << header;
        EXPECT_TRUE(recording->splits_s.empty()) << header;
    }
}

} // namespace
} // namespace lapwright::import
