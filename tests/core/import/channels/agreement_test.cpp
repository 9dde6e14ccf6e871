// SPDX-License-Identifier: GPL-3.0-or-later
// Columns that contradict each other over a session, drawn: wrong units, other sensors, exchanged names, counters of
// rows under the name of a lap.
#include "core/import/drawn_tables.h"

#include "core/import/channels/trust.h"
#include "core/import/formats/import.h"

#include <gtest/gtest.h>

namespace lapwright::import {
namespace {

using drawn::DriveRow;
using recording::Meaning;
using recording::Recording;

constexpr double degree = std::numbers::pi / 180.0;

struct Cells {
    std::string header;
    std::function<std::string(const DriveRow&, std::size_t)> cell;
};

std::string table_of(const drawn::Drive& drive, const std::vector<Cells>& columns) {
    std::string text;
    for (std::size_t i = 0; i <= drive.rows.size(); ++i) {
        for (std::size_t k = 0; k < columns.size(); ++k) {
            text += k > 0 ? "," : "";
            text += i == 0 ? columns[k].header : columns[k].cell(drive.rows[i - 1], i - 1);
        }
        text += '\n';
    }
    return text;
}

Cells number(const std::string& header, double DriveRow::* place, double factor, int decimals) {
    return {header, [=](const DriveRow& row, std::size_t) { return base::fixed_text(row.*place * factor, decimals); }};
}

std::vector<Cells> placed() {
    return {number("time (s)", &DriveRow::time_s, 1.0, 3), number("latitude", &DriveRow::latitude, 1.0 / degree, 8),
            number("longitude", &DriveRow::longitude, 1.0 / degree, 8)};
}

bool is_told(const Recording& recording, const std::string& code) {
    return std::ranges::any_of(recording.warnings,
                               [&](const auto& warning) { return recording::name(warning.kind) == code; });
}

constexpr std::array rates{1.0, 5.0, 10.0, 25.0, 100.0};

TEST(Agreement, ASpeedThatContradictsThePositionsIsNoSpeed) {
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        drawn::Engine engine(seed);
        const auto drive = drawn::drive(engine, rates[seed % rates.size()], 120.0);
        // Written as km/h: a part of it, an engine's, noise.
        const std::vector<Cells> wrong{number("speed (km/h)", &DriveRow::speed_mps, 3.6 * 1.35, 2),
                                       number("speed (km/h)", &DriveRow::engine_hz, 60.0, 1),
                                       {"speed (km/h)", [&](const DriveRow&, std::size_t) {
                                            return base::fixed_text(drawn::between(engine, 0.0, 200.0), 1);
                                        }}};
        for (const Cells& cells : wrong) {
            auto columns = placed();
            columns.push_back(cells);
            const auto recording = import_bytes(table_of(drive, columns), "drawn.csv");
            ASSERT_TRUE(recording.ok());
            EXPECT_EQ(recording->find(Meaning::speed), nullptr) << "seed " << seed;
            EXPECT_TRUE(is_told(*recording, "speed_contradicts")) << "seed " << seed;
            EXPECT_TRUE(asks(*recording));
        }
    }
}

TEST(Agreement, AUnitThatIsWrittenWronglyIsTheOneThatFits) {
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        drawn::Engine engine(seed);
        const auto drive = drawn::drive(engine, rates[seed % rates.size()], 120.0);
        for (const auto& [header, factor] : std::initializer_list<std::pair<const char*, double>>{
                 {"speed (km/h)", 1.0}, {"speed (mph)", 3.6}, {"speed (m/s)", 3.6}, {"speed (kn)", 1.0 / 0.44704}}) {
            auto columns = placed();
            columns.push_back(number(header, &DriveRow::speed_mps, factor, 3));
            const auto recording = import_bytes(table_of(drive, columns), "drawn.csv");
            ASSERT_TRUE(recording.ok());
            const auto* const speed = recording->find(Meaning::speed);
            ASSERT_NE(speed, nullptr) << header << " seed " << seed;
            EXPECT_NEAR(speed->values[20], drive.rows[20].speed_mps, 2e-3) << header << " seed " << seed;
            EXPECT_TRUE(asks(*recording)) << header << " seed " << seed;
        }
    }
}

// At any rate, also where the sampled rows are too few to tell.
TEST(Agreement, AccelerationsWithoutAUnitAreReadInTheOneThatFits) {
    int clear = 0;
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        drawn::Engine engine(seed);
        const auto drive = drawn::drive(engine, rates[seed % rates.size()], 120.0);
        const double factor = std::array{1.0 / 9.80665, 1.0, 1000.0 / 9.80665}[seed % 3];
        auto columns = placed();
        columns.push_back(number("lateral_acc", &DriveRow::lateral_mps2, factor, 5));
        const auto recording = import_bytes(table_of(drive, columns), "drawn.csv");
        ASSERT_TRUE(recording.ok());
        const auto* const lateral = recording->find(Meaning::lateral_acceleration);
        ASSERT_NE(lateral, nullptr) << "seed " << seed;
        const bool gentle =
            std::ranges::all_of(drive.rows, [](const DriveRow& row) { return std::abs(row.lateral_mps2) < 1.5; });
        if (gentle || is_told(*recording, "column_unsure")) continue;
        ++clear;
        EXPECT_NEAR(lateral->values[20], drive.rows[20].lateral_mps2, 2e-3) << "seed " << seed;
    }
    EXPECT_GT(clear, 15);
}

TEST(Agreement, ASpeedOfAnExtensionIsHeldAgainstThePoints) {
    for (const double factor : {1.0, 3.6, 1.4}) {
        drawn::Engine engine(6);
        const auto drive = drawn::drive(engine, 1.0, 300.0);
        std::string text = "<gpx><trk><trkseg>";
        for (const DriveRow& row : drive.rows)
            text += "<trkpt lat=\"" + base::fixed_text(row.latitude / degree, 8) + "\" lon=\"" +
                    base::fixed_text(row.longitude / degree, 8) + "\"><time>" +
                    recording::utc_text(drive.start_unix_s + row.time_s) + "</time><extensions><speed>" +
                    base::fixed_text(row.speed_mps * factor, 3) + "</speed></extensions></trkpt>";
        const auto recording = import_bytes(text + "</trkseg></trk></gpx>", "drawn.gpx");
        ASSERT_TRUE(recording.ok());
        EXPECT_EQ(is_told(*recording, "speed_contradicts"), factor != 1.0) << factor;
        EXPECT_EQ(is_told(*recording, "speed_derived"), factor == 1.4) << factor;
        EXPECT_NEAR(recording->find(Meaning::speed)->values[50], drive.rows[50].speed_mps, factor == 1.4 ? 0.5 : 1e-3);
    }
}

TEST(Agreement, BareLettersBesideLatitudeAndLongitudeAreNoSecondPlace) {
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        drawn::Engine engine(seed);
        const auto drive = drawn::drive(engine, rates[seed % rates.size()], 60.0);
        auto columns = placed();
        for (const char* letter : {"X", "Y", "Z"})
            columns.push_back({letter, [&](const DriveRow&, std::size_t) {
                                   return base::fixed_text(drawn::between(engine, -1.2, 1.2), 2);
                               }});
        const auto recording = import_bytes(table_of(drive, columns), "letters.csv");
        ASSERT_TRUE(recording.ok()) << base::one_line(recording.error());
        EXPECT_EQ(recording->find(Meaning::east), nullptr);
        EXPECT_EQ(recording->find(Meaning::north), nullptr);
        EXPECT_NE(recording->find(Meaning::latitude), nullptr);
        EXPECT_FALSE(is_told(*recording, "column_unsure"));
    }
}

TEST(Agreement, ATrueSpeedIsBelieved) {
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        drawn::Engine engine(seed);
        const double rate_hz = rates[seed % rates.size()];
        const auto drive = drawn::drive(engine, rate_hz, 120.0);
        for (const auto& [header, factor] :
             std::initializer_list<std::pair<const char*, double>>{{"speed (km/h)", 3.6},
                                                                   {"speed (m/s)", 1.0},
                                                                   {"speed", 3.6},
                                                                   {"speed", 1.0},
                                                                   {"speed", 1.0 / 0.44704}}) {
            auto columns = placed();
            columns.push_back(number(header, &DriveRow::speed_mps, factor, 3));
            const auto recording = import_bytes(table_of(drive, columns), "drawn.csv");
            ASSERT_TRUE(recording.ok());
            const auto* const speed = recording->find(Meaning::speed);
            ASSERT_NE(speed, nullptr) << header << " seed " << seed;
            for (std::size_t i = 0; i < speed->size(); ++i)
                ASSERT_NEAR(speed->values[i], drive.rows[i].speed_mps, 1e-3) << header << " seed " << seed;
            EXPECT_FALSE(asks(*recording)) << header << " seed " << seed;
        }
    }
}

TEST(Agreement, LatitudeAndLongitudeUnderEachOthersNames) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        drawn::Engine engine(seed);
        const auto drive = drawn::drive(engine, 10.0, 120.0);
        const auto& first = drive.rows.front();
        const bool told_apart = std::abs(first.longitude) > 0.5 * std::numbers::pi ||
                                std::abs(std::cos(first.latitude) - std::cos(first.longitude)) > 0.3;
        if (!told_apart) continue;
        std::vector<Cells> columns{number("time (s)", &DriveRow::time_s, 1.0, 3),
                                   number("latitude", &DriveRow::longitude, 1.0 / degree, 8),
                                   number("longitude", &DriveRow::latitude, 1.0 / degree, 8),
                                   number("speed (km/h)", &DriveRow::speed_mps, 3.6, 2)};
        const auto recording = import_bytes(table_of(drive, columns), "drawn.csv");
        ASSERT_TRUE(recording.ok());
        const auto* const latitude = recording->find(Meaning::latitude);
        ASSERT_NE(latitude, nullptr) << "seed " << seed;
        EXPECT_NEAR(latitude->values.front(), first.latitude, 1e-9) << "seed " << seed;
        EXPECT_TRUE(asks(*recording));
    }
}

TEST(Agreement, ANumberThatChangesEveryRowCountsNoLaps) {
    drawn::Engine engine(3);
    const auto drive = drawn::drive(engine, 10.0, 120.0);
    auto columns = placed();
    columns.push_back({"lap", [](const DriveRow&, std::size_t i) { return drawn::whole(i); }});
    const auto counted = import_bytes(table_of(drive, columns), "drawn.csv");
    ASSERT_TRUE(counted.ok());
    EXPECT_EQ(counted->find(Meaning::lap_number), nullptr);
    EXPECT_TRUE(asks(*counted));
    columns.back() = {
        "lap", [](const DriveRow& row, std::size_t) { return drawn::whole(9 - static_cast<std::size_t>(row.lap)); }};
    const auto backwards = import_bytes(table_of(drive, columns), "drawn.csv");
    ASSERT_TRUE(backwards.ok());
    EXPECT_NE(backwards->find(Meaning::lap_number), nullptr);
    EXPECT_TRUE(is_told(*backwards, "lap_numbers_backwards"));
}

// Turned drawn degrees from the car's: within 25 it is the axis that it says, either way round, beyond 45 it is none.
TEST(Agreement, AnAxisIsBelievedAsFarAsThePositionsSayTheSame) {
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        drawn::Engine engine(seed);
        const auto drive = drawn::drive(engine, rates[seed % rates.size()], 200.0);
        const bool aligned = engine() % 2 == 0;
        const double turn = aligned ? drawn::between(engine, -25.0, 25.0) + (engine() % 2 == 0 ? 180.0 : 0.0)
                                    : drawn::between(engine, 45.0, 135.0);
        auto columns = placed();
        columns.push_back({"ay (g)", [&](const DriveRow& row, std::size_t) {
                               const double vibration = drawn::between(engine, -0.2, 0.2);
                               const double across = std::cos(turn * degree) * row.lateral_mps2;
                               const double along = std::sin(turn * degree) * row.longitudinal_mps2;
                               return base::fixed_text((across + along) / 9.80665 + vibration, 4);
                           }});
        const auto recording = import_bytes(table_of(drive, columns), "drawn.csv");
        ASSERT_TRUE(recording.ok());
        const bool taken = recording->find(Meaning::lateral_acceleration) != nullptr;
        EXPECT_TRUE(taken || !aligned) << "seed " << seed << " turned by " << turn;
        EXPECT_TRUE(aligned || asks(*recording)) << "seed " << seed << " turned by " << turn;
    }
}

TEST(Agreement, AnAxisIsDoubtedWhereNothingTellsItsDirection) {
    drawn::Engine engine(4);
    const auto drive = drawn::drive(engine, 25.0, 60.0);
    const auto time = number("time (s)", &DriveRow::time_s, 1.0, 3);
    const auto speed = number("speed (km/h)", &DriveRow::speed_mps, 3.6, 2);
    const auto axis = import_bytes(
        table_of(drive, {time, speed, number("ay (g)", &DriveRow::lateral_mps2, 1.0 / 9.80665, 4)}), "drawn.csv");
    ASSERT_TRUE(axis.ok());
    EXPECT_TRUE(asks(*axis));
    const auto named = import_bytes(
        table_of(drive, {time, speed, number("Lateral (g)", &DriveRow::lateral_mps2, 1.0 / 9.80665, 4)}), "drawn.csv");
    ASSERT_TRUE(named.ok());
    EXPECT_FALSE(asks(*named));
}

} // namespace
} // namespace lapwright::import
