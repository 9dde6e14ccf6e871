// SPDX-License-Identifier: GPL-3.0-or-later
// Published games and the axioms (see README.md).
#include "core/causes/explain.h"
#include "core/causes/shapley.h"

#include <gtest/gtest.h>

#include <bit>
#include <cmath>
#include <numeric>
#include <random>

using namespace lapwright::causes;
namespace car = lapwright::car;

TEST(Shapley, GloveGame) {
    std::vector<double> v(8, 0.0);
    for (unsigned mask = 0; mask < 8; ++mask)
        v[mask] = (mask & 4U) != 0 && (mask & 3U) != 0 ? 1.0 : 0.0;
    const auto worth = shapley(v);
    EXPECT_NEAR(worth[0], 1.0 / 6.0, 1e-15);
    EXPECT_NEAR(worth[1], 1.0 / 6.0, 1e-15);
    EXPECT_NEAR(worth[2], 2.0 / 3.0, 1e-15);
}

TEST(Shapley, AirportGame) {
    const double costs[6] = {40, 50, 60, 70, 80, 90};
    std::vector<double> v(64, 0.0);
    for (unsigned mask = 0; mask < 64; ++mask)
        for (unsigned i = 0; i < 6; ++i)
            if ((mask >> i & 1U) != 0) v[mask] = std::max(v[mask], costs[i]);
    const auto share = shapley(v);
    const double expected[6] = {40, 52, 67, 87, 117, 177};
    for (std::size_t i = 0; i < 6; ++i)
        EXPECT_NEAR(share[i], expected[i] / 6.0, 1e-12);
}

TEST(Shapley, AxiomsOnRandomGames) {
    std::mt19937_64 engine(4);
    const auto random_game = [&](std::size_t n) {
        std::vector<double> v(std::size_t{1} << n);
        for (double& x : v)
            x = static_cast<double>(engine() % 100000) * 1e-3;
        return v;
    };
    for (int trial = 0; trial < 20; ++trial) {
        const auto v = random_game(5);
        const auto w = random_game(5);
        const auto of_v = shapley(v);
        const auto of_w = shapley(w);
        EXPECT_NEAR(std::accumulate(of_v.begin(), of_v.end(), 0.0), v.back() - v.front(), 1e-12 * v.back() + 1e-12);
        std::vector<double> sum(32);
        std::vector<double> dummy(32);
        for (std::size_t i = 0; i < 32; ++i) {
            sum[i] = v[i] + w[i];
            dummy[i] = v[i & ~std::size_t{8}] + ((i & 8U) != 0 ? 2.5 : 0.0);
        }
        const auto of_sum = shapley(sum);
        for (std::size_t i = 0; i < 5; ++i)
            EXPECT_NEAR(of_sum[i], of_v[i] + of_w[i], 1e-11);
        EXPECT_NEAR(shapley(dummy)[3], 2.5, 1e-12);
    }
}

TEST(Shapley, StadiumSplit) {
    // (1200 kg, 200 kW, μ 1.00) against (1150, 220, 1.05): 38.221456 s and 37.024909 s; of −1.196547 s mass has
    // −0.183414, power −0.410742, grip −0.602391.
    car::Course course;
    const double step = 0.05;
    for (int half = 0; half < 2; ++half) {
        for (const auto& [length, curvature] : {std::pair(500.0, 0.0), std::pair(50.0 * std::acos(-1.0), 0.02)}) {
            course.segment_starts.push_back(static_cast<double>(course.size()));
            const auto cells = static_cast<std::size_t>(std::round(length / step));
            course.step_m.insert(course.step_m.end(), cells, length / static_cast<double>(cells));
            course.curvature_per_m.insert(course.curvature_per_m.end(), cells, curvature);
        }
    }
    course.curvature_per_m[0] = 0.02;
    course.curvature_per_m[static_cast<std::size_t>(course.segment_starts[2])] = 0.02;
    car::SimulatedCar a;
    a.grip = 1.0;
    a.power_w = 200e3;
    a.mass_kg = 1200.0;
    car::SimulatedCar b = a;
    b.grip = 1.05;
    b.power_w = 220e3;
    b.mass_kg = 1150.0;
    double total[cause_count] = {};
    for (const auto& segment : causes_by_segment(a, b, course, {}))
        for (std::size_t c = 0; c < cause_count; ++c)
            total[c] += segment[c];
    EXPECT_NEAR(total[0], -0.602391, 1e-3);
    EXPECT_NEAR(total[1], 0.0, 1e-12);
    EXPECT_NEAR(total[2], 0.0, 1e-12);
    EXPECT_NEAR(total[3], -0.410742, 1e-3);
    EXPECT_NEAR(total[4], -0.183414, 1e-3);
}
