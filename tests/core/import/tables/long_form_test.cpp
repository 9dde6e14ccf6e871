// SPDX-License-Identifier: GPL-3.0-or-later
// One reading a row: drawn drives written so in drawn dialects read as the same drive in columns; tables that only look
// like it are left alone.
#include "core/import/tables/long_form.h"

#include "core/import/drawn_tables.h"

#include "core/import/formats/import.h"

#include <gtest/gtest.h>

namespace lapwright::import {
namespace {

using drawn::Drive;
using drawn::DriveRow;
using recording::Channel;
using recording::Meaning;
using recording::WarningKind;

constexpr double degree = std::numbers::pi / 180.0;

struct Reading {
    std::string name;
    std::string unit;
    int decimals;
    double (*value)(const DriveRow&);
};

const std::vector<Reading> readings{
    {"Latitude", "deg", 8, [](const DriveRow& r) { return r.latitude / degree; }},
    {"Longitude", "deg", 8, [](const DriveRow& r) { return r.longitude / degree; }},
    {"Vehicle speed", "km/h", 2, [](const DriveRow& r) { return 3.6 * r.speed_mps; }},
    {"Engine RPM", "rpm", 0, [](const DriveRow& r) { return 900.0 + 90.0 * r.speed_mps; }},
};

struct Dialect {
    char delimiter;
    bool quotes;
    bool comma;
    bool units;
    bool each_at_its_time;
    std::vector<std::size_t> order; // of time, name, value and unit
};

Dialect draw_dialect(drawn::Engine& engine) {
    Dialect dialect{";,\t|"[engine() % 4], engine() % 2 == 0, false, engine() % 2 == 0, engine() % 2 == 0, {}};
    dialect.comma = dialect.delimiter != ',' && engine() % 2 == 0;
    dialect.order = dialect.units ? std::vector<std::size_t>{0, 1, 2, 3} : std::vector<std::size_t>{0, 1, 2};
    std::ranges::shuffle(dialect.order, engine);
    return dialect;
}

std::string line_of(const Dialect& dialect, const std::vector<std::string>& cells) {
    std::string line;
    for (const std::size_t i : dialect.order)
        line += (line.empty() ? "" : std::string(1, dialect.delimiter)) +
                (dialect.quotes ? "\"" + cells[i] + "\"" : cells[i]);
    return line + "\n";
}

std::string number(const Dialect& dialect, double value, int decimals) {
    std::string text = base::fixed_text(value, decimals);
    if (dialect.comma) std::ranges::replace(text, '.', ',');
    return text;
}

std::string name_of(const Dialect& dialect, const Reading& reading) {
    return dialect.units ? reading.name : reading.name + " (" + reading.unit + ")";
}

std::string written(const Dialect& dialect, const Drive& drive) {
    std::string text = line_of(dialect, {"Time (s)", "What", "Reading", "Unit"});
    for (const DriveRow& row : drive.rows)
        for (std::size_t i = 0; i < readings.size(); ++i) {
            // A position is read at once; what is asked of the car comes in turn.
            const double time_s =
                row.time_s + (dialect.each_at_its_time && i > 1 ? 0.004 * static_cast<double>(i) : 0.0);
            text += line_of(dialect, {number(dialect, time_s, 3), name_of(dialect, readings[i]),
                                      number(dialect, readings[i].value(row), readings[i].decimals), readings[i].unit});
        }
    return text;
}

TEST(LongForm, ReadsAsTheSameDriveInColumns) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        drawn::Engine engine(seed);
        const Dialect dialect = draw_dialect(engine);
        const Drive drive = drawn::drive(engine, 5.0, 120.0);
        const std::string text = written(dialect, drive);
        const auto read = import_bytes(text, "drawn.csv");
        ASSERT_TRUE(read.ok()) << base::one_line(read.error()) << " seed " << seed << "\n" << text.substr(0, 800);
        const Channel* const speed = read->find(Meaning::speed);
        const Channel* const latitude = read->find(Meaning::latitude);
        const Channel* const engine_speed = read->find(Meaning::engine_speed);
        ASSERT_TRUE(speed != nullptr && latitude != nullptr && engine_speed != nullptr) << "seed " << seed;
        ASSERT_GE(speed->values.size(), drive.rows.size() - 2) << "seed " << seed;
        EXPECT_NEAR(speed->values[100], drive.rows[100].speed_mps, 0.01) << "seed " << seed;
        EXPECT_NEAR(latitude->values[100], drive.rows[100].latitude, 1e-9) << "seed " << seed;
        EXPECT_TRUE(std::ranges::any_of(
            read->warnings, [](const auto& warning) { return warning.kind == WarningKind::put_side_by_side; }))
            << "seed " << seed;
    }
}

TEST(LongForm, AStateThatLastsIsNoName) {
    std::string text = "time;state;speed\n";
    for (int i = 0; i < 200; ++i)
        text += base::fixed_text(0.1 * i, 1) + ";" + (i / 20 % 2 == 0 ? "moving" : "turning") + ";" +
                base::fixed_text(20.0 + i % 7, 1) + "\n";
    EXPECT_FALSE(is_long_form(text, Encoding::utf8));
}

TEST(LongForm, OrdinaryTablesAreNone) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        drawn::Engine engine(seed);
        const Drive drive = drawn::drive(engine, 5.0, 60.0);
        std::string text = "time,speed,latitude,longitude\n";
        for (const DriveRow& row : drive.rows)
            text += base::fixed_text(row.time_s, 3) + "," + base::fixed_text(row.speed_mps, 3) + "," +
                    base::fixed_text(row.latitude / degree, 8) + "," + base::fixed_text(row.longitude / degree, 8) +
                    "\n";
        EXPECT_FALSE(is_long_form(text, Encoding::utf8)) << "seed " << seed;
    }
}

TEST(LongForm, DamagedRowsCostThemselvesAlone) {
    drawn::Engine engine(7);
    const Dialect dialect{';', false, false, true, false, {0, 1, 2, 3}};
    std::string text = written(dialect, drawn::drive(engine, 5.0, 60.0));
    text.resize(text.size() - 9);
    text.insert(text.find('\n', text.size() / 2) + 1, "12.0;half a\n;;;\n");
    const auto read = import_bytes(text, "drawn.csv");
    ASSERT_TRUE(read.ok()) << base::one_line(read.error());
    EXPECT_EQ(read->channels.size(), 4U);
}

} // namespace
} // namespace lapwright::import
