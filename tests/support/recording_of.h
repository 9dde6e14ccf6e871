// SPDX-License-Identifier: GPL-3.0-or-later
// A simulated logger's channels as a Recording, without the detour over a file.  Header only: each test program links
// its own layer and `truth`.
#pragma once

#include "core/recording/recording.h"
#include "truth/logger.h"

#include <algorithm>
#include <memory>
#include <numbers>
#include <optional>
#include <string>

namespace lapwright::test {

inline std::optional<recording::Meaning> meaning_of(truth::Quantity quantity) {
    using recording::Meaning;
    switch (quantity) {
    case truth::Quantity::latitude_deg:
        return Meaning::latitude;
    case truth::Quantity::longitude_deg:
        return Meaning::longitude;
    case truth::Quantity::height_m:
        return Meaning::altitude;
    case truth::Quantity::speed_mps:
        return Meaning::speed;
    case truth::Quantity::course_rad:
        return Meaning::course;
    case truth::Quantity::a_long_mps2:
        return Meaning::longitudinal_acceleration;
    case truth::Quantity::a_lat_mps2:
        return Meaning::lateral_acceleration;
    case truth::Quantity::yaw_rate_radps:
        return Meaning::yaw_rate;
    case truth::Quantity::wheel_speed_mps:
        return Meaning::wheel_speed;
    case truth::Quantity::throttle:
        return Meaning::throttle;
    case truth::Quantity::brake:
        return Meaning::brake;
    case truth::Quantity::gear:
        return Meaning::gear;
    case truth::Quantity::engine_rpm:
        return Meaning::engine_speed;
    case truth::Quantity::lap_number:
        return Meaning::lap_number;
    case truth::Quantity::distance_m:
        return Meaning::distance;
    case truth::Quantity::suspension_front_left_m:
        return Meaning::suspension_front_left;
    case truth::Quantity::suspension_front_right_m:
        return Meaning::suspension_front_right;
    case truth::Quantity::suspension_rear_left_m:
        return Meaning::suspension_rear_left;
    case truth::Quantity::suspension_rear_right_m:
        return Meaning::suspension_rear_right;
    }
    return std::nullopt;
}

inline double si_factor(truth::Quantity quantity) {
    switch (quantity) {
    case truth::Quantity::latitude_deg:
    case truth::Quantity::longitude_deg:
        return std::numbers::pi / 180.0;
    case truth::Quantity::engine_rpm:
        return 1.0 / 60.0;
    default:
        return 1.0;
    }
}

inline recording::Recording recording_of(const truth::LoggedSession& logged, const std::string& name) {
    recording::Recording recording;
    recording.source_file = name;
    recording.driver = name;
    for (const truth::LoggedChannel& from : logged.channels) {
        recording::Channel channel;
        const auto meaning = meaning_of(from.quantity);
        if (!meaning || from.value.empty()) continue;
        channel.meaning = *meaning;
        channel.name = std::string(recording::name(*meaning));
        channel.time_s = std::make_shared<const std::vector<double>>(from.time_s);
        channel.values = from.value;
        for (double& value : channel.values)
            value *= si_factor(from.quantity);
        recording.duration_s = std::max(recording.duration_s, from.time_s.back());
        recording.channels.push_back(std::move(channel));
    }
    return recording;
}

} // namespace lapwright::test
