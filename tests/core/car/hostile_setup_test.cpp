// SPDX-License-Identifier: GPL-3.0-or-later
// Setup sheets that nobody wrote by hand: numbers beyond all bounds, deep nesting, wrong kinds, bytes changed, cut and
// put in at random.  Each is read or refused with a sentence; nothing that was read is out of its bounds.
#include "core/car/setup_sheet.h"

#include "core/car/write_setup_sheet.h"
#include "support/hostile_json.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace lapwright;
using namespace lapwright::car;

namespace {

const std::string good = R"({"driver": "Ylva", "car": "Plover", "mass_kg": 1325, "mass_sd_kg": 5, "tyre": "semi-slick",
  "items": [{"name": "wing", "value": "7 deg"}, {"name": "clicks", "value": 12}],
  "conditions": {"air_temperature_c": 19.5, "pressure_hpa": 1012, "humidity_percent": 60, "altitude_m": 80},
  "springs": {"front_n_per_mm": 62, "rear_n_per_mm": 48, "sd_percent": 4},
  "known": {"drag_area_m2": 0.9, "drag_area_sd_m2": 0.05, "power_kw": 210}})";

void expect_within_bounds(const SetupSheet& sheet) {
    if (sheet.mass) {
        EXPECT_GE(sheet.mass->value_kg, 100.0);
        EXPECT_LE(sheet.mass->value_kg, 5000.0);
        EXPECT_TRUE(sheet.mass->sd_kg >= 0.0 && sheet.mass->sd_kg <= 500.0);
    }
    for (const auto& value : {sheet.conditions.temperature_k, sheet.conditions.pressure_pa, sheet.conditions.humidity,
                              sheet.conditions.altitude_m})
        EXPECT_TRUE(!value || std::isfinite(*value));
    if (sheet.springs) {
        EXPECT_TRUE(sheet.springs->front_n_per_m >= 1e3 && sheet.springs->rear_n_per_m >= 1e3);
        EXPECT_TRUE(sheet.springs->relative_sd >= 0.0 && sheet.springs->relative_sd <= 1.0);
    }
    for (const auto& figure : {sheet.known.downforce_area_m2, sheet.known.drag_area_m2, sheet.known.power_w})
        EXPECT_TRUE(!figure || (std::isfinite(figure->value) && figure->sd >= 0.0));
}

void expect_read_or_refused(const std::string& text) {
    const auto sheet = parse_setup_sheet(text, "s.json");
    if (!sheet) {
        EXPECT_FALSE(base::one_line(sheet.error()).empty());
        return;
    }
    expect_within_bounds(*sheet);
    // What was read can be written and read again.
    EXPECT_TRUE(parse_setup_sheet(setup_sheet_text(*sheet), "again").ok()) << text;
}

} // namespace

TEST(HostileSetup, EveryValueMayBeAnythingAtAll) {
    for (const std::string& value : test::nasty_values) {
        for (const char* key :
             {"driver", "car", "tyre", "mass_kg", "mass_sd_kg", "items", "conditions", "springs", "known", "unknown"})
            expect_read_or_refused("{\"" + std::string(key) + "\": " + value + "}");
        for (const char* key : {"air_temperature_c", "pressure_hpa", "humidity_percent", "altitude_m"})
            expect_read_or_refused("{\"conditions\": {\"" + std::string(key) + "\": " + value + "}}");
        for (const char* key : {"front_n_per_mm", "rear_n_per_mm", "sd_percent"})
            expect_read_or_refused(R"({"springs": {"front_n_per_mm": 5, "rear_n_per_mm": 5, ")" + std::string(key) +
                                   "\": " + value + "}}");
        for (const char* key : {"drag_area_m2", "drag_area_sd_m2", "downforce_area_m2", "power_kw", "power_sd_kw"})
            expect_read_or_refused("{\"known\": {\"" + std::string(key) + "\": " + value + "}}");
        for (const char* key : {"name", "value"})
            expect_read_or_refused("{\"items\": [{\"" + std::string(key) + "\": " + value + "}]}");
        expect_read_or_refused(value);
    }
    EXPECT_FALSE(parse_setup_sheet(R"({"mass_kg": 1e999})", "s.json").ok());
}

TEST(HostileSetup, BytesMayBeAnythingAtAll) {
    for (const std::string& text : test::spoiled_texts(good, 12))
        expect_read_or_refused(text);
}

TEST(HostileSetup, SizeIsBounded) {
    EXPECT_FALSE(parse_setup_sheet(std::string(50'000'000, '['), "s.json").ok());
    expect_read_or_refused(std::string(200'000, '['));
    EXPECT_FALSE(parse_setup_sheet("{\"driver\": \"" + std::string(20'000, 'x') + "\"}", "s.json").ok());
}
