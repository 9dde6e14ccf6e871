// SPDX-License-Identifier: GPL-3.0-or-later
// Places in one cell: drawn drives in drawn ways of writing read as the same places in columns.
#include "core/import/tables/paired_cells.h"

#include "core/import/drawn_tables.h"

#include "core/import/formats/import.h"

#include <gtest/gtest.h>

namespace lapwright::import {
namespace {

using drawn::DriveRow;
using recording::Channel;
using recording::Meaning;

constexpr double degree = std::numbers::pi / 180.0;

struct Manner {
    const char* before;
    const char* between;
    const char* after;
    bool longitude_first;
    bool comma;
    char delimiter;
    bool quoted;
};

constexpr std::array manners{
    Manner{"", ", ", "", false, false, ',', true},        Manner{"", ",", "", false, false, ';', false},
    Manner{"(", "; ", ")", false, false, ',', true},      Manner{"[", ", ", "]", false, false, '\t', false},
    Manner{"POINT (", " ", ")", true, false, ',', false}, Manner{"POINT(", " ", ")", true, false, ';', true},
    Manner{"", " ", "", false, true, ';', false},         Manner{"", "; ", "", false, true, ',', true},
};

std::string written(const Manner& manner, const drawn::Drive& drive, const std::string& name) {
    const auto number = [&](double value, int decimals, bool quote) {
        std::string text = base::fixed_text(value, decimals);
        if (manner.comma) std::ranges::replace(text, '.', ',');
        return quote && manner.comma && manner.delimiter == ',' ? "\"" + text + "\"" : text;
    };
    const std::string d(1, manner.delimiter);
    std::string text = "time" + d + name + d + "speed (km/h)\n";
    for (const DriveRow& row : drive.rows) {
        const std::string first = number((manner.longitude_first ? row.longitude : row.latitude) / degree, 8, false);
        const std::string second = number((manner.longitude_first ? row.latitude : row.longitude) / degree, 8, false);
        const std::string quote = manner.quoted ? "\"" : "";
        text += number(row.time_s, 3, true) + d + quote + manner.before + first + manner.between + second +
                manner.after + quote + d + number(3.6 * row.speed_mps, 2, true) + "\n";
    }
    return text;
}

TEST(PairedCells, ReadAsTheSamePlacesInColumns) {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        drawn::Engine engine(seed);
        const Manner& manner = manners[seed % manners.size()];
        const drawn::Drive drive = drawn::drive(engine, 5.0, 60.0);
        const std::string text = written(manner, drive, seed % 3 == 0 ? "Location" : "where");
        const auto read = import_bytes(text, "drawn.csv");
        ASSERT_TRUE(read.ok()) << base::one_line(read.error()) << " seed " << seed << "\n" << text.substr(0, 400);
        const Channel* const latitude = read->find(Meaning::latitude);
        const Channel* const longitude = read->find(Meaning::longitude);
        ASSERT_TRUE(latitude != nullptr && longitude != nullptr) << "seed " << seed << "\n" << text.substr(0, 400);
        EXPECT_NEAR(latitude->values[100], drive.rows[100].latitude, 1e-9) << "seed " << seed;
        EXPECT_NEAR(longitude->values[100], drive.rows[100].longitude, 1e-9) << "seed " << seed;
        ASSERT_NE(read->find(Meaning::speed), nullptr) << "seed " << seed;
    }
}

// Rates of turning about two axes, and whatever else has two sides.
TEST(PairedCells, TwoNumbersThatJumpAboutTheGlobeAreNoPlace) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        drawn::Engine engine(seed);
        std::normal_distribution<> normal(0.0, 0.05);
        std::string text = "time;turning;speed (km/h)\n";
        for (const DriveRow& row : drawn::drive(engine, 10.0, 30.0).rows)
            text += base::fixed_text(row.time_s, 3) + ";(" + base::fixed_text(normal(engine), 5) + ", " +
                    base::fixed_text(normal(engine), 5) + ");" + base::fixed_text(3.6 * row.speed_mps, 2) + "\n";
        const auto read = import_bytes(text, "drawn.csv");
        ASSERT_TRUE(read.ok()) << base::one_line(read.error());
        EXPECT_EQ(read->find(Meaning::latitude), nullptr) << "seed " << seed;
    }
}

TEST(PairedCells, OtherCellsAreNoPlaces) {
    for (const char* cell : {"", "47.3004", "1,2345", "12 34", "47.3 8.6", "POINT EMPTY", "2025-06-14 13:02:17.0000",
                             "a, b", "47.30045, ", "1.23456 km"})
        EXPECT_FALSE(place_in_cell(cell)) << cell;
}

TEST(PairedCells, OrdinaryTablesHaveNone) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        drawn::Engine engine(seed);
        const bool comma = seed % 2 == 0;
        std::string text = "time;latitude;longitude\n";
        for (const DriveRow& row : drawn::drive(engine, 5.0, 30.0).rows)
            text += base::fixed_text(row.time_s, 4) + ";" + base::fixed_text(row.latitude / degree, 8) + ";" +
                    base::fixed_text(row.longitude / degree, 8) + "\n";
        if (comma) std::ranges::replace(text, '.', ',');
        EXPECT_FALSE(has_places_in_cells(text, Encoding::utf8)) << "seed " << seed;
    }
}

} // namespace
} // namespace lapwright::import
