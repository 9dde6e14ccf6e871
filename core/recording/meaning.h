// SPDX-License-Identifier: GPL-3.0-or-later
// What a channel measures, independent of how its file called it.  Axes: x forward,
// y to the left, z up (ISO 8855), so a left-hander has positive lateral acceleration
// and yaw rate.  Course is clockwise from true north, as receivers give it.
#pragma once

#include "core/base/units.h"

#include <optional>
#include <string>
#include <string_view>

namespace lapwright::recording {

enum class Meaning {
    other,
    latitude,    // rad, WGS 84
    longitude,   // rad, WGS 84
    altitude,    // m
    east,        // m in the file's own local frame
    north,       // m in the file's own local frame
    speed,       // m/s, from satellites or unknown origin
    wheel_speed, // m/s
    course,      // rad, clockwise from north
    longitudinal_acceleration,
    lateral_acceleration,
    vertical_acceleration,
    yaw_rate,
    throttle,       // 0..1
    brake,          // 0..1, pedal or switch
    brake_pressure, // Pa
    steering_angle, // rad
    // m of travel, in either direction; of the wheel or of what the spring rate is stated at
    suspension_front_left,
    suspension_front_right,
    suspension_rear_left,
    suspension_rear_right,
    gear,
    engine_speed, // rev/s
    distance,     // m, the logger's own
    lap_number,
    lap_time, // s, the logger's own
    beacon,   // non-zero at a passing of the timing line
    satellites,
    position_dilution,
    position_accuracy, // m
    air_temperature,
    air_pressure,
    humidity,
};

// The name in JSON and in recipes: "lateral_acceleration".
[[nodiscard]] std::string_view name(Meaning meaning);
// "longitudinal acceleration", in the language of the window.
[[nodiscard]] std::string words(Meaning meaning);
[[nodiscard]] std::optional<Meaning> parse_meaning(std::string_view name);
[[nodiscard]] bool is_suspension_travel(Meaning meaning);
// The quantity that values of this meaning have; `other`, gear and counts have none.
[[nodiscard]] base::Quantity quantity(Meaning meaning);

} // namespace lapwright::recording
