// SPDX-License-Identifier: GPL-3.0-or-later
// Track files that nobody wrote by hand: each is read, within its bounds, or refused with a sentence.
#include "core/track/track_record.h"

#include "support/hostile_json.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace lapwright;

namespace {

const std::string good = R"({"name": "Mire", "length_m": 3858.5,
  "gate": {"latitude_deg": 54.9, "longitude_deg": 2.35, "heading_deg": 20.4, "half_width_m": 18},
  "segments": [{"name": "to Sweep", "kind": "straight", "start_m": 0, "end_m": 300},
               {"name": "Sweep", "kind": "corner", "start_m": 300, "end_m": 500.5}]})";

void expect_within_bounds(const track::TrackRecord& record) {
    const auto& gate = record.gate;
    EXPECT_TRUE(std::abs(gate.position.latitude_rad) < 1.6 && std::abs(gate.position.longitude_rad) < 3.2);
    EXPECT_TRUE(std::isfinite(gate.heading_rad));
    EXPECT_TRUE(gate.half_width_m >= 1.0 && gate.half_width_m <= 60.0);
    EXPECT_TRUE(record.length_m >= 0.0 && record.length_m <= track::longest_lap_m);
    double at = 0.0;
    for (const track::Segment& segment : record.segments) {
        EXPECT_TRUE(segment.start_m >= at - 1e-6 && segment.end_m > segment.start_m && segment.end_m <= 1e6);
        at = segment.end_m;
    }
}

// Whether it was read.
bool expect_read_or_refused(const std::string& text) {
    const auto record = track::parse_track_record(text, "mire.json");
    if (!record) {
        EXPECT_TRUE(base::one_line(record.error()).starts_with("mire.json: ")) << base::one_line(record.error());
        EXPECT_EQ(base::one_line(record.error()).find('\n'), std::string::npos);
        return false;
    }
    expect_within_bounds(*record);
    const std::string written = track::track_record_json(*record);
    const auto again = track::parse_track_record(written, "again");
    EXPECT_TRUE(again.ok()) << text;
    return true;
}

} // namespace

TEST(HostileTrack, EveryValueMayBeAnythingAtAll) {
    ASSERT_TRUE(expect_read_or_refused(good));
    int read = 0;
    for (const std::string& text : test::with_nasty_values(good))
        read += expect_read_or_refused(text) ? 1 : 0;
    EXPECT_GT(read, 10) << "a name may be anything";
    for (const std::string& value : test::nasty_values)
        expect_read_or_refused(value);
}

TEST(HostileTrack, BytesMayBeAnythingAtAll) {
    for (const std::string& text : test::spoiled_texts(good, 31))
        expect_read_or_refused(text);
}

TEST(HostileTrack, SizeIsBounded) {
    EXPECT_FALSE(expect_read_or_refused(std::string(50'000'000, '[')));
    EXPECT_FALSE(expect_read_or_refused(std::string(200'000, '[')));
    EXPECT_FALSE(expect_read_or_refused(R"({"name": ")" + std::string(20'000, 'x') + good.substr(14)));
}
