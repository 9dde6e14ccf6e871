// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/air.h"

#include "core/base/constants.h"
#include "core/base/translation.h"

#include <algorithm>
#include <cmath>

namespace lapwright::car {
namespace {

using base::said;

constexpr double zero_celsius_k = 273.15;
constexpr double gas_constant = 8.314472; // J/(mol K), as in the CIPM-2007 paper

double compressibility(double p, double temperature_k, double vapour) {
    const double t = temperature_k - zero_celsius_k;
    const double ratio = p / temperature_k;
    const double first = 1.58123e-6 + t * (-2.9331e-8 + t * 1.1043e-10) + (5.707e-6 - 2.051e-8 * t) * vapour +
                         (1.9898e-4 - 2.376e-6 * t) * vapour * vapour;
    return 1.0 - ratio * first + ratio * ratio * (1.83e-11 - 0.765e-8 * vapour * vapour);
}

// One input of the density with its standard uncertainty.
struct Input {
    double value = 0.0;
    double sd = 0.0;
};

} // namespace

double saturation_pressure_pa(double temperature_k) {
    const double t = temperature_k;
    return std::exp(1.2378847e-5 * t * t - 1.9121316e-2 * t + 33.93711047 - 6.3431645e3 / t);
}

double moist_air_density_kg_m3(double pressure_pa, double temperature_k, double humidity, double carbon_dioxide) {
    const double t = temperature_k - zero_celsius_k;
    const double dry_molar_mass = (28.96546 + 12.011 * (carbon_dioxide - 0.0004)) * 1e-3;
    constexpr double water_molar_mass = 18.01528e-3;
    const double enhancement = 1.00062 + 3.14e-8 * pressure_pa + 5.6e-7 * t * t;
    const double vapour = humidity * enhancement * saturation_pressure_pa(temperature_k) / pressure_pa;
    const double z = compressibility(pressure_pa, temperature_k, vapour);
    return pressure_pa * dry_molar_mass / (z * gas_constant * temperature_k) *
           (1.0 - vapour * (1.0 - water_molar_mass / dry_molar_mass));
}

StandardAir standard_air(double altitude_m) {
    constexpr double sea_level_k = 288.15;
    constexpr double sea_level_pa = 101325.0;
    constexpr double lapse_k_per_m = 0.0065;
    constexpr double specific_gas_constant = 287.05287; // J/(kg K), ISO 2533
    StandardAir air;
    air.temperature_k = sea_level_k - lapse_k_per_m * altitude_m;
    const double exponent = base::standard_gravity_mps2 / (specific_gas_constant * lapse_k_per_m);
    air.pressure_pa = sea_level_pa * std::pow(air.temperature_k / sea_level_k, exponent);
    air.density_kg_m3 = air.pressure_pa / (specific_gas_constant * air.temperature_k);
    return air;
}

AirDensity air_density(const AirConditions& c) {
    const Input altitude = c.altitude_m ? Input{*c.altitude_m, 20.0} : Input{150.0, 200.0};
    const StandardAir standard = standard_air(altitude.value);
    const Input temperature = c.temperature_k ? Input{*c.temperature_k, 1.0} : Input{standard.temperature_k, 8.0};
    // 12 Pa a metre near the ground.
    const Input pressure = c.pressure_pa ? Input{*c.pressure_pa, 200.0}
                                         : Input{standard.pressure_pa, std::hypot(1000.0, 12.0 * altitude.sd)};
    const Input humidity = c.humidity ? Input{std::clamp(*c.humidity, 0.0, 1.0), 0.1} : Input{0.5, 0.25};

    AirDensity density;
    density.value_kg_m3 = moist_air_density_kg_m3(pressure.value, temperature.value, humidity.value);
    const auto change = [&](double p, double t, double h) {
        return moist_air_density_kg_m3(p, t, h) - density.value_kg_m3;
    };
    density.sd_kg_m3 = std::hypot(change(pressure.value + pressure.sd, temperature.value, humidity.value),
                                  change(pressure.value, temperature.value + temperature.sd, humidity.value),
                                  change(pressure.value, temperature.value, humidity.value + humidity.sd));
    if (c.temperature_k && c.pressure_pa)
        density.origin = c.humidity ? said("measured temperature, pressure and humidity")
                                    : said("measured temperature and pressure");
    else if (c.temperature_k || c.pressure_pa)
        density.origin = c.temperature_k ? said("measured temperature, standard pressure")
                                         : said("measured pressure, standard temperature");
    else
        density.origin = c.altitude_m ? said("standard atmosphere at the track's altitude")
                                      : said("standard atmosphere, altitude unknown");
    return density;
}

} // namespace lapwright::car
