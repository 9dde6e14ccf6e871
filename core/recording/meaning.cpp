// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/meaning.h"

#include <algorithm>
#include <array>

namespace lapwright::recording {
namespace {

using base::Quantity;

struct Row {
    Meaning meaning;
    std::string_view name;
    Quantity quantity;
};

constexpr std::array rows{
    Row{Meaning::other, "other", Quantity::none},
    Row{Meaning::latitude, "latitude", Quantity::angle},
    Row{Meaning::longitude, "longitude", Quantity::angle},
    Row{Meaning::altitude, "altitude", Quantity::length},
    Row{Meaning::east, "east", Quantity::length},
    Row{Meaning::north, "north", Quantity::length},
    Row{Meaning::speed, "speed", Quantity::speed},
    Row{Meaning::wheel_speed, "wheel_speed", Quantity::speed},
    Row{Meaning::course, "course", Quantity::angle},
    Row{Meaning::longitudinal_acceleration, "longitudinal_acceleration", Quantity::acceleration},
    Row{Meaning::lateral_acceleration, "lateral_acceleration", Quantity::acceleration},
    Row{Meaning::vertical_acceleration, "vertical_acceleration", Quantity::acceleration},
    Row{Meaning::yaw_rate, "yaw_rate", Quantity::angular_rate},
    Row{Meaning::throttle, "throttle", Quantity::share},
    Row{Meaning::brake, "brake", Quantity::share},
    Row{Meaning::brake_pressure, "brake_pressure", Quantity::pressure},
    Row{Meaning::steering_angle, "steering_angle", Quantity::angle},
    Row{Meaning::suspension_front_left, "suspension_front_left", Quantity::length},
    Row{Meaning::suspension_front_right, "suspension_front_right", Quantity::length},
    Row{Meaning::suspension_rear_left, "suspension_rear_left", Quantity::length},
    Row{Meaning::suspension_rear_right, "suspension_rear_right", Quantity::length},
    Row{Meaning::gear, "gear", Quantity::none},
    Row{Meaning::engine_speed, "engine_speed", Quantity::rotation},
    Row{Meaning::distance, "distance", Quantity::length},
    Row{Meaning::lap_number, "lap_number", Quantity::none},
    Row{Meaning::lap_time, "lap_time", Quantity::time},
    Row{Meaning::beacon, "beacon", Quantity::none},
    Row{Meaning::satellites, "satellites", Quantity::none},
    Row{Meaning::position_dilution, "position_dilution", Quantity::none},
    Row{Meaning::position_accuracy, "position_accuracy", Quantity::length},
    Row{Meaning::air_temperature, "air_temperature", Quantity::temperature},
    Row{Meaning::air_pressure, "air_pressure", Quantity::pressure},
    Row{Meaning::humidity, "humidity", Quantity::share},
};

} // namespace

std::string_view name(Meaning meaning) {
    return std::ranges::find(rows, meaning, &Row::meaning)->name;
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
