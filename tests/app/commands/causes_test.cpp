// SPDX-License-Identifier: GPL-3.0-or-later
// The causes command: its words, its errors, its JSON.
#include "app/commands/causes_text.h"
#include "app/commands/commands.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

using namespace lapwright;
using testing::HasSubstr;

namespace {

struct Answer {
    int status = 0;
    std::string out;
    std::string err;
};

Answer answer(const std::vector<std::string>& words) {
    std::ostringstream out;
    std::ostringstream err;
    const int status = commands::run(words, out, err, {});
    return {status, out.str(), err.str()};
}

causes::Explanation example() {
    causes::Explanation e;
    causes::SegmentRow row;
    row.segment.name = "Sweep";
    row.segment.end_m = 500.0;
    row.row.gain = {0.3, 0.2, 0.4};
    row.row.causes[1] = {0.5, 0.3, 0.7};
    row.row.causes[3] = {-0.1, -0.2, 0.0};
    row.row.driver_and_rest = {-0.1, -0.4, 0.2};
    e.segments.push_back(row);
    e.total = row.row;
    e.car_a.draws.resize(1);
    return e;
}

// Two sessions of which no more than their files is known.
analysis::Pairing pairing() {
    analysis::Pairing pairing;
    for (analysis::Side* side : {&pairing.a, &pairing.b}) {
        auto session = std::make_shared<analysis::Session>();
        session->recording = std::make_shared<recording::Recording>();
        side->session = session;
        side->trace.best.time_s = {0.0, 90.0};
    }
    return pairing;
}

} // namespace

TEST(CausesCommand, BadSetupIsOneSentence) {
    const auto path = std::filesystem::temp_directory_path() / "lapwright-causes-test.setup.json";
    std::ofstream(path) << "{\n\"mass_kg\": 3}";
    const Answer wrong = answer({"causes", "a.csv", "b.csv", "--setup-a", path.string()});
    std::filesystem::remove(path);
    EXPECT_EQ(wrong.status, 1);
    EXPECT_THAT(wrong.err, HasSubstr(".setup.json:2: \"mass_kg\" must be a number from 100 to 5000"));
    EXPECT_TRUE(wrong.out.empty());
    EXPECT_EQ(answer({"causes", "a.csv", "b.csv", "--setup-b", "/nowhere.json"}).status, 1);
    EXPECT_EQ(answer({"causes", "a.csv", "b.csv", "--mass-a", "3"}).status, 2);
    EXPECT_EQ(answer({"causes", "a.csv"}).status, 2);
}

TEST(CausesJson, KeepsItsContract) {
    const auto document = nlohmann::json::parse(commands::causes_json(pairing(), example(), {}, {}));
    for (const char* key : {"a", "b", "my_car", "cars", "segments", "total", "warnings"})
        EXPECT_TRUE(document.contains(key)) << key;
    for (const char* side : {"a", "b"})
        for (const char* key :
             {"grip", "downforce_area_m2", "drag_area_m2", "power_w", "mass_kg", "downforce_n", "drag_n"})
            EXPECT_TRUE(document["cars"][side].contains(key)) << key;
    const auto& segment = document["segments"][0];
    for (const char* key : {"name", "kind", "start_m", "end_m", "gain_s", "causes", "driver_and_rest_s"})
        EXPECT_TRUE(segment.contains(key)) << key;
    double sum = segment["driver_and_rest_s"].get<double>();
    for (const auto& [key, value] : segment["causes"].items())
        sum += value.get<double>();
    EXPECT_NEAR(sum, segment["gain_s"].get<double>(), 1e-9);
    for (const char* key : {"gain_s", "causes", "causes_low", "causes_high", "driver_and_rest_s"})
        EXPECT_TRUE(document["total"].contains(key)) << key;
    EXPECT_TRUE(document["cars"]["a"]["power_w"].is_null()); // not known, so null and not 0
}

TEST(CausesJson, TellsWhatBothDriversDo) {
    causes::Explanation e = example();
    e.segments[0].driving_a.braking_point_m = comparison::Figure{110.0, std::nullopt, false};
    e.segments[0].driving_b.braking_point_m = comparison::Figure{98.0, 2.0, true};
    const auto document = nlohmann::json::parse(commands::causes_json(pairing(), e, {}, {}));
    const auto& driving = document["segments"][0]["driving"];
    EXPECT_DOUBLE_EQ(driving["braking_point_a_m"], 110.0);
    EXPECT_TRUE(driving["braking_point_a_sd_m"].is_null());
    EXPECT_DOUBLE_EQ(driving["braking_point_b_sd_m"], 2.0);
    EXPECT_DOUBLE_EQ(driving["brakes_later_m"], 12.0);
    EXPECT_TRUE(driving["shift_cost_a_s"].is_null());
    EXPECT_EQ(driving["derived"], nlohmann::json({"braking_point_b_m", "brakes_later_m"}));
    EXPECT_THAT(commands::causes_table(pairing(), e, {}, {}, base::UnitSystem::metric),
                HasSubstr("what both drivers do"));
}

TEST(CausesJson, MassIsNullPerKilogram) {
    causes::Explanation e = example();
    e.per_kilogram = true;
    const auto document = nlohmann::json::parse(commands::causes_json(pairing(), e, {}, {}));
    EXPECT_TRUE(document["total"]["causes"]["mass"].is_null());
    EXPECT_TRUE(document["segments"][0]["causes"]["mass"].is_null());
    EXPECT_THAT(commands::causes_table(pairing(), e, {}, {}, base::UnitSystem::us), HasSubstr("whole lap"));
}
