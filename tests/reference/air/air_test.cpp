// SPDX-License-Identifier: GPL-3.0-or-later
// Density of air against values recomputed from the published equations (see README.md).
#include "core/car/air.h"

#include <gtest/gtest.h>

using namespace lapwright::car;

TEST(MoistAir, Cipm2007) {
    const double cases[5][4] = {{101325, 20, 0.5, 1.199314},
                                {101325, 20, 0.0, 1.204557},
                                {101325, 15, 0.0, 1.225521},
                                {100000, 25, 0.5, 1.161824},
                                {99000, 30, 0.6, 1.126945}};
    for (const auto& c : cases)
        EXPECT_NEAR(moist_air_density_kg_m3(c[0], c[1] + 273.15, c[2]), c[3], 6e-7);
    EXPECT_NEAR(saturation_pressure_pa(293.15), 2339.163, 1e-3);
    EXPECT_NEAR(saturation_pressure_pa(298.15), 3169.757, 1e-3);
    EXPECT_NEAR(saturation_pressure_pa(303.15), 4246.799, 1e-3);
}

TEST(StandardAir, Iso2533) {
    const double table[6][4] = {{0, 288.150, 101325.0, 1.225000},   {500, 284.900, 95460.8, 1.167269},
                                {1000, 281.650, 89874.6, 1.111643}, {1500, 278.400, 84556.0, 1.058067},
                                {2000, 275.150, 79495.2, 1.006490}, {3000, 268.650, 70108.5, 0.909122}};
    for (const auto& row : table) {
        const StandardAir air = standard_air(row[0]);
        EXPECT_NEAR(air.temperature_k, row[1], 1e-9);
        EXPECT_NEAR(air.pressure_pa, row[2], 0.06);
        EXPECT_NEAR(air.density_kg_m3, row[3], 1e-6);
    }
}

TEST(AirDensity, SaysHowWellItIsKnown) {
    const AirDensity measured = air_density({293.15, 101325.0, 0.5, std::nullopt});
    EXPECT_NEAR(measured.value_kg_m3, 1.199314, 1e-6);
    EXPECT_LT(measured.sd_kg_m3 / measured.value_kg_m3, 0.006);
    EXPECT_EQ(measured.origin, "measured temperature, pressure and humidity");
    const AirDensity altitude = air_density({std::nullopt, std::nullopt, std::nullopt, 500.0});
    EXPECT_NEAR(altitude.value_kg_m3, 1.163, 0.01);
    EXPECT_GT(altitude.sd_kg_m3, 4.0 * measured.sd_kg_m3);
    // Knowing nothing is worse, and a hot low day still lies inside two standard uncertainties.
    const AirDensity nothing = air_density({});
    EXPECT_GT(nothing.sd_kg_m3, altitude.sd_kg_m3);
    EXPECT_NEAR(nothing.value_kg_m3, moist_air_density_kg_m3(100500.0, 303.15, 0.5), 2.2 * nothing.sd_kg_m3);
    // 35 °C against 10 °C at the same pressure: 8.1 % less (dry).
    EXPECT_NEAR(moist_air_density_kg_m3(101325, 308.15, 0.0) / moist_air_density_kg_m3(101325, 283.15, 0.0), 0.919,
                5e-4);
}
