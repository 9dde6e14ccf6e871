// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/track/track_record.h"

#include <gtest/gtest.h>
#include <numbers>

using namespace lapwright;
using namespace lapwright::track;

namespace {

constexpr const char* good = R"({"name": "Mire Ring", "length_m": 2000,
  "gate": {"latitude_deg": 54.5, "longitude_deg": 2.5, "heading_deg": 90, "half_width_m": 12},
  "segments": [{"name": "Start", "kind": "straight", "start_m": 0, "end_m": 400},
               {"name": "Bog", "kind": "corner", "start_m": 400, "end_m": 500}]})";

std::string refusal(const std::string& json) {
    const auto record = parse_track_record(json, "mire.json");
    return record ? "" : base::one_line(record.error());
}

} // namespace

TEST(TrackRecord, ReadsGateAndSegments) {
    const auto record = parse_track_record(good, "mire.json");
    ASSERT_TRUE(record);
    EXPECT_EQ(record->name, "Mire Ring");
    EXPECT_NEAR(record->gate.position.latitude_rad, 54.5 * std::numbers::pi / 180.0, 1e-12);
    EXPECT_NEAR(record->gate.heading_rad, 0.0, 1e-12); // east on the compass is 0 in the frame
    ASSERT_EQ(record->segments.size(), 2U);
    EXPECT_EQ(record->segments[1].kind, SegmentKind::corner);
}

TEST(TrackRecord, SurvivesARoundTrip) {
    const auto once = parse_track_record(good, "mire.json");
    ASSERT_TRUE(once);
    const auto twice = parse_track_record(track_record_json(*once), "again");
    ASSERT_TRUE(twice);
    EXPECT_EQ(track_record_json(*once), track_record_json(*twice));
}

TEST(TrackRecord, RefusesInOneSentence) {
    EXPECT_NE(refusal("nonsense").find("mire.json: the track file is not a JSON object"), std::string::npos);
    EXPECT_NE(refusal("{}").find("no \"gate\""), std::string::npos);
    EXPECT_NE(
        refusal(R"({"gate": {"latitude_deg": "north", "longitude_deg": 1, "heading_deg": 0}})").find("as numbers"),
        std::string::npos);
    EXPECT_NE(refusal(R"({"gate": {"latitude_deg": 1, "longitude_deg": 1, "heading_deg": 0},
                         "segments": [{"name": "x", "kind": "bend", "start_m": 0, "end_m": 1}]})")
                  .find("corner or straight"),
              std::string::npos);
    EXPECT_FALSE(read_track_record("no/such/file.json"));
}

// What is written and cannot be is told, and no other value is put in its place.
TEST(TrackRecord, RefusesEveryValueThatCannotBe) {
    const auto with = [](const std::string& in_gate, const std::string& beside) {
        return R"({"gate": {"latitude_deg": 1, "longitude_deg": 1, "heading_deg": 0)" + in_gate + "}" + beside + "}";
    };
    EXPECT_EQ(refusal(with("", "")), "");
    EXPECT_EQ(refusal(with(R"(, "half_width_m": 30)", R"(, "length_m": 900)")), "");
    for (const char* value : {"500", "0", "-3", "\"wide\"", "null", "1e999", "[12]"}) {
        const std::string json = with(std::string(R"(, "half_width_m": )") + value, "");
        EXPECT_FALSE(refusal(json).empty()) << value;
        if (value != std::string("1e999")) {
            EXPECT_NE(refusal(json).find("half_width_m"), std::string::npos) << value;
        }
    }
    for (const char* value : {"-1", "60000", "true", "\"2 km\""})
        EXPECT_NE(refusal(with("", std::string(R"(, "length_m": )") + value)).find("length_m"), std::string::npos);
    EXPECT_NE(refusal(with("", R"(, "segments": {})")).find("not a list"), std::string::npos);
    std::string many = R"(, "segments": [)";
    for (int i = 0; i < 600; ++i)
        many += (i > 0 ? "," : "") + std::string(R"({"name": "x", "kind": "corner", "start_m": )") + std::to_string(i) +
                R"(, "end_m": )" + std::to_string(i + 1) + "}";
    EXPECT_NE(refusal(with("", many + "]")).find("500"), std::string::npos);
}
