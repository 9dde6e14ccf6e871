// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/setup_sheet.h"

#include <gtest/gtest.h>

using namespace lapwright;
using namespace lapwright::car;

TEST(SetupSheet, Reads) {
    const auto sheet = parse_setup_sheet(R"({
        "mass_kg": 1325, "mass_sd_kg": 5, "driver": "Ylva", "car": "Plover", "tyre": "semi-slick",
        "items": [{"name": "wing", "value": "7 deg"}, {"name": "clicks", "value": 12}],
        "conditions": {"air_temperature_c": 19.0, "pressure_hpa": 1012.0, "humidity_percent": 60},
        "unknown": true})",
                                         "s.json");
    ASSERT_TRUE(sheet.ok());
    EXPECT_DOUBLE_EQ(sheet->mass->value_kg, 1325.0);
    EXPECT_DOUBLE_EQ(sheet->mass->sd_kg, 5.0);
    EXPECT_EQ(sheet->tyre, "semi-slick");
    ASSERT_EQ(sheet->items.size(), 2u);
    EXPECT_EQ(sheet->items[1].value, "12");
    EXPECT_NEAR(*sheet->conditions.temperature_k, 292.15, 1e-12);
    EXPECT_NEAR(*sheet->conditions.pressure_pa, 101200.0, 1e-9);
    EXPECT_NEAR(*sheet->conditions.humidity, 0.6, 1e-12);
    EXPECT_FALSE(sheet->conditions.altitude_m);
}

TEST(SetupSheet, EverythingMayBeMissing) {
    const auto sheet = parse_setup_sheet("{}", "s.json");
    ASSERT_TRUE(sheet.ok());
    EXPECT_FALSE(sheet->mass);
    EXPECT_DOUBLE_EQ(parse_setup_sheet(R"({"mass_kg": 1000})", "s.json")->mass->sd_kg, 10.0);
}

TEST(SetupSheet, OneSentenceWithFileAndLine) {
    const auto wrong = parse_setup_sheet("{\n\"driver\": \"x\",\n\"mass_kg\": \"heavy\"}", "s.json");
    ASSERT_FALSE(wrong.ok());
    EXPECT_EQ(base::one_line(wrong.error()),
              "s.json:3: \"mass_kg\" must be a number from 100 to 5000 — correct it in the setup sheet");
    const auto broken = parse_setup_sheet("{\n\"driver\": \"x\"\n\"mass_kg\": 3}", "s.json");
    ASSERT_FALSE(broken.ok());
    EXPECT_EQ(broken.error().place.line, 3u);
    EXPECT_FALSE(parse_setup_sheet("[]", "s.json").ok());
    EXPECT_FALSE(parse_setup_sheet("", "s.json").ok());
    EXPECT_FALSE(parse_setup_sheet(R"({"mass_kg": 7})", "s.json").ok());
    EXPECT_FALSE(parse_setup_sheet(R"({"items": [3]})", "s.json").ok());
    EXPECT_FALSE(parse_setup_sheet(R"({"conditions": {"humidity_percent": 140}})", "s.json").ok());
    EXPECT_EQ(read_setup_sheet("/nowhere/s.json").error().code, base::ErrorCode::file_not_readable);
}
