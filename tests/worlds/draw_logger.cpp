// SPDX-License-Identifier: GPL-3.0-or-later
// Loggers from a phone's file of positions to a hundred rows a second, in tables of many manners.
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string_view>

#include "tests/worlds/draws.h"
#include "tests/worlds/world.h"

namespace worlds {
namespace {

using truth::Quantity;

constexpr double degrees = 180.0 / std::numbers::pi;

struct Naming {
    Quantity quantity;
    std::array<std::string_view, 4> names;
    struct Written {
        std::string_view unit;
        double factor;
        int decimals;
    };
    std::array<Written, 3> units;
};

const std::array<Naming, 13> namings{{
    {Quantity::latitude_deg,
     {"Latitude", "Lat", "GPS Latitude", "Position lat"},
     {{{"deg", 1, 8}, {"deg", 1, 7}, {"°", 1, 8}}}},
    {Quantity::longitude_deg,
     {"Longitude", "Lon", "GPS Longitude", "Position lon"},
     {{{"deg", 1, 8}, {"deg", 1, 7}, {"°", 1, 8}}}},
    {Quantity::height_m,
     {"Altitude", "Height", "GPS Altitude", "Elevation"},
     {{{"m", 1, 2}, {"m", 1, 1}, {"ft", 1 / 0.3048, 1}}}},
    {Quantity::speed_mps,
     {"Speed", "GPS Speed", "Ground speed", "Velocity"},
     {{{"km/h", 3.6, 2}, {"mph", 1 / 0.44704, 3}, {"m/s", 1, 3}}}},
    {Quantity::course_rad,
     {"Course", "Heading", "GPS Course", "Track angle"},
     {{{"deg", degrees, 2}, {"deg", degrees, 1}, {"rad", 1, 4}}}},
    {Quantity::a_long_mps2,
     {"Longitudinal acceleration", "Long accel", "Accel X", "Acceleration long"},
     {{{"g", 1 / truth::kGravity_mps2, 3}, {"m/s2", 1, 2}, {"m/s^2", 1, 3}}}},
    {Quantity::a_lat_mps2,
     {"Lateral acceleration", "Lat accel", "Accel Y", "Acceleration lat"},
     {{{"g", 1 / truth::kGravity_mps2, 3}, {"m/s2", 1, 2}, {"m/s^2", 1, 3}}}},
    {Quantity::yaw_rate_radps,
     {"Yaw rate", "Yaw rate", "Gyro Z", "Yaw velocity"},
     {{{"deg/s", degrees, 2}, {"rad/s", 1, 4}, {"deg/s", degrees, 1}}}},
    {Quantity::throttle,
     {"Throttle", "Throttle position", "Pedal", "Accelerator"},
     {{{"%", 100, 0}, {"%", 100, 1}, {"%", 100, 2}}}},
    {Quantity::brake,
     {"Brake", "Brake pressure", "Brake press front", "Brake"},
     {{{"bar", 62, 1}, {"bar", 75, 2}, {"%", 100, 1}}}},
    {Quantity::gear, {"Gear", "Gear", "Gear position", "Gear"}, {{{"", 1, 0}, {"", 1, 0}, {"", 1, 0}}}},
    {Quantity::engine_rpm,
     {"Engine speed", "RPM", "Engine revs", "Engine RPM"},
     {{{"rpm", 1, 0}, {"1/min", 1, 0}, {"rpm", 1, 0}}}},
    {Quantity::wheel_speed_mps,
     {"Wheel speed", "Wheel speed rear", "Wheel speed", "Wheel speed FL"},
     {{{"km/h", 3.6, 2}, {"mph", 1 / 0.44704, 2}, {"m/s", 1, 2}}}},
}};

truth::TextColumn column_of(truth::Random& random, const Naming& naming) {
    const auto& written = one_of(random, naming.units);
    return {naming.quantity, std::string(one_of(random, naming.names)), std::string(written.unit), written.factor,
            written.decimals};
}

bool is_satellite(Quantity quantity) {
    return quantity == Quantity::latitude_deg || quantity == Quantity::longitude_deg ||
           quantity == Quantity::height_m || quantity == Quantity::speed_mps || quantity == Quantity::course_rad;
}

void draw_columns(truth::Random& random, LoggerPlan& plan) {
    const bool inertial = !plan.has_positions || chance(random, 0.7);
    const bool pedals = chance(random, 0.75);
    const bool engine = chance(random, 0.6);
    for (const Naming& naming : namings) {
        const Quantity q = naming.quantity;
        const bool is_inertial =
            q == Quantity::a_long_mps2 || q == Quantity::a_lat_mps2 || q == Quantity::yaw_rate_radps;
        const bool wanted =
            is_satellite(q)
                ? plan.has_positions && (plan.has_speed || (q != Quantity::speed_mps && q != Quantity::course_rad))
            : is_inertial                                     ? inertial
            : q == Quantity::throttle || q == Quantity::brake ? pedals
            : q == Quantity::wheel_speed_mps                  ? !plan.has_positions || (engine && chance(random, 0.5))
                                                              : engine;
        if (wanted) plan.dialect.columns.push_back(column_of(random, naming));
    }
    std::rotate(plan.dialect.columns.begin(),
                plan.dialect.columns.begin() +
                    static_cast<std::ptrdiff_t>(index_below(random, plan.dialect.columns.size())),
                plan.dialect.columns.end());
    if (plan.has_lap_column) {
        static constexpr std::array names{"Lap", "Lap number", "Lap No"};
        plan.dialect.columns.insert(plan.dialect.columns.begin(),
                                    {Quantity::lap_number, one_of(random, names), "", 1.0, 0});
    }
}

void draw_table(truth::Random& random, LoggerPlan& plan) {
    truth::Dialect& dialect = plan.dialect;
    static constexpr std::array delimiters{',', ';', '\t', ','};
    dialect.delimiter = one_of(random, delimiters);
    dialect.decimal_mark = dialect.delimiter == ';' && chance(random, 0.6) ? ',' : '.';
    dialect.units = chance(random, 0.75) ? truth::UnitPlace::header_brackets : truth::UnitPlace::own_row;
    static constexpr std::array times{"Time", "Elapsed", "Elapsed time", "t"};
    dialect.time_header = one_of(random, times);
    if (chance(random, 0.2)) {
        dialect.time_style = truth::TimeStyle::milliseconds;
        dialect.time_unit = "ms";
        dialect.time_decimals = 0;
    } else if (chance(random, 0.2)) {
        dialect.time_style = truth::TimeStyle::time_of_day;
        dialect.time_header = "Clock";
        dialect.time_unit = "hh:mm:ss";
        dialect.start_of_day_s = between(random, 0.0, 86400.0);
    }
    dialect.missing = truth::Missing::blank;
    if (chance(random, 0.3)) dialect.line_end = "\r\n";
    draw_columns(random, plan);
    dialect.row_clock = dialect.columns.back().quantity;
}

void draw_clocks(truth::Random& random, LoggerPlan& plan) {
    static constexpr std::array satellite_rates{10.0, 10.0, 20.0, 25.0, 25.0};
    truth::LoggerSpec& spec = plan.spec;
    const double satellite_hz = one_of(random, satellite_rates);
    const bool one_clock = plan.form != FileForm::table || chance(random, 0.6);
    const double other_hz = one_clock ? satellite_hz : (chance(random, 0.5) ? 100.0 : 50.0);
    const double latency_s = chance(random, 0.5) ? between(random, 0.0, 0.12) : 0.0;
    spec.position = {satellite_hz, latency_s, 0.0};
    spec.velocity = {satellite_hz, latency_s, 0.0};
    for (truth::SensorClock* clock : {&spec.inertial, &spec.pedals, &spec.engine, &spec.wheel})
        *clock = {other_hz, 0.0, 0.0};
    plan.clock_ppm = chance(random, 0.4) ? between(random, -60.0, 60.0) : 0.0;
}

void draw_errors(truth::Random& random, LoggerPlan& plan) {
    truth::LoggerSpec& spec = plan.spec;
    spec.position_bias_sd_m = between_log(random, 0.25, 1.6);
    spec.position_bias_tau_s = between_log(random, 40.0, 300.0);
    spec.position_white_sd_m = between_log(random, 0.01, 0.08);
    spec.speed_sd_mps = between_log(random, 0.02, 0.08);
    spec.course_sd_rad = between_log(random, 0.08, 0.3) / degrees;
    spec.accel_noise_sd_mps2 = between_log(random, 0.1, 0.6);
    spec.wheel_scale = between(random, 0.975, 1.03);
    if (!plan.has_positions) {
        spec.wheel_scale_drift_sd = between(random, 0.0, 0.004);
        spec.wheel_scale_drift_tau_s = between_log(random, 3.0, 30.0);
        return;
    }
    if (chance(random, 0.3)) {
        for (int i = 0; i < 3; ++i)
            spec.drop_outs.push_back({between(random, 30.0, 500.0), between(random, 0.4, 2.0)});
        plan.freezes = chance(random, 0.5);
    }
    plan.frozen_start = chance(random, 0.1);
}

} // namespace

LoggerPlan draw_logger(std::uint64_t seed, std::uint64_t stream) {
    truth::Random random(seed, 50'000 + stream);
    LoggerPlan plan;
    const double kind = random.uniform();
    plan.form = kind < 0.08 ? FileForm::gpx : kind < 0.18 ? FileForm::nmea : FileForm::table;
    if (plan.form == FileForm::gpx) plan.has_speed = false;
    if (plan.form == FileForm::table) {
        plan.has_positions = !chance(random, 0.12);
        plan.has_speed = !plan.has_positions || chance(random, 0.92);
        plan.has_lap_column = !plan.has_positions || chance(random, 0.6);
    }
    draw_clocks(random, plan);
    draw_errors(random, plan);
    if (plan.form == FileForm::table) {
        draw_table(random, plan);
        truth::Random zeros(seed, 60'000 + stream);
        plan.writes_zeros = !plan.spec.drop_outs.empty() && !plan.freezes && chance(zeros, 0.5);
    }
    return plan;
}

} // namespace worlds
