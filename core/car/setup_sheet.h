// SPDX-License-Identifier: GPL-3.0-or-later
// The setup sheet of a session: mass with driver and fuel, tyre, aero items in free words, weather.  A JSON file:
//   {"mass_kg", "mass_sd_kg", "driver", "car", "tyre", "items": [{"name", "value"}],
//    "conditions": {"air_temperature_c", "pressure_hpa", "humidity_percent", "altitude_m"},
//    "springs": {"front_n_per_mm", "rear_n_per_mm", "sd_percent"},
//    "known": {"downforce_area_m2", "downforce_area_sd_m2", "drag_area_m2", "drag_area_sd_m2", "power_kw",
//    "power_sd_kw"}}
// Every key may be missing; keys that are not known are left alone.
#pragma once

#include "core/base/result.h"
#include "core/car/air.h"
#include "core/car/car_figures.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::car {

// A figure from elsewhere; one that is given without its uncertainty counts as good to a tenth.
[[nodiscard]] KnownFigure known_figure(double value, std::optional<double> sd);

struct SetupItem {
    std::string name;
    std::string value;
};

struct SetupSheet {
    std::optional<Mass> mass;
    std::string driver;
    std::string car;
    std::string tyre;
    std::vector<SetupItem> items;
    AirConditions conditions;
    std::optional<Springs> springs; // both rates, 1..2000 N/mm; 5 % where their uncertainty is missing
    KnownFigures known;
};

// Mass 100..5000 kg, its standard uncertainty 0..500 kg (10 where it is missing), temperature −40..60 °C, pressure
// 500..1100 hPa, humidity 0..100 %, altitude −500..5000 m.  Error setup_not_readable with file and line.
[[nodiscard]] base::Result<SetupSheet> parse_setup_sheet(std::string_view text, const std::string& file);
[[nodiscard]] base::Result<SetupSheet> read_setup_sheet(const std::string& path);

} // namespace lapwright::car
