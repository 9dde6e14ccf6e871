// SPDX-License-Identifier: GPL-3.0-or-later
// Density of the air: moist air from temperature, pressure and humidity (CIPM-2007:
// Picard, Davis, Gläser and Fujii, Metrologia 45 (2008) 149), else the standard
// atmosphere from altitude (ISO 2533:1975), with the interval that each deserves.
#pragma once

#include <optional>
#include <string>

namespace lapwright::car {

// Pa, K, relative humidity 0..1, mole fraction of carbon dioxide.  Made for 600..1100 hPa and 15..27 °C, where the
// equation itself is good to 22e-6; outside it stays within 1e-3 for weather that people drive in.
[[nodiscard]] double moist_air_density_kg_m3(double pressure_pa, double temperature_k, double humidity,
                                             double carbon_dioxide = 0.0004);
// Saturation pressure of water vapour of the same source, Pa.
[[nodiscard]] double saturation_pressure_pa(double temperature_k);

// Standard atmosphere below 11 km; geopotential altitude in m.
struct StandardAir {
    double temperature_k = 0.0;
    double pressure_pa = 0.0;
    double density_kg_m3 = 0.0;
};
[[nodiscard]] StandardAir standard_air(double altitude_m);

// What is known of the air; anything may be missing.
struct AirConditions {
    std::optional<double> temperature_k;
    std::optional<double> pressure_pa; // at the track, not reduced to sea level
    std::optional<double> humidity;    // 0..1
    std::optional<double> altitude_m;
};

struct AirDensity {
    double value_kg_m3 = 1.225;
    double sd_kg_m3 = 0.05;
    std::string origin; // in words: "measured temperature, pressure and humidity"
};

// What was not measured is taken from the standard atmosphere with a spread that weather deserves: temperature 8 K,
// pressure 10 hPa, humidity 0.5 ± 0.25, altitude 150 m ± 200 m (common practice, no source).  Measured values count as
// good to 1 K, 2 hPa and 0.1.
[[nodiscard]] AirDensity air_density(const AirConditions& conditions);

} // namespace lapwright::car
