// SPDX-License-Identifier: GPL-3.0-or-later
// Columns drawn of which the names or the looked-at rows say too little: a place of which one name is known, columns
// that are numbered, a beacon that is written only where it is passed, a wheel's turns beside the engine's, pressures
// and turns in units that only their size tells.
#include "core/import/drawn_tables.h"

#include "core/import/formats/import.h"

#include <gtest/gtest.h>

#include <numbers>

namespace lapwright::import {
namespace {

using drawn::between;
using drawn::DriveRow;
using drawn::Engine;
using drawn::fixed;
using drawn::pick;
using drawn::whole;
using recording::Meaning;

constexpr double degree = std::numbers::pi / 180.0;

struct Named {
    std::string header;
    std::function<std::string(const DriveRow&)> cell;
};

std::string table_of(const drawn::Drive& drive, const std::vector<Named>& columns) {
    std::string text;
    for (const Named& column : columns)
        text += (&column == columns.data() ? "" : ";") + column.header;
    for (const DriveRow& row : drive.rows) {
        text += '\n';
        for (const Named& column : columns)
            text += (&column == columns.data() ? "" : ";") + column.cell(row);
    }
    return text + '\n';
}

std::vector<Named> driven(const std::string& latitude, const std::string& longitude, const std::string& before) {
    std::size_t number = 0;
    const auto named = [&](const std::string& name) { return before.empty() ? name : whole(++number) + before + name; };
    return {{named("Time (s)"), [](const DriveRow& row) { return fixed(row.time_s, 3); }},
            {named(latitude), [](const DriveRow& row) { return fixed(row.latitude / degree, 7); }},
            {named(longitude), [](const DriveRow& row) { return fixed(row.longitude / degree, 7); }},
            {named("Speed (km/h)"), [](const DriveRow& row) { return fixed(row.speed_mps * 3.6, 2); }}};
}

class DrawnColumns : public ::testing::TestWithParam<std::uint64_t> {
  protected:
    Engine engine_{GetParam()};
    drawn::Drive drive_ = drawn::drive(engine_, pick<double>(engine_, {5.0, 10.0, 25.0}), 150.0);

    recording::Recording read(const std::vector<Named>& columns) {
        auto result = import_bytes(table_of(drive_, columns), "drawn.csv");
        EXPECT_TRUE(result.ok());
        return result.ok() ? std::move(result).value() : recording::Recording{};
    }

    // The channel of that meaning bears what the drive's rows say.
    void expect(const recording::Recording& recording, Meaning meaning, double DriveRow::* place, double tolerance) {
        const recording::Channel* const channel = recording.find(meaning);
        ASSERT_TRUE(channel) << recording::name(meaning);
        ASSERT_EQ(channel->size(), drive_.rows.size());
        for (std::size_t i = 0; i < drive_.rows.size(); ++i)
            ASSERT_NEAR(channel->values[i], drive_.rows[i].*place, tolerance) << recording::name(meaning) << " " << i;
    }
};

TEST_P(DrawnColumns, PlacesOfWhichOneNameIsKnown) {
    const bool latitude = engine_() % 2 == 0;
    const auto recording = read(driven(latitude ? "Latitude" : "Flurb", latitude ? "Gnarl 7" : "Longitude", ""));
    expect(recording, Meaning::latitude, &DriveRow::latitude, 1e-9);
    expect(recording, Meaning::longitude, &DriveRow::longitude, 1e-9);
}

TEST_P(DrawnColumns, NumberedNames) {
    const auto recording = read(driven("Latitude", "Longitude", pick<std::string>(engine_, {" ", ": ", ". ", " - "})));
    expect(recording, Meaning::longitude, &DriveRow::longitude, 1e-9);
    expect(recording, Meaning::speed, &DriveRow::speed_mps, 2e-3);
}

TEST_P(DrawnColumns, BeaconsThatAreWrittenWhereTheyArePassed) {
    auto columns = driven("Latitude", "Longitude", "");
    const double apart_m = between(engine_, 400.0, 900.0);
    std::size_t passings = 0;
    double before = 0.0;
    columns.push_back({"Beacon", [&](const DriveRow& row) {
                           const double now = std::floor(row.distance_m / apart_m);
                           const bool passed = std::exchange(before, now) < now;
                           passings += passed ? 1 : 0;
                           return std::string(passed ? "1" : "");
                       }});
    const auto recording = read(columns);
    const recording::Channel* const beacon = recording.find(Meaning::beacon);
    ASSERT_TRUE(beacon);
    EXPECT_EQ(beacon->size(), drive_.rows.size());
    EXPECT_EQ(static_cast<std::size_t>(std::ranges::count(beacon->values, 1.0)), passings);
    EXPECT_EQ(static_cast<std::size_t>(std::ranges::count(beacon->values, 0.0)), drive_.rows.size() - passings);
}

TEST_P(DrawnColumns, TurnsOfWheelAndEngine) {
    auto columns = driven("Latitude", "Longitude", "");
    const bool thousands = engine_() % 2 == 0;
    columns.push_back({"Wheel " + pick<std::string>(engine_, {"RR", "FL", "rear left"}) + " (rpm)",
                       [](const DriveRow& row) { return fixed(row.speed_mps / 2.0 * 60.0, 0); }});
    columns.push_back({pick<std::string>(engine_, {"RPM", "Engine speed", "Drehzahl"}), [=](const DriveRow& row) {
                           return fixed(row.engine_hz * 60.0 / (thousands ? 1000.0 : 1.0), thousands ? 3 : 0);
                       }});
    const auto recording = read(columns);
    expect(recording, Meaning::engine_speed, &DriveRow::engine_hz, 0.6 / 60.0);
    EXPECT_FALSE(recording.find(Meaning::wheel_speed));
}

INSTANTIATE_TEST_SUITE_P(Seeds, DrawnColumns, ::testing::Range(std::uint64_t{1}, std::uint64_t{13}));

} // namespace
} // namespace lapwright::import
