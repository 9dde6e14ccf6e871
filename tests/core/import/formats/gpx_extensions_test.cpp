// SPDX-License-Identifier: GPL-3.0-or-later
// What track points say in elements of their own: each name is read as a column of a table of that name would be, over
// drawn drives, names and units; points that lack it leave gaps.
#include "core/import/drawn_tables.h"

#include "core/import/formats/import.h"

#include <gtest/gtest.h>

namespace lapwright::import {
namespace {

using drawn::DriveRow;
using recording::Channel;
using recording::Meaning;
using recording::WarningKind;

struct Element {
    std::string name;
    Meaning meaning = Meaning::other;
    std::function<double(const DriveRow&)> value; // as written
    std::function<double(const DriveRow&)> si;
    std::size_t every = 1;
};

std::string gpx_of(const drawn::Drive& drive, const std::vector<Element>& elements, const std::string& prefix) {
    constexpr double degree = std::numbers::pi / 180.0;
    std::string text = "<gpx><trk><trkseg>";
    for (std::size_t i = 0; i < drive.rows.size(); ++i) {
        const DriveRow& row = drive.rows[i];
        const drawn::Civil at = drawn::civil(drive.start_unix_s + row.time_s);
        text += "<trkpt lat=\"" + base::fixed_text(row.latitude / degree, 8) + "\" lon=\"" +
                base::fixed_text(row.longitude / degree, 8) + "\"><time>" + at.year + "-" + at.month + "-" + at.day +
                "T" + at.clock + "Z</time><extensions>";
        for (const Element& element : elements)
            if (i % element.every == 0)
                text += "<" + prefix + element.name + ">" + base::fixed_text(element.value(row), 4) + "</" + prefix +
                        element.name + ">";
        text += "</extensions></trkpt>\n";
    }
    return text + "</trkseg></trk></gpx>";
}

std::vector<Element> drawn_elements(drawn::Engine& engine) {
    const auto speed = [](const DriveRow& r) { return r.speed_mps; };
    const std::vector<std::pair<std::string, double>> speeds{
        {"speed_kmh", 3.6}, {"speed_mph", 1.0 / 0.44704}, {"gps_speed_mps", 1.0}, {"Tempo_kmh", 3.6}, {"x7", 3.6}};
    const auto& [name, factor] = speeds[engine() % speeds.size()];
    std::vector<Element> elements{
        {name, Meaning::speed, [f = factor](const DriveRow& r) { return f * r.speed_mps; }, speed}};
    elements.push_back({engine() % 2 == 0 ? "rpm" : "engine_speed_rpm", Meaning::engine_speed,
                        [](const DriveRow& r) { return 60.0 * r.engine_hz; },
                        [](const DriveRow& r) { return r.engine_hz; }, 1 + engine() % 3});
    elements.push_back({"lat_acc_g", Meaning::lateral_acceleration,
                        [](const DriveRow& r) { return r.lateral_mps2 / 9.80665; },
                        [](const DriveRow& r) { return r.lateral_mps2; }});
    elements.push_back({"hr", Meaning::other, [](const DriveRow& r) { return 120.0 + r.speed_mps; },
                        [](const DriveRow& r) { return 120.0 + r.speed_mps; }, 1 + engine() % 2});
    return elements;
}

TEST(GpxExtensions, AreReadAsColumnsOfTheirNames) {
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        drawn::Engine engine(seed);
        const auto drive = drawn::drive(engine, seed % 2 == 0 ? 1.0 : 10.0, 200.0);
        const auto elements = drawn_elements(engine);
        const auto recording = import_bytes(gpx_of(drive, elements, seed % 3 == 0 ? "q:" : ""), "drawn.gpx");
        ASSERT_TRUE(recording.ok()) << base::one_line(recording.error());
        for (const Element& element : elements) {
            const auto named = std::ranges::find(recording->channels, element.meaning, &Channel::meaning);
            ASSERT_NE(named, recording->channels.end()) << element.name << " seed " << seed;
            ASSERT_EQ(named->size(), (drive.rows.size() + element.every - 1) / element.every) << element.name;
            for (std::size_t i = 0; i < named->size(); i += 7)
                ASSERT_NEAR(named->values[i], element.si(drive.rows[i * element.every]), 2e-3)
                    << element.name << " seed " << seed;
        }
        for (const auto& warning : recording->warnings)
            EXPECT_NE(warning.kind, WarningKind::speed_derived) << "seed " << seed;
    }
}

// The standard's own element goes first.
TEST(GpxExtensions, ASecondSpeedIsAChannelOfItsOwn) {
    drawn::Engine engine(3);
    const auto drive = drawn::drive(engine, 1.0, 200.0);
    const auto recording =
        import_bytes(gpx_of(drive,
                            {{"speed", Meaning::speed, [](const DriveRow& r) { return r.speed_mps; }, {}},
                             {"speed_kmh", Meaning::other, [](const DriveRow& r) { return 3.0 * r.speed_mps; }, {}}},
                            ""),
                     "drawn.gpx");
    ASSERT_TRUE(recording.ok());
    ASSERT_NE(recording->find(Meaning::speed), nullptr);
    EXPECT_NEAR(recording->find(Meaning::speed)->values[50], drive.rows[50].speed_mps, 1e-3);
}

} // namespace
} // namespace lapwright::import
