// SPDX-License-Identifier: GPL-3.0-or-later
// The lap simulation against closed forms: constant radius with and without downforce, constant power, braking,
// coasting down, terminal speed, the stadium lap with its sensitivities.
#include "core/car/lap_simulation.h"

#include "core/base/constants.h"
#include "core/math/random.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

using namespace lapwright::car;

namespace {

constexpr double g = lapwright::base::standard_gravity_mps2;
constexpr double pi = lapwright::base::pi;

Course circle(double radius, std::size_t nodes = 200) {
    Course course;
    course.step_m.assign(nodes, 2.0 * pi * radius / static_cast<double>(nodes));
    course.curvature_per_m.assign(nodes, 1.0 / radius);
    course.segment_starts = {0.0};
    return course;
}

void append(Course& course, double length, double curvature, double step) {
    const auto cells = static_cast<std::size_t>(std::round(length / step));
    for (std::size_t i = 0; i < cells; ++i) {
        course.step_m.push_back(length / static_cast<double>(cells));
        course.curvature_per_m.push_back(curvature);
    }
}

// Two straights of 500 m and two half circles of 50 m, four segments.
Course stadium(double step) {
    Course course;
    for (int half = 0; half < 2; ++half) {
        course.segment_starts.push_back(static_cast<double>(course.size()));
        append(course, 500.0, 0.0, step);
        course.segment_starts.push_back(static_cast<double>(course.size()));
        append(course, 50.0 * pi, 1.0 / 50.0, step);
    }
    // A node between an arc and a straight belongs to the arc.
    course.curvature_per_m[0] = 1.0 / 50.0;
    course.curvature_per_m[static_cast<std::size_t>(course.segment_starts[2])] = 1.0 / 50.0;
    return course;
}

SimulatedCar plain_car() {
    SimulatedCar car;
    car.grip = 1.0;
    car.power_w = 200e3;
    car.mass_kg = 1200.0;
    return car;
}

double steady_speed(double grip, double radius, double downforce_area) {
    SimulatedCar car = plain_car();
    car.grip = grip;
    car.power_w = 1e8;
    car.downforce_n_per_mps2 = 0.5 * 1.225 * downforce_area;
    return simulate_lap(car, circle(radius)).speed_mps.front();
}

} // namespace

TEST(LapSimulation, ConstantRadius) {
    EXPECT_NEAR(steady_speed(1.0, 50.0, 0.0), 22.143453, 1e-6);
    EXPECT_NEAR(steady_speed(1.1, 100.0, 0.0), 32.844048, 1e-6);
    EXPECT_NEAR(steady_speed(1.3, 100.0, 0.0), 35.705245, 1e-6);
    EXPECT_NEAR(steady_speed(1.3, 100.0, 1.5), 37.626835, 1e-6);
    EXPECT_NEAR(steady_speed(1.3, 100.0, 3.0), 39.896307, 1e-6);
    // Above the radius at which downforce outruns the need (502.355 m at ClA 3, μ 1.3) nothing limits the speed.
    EXPECT_GT(steady_speed(1.3, 503.0, 3.0), 129.0);
}

TEST(LapSimulation, LoadExponentSolvesItsOwnEquation) {
    SimulatedCar car = plain_car();
    car.grip = 1.3;
    car.load_exponent = 0.85;
    car.power_w = 1e8;
    car.downforce_n_per_mps2 = 0.5 * 1.2 * 3.0;
    const double v = simulate_lap(car, circle(120.0)).speed_mps.front();
    const double limit = 1.3 * g * std::pow(1.0 + car.downforce_n_per_mps2 * v * v / (1200.0 * g), 0.85);
    EXPECT_NEAR(v * v / 120.0 / limit, 1.0, 1e-5);
}

TEST(LapSimulation, TerminalSpeed) {
    // P = (F0 + F2 v²) v on a circle too wide to matter.
    SimulatedCar car = plain_car();
    car.drag_n_per_mps2 = 0.5 * 1.2 * 0.8;
    car.rolling_resistance = 0.013;
    const double v = simulate_lap(car, circle(5000.0, 2000)).speed_mps[700];
    EXPECT_NEAR((0.013 * 1200.0 * g + car.drag_n_per_mps2 * v * v) * v / 200e3, 1.0, 1e-6);
}

TEST(LapSimulation, ConstantPowerAndBraking) {
    // From a slow corner at 20 m/s: v³ = v0³ + 3 P s / m gives 54.061202 m/s after 300 m and 7.567841 s.
    SimulatedCar car = plain_car();
    const double radius = 20.0 * 20.0 / g;
    Course course;
    append(course, 1000.0, 0.0, 0.5);
    append(course, 50.0, 1.0 / radius, 0.5);
    course.curvature_per_m[0] = 1.0 / radius;
    course.segment_starts = {0.0, 600.0, 2000.0};
    const SimulatedLap lap = simulate_lap(car, course);
    EXPECT_NEAR(lap.speed_mps[0], 20.0, 0.05);
    const double s = 300.0;
    const double v = std::cbrt(std::pow(lap.speed_mps[0], 3) + 3.0 * 200e3 * s / 1200.0);
    EXPECT_NEAR(lap.speed_mps[600] / v, 1.0, 1e-5);
    EXPECT_NEAR(v, 54.061202, 0.01);
    EXPECT_NEAR(lap.segment_time_s[0], 7.567841, 0.004);
    // Braking at 1 g over the last metres of the straight: v² falls by 2 g a metre.
    EXPECT_NEAR(std::pow(lap.speed_mps[1900], 2) - std::pow(lap.speed_mps[1950], 2), 2.0 * g * 25.0, 1e-6);
}

TEST(LapSimulation, CoastDown) {
    // Closed form of the road load F0 + F2 v² (1400 kg, 150 N, 0.4 N/(m/s)²): from 40 to 20 m/s in 57.5475266 s over
    // 1637.056134 m. A bend holds the start at 40 m/s, then the driver stays off the throttle.
    SimulatedCar car;
    car.grip = 1.0;
    car.mass_kg = 1400.0;
    car.power_w = 300e3;
    car.drag_n_per_mps2 = 0.4;
    car.rolling_resistance = 150.0 / (1400.0 * g);
    Course course;
    append(course, 2000.0, 0.0, 1.0);
    append(course, 1637.056134, 0.0, 0.5);
    const auto bend = static_cast<std::size_t>(2000);
    course.curvature_per_m[bend] = g / 1600.0;
    course.segment_starts = {0.0, 2000.0};
    DriverUse use;
    use.grip = {1.0, 1.0};
    use.drive = {1.0, 1e-9};
    const SimulatedLap lap = simulate_lap(car, course, use);
    EXPECT_NEAR(lap.speed_mps[bend], 40.0, 1e-3);
    EXPECT_NEAR(lap.speed_mps.front(), 20.0, 1e-3);
    EXPECT_NEAR(lap.segment_time_s[1] / 57.5475266, 1.0, 1e-4);
}

TEST(LapSimulation, StadiumLap) {
    const SimulatedLap lap = simulate_lap(plain_car(), stadium(0.25));
    EXPECT_NEAR(lap.lap_time_s, 38.221456, 0.004);
    // Shrinking steps go to the closed form.
    const double error_1 = std::abs(simulate_lap(plain_car(), stadium(1.0)).lap_time_s - 38.221456);
    const double error_2 = std::abs(simulate_lap(plain_car(), stadium(0.05)).lap_time_s - 38.221456);
    EXPECT_LT(error_1, 38.2 * 1e-3);
    EXPECT_LT(error_2, 0.1 * error_1);
    EXPECT_NEAR(*std::ranges::max_element(lap.speed_mps), 57.419152, 0.03);
    EXPECT_NEAR(std::accumulate(lap.segment_time_s.begin(), lap.segment_time_s.end(), 0.0), lap.lap_time_s, 1e-12);
    EXPECT_NEAR(lap.segment_time_s[1], 7.093728, 0.01);
    EXPECT_NEAR(lap.segment_time_s[0], lap.segment_time_s[2], 1e-3);
}

TEST(LapSimulation, StadiumSensitivities) {
    const Course course = stadium(0.1);
    const double base = simulate_lap(plain_car(), course).lap_time_s;
    const auto change = [&](double power, double mass, double grip) {
        SimulatedCar car = plain_car();
        car.power_w *= power;
        car.mass_kg *= mass;
        car.grip *= grip;
        return simulate_lap(car, course).lap_time_s - base;
    };
    EXPECT_NEAR(change(1.01, 1.0, 1.0), -0.043795, 2e-4);
    EXPECT_NEAR(change(1.0, 1.01, 1.0), 0.043933, 2e-4);
    EXPECT_NEAR(change(1.0, 1.0, 1.01), -0.124062, 2e-4);
}

TEST(LapSimulation, UseFactorsActWhereTheyStand) {
    const Course course = stadium(1.0);
    const SimulatedLap whole = simulate_lap(plain_car(), course);
    DriverUse use;
    use.grip = {1.0, 0.9, 1.0, 1.0};
    use.drive = {1.0, 1.0, 0.8, 1.0};
    const SimulatedLap lap = simulate_lap(plain_car(), course, use);
    EXPECT_NEAR(lap.segment_time_s[1] / whole.segment_time_s[1], 1.0 / std::sqrt(0.9), 2e-3);
    EXPECT_GT(lap.segment_time_s[2], whole.segment_time_s[2] + 0.1);
    EXPECT_NEAR(lap.segment_time_s[3], whole.segment_time_s[3], 0.01);
}

// Cars drawn so that neighbours differ in few of their figures, in any of them, or in none.
TEST(LapSimulation, LapsOfManyCarsAreThoseOfEach) {
    Course course = stadium(3.0);
    lapwright::math::Random random(3, 9);
    for (int round = 0; round < 8; ++round) {
        if (round == 4) course.slope.assign(course.size(), 0.01);
        std::vector<SimulatedCar> cars(1, plain_car());
        while (cars.size() < 40) {
            SimulatedCar car = cars.back();
            for (double* figure : {&car.grip, &car.load_exponent, &car.downforce_n_per_mps2, &car.drag_n_per_mps2,
                                   &car.rolling_resistance, &car.power_w, &car.mass_kg, &car.rotating_share,
                                   &car.braking_share, &car.traction_share})
                if (random.uniform() < 0.15)
                    *figure = (0.9 + 0.1 * random.uniform()) * *figure + 0.01 * random.uniform();
            cars.push_back(car);
        }
        DriverUse use;
        use.grip = {1.0, 0.9, 1.0, 0.95};
        use.drive = {1.0, 1.1, 0.8, 1.0};
        const std::vector<SimulatedLap> laps = simulate_laps(cars, course, use);
        ASSERT_EQ(laps.size(), cars.size());
        for (std::size_t i = 0; i < cars.size(); ++i) {
            const SimulatedLap alone = simulate_lap(cars[i], course, use);
            EXPECT_EQ(laps[i].speed_mps, alone.speed_mps) << round << ' ' << i;
            EXPECT_EQ(laps[i].segment_time_s, alone.segment_time_s) << round << ' ' << i;
        }
    }
}
