// SPDX-License-Identifier: GPL-3.0-or-later
// Repeatability of segment times and the ideal lap with its
// noise-only part (checks: expected least of n normals, Harter 1961).
#include "core/comparison/repeatability.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

using namespace lapwright::comparison;

namespace {

// Laps whose segments differ by nothing but seeded normal noise (Box and Muller on a fixed engine).
std::vector<std::vector<double>> noisy_laps(std::size_t laps, std::size_t segments, double sd, std::uint64_t seed) {
    std::mt19937_64 engine(seed);
    const auto uniform = [&] { return (static_cast<double>(engine() >> 12U) + 0.5) * 0x1.0p-52; };
    std::vector<std::vector<double>> all;
    for (std::size_t i = 0; i < laps; ++i) {
        std::vector<double> boundaries{0.0};
        for (std::size_t k = 0; k < segments; ++k) {
            const double z = std::sqrt(-2.0 * std::log(uniform())) * std::cos(6.283185307179586 * uniform());
            boundaries.push_back(boundaries.back() + 5.0 + sd * z);
        }
        all.push_back(boundaries);
    }
    return all;
}

} // namespace

TEST(Repeatability, ByHand) {
    // A: 10.0, 10.2; B: 10.3, 10.5, so B is slower by 0.3 and A wins every pair. Equal variances of 0.02:
    // standard error sqrt(0.02), two degrees of freedom, t = 4.302653.
    const std::vector<std::vector<double>> a{{0.0, 10.0}, {0.0, 10.2}};
    const std::vector<std::vector<double>> b{{0.0, 10.3}, {100.0, 110.5}};
    const auto result = repeatability(a, b, 1);
    ASSERT_EQ(result.size(), 1u);
    EXPECT_NEAR(*result[0].mean_difference_s, 0.3, 1e-12);
    EXPECT_NEAR(*result[0].low_s, 0.3 - 4.302653 * std::sqrt(0.02), 1e-6);
    EXPECT_NEAR(*result[0].high_s, 0.3 + 4.302653 * std::sqrt(0.02), 1e-6);
    EXPECT_DOUBLE_EQ(*result[0].chance_a_wins, 1.0);
    EXPECT_EQ(result[0].times_b_s.size(), 2u);
}

TEST(Repeatability, AbsentWithTooFewLaps) {
    const std::vector<std::vector<double>> one{{0.0, 10.0}};
    const auto result = repeatability(one, one, 1);
    EXPECT_FALSE(result[0].mean_difference_s);
    EXPECT_DOUBLE_EQ(*result[0].chance_a_wins, 0.5);
    EXPECT_FALSE(repeatability({}, one, 1)[0].chance_a_wins);
    EXPECT_FALSE(ideal_lap(one).time_s);
}

TEST(Repeatability, IntervalCoversEqualDriversInNineteenOfTwenty) {
    int covered = 0;
    constexpr int trials = 400;
    for (int i = 0; i < trials; ++i) {
        const auto seed = static_cast<std::uint64_t>(i);
        const auto r = repeatability(noisy_laps(8, 1, 0.05, 2 * seed), noisy_laps(6, 1, 0.1, 2 * seed + 1), 1)[0];
        covered += *r.low_s <= 0.0 && 0.0 <= *r.high_s ? 1 : 0;
    }
    EXPECT_NEAR(covered, 0.95 * trials, 3.0 * std::sqrt(0.95 * 0.05 * trials));
}

TEST(IdealLap, NoiseAloneExplainsASumOfLeastTimes) {
    // Twenty segments of 0.05 s, ten laps: 1.539 s under the mean lap by chance alone.
    double under = 0.0;
    double foreseen = 0.0;
    constexpr int trials = 200;
    for (int i = 0; i < trials; ++i) {
        const IdealLap ideal = ideal_lap(noisy_laps(10, 20, 0.05, static_cast<std::uint64_t>(1000 + i)));
        under += (*ideal.mean_lap_s - *ideal.time_s) / trials;
        foreseen += *ideal.noise_only_gain_s / trials;
        EXPECT_LE(*ideal.time_s, *ideal.best_lap_s);
    }
    EXPECT_NEAR(under, 20 * 0.05 * 1.53875, 0.02);
    // The sample standard deviation of ten is 2.7 % low on average.
    EXPECT_NEAR(foreseen, under, 0.07);
}
