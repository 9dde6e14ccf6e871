// SPDX-License-Identifier: GPL-3.0-or-later
// A drive known in closed form, round an ellipse with a speed that rises and falls, and what a logger would write of
// it. Truth and recording come from the formulas below alone; nothing of the estimators is used.
#pragma once

#include "core/motion/local_frame.h"
#include "core/recording/recording.h"

#include <cmath>
#include <functional>
#include <memory>
#include <random>
#include <vector>

namespace lapwright::motion::test {

inline constexpr double degree_rad = 3.14159265358979323846 / 180.0;

// Position: (a cos φ, b sin φ) with φ(t) = rate t + wave sin(2 rate t); counter-clockwise.
struct Drive {
    double a_m = 300.0;
    double b_m = 180.0;
    double rate_radps = 0.13;
    double wave_rad = 0.12;

    double phase(double t) const { return rate_radps * t + wave_rad * std::sin(2.0 * rate_radps * t); }
    double phase_rate(double t) const { return rate_radps * (1.0 + 2.0 * wave_rad * std::cos(2.0 * rate_radps * t)); }
    double phase_bend(double t) const {
        return -4.0 * rate_radps * rate_radps * wave_rad * std::sin(2.0 * rate_radps * t);
    }
    double east(double t) const { return a_m * std::cos(phase(t)); }
    double north(double t) const { return b_m * std::sin(phase(t)); }
    double east_rate(double t) const { return -a_m * std::sin(phase(t)) * phase_rate(t); }
    double north_rate(double t) const { return b_m * std::cos(phase(t)) * phase_rate(t); }
    double east_bend(double t) const {
        return -a_m * (std::cos(phase(t)) * std::pow(phase_rate(t), 2) + std::sin(phase(t)) * phase_bend(t));
    }
    double north_bend(double t) const {
        return b_m * (-std::sin(phase(t)) * std::pow(phase_rate(t), 2) + std::cos(phase(t)) * phase_bend(t));
    }
    double speed(double t) const { return std::hypot(east_rate(t), north_rate(t)); }
    double course(double t) const { return std::atan2(east_rate(t), north_rate(t)); }
    double longitudinal(double t) const {
        return (east_rate(t) * east_bend(t) + north_rate(t) * north_bend(t)) / speed(t);
    }
    double lateral(double t) const { return (east_rate(t) * north_bend(t) - north_rate(t) * east_bend(t)) / speed(t); }
    double yaw_rate(double t) const { return lateral(t) / speed(t); }
    // When the n-th lap ends: φ = 2πn + start, by bisection.
    double passing_s(double turns) const {
        const double goal = 2.0 * 3.14159265358979323846 * turns;
        double low = 0.0;
        double high = goal / rate_radps * 2.0 + 10.0;
        for (int i = 0; i < 200; ++i) {
            const double middle = 0.5 * (low + high);
            (phase(middle) < goal ? low : high) = middle;
        }
        return 0.5 * (low + high);
    }
};

inline recording::Stamps stamps(double from_s, double to_s, double rate_hz) {
    std::vector<double> times;
    for (int i = 0; from_s + i / rate_hz <= to_s; ++i)
        times.push_back(from_s + i / rate_hz);
    return std::make_shared<const std::vector<double>>(std::move(times));
}

inline recording::Channel channel(recording::Meaning meaning, recording::Stamps time_s,
                                  const std::function<double(double)>& value) {
    recording::Channel result;
    result.name = std::string(recording::name(meaning));
    result.meaning = meaning;
    for (const double t : *time_s)
        result.values.push_back(value(t));
    result.time_s = std::move(time_s);
    return result;
}

} // namespace lapwright::motion::test
