// SPDX-License-Identifier: GPL-3.0-or-later
// Columns of a name that says nothing, or something that their unit contradicts: taken where the data confirm what the
// unit allows, and told; asked about where they do not; over drawn names, places of the unit, rates and drives.
#include "core/import/drawn_tables.h"

#include "core/import/formats/import.h"

#include <gtest/gtest.h>

#include <map>

namespace lapwright::import {
namespace {

using drawn::Drive;
using drawn::DriveRow;
using recording::Channel;
using recording::DoubtKind;
using recording::Meaning;
using recording::Recording;
using recording::WarningKind;

using Value = std::function<double(const DriveRow&)>;

struct Said {
    std::string name;
    std::string unit;
    int decimals = 3;
    Value value; // as written
};

constexpr double degree = std::numbers::pi / 180.0;
const std::vector<double> rates{1.0, 5.0, 10.0, 25.0, 50.0, 100.0};

// Units behind the names or in a row of their own, points or commas.
std::string table_of(drawn::Engine& engine, const Drive& drive, const std::vector<Said>& columns) {
    const bool row_of_units = engine() % 2 == 0;
    const bool comma = engine() % 2 == 0;
    std::string text;
    const auto line = [&](auto&& cell) {
        for (std::size_t i = 0; i < columns.size(); ++i)
            text += (i > 0 ? ";" : "") + cell(columns[i]);
        text += "\n";
    };
    line([&](const Said& c) { return row_of_units || c.unit.empty() ? c.name : c.name + " [" + c.unit + "]"; });
    if (row_of_units) line([](const Said& c) { return c.unit; });
    for (const DriveRow& row : drive.rows)
        line([&](const Said& c) {
            std::string cell = base::fixed_text(c.value(row), c.decimals);
            if (comma) std::ranges::replace(cell, '.', ',');
            return cell;
        });
    return text;
}

Said time_column() {
    return {"Zeit", "s", 3, [](const DriveRow& r) { return r.time_s; }};
}

std::vector<Said> placed() {
    return {time_column(),
            {"Breite", "deg", 8, [](const DriveRow& r) { return r.latitude / degree; }},
            {"Länge", "deg", 8, [](const DriveRow& r) { return r.longitude / degree; }}};
}

const std::vector<std::pair<std::string, double>> speed_units{
    {"km/h", 3.6}, {"m/s", 1.0}, {"mph", 1.0 / 0.44704}, {"kn", 3.6 / 1.852}};

// None of them says anything, or what it says has another unit.
const std::vector<std::string> names{"Foo",      "Tempo", "Kanal 7", "X17",  "Wert",
                                     "signal_b", "Giro",  "K",       "Höhe", "Gang 2x"};

std::map<std::string, DoubtKind> doubts_of(const Recording& recording) {
    std::map<std::string, DoubtKind> doubts;
    for (const auto& warning : recording.warnings)
        if (warning.kind == WarningKind::column_unsure) doubts[warning.of] = warning.doubt.kind;
    return doubts;
}

struct Read {
    Recording recording;
    std::map<std::string, DoubtKind> doubts;
    Drive drive;
};

Read read(std::uint64_t seed, const std::vector<Said>& columns, double min_rate_hz = 1.0) {
    drawn::Engine engine(seed);
    const double rate_hz = std::max(min_rate_hz, rates[seed % rates.size()]);
    Drive drive = drawn::drive(engine, rate_hz, 160.0);
    auto recording = import_bytes(table_of(engine, drive, columns), "drawn.txt");
    EXPECT_TRUE(recording.ok()) << base::one_line(recording.error());
    auto doubts = doubts_of(*recording);
    return {*recording, std::move(doubts), std::move(drive)};
}

std::string name_of(std::uint64_t seed) {
    return names[seed % names.size()];
}

double gear_of(const DriveRow& row) {
    return std::floor(row.speed_mps / 9.0) + 1.0;
}

double rpm_of(const DriveRow& row) {
    return row.speed_mps * 900.0 / gear_of(row);
}

// Beside a speed, in either order, with other readings in degrees that have as many decimals.
TEST(Unclaimed, TwoPlacesThatMoveAsTheSpeedSaysAreThePosition) {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const std::string unit = seed % 3 == 0 ? "" : "deg";
        std::vector<Said> columns{time_column()};
        columns.push_back({"Neigung", "deg", 6, [](const DriveRow& r) { return 0.01 * std::sin(r.time_s); }});
        columns.push_back({"Alpha 1", unit, 8, [](const DriveRow& r) { return r.latitude / degree; }});
        columns.push_back({"Beta 2", unit, 8, [](const DriveRow& r) { return r.longitude / degree; }});
        columns.push_back({"Speed", "km/h", 2, [](const DriveRow& r) { return 3.6 * r.speed_mps; }});
        if (seed % 2 == 0) std::swap(columns[2], columns[3]);
        const Read it = read(seed, columns);
        const Channel* const latitude = it.recording.find(Meaning::latitude);
        const Channel* const longitude = it.recording.find(Meaning::longitude);
        ASSERT_TRUE(latitude != nullptr && longitude != nullptr) << "seed " << seed;
        EXPECT_EQ(latitude->name, "Alpha 1") << "seed " << seed;
        EXPECT_EQ(longitude->name, "Beta 2") << "seed " << seed;
        EXPECT_EQ(it.doubts.at("Alpha 1"), DoubtKind::taken_by_motion) << "seed " << seed;
    }
}

// No column bears a name that is known: with something that may be a speed in any order, without it side by side.
TEST(Unclaimed, APositionIsFoundWhereNoNameIsKnown) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const bool with_speed = seed % 3 != 0;
        const auto& [unit, factor] = speed_units[seed % speed_units.size()];
        std::vector<Said> columns{{"Qu", "s", 3, [](const DriveRow& r) { return r.time_s; }}};
        columns.push_back({"Nokk", "", 2, [](const DriveRow& r) { return 60.0 + 0.01 * r.distance_m; }});
        columns.push_back({"Szer", "", 8, [](const DriveRow& r) { return r.latitude / degree; }});
        columns.push_back({"Dlug", "", 8, [](const DriveRow& r) { return r.longitude / degree; }});
        columns.push_back({"Temp", "", 6, [](const DriveRow& r) { return 81.0 + 0.2 * std::sin(0.01 * r.time_s); }});
        if (with_speed)
            columns.push_back(
                {"Sebes", seed % 2 == 0 ? unit : "", 2, [f = factor](const DriveRow& r) { return f * r.speed_mps; }});
        if (with_speed && seed % 4 == 1) std::swap(columns[2], columns[3]);
        const Read it = read(seed, columns, 5.0);
        const Channel* const latitude = it.recording.find(Meaning::latitude);
        const Channel* const longitude = it.recording.find(Meaning::longitude);
        ASSERT_TRUE(latitude != nullptr && longitude != nullptr) << "seed " << seed;
        EXPECT_EQ(latitude->name, "Szer") << "seed " << seed;
        EXPECT_EQ(longitude->name, "Dlug") << "seed " << seed;
        EXPECT_TRUE(it.doubts.contains("Szer") && it.doubts.contains("Dlug")) << "seed " << seed;
        EXPECT_EQ(it.recording.find(Meaning::speed) != nullptr, with_speed) << "seed " << seed;
    }
}

// Near 52° a mile is to a kilometre as a degree of latitude to one of longitude: on a road from east to west both
// explain a speed in km/h that is written as mph, and the names of the positions are believed.
TEST(Unclaimed, AUnitThatIsWrittenWronglyExchangesNoPositions) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const double latitude = 51.0 + 0.1 * static_cast<double>(seed);
        const double metres_a_degree = 6371008.8 * degree * std::cos(latitude * degree);
        const std::vector<Said> columns{
            time_column(),
            {"Breite", "deg", 8, [=](const DriveRow& r) { return latitude + 1e-6 * std::sin(r.time_s); }},
            {"Länge", "deg", 8, [=](const DriveRow& r) { return 10.0 + r.east_m / metres_a_degree; }},
            {"Speed", "mph", 3, [](const DriveRow& r) { return 3.6 * std::abs(r.speed_mps * std::sin(r.course)); }}};
        const Read it = read(seed, columns, 5.0);
        const Channel* const found = it.recording.find(Meaning::latitude);
        ASSERT_NE(found, nullptr) << "seed " << seed;
        EXPECT_EQ(found->name, "Breite") << "seed " << seed;
        EXPECT_EQ(it.doubts.at("Speed"), DoubtKind::written_unit_wrong) << "seed " << seed;
    }
}

// Whole parts of units, as receivers send them, under names that say what but not in which: the positions and a round
// of the compass tell.
TEST(Unclaimed, WholePartsOfUnitsAreTold) {
    const std::vector<double> parts_of_degree{10.0, 100.0, 1e5};
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const double per_mps = seed % 2 == 0 ? 1e3 : 1e2;
        const double per_degree = parts_of_degree[seed % 3];
        std::vector<Said> columns{time_column()};
        columns.push_back({"lat", "", 0, [](const DriveRow& r) { return 1e7 * r.latitude / degree; }});
        columns.push_back({"lon", "", 0, [](const DriveRow& r) { return 1e7 * r.longitude / degree; }});
        columns.push_back({"gSpeed", "", 0, [f = per_mps](const DriveRow& r) { return f * r.speed_mps; }});
        columns.push_back({"headMot", "", 0, [f = per_degree](const DriveRow& r) { return f * r.course / degree; }});
        const Read it = read(seed, columns, 5.0);
        const Channel* const speed = it.recording.find(Meaning::speed);
        const Channel* const course = it.recording.find(Meaning::course);
        ASSERT_TRUE(speed != nullptr && course != nullptr) << "seed " << seed;
        const std::size_t last = it.drive.rows.size() - 1;
        EXPECT_NEAR(speed->values[last], it.drive.rows[last].speed_mps, 0.006) << "seed " << seed;
        EXPECT_NEAR(course->values[last], it.drive.rows[last].course, 0.06 * degree) << "seed " << seed;
    }
}

// Days with fractions, as spreadsheets count, under a name of time or of date.
TEST(Unclaimed, DaysWithFractionsAreTheTime) {
    const std::vector<std::string> names_of_time{"Datum", "Date", "Fecha", "Zeit", "Time"};
    for (std::uint64_t seed = 1; seed <= 24; ++seed) {
        std::vector<Said> columns = placed();
        columns[0] = {names_of_time[seed % 5], "", 9, [](const DriveRow& r) { return 46000.5 + r.time_s / 86400.0; }};
        const Read it = read(seed, columns, 5.0);
        const Channel* const latitude = it.recording.find(Meaning::latitude);
        ASSERT_TRUE(latitude != nullptr && latitude->time_s->size() == it.drive.rows.size()) << "seed " << seed;
        EXPECT_NEAR(latitude->time_s->back() - latitude->time_s->front(),
                    it.drive.rows.back().time_s - it.drive.rows.front().time_s, 1e-3)
            << "seed " << seed;
    }
}

// Readings of many decimals side by side that rise and fall as a body, a tyre or a receiver's clock does.
TEST(Unclaimed, NoPositionIsFoundWhereNothingDrives) {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        drawn::Engine engine(500 + seed);
        const double fast = drawn::between(engine, 0.02, 3.0);
        const double much = std::exp(drawn::between(engine, std::log(1e-4), std::log(0.2)));
        std::vector<Said> columns{{"Qu", "s", 3, [](const DriveRow& r) { return r.time_s; }}};
        columns.push_back({"Nokk", "", 7, [=](const DriveRow& r) { return 12.0 + much * std::sin(fast * r.time_s); }});
        columns.push_back({"Luft", "", 7, [=](const DriveRow& r) { return 98.0 + much * std::cos(fast * r.time_s); }});
        columns.push_back({"Sum", "", 7, [=](const DriveRow& r) { return 98.0 + 1e-6 * r.distance_m * much; }});
        const double mps = much * degree * 6.4e6 * fast; // on a circle, were they degrees
        const double mps2 = mps * fast;
        if (mps > 5.0 && mps < 160.0 && mps2 < 40.0) continue; // which is how a car drives
        const Read it = read(seed, columns, 5.0);
        EXPECT_EQ(it.recording.find(Meaning::latitude), nullptr) << "seed " << seed;
    }
}

TEST(Unclaimed, AnglesOfTheBodyAreNoPosition) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        std::vector<Said> columns{time_column()};
        columns.push_back({"Alpha 1", "deg", 6, [](const DriveRow& r) { return 0.1 * std::sin(0.3 * r.time_s); }});
        columns.push_back({"Beta 2", "deg", 6, [](const DriveRow& r) { return 0.1 * std::cos(0.2 * r.time_s); }});
        columns.push_back({"Speed", "km/h", 2, [](const DriveRow& r) { return 3.6 * r.speed_mps; }});
        const Read it = read(seed, columns);
        EXPECT_EQ(it.recording.find(Meaning::latitude), nullptr) << "seed " << seed;
    }
}

TEST(Unclaimed, ASpeedThatFollowsThePositionsIsTaken) {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const auto& [unit, factor] = speed_units[seed % speed_units.size()];
        auto columns = placed();
        columns.push_back({name_of(seed), unit, 2, [f = factor](const DriveRow& r) { return f * r.speed_mps; }});
        const Read it = read(seed, columns);
        const Channel* const speed = it.recording.find(Meaning::speed);
        ASSERT_NE(speed, nullptr) << name_of(seed) << " seed " << seed;
        EXPECT_EQ(speed->name, name_of(seed));
        EXPECT_NEAR(speed->values[40], it.drive.rows[40].speed_mps, 0.01) << "seed " << seed;
        EXPECT_EQ(it.doubts.at(speed->name), DoubtKind::taken_by_motion) << "seed " << seed;
    }
}

TEST(Unclaimed, ASpeedThatDoesNotFollowThePositionsIsNone) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        auto columns = placed();
        columns.push_back({"Wind", "km/h", 2, [](const DriveRow& r) { return 20.0 + 8.0 * std::sin(0.3 * r.time_s); }});
        EXPECT_EQ(read(seed, columns).recording.find(Meaning::speed), nullptr) << "seed " << seed;
    }
}

TEST(Unclaimed, ASpeedThatAnotherColumnClaimsStaysThatColumns) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        auto columns = placed();
        columns.push_back({"Foo", "km/h", 2, [](const DriveRow& r) { return 3.6 * r.speed_mps; }});
        columns.push_back({"Geschwindigkeit", "km/h", 2, [](const DriveRow& r) { return 3.6 * r.speed_mps; }});
        const Read it = read(seed, columns);
        EXPECT_EQ(it.recording.find(Meaning::speed)->name, "Geschwindigkeit") << "seed " << seed;
        EXPECT_TRUE(it.doubts.empty()) << "seed " << seed;
    }
}

TEST(Unclaimed, WithoutPositionsAUnitOfSpeedIsAskedAbout) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const Read it = read(
            seed, {time_column(), {name_of(seed), "km/h", 2, [](const DriveRow& r) { return 3.6 * r.speed_mps; }}});
        EXPECT_EQ(it.recording.find(Meaning::speed), nullptr) << "seed " << seed;
        EXPECT_EQ(it.doubts.at(name_of(seed)), DoubtKind::not_confirmed) << "seed " << seed;
    }
}

TEST(Unclaimed, AccelerationsAreTakenWhereThePositionsSaySo) {
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        const bool in_g = seed % 2 == 0;
        const double factor = (in_g ? 1.0 / 9.80665 : 1.0) * (seed % 3 == 0 ? -1.0 : 1.0);
        auto columns = placed();
        columns.push_back({"Q1", in_g ? "g" : "m/s²", 4, [=](const DriveRow& r) { return factor * r.lateral_mps2; }});
        columns.push_back(
            {"Q2", in_g ? "g" : "m/s²", 4, [=](const DriveRow& r) { return factor * r.longitudinal_mps2; }});
        columns.push_back({"Q3", in_g ? "g" : "m/s²", 4, [=](const DriveRow& r) { return std::sin(3.0 * r.time_s); }});
        const Read it = read(seed, columns);
        for (const auto& [meaning, name] :
             {std::pair{Meaning::lateral_acceleration, "Q1"}, std::pair{Meaning::longitudinal_acceleration, "Q2"}}) {
            const Channel* const found = it.recording.find(meaning);
            if (!found) continue; // a drive that hardly turns or a rate too high for the sampled rows: none is taken
            EXPECT_EQ(found->name, name) << "seed " << seed;
            EXPECT_EQ(it.doubts.at(name), DoubtKind::taken_by_motion);
        }
        const auto& rows = it.drive.rows;
        const bool accelerates =
            4 * std::ranges::count_if(rows, [](const DriveRow& r) { return std::abs(r.longitudinal_mps2) > 1.0; }) >
            std::ssize(rows);
        const bool clear = accelerates && it.drive.rate_hz >= 5.0 && it.drive.rate_hz <= 25.0;
        EXPECT_TRUE(!clear || it.recording.find(Meaning::lateral_acceleration)) << "seed " << seed;
    }
}

TEST(Unclaimed, AnEngineSpeedIsTakenWhereItFollowsSpeedAndGear) {
    int taken = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        auto columns = placed();
        columns.push_back({"Foo", "km/h", 2, [](const DriveRow& r) { return 3.6 * r.speed_mps; }});
        columns.push_back({"Bar", "rpm", 0, rpm_of});
        const Read without = read(seed, columns);
        EXPECT_EQ(without.recording.find(Meaning::engine_speed), nullptr) << "seed " << seed;
        EXPECT_EQ(without.doubts.at("Bar"), DoubtKind::not_confirmed) << "seed " << seed;
        columns.push_back({"Gang", "", 0, gear_of});
        columns.insert(columns.begin() + 3,
                       {"Lüfter", "rpm", 0, [](const DriveRow& r) { return 2000.0 + 300.0 * std::sin(r.time_s); }});
        const Read with = read(seed, columns);
        const Channel* const engine = with.recording.find(Meaning::engine_speed);
        if (!engine) continue; // a drive in one gear
        ++taken;
        EXPECT_EQ(engine->name, "Bar");
        EXPECT_EQ(with.doubts.at("Bar"), DoubtKind::taken_by_motion) << "seed " << seed;
    }
    EXPECT_GE(taken, 15);
}

TEST(Unclaimed, PedalsAreAskedAboutAndABrakesPressureIsTaken) {
    std::size_t braked = 0;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        auto columns = placed();
        columns.push_back({"Vorne", "bar", 2, [](const DriveRow& r) { return r.brake_pa / 1e5; }});
        columns.push_back({"Öl", "bar", 2, [](const DriveRow& r) { return 3.0 + 0.05 * r.speed_mps; }});
        columns.push_back({"Last", "%", 1, [](const DriveRow& r) { return 100.0 * r.throttle; }});
        columns.push_back({"Tank", "%", 1, [](const DriveRow& r) { return 80.0 - 0.01 * r.time_s; }});
        const Read it = read(seed, columns, 5.0);
        EXPECT_EQ(it.recording.find(Meaning::throttle), nullptr) << "seed " << seed;
        EXPECT_EQ(it.doubts.count("Öl") + it.doubts.count("Tank"), 0U) << "seed " << seed;
        const Channel* const pressure = it.recording.find(Meaning::brake_pressure);
        if (!pressure) continue;
        ++braked;
        EXPECT_EQ(pressure->name, "Vorne") << "seed " << seed;
        EXPECT_EQ(it.doubts.at("Vorne"), DoubtKind::taken_by_motion) << "seed " << seed;
        EXPECT_EQ(it.doubts.at("Last"), DoubtKind::moves_like) << "seed " << seed;
    }
    EXPECT_GT(braked, 2U) << "drives that brake at all";
}

} // namespace
} // namespace lapwright::import
