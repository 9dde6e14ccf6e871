// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/driven_sound.h"

#include "core/math/random.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace lapwright::video::tests {
namespace {

constexpr double tick_s = 0.001;
constexpr double two_pi = 2.0 * std::numbers::pi;

double between(math::Random& random, double low, double high) {
    return low + (high - low) * random.uniform();
}

struct Car {
    std::vector<double> rev_per_m; // of each gear
    double limit_rev_s = 0.0;
    std::vector<double> corner_mps; // the slowest speed of each corner
    std::vector<double> straight_s; // time at full throttle before each
};

Car car_of(std::uint64_t seed) {
    math::Random random(seed, 5);
    Car car;
    car.limit_rev_s = between(random, 95.0, 140.0);
    const double top_mps = between(random, 50.0, 70.0);
    double ratio = car.limit_rev_s / top_mps;
    const double step = between(random, 1.2, 1.35);
    for (int gear = 0; gear < 5; ++gear, ratio *= step)
        car.rev_per_m.insert(car.rev_per_m.begin(), ratio);
    for (int corner = 0; corner < 7; ++corner) {
        car.corner_mps.push_back(between(random, 14.0, 32.0));
        car.straight_s.push_back(between(random, 3.0, 10.0));
    }
    return car;
}

} // namespace

Drive drive(const DriveRecipe& recipe) {
    const Car car = car_of(recipe.car_seed);
    math::Random random(recipe.drive_seed, 6);
    Drive made;
    double speed = 20.0;
    std::size_t gear = 1;
    double engine = 0.0;
    double slipping_s = 0.0;
    double wheel_spin = 0.0;
    std::size_t corner = 0;
    double left_s = 4.0;
    double slowest = 20.0;
    enum { accelerating, braking, turning } phase = accelerating;
    const auto ticks = static_cast<std::size_t>(recipe.length_s / tick_s);
    for (std::size_t i = 0; i < ticks; ++i) {
        left_s -= tick_s;
        double throttle = 0.3;
        if (phase == accelerating) {
            throttle = 1.0;
            speed += (9.0 - 0.11 * speed) * tick_s;
            if (left_s <= 0.0) phase = braking;
        } else if (phase == braking) {
            throttle = 0.0;
            speed -= 9.0 * tick_s;
            if (speed <= slowest) {
                phase = turning;
                left_s = between(random, 0.6, 1.6);
            }
        } else if (left_s <= 0.0) {
            phase = accelerating;
            corner = (corner + 1) % car.corner_mps.size();
            slowest = car.corner_mps[corner] + between(random, -1.0, 1.0);
            left_s = car.straight_s[corner] + between(random, -0.3, 0.3);
        }
        const double wanted = speed * car.rev_per_m[gear];
        const bool up = wanted > car.limit_rev_s * 0.97 && gear + 1 < car.rev_per_m.size();
        const bool down = wanted < car.limit_rev_s * 0.55 && gear > 0;
        if (up) ++gear;
        if (down) --gear;
        if (up || down) slipping_s = 0.25;
        slipping_s -= tick_s;
        wheel_spin += (0.02 * random.normal() - wheel_spin) * 0.004; // tyres slip a little
        const double locked = std::max(speed * car.rev_per_m[gear] * (1.0 + wheel_spin), 18.0);
        // Between two gears the clutch slips; in gear the engine is bound to the wheels.
        engine = slipping_s > 0.0 ? engine + (locked - engine) * tick_s / 0.05 : locked;
        made.true_engine_rev_s.push_back(engine);
        made.true_speed_mps.push_back(speed);
        made.true_throttle.push_back(throttle);
    }
    const auto every = static_cast<std::size_t>(1.0 / (recipe.channel_rate_hz * tick_s));
    for (std::size_t i = 0; i < ticks; i += every) {
        made.time_s.push_back(static_cast<double>(i) * tick_s);
        made.engine_rev_s.push_back(std::round(made.true_engine_rev_s[i] * 6.0 * (1.0 + 0.002 * random.normal())) /
                                    6.0);
        made.speed_mps.push_back(made.true_speed_mps[i] + 0.05 * random.normal());
    }
    return made;
}

Sound heard(const Drive& drive, const SoundRecipe& recipe) {
    constexpr double rate_hz = 2000.0;
    math::Random random(recipe.seed, 7);
    constexpr std::array firing_orders{1.5, 2.0, 2.5, 3.0, 4.0};
    const double firing = firing_orders[random.below(firing_orders.size())];
    constexpr int tones = 9; // three half orders between the firing order's multiples
    std::array<double, tones> order{};
    std::array<double, tones> amplitude{};
    for (int i = 0; i < tones; ++i) {
        const bool main = i < 3;
        order[static_cast<std::size_t>(i)] = main ? firing * (i + 1) : 0.5 * static_cast<double>(1 + random.below(14));
        amplitude[static_cast<std::size_t>(i)] = main ? between(random, 0.5, 1.0) / (i + 1) : between(random, 0.0, 0.2);
    }
    Sound made{0.0, rate_hz, {}};
    std::array<double, tones> phase{};
    std::vector<double> engine;
    std::vector<double> noise;
    double slow = 0.0;
    double power = 0.0;
    double noise_power = 0.0;
    const auto samples = static_cast<std::size_t>(recipe.length_s * rate_hz);
    for (std::size_t i = 0; i < samples; ++i) {
        const double time_s = recipe.begins_s + static_cast<double>(i) / rate_hz * (1.0 + recipe.drift);
        const auto tick = std::min(static_cast<std::size_t>(time_s / tick_s), drive.true_engine_rev_s.size() - 1);
        double tone = 0.0;
        for (std::size_t k = 0; k < tones; ++k) {
            phase[k] += two_pi * order[k] * drive.true_engine_rev_s[tick] / rate_hz;
            if (order[k] * drive.true_engine_rev_s[tick] < rate_hz / 2.2) tone += amplitude[k] * std::sin(phase[k]);
        }
        engine.push_back(tone * (0.4 + 0.6 * drive.true_throttle[tick]));
        // Wind and road: louder with speed, and towards low frequencies.
        slow += 0.05 * (random.normal() - slow);
        noise.push_back((0.4 * random.normal() + 4.0 * slow) * drive.true_speed_mps[tick] / 40.0);
        power += engine.back() * engine.back();
        noise_power += noise.back() * noise.back();
    }
    const double scale = std::sqrt(power / noise_power / std::pow(10.0, recipe.engine_over_noise_db / 10.0));
    for (std::size_t i = 0; i < samples; ++i)
        made.samples.push_back(static_cast<float>(0.1 * (engine[i] + scale * noise[i])));
    return made;
}

TEST(DrivenSound, IsAsLoudAsItSays) {
    const Drive driven = drive({});
    EXPECT_NEAR(driven.time_s.back(), 300.0, 0.1);
    EXPECT_GT(*std::ranges::max_element(driven.engine_rev_s), 80.0);
    const Sound loud = heard(driven, {});
    EXPECT_EQ(loud.samples.size(), 400'000U);
}

} // namespace lapwright::video::tests
