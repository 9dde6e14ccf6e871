// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/meaning.h"

#include "core/base/translation.h"

#include <algorithm>
#include <array>

namespace lapwright::recording {
namespace {

using base::Quantity;
using base::word;

struct Row {
    Meaning meaning;
    std::string_view name;
    Quantity quantity;
    const char* words;
};

constexpr std::array rows{
    Row{Meaning::other, "other", Quantity::none, word("other")},
    Row{Meaning::latitude, "latitude", Quantity::angle, word("latitude")},
    Row{Meaning::longitude, "longitude", Quantity::angle, word("longitude")},
    Row{Meaning::altitude, "altitude", Quantity::length, word("altitude")},
    Row{Meaning::east, "east", Quantity::length, word("east")},
    Row{Meaning::north, "north", Quantity::length, word("north")},
    Row{Meaning::speed, "speed", Quantity::speed, word("speed")},
    Row{Meaning::wheel_speed, "wheel_speed", Quantity::speed, word("wheel speed")},
    Row{Meaning::course, "course", Quantity::angle, word("course")},
    Row{Meaning::longitudinal_acceleration, "longitudinal_acceleration", Quantity::acceleration,
        word("longitudinal acceleration")},
    Row{Meaning::lateral_acceleration, "lateral_acceleration", Quantity::acceleration, word("lateral acceleration")},
    Row{Meaning::vertical_acceleration, "vertical_acceleration", Quantity::acceleration, word("vertical acceleration")},
    Row{Meaning::yaw_rate, "yaw_rate", Quantity::angular_rate, word("yaw rate")},
    Row{Meaning::throttle, "throttle", Quantity::share, word("throttle")},
    Row{Meaning::brake, "brake", Quantity::share, word("brake")},
    Row{Meaning::brake_pressure, "brake_pressure", Quantity::pressure, word("brake pressure")},
    Row{Meaning::steering_angle, "steering_angle", Quantity::angle, word("steering angle")},
    Row{Meaning::suspension_front_left, "suspension_front_left", Quantity::length, word("suspension front left")},
    Row{Meaning::suspension_front_right, "suspension_front_right", Quantity::length, word("suspension front right")},
    Row{Meaning::suspension_rear_left, "suspension_rear_left", Quantity::length, word("suspension rear left")},
    Row{Meaning::suspension_rear_right, "suspension_rear_right", Quantity::length, word("suspension rear right")},
    Row{Meaning::gear, "gear", Quantity::none, word("gear")},
    Row{Meaning::engine_speed, "engine_speed", Quantity::rotation, word("engine speed")},
    Row{Meaning::distance, "distance", Quantity::length, word("distance")},
    Row{Meaning::lap_number, "lap_number", Quantity::none, word("lap number")},
    Row{Meaning::lap_time, "lap_time", Quantity::time, word("lap time")},
    Row{Meaning::beacon, "beacon", Quantity::none, word("beacon")},
    Row{Meaning::satellites, "satellites", Quantity::none, word("satellites")},
    Row{Meaning::position_dilution, "position_dilution", Quantity::none, word("position dilution")},
    Row{Meaning::position_accuracy, "position_accuracy", Quantity::length, word("position accuracy")},
    Row{Meaning::air_temperature, "air_temperature", Quantity::temperature, word("air temperature")},
    Row{Meaning::air_pressure, "air_pressure", Quantity::pressure, word("air pressure")},
    Row{Meaning::humidity, "humidity", Quantity::share, word("humidity")},
};

} // namespace

std::string_view name(Meaning meaning) {
    return std::ranges::find(rows, meaning, &Row::meaning)->name;
}

std::string words(Meaning meaning) {
    return base::said(std::ranges::find(rows, meaning, &Row::meaning)->words);
}

std::optional<Meaning> parse_meaning(std::string_view text) {
    const auto found = std::ranges::find(rows, text, &Row::name);
    return found == rows.end() ? std::nullopt : std::optional(found->meaning);
}

bool is_suspension_travel(Meaning meaning) {
    return meaning >= Meaning::suspension_front_left && meaning <= Meaning::suspension_rear_right;
}

Quantity quantity(Meaning meaning) {
    return std::ranges::find(rows, meaning, &Row::meaning)->quantity;
}

} // namespace lapwright::recording
