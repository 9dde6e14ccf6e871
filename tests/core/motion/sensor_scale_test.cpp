// SPDX-License-Identifier: GPL-3.0-or-later
// A scale and the rest of a latency that were put in are found: of a wheel that locks under brakes beside a path of
// noisy speeds, and of a biased accelerometer.
#include "core/motion/sensor_scale.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace lapwright::motion {
namespace {

constexpr double length_s = 600.0;
constexpr double path_step_s = 0.04;

// Braking at up to 10 m/s², pushing at up to 4, all the time in a curve.
double speed_at(double t) {
    const double phase = std::fmod(t, 10.0);
    return phase < 7.5 ? 20.0 + 4.0 * phase - 0.133 * phase * phase : 42.5 - 9.0 * (phase - 7.5);
}

double acceleration_at(double t) {
    return (speed_at(t + 0.005) - speed_at(t - 0.005)) / 0.01;
}

struct Drawn {
    std::mt19937_64 engine;
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> even{-1.0, 1.0};
    explicit Drawn(int seed) : engine(static_cast<std::uint64_t>(seed)) {}
    double noise(double sd) { return sd * normal(engine); }
};

// Round a circle of 200 m, each velocity off by a metre a second in both directions.
Path noisy_path(Drawn& drawn) {
    Path path;
    std::vector<double> stamps;
    double way = 0.0;
    for (double t = 0.0; t <= length_s; t += path_step_s) {
        const double angle = way / 200.0;
        const double v = speed_at(t);
        stamps.push_back(t);
        path.position_m.push_back({200.0 * std::sin(angle) + drawn.noise(0.02), -200.0 * std::cos(angle)});
        path.velocity_mps.push_back({v * std::cos(angle) + drawn.noise(1.0), v * std::sin(angle) + drawn.noise(1.0)});
        path.acceleration_mps2.push_back({});
        way += 0.5 * path_step_s * (v + speed_at(t + path_step_s));
    }
    path.time_s = std::make_shared<const std::vector<double>>(std::move(stamps));
    path.between = Between::linear;
    return path;
}

double swinging(double t) {
    return 4.0 * std::sin(0.63 * t) + 3.0 * std::sin(1.7 * t);
}

class SensorScales : public testing::TestWithParam<int> {};

TEST_P(SensorScales, OfAWheelThatLocksIsFound) {
    Drawn drawn(GetParam());
    const double scale = 1.0 + 0.03 * drawn.even(drawn.engine);
    const double latency_s = 0.1 * drawn.even(drawn.engine);
    const double rest_s = 0.02 * drawn.even(drawn.engine);
    Series wheel;
    for (double t = 0.5; t <= length_s - 0.5; t += 0.01) {
        const double locked = acceleration_at(t - latency_s) < -5.0 ? 0.15 : 0.0;
        wheel.time_s.push_back(t);
        wheel.values.push_back(scale * speed_at(t - latency_s) * (1.0 - locked) + drawn.noise(0.05));
    }
    const SensorScale found =
        sensor_scale(without_braking(wheel), latency_s - rest_s, ways_of(noisy_path(drawn)), math::Intercept::no);
    EXPECT_NEAR(found.scale, scale, 4e-4);
    EXPECT_NEAR(found.later_s, rest_s, 5e-3);
}

TEST_P(SensorScales, OfABiasedAccelerometerIsFound) {
    Drawn drawn(100 + GetParam());
    const double scale = 1.0 + 0.03 * drawn.even(drawn.engine);
    const double bias = 0.2 * drawn.even(drawn.engine);
    Series readings;
    for (double t = 0.0; t <= length_s; t += 0.01) {
        readings.time_s.push_back(t);
        readings.values.push_back(scale * swinging(t) + bias + drawn.noise(0.4));
    }
    std::vector<double> stamps;
    std::vector<double> truth;
    for (double t = 0.0; t <= length_s; t += path_step_s) {
        stamps.push_back(t);
        truth.push_back(swinging(t) + drawn.noise(0.8));
    }
    const SensorScale found = sensor_scale(readings, 0.0, sums_of(stamps, truth), math::Intercept::yes);
    EXPECT_NEAR(found.scale, scale, 8e-3);
}

INSTANTIATE_TEST_SUITE_P(Drawn, SensorScales, testing::Range(0, 12));

TEST(SensorScale, IsOneWhereTooLittleIsKnown) {
    const Series short_one{{0.0, 0.1, 0.2}, {1.0, 1.1, 1.2}, {}, 0};
    const SensorScale found = sensor_scale(short_one, 0.0, Sums{{0.0, 2.0}, {2.2}}, math::Intercept::no);
    EXPECT_EQ(found.scale, 1.0);
    EXPECT_EQ(found.later_s, 0.0);
}

} // namespace
} // namespace lapwright::motion
