// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/write_setup_sheet.h"

#include <gtest/gtest.h>

namespace lapwright::car {
namespace {

TEST(WriteSetupSheet, ReadsBackAsItWas) {
    SetupSheet sheet;
    sheet.mass = Mass{1325.0, 5.0};
    sheet.driver = "Ylva \"Y\" Tarnby";
    sheet.tyre = "semi-slick 245";
    sheet.items = {{"Wing angle", "7 deg"}};
    sheet.conditions.temperature_k = 292.15;
    sheet.conditions.pressure_pa = 101200.0;
    sheet.conditions.humidity = 0.6;
    sheet.springs = Springs{62e3, 48e3, 0.04};
    sheet.known.drag_area_m2 = KnownFigure{0.92, 0.05};
    sheet.known.power_w = KnownFigure{212e3, 8e3};
    const auto read = parse_setup_sheet(setup_sheet_text(sheet), "sheet");
    ASSERT_TRUE(read.ok());
    EXPECT_DOUBLE_EQ(read.value().mass->value_kg, 1325.0);
    EXPECT_EQ(read.value().driver, sheet.driver);
    EXPECT_EQ(read.value().items.at(0).value, "7 deg");
    EXPECT_NEAR(*read.value().conditions.temperature_k, 292.15, 1e-9);
    EXPECT_NEAR(*read.value().conditions.humidity, 0.6, 1e-12);
    EXPECT_FALSE(read.value().conditions.altitude_m);
    EXPECT_NEAR(read.value().springs->rear_n_per_m, 48e3, 1e-6);
    EXPECT_NEAR(read.value().springs->relative_sd, 0.04, 1e-12);
    EXPECT_NEAR(read.value().known.drag_area_m2->sd, 0.05, 1e-12);
    EXPECT_NEAR(read.value().known.power_w->value, 212e3, 1e-6);
    EXPECT_FALSE(read.value().known.downforce_area_m2);
    EXPECT_TRUE(parse_setup_sheet(setup_sheet_text({}), "sheet").ok());
}

} // namespace
} // namespace lapwright::car
