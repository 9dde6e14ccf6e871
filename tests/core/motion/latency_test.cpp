// SPDX-License-Identifier: GPL-3.0-or-later
// A latency and a scale that were put in are found, and rows that are wrong move neither.
#include "core/motion/latency.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

namespace lapwright::motion {
namespace {

constexpr double length_s = 120.0;

double truth_at(double t) {
    return 40.0 + 15.0 * std::sin(0.4 * t) + 5.0 * std::sin(1.1 * t);
}

struct Path {
    std::vector<double> time_s;
    std::vector<double> values;
};

Path path() {
    Path result;
    for (double t = 0.0; t <= length_s; t += 0.04) {
        result.time_s.push_back(t);
        result.values.push_back(truth_at(t));
    }
    return result;
}

Series late(double latency_s, double scale, double noise_sd, std::uint64_t seed) {
    std::mt19937_64 engine(seed);
    std::normal_distribution<double> normal;
    Series series;
    for (double t = 0.0; t <= length_s; t += 0.04) {
        series.time_s.push_back(t);
        series.values.push_back(scale * truth_at(t - latency_s) + noise_sd * normal(engine));
    }
    return series;
}

class Relations : public testing::TestWithParam<int> {};

TEST_P(Relations, AreFoundBesideWrongRows) {
    const auto seed = static_cast<std::uint64_t>(GetParam());
    std::mt19937_64 engine(seed + 100);
    std::uniform_real_distribution<double> even(0.0, 1.0);
    const double latency_s = -0.2 + 0.5 * even(engine);
    const double scale = 0.9 + 0.2 * even(engine);
    const double noise_sd = seed % 2 == 0 ? 0.0 : 0.05;
    const Path known = path();
    Series series = late(latency_s, scale, noise_sd, seed);
    const auto clean = relation(series, known.time_s, known.values);
    ASSERT_TRUE(clean);
    EXPECT_NEAR(clean->latency_s, latency_s, noise_sd > 0.0 ? 2e-3 : 3e-4);
    EXPECT_NEAR(clean->slope, scale, 2e-3);
    // The first row, the last, a stretch that stands still, and single rows of nonsense.
    series.values.front() = 0.0;
    series.values.back() = 200.0;
    for (std::size_t i = 1200; i < 1225; ++i)
        series.values[i] = series.values[1199];
    for (int n = 0; n < 20; ++n)
        series.values[static_cast<std::size_t>(3000.0 * even(engine))] = 300.0 * even(engine);
    const auto damaged = relation(series, known.time_s, known.values);
    ASSERT_TRUE(damaged);
    EXPECT_NEAR(damaged->latency_s, clean->latency_s, noise_sd > 0.0 ? 5e-4 : 5e-5);
    EXPECT_NEAR(damaged->slope, clean->slope, 1e-3);
}

INSTANTIATE_TEST_SUITE_P(Drawn, Relations, testing::Range(0, 10));

TEST(Relation, DoesNotComeFromWhereThePathIsNotKnown) {
    Path known = path();
    const Series series = late(0.1, 1.0, 0.0, 1);
    const auto whole = relation(series, known.time_s, known.values);
    for (std::size_t i = 500; i < 900; ++i)
        known.values[i] = std::numeric_limits<double>::quiet_NaN();
    const auto holed = relation(series, known.time_s, known.values);
    ASSERT_TRUE(whole && holed);
    EXPECT_NEAR(holed->latency_s, whole->latency_s, 1e-4);
}

} // namespace
} // namespace lapwright::motion
