// SPDX-License-Identifier: GPL-3.0-or-later
// Imperfect loggers: each sensor samples the truth on its own clock, late by its latency, with its own errors. Values
// are SI; course is clockwise from north; a_lat and yaw rate positive to the left; shares 0..1.
#pragma once

#include <cstdint>
#include <vector>

#include "tests/truth/session.h"
#include "tests/truth/suspension.h"

namespace truth {

enum class Quantity {
    latitude_deg,
    longitude_deg,
    height_m,
    speed_mps,
    course_rad,
    a_long_mps2,
    a_lat_mps2,
    yaw_rate_radps,
    wheel_speed_mps,
    throttle,
    brake,
    gear,
    engine_rpm,
    lap_number,
    distance_m, // the logger's own integral of its speed
    suspension_front_left_m,
    suspension_front_right_m,
    suspension_rear_left_m,
    suspension_rear_right_m,
};

struct SensorClock {
    double rate_hz = 25.0;  // 0: no such sensor
    double latency_s = 0.0; // a sample stamped t shows the car at t - latency
    double phase_s = 0.0;   // first stamp
};

struct DropOut {
    double start_s = 0.0;
    double length_s = 0.0; // no satellite samples inside
};

struct LoggerSpec {
    SensorClock position;
    SensorClock velocity; // Doppler speed and course
    SensorClock inertial; // accelerometer and yaw rate
    SensorClock pedals;   // throttle, brake
    SensorClock engine;   // gear, engine speed, lap number, distance
    SensorClock wheel{0.0};
    SensorClock suspension{0.0};

    double position_white_sd_m = 0.03; // each axis
    double position_bias_sd_m = 0.7;   // each axis, Ornstein-Uhlenbeck
    double position_bias_tau_s = 120.0;
    double height_factor = 1.6; // height errors are this much larger
    double speed_sd_mps = 0.04;
    // A standing car shows any course when there is course noise at all.
    double course_sd_rad = 0.15 * 3.14159265358979323846 / 180.0;

    double accel_noise_sd_mps2 = 0.25;
    double accel_bias_sd_mps2 = 0.10; // drawn once a session, each axis
    double accel_scale_sd = 0.01;
    bool accel_feels_slope = true; // a_long includes g * slope
    double yaw_noise_sd_radps = 0.006;
    double yaw_bias_sd_radps = 0.004;

    double wheel_scale = 1.018;        // reads so much high
    double wheel_scale_lap_sd = 0.0;   // each lap's scale is off by its own draw of this
    double wheel_scale_drift_sd = 0.0; // and drifts, as tyres warm and slip: Gauss-Markov
    double wheel_scale_drift_tau_s = 10.0;
    double wheel_noise_sd_mps = 0.05;
    double wheel_lock_share = 0.2; // loses up to this share of its speed at full braking

    SuspensionTruth suspension_truth;

    double stamp_jitter_sd_s = 0.0;
    double stamp_step_s = 0.0; // stamps rounded to this; 0: not rounded
    std::vector<DropOut> drop_outs;
};

/// Every error off; all sensors on one clock.
[[nodiscard]] LoggerSpec perfect_logger(double rate_hz);
/// The bars' noise (0.7 m / 120 s bias, 0.03 m white, 0.04 m/s, 0.15 degrees), all sensors on one clock.
[[nodiscard]] LoggerSpec typical_logger(double rate_hz);

struct LoggedChannel {
    Quantity quantity = Quantity::speed_mps;
    std::vector<double> time_s;
    std::vector<double> value;
};

struct LoggedSession {
    std::vector<LoggedChannel> channels;
    [[nodiscard]] const LoggedChannel* find(Quantity quantity) const;
};

[[nodiscard]] LoggedSession log_session(const Session& session, const LoggerSpec& spec, std::uint64_t seed);

} // namespace truth
