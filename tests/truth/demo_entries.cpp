// SPDX-License-Identifier: GPL-3.0-or-later
// Who drives what in the demo. All names and figures are invented. Corner order for corner_factor: Harbour, Lantern,
// Anchor, Rope, Knot, Basin, Winch, Buoy, Jetty.
#include <numbers>

#include "tests/truth/sample_sessions.h"

namespace truth {
namespace {

constexpr double kDegrees = 180.0 / std::numbers::pi;
constexpr double kMilesPerHour = 1.0 / 0.44704;

DriverTruth ylva() {
    DriverTruth driver;
    driver.name = "Ylva Tarnby";
    driver.style_seed = 2024;
    driver.grip_share = 0.962;
    driver.grip_share_lap_sd = 0.005;
    return driver;
}

DriverTruth odran() {
    DriverTruth driver;
    driver.name = "Odran Pell";
    driver.style_seed = 777;
    driver.grip_share = 0.962;
    driver.grip_share_lap_sd = 0.006;
    driver.coast_s = 0.16;
    driver.corner_factor = {1.0, 0.98, 1.0, 1.0, 1.0, 1.03, 1.0, 1.0, 1.0};
    return driver;
}

LoggerSpec first_logger() {
    LoggerSpec spec = typical_logger(25.0);
    return spec;
}

LoggerSpec second_logger() {
    LoggerSpec spec = typical_logger(10.0);
    spec.wheel.rate_hz = 10.0;
    return spec;
}

Dialect first_dialect() {
    Dialect dialect = plain_dialect();
    dialect.columns[0].decimals = 7;
    dialect.columns[1].decimals = 7;
    return dialect;
}

Dialect second_dialect(const std::string& driver, const std::string& car) {
    Dialect dialect;
    dialect.delimiter = ';';
    dialect.units = UnitPlace::own_row;
    dialect.preamble = {{"Recorded by", driver},       {"Vehicle", car},          {"Venue", "Ternbank"},
                        {"Day", "2026-05-16"},         {"Session", "Saturday 2"}, {"Samples per second", "10"},
                        {"Comment", "dry, light wind"}};
    dialect.blank_line_after_preamble = true;
    dialect.time_header = "Clock";
    dialect.time_unit = "hh:mm:ss";
    dialect.time_style = TimeStyle::time_of_day;
    dialect.start_of_day_s = 11.0 * 3600.0 + 8.0 * 60.0 + 31.4;
    dialect.columns = {
        {Quantity::latitude_deg, "Lat", "deg", 1.0, 7},
        {Quantity::longitude_deg, "Lon", "deg", 1.0, 7},
        {Quantity::height_m, "Height", "m", 1.0, 1},
        {Quantity::speed_mps, "Ground speed", "mph", kMilesPerHour, 2},
        {Quantity::course_rad, "Heading", "deg", kDegrees, 2},
        {Quantity::wheel_speed_mps, "Wheel", "mph", kMilesPerHour, 1},
        {Quantity::a_long_mps2, "Accel forward", "m/s2", 1.0, 2},
        {Quantity::a_lat_mps2, "Accel left", "m/s2", 1.0, 2},
        {Quantity::throttle, "Pedal", "%", 100.0, 0},
        {Quantity::brake, "Brake pressure", "bar", 78.0, 1},
        {Quantity::engine_rpm, "RPM", "1/min", 1.0, 0},
    };
    return dialect;
}

DemoEntry hatch_full_wing() {
    DemoEntry entry;
    entry.file = "plover-saturday-2.csv";
    entry.setup_file = "plover-saturday-2.setup.json";
    entry.car_name = "Plover, white hatch with splitter and wing";
    entry.tyre = "semi-slick 245, medium";
    entry.driver = ylva();
    entry.car = light_aero_hatch();
    entry.plan.flying_laps = 7;
    entry.plan.traffic_lap = 4;
    entry.conditions = {19.0, 1012.0, 60.0, 1.2012};
    entry.plan.air_density = entry.conditions.air_density;
    entry.setup = {{"Wing angle", "7 deg"},
                   {"Splitter height", "46 mm"},
                   {"Rear ride height", "118 mm"},
                   {"Tyre pressure hot", "1.85 bar"},
                   {"Fuel at start", "22 l"}};
    entry.logger = first_logger();
    entry.dialect = first_dialect();
    entry.drive_seed = 20260516;
    entry.logger_seed = 101;
    return entry;
}

DemoEntry coupe() {
    DemoEntry entry;
    entry.file = "dunlin-saturday-2.txt";
    entry.setup_file = "dunlin-saturday-2.setup.json";
    entry.car_name = "Dunlin, dark red coupe with a small lip";
    entry.tyre = "semi-slick 275, medium";
    entry.driver = odran();
    entry.car = heavy_powerful_coupe();
    entry.plan.flying_laps = 6;
    entry.plan.traffic_lap = 2;
    entry.conditions = {19.0, 1012.0, 60.0, 1.2012};
    entry.plan.air_density = entry.conditions.air_density;
    entry.setup = {{"Rear lip", "25 mm"},
                   {"Front ride height", "112 mm"},
                   {"Tyre pressure hot", "2.05 bar"},
                   {"Fuel at start", "30 l"}};
    entry.logger = second_logger();
    entry.dialect = second_dialect(entry.driver.name, entry.car_name);
    entry.drive_seed = 20260517;
    entry.logger_seed = 202;
    return entry;
}

DemoEntry hatch_less_wing() {
    DemoEntry entry = hatch_full_wing();
    entry.file = "plover-saturday-3-less-wing.tsv";
    entry.setup_file = "plover-saturday-3-less-wing.setup.json";
    entry.car.downforce_area_m2 = 2.3;
    entry.car.drag_area_m2 = 0.98;
    entry.plan.flying_laps = 7;
    entry.plan.traffic_lap = 5;
    entry.conditions = {21.0, 1011.0, 55.0, 1.1918};
    entry.plan.air_density = entry.conditions.air_density;
    entry.setup[0].value = "3 deg";
    entry.dialect.delimiter = '\t';
    entry.drive_seed = 20260518;
    entry.logger_seed = 303;
    return entry;
}

} // namespace

std::vector<DemoEntry> demo_entries() {
    return {hatch_full_wing(), coupe(), hatch_less_wing()};
}

} // namespace truth
