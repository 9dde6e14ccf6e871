// SPDX-License-Identifier: GPL-3.0-or-later
// Drawn series with spikes of one to three samples: all of them are found, and of what is good at most a neighbour.
#include "core/motion/spikes.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace lapwright::motion {
namespace {

struct Drawn {
    std::vector<double> time_s;
    std::vector<double> values;
    std::vector<std::uint8_t> spoilt;
};

// A place or a speed along a drive, at a rate with some jitter,
// with noise; a spike stands off by many times that noise.
Drawn drawn_series(std::mt19937_64& engine) {
    std::uniform_real_distribution<double> even(0.0, 1.0);
    std::normal_distribution<double> normal;
    const double step_s = 0.02 * std::pow(10.0, even(engine)); // 50 to 5 Hz
    const double noise = 0.01 + 0.04 * even(engine);
    const double swing = 30.0 * even(engine);
    const double drift = 40.0 * even(engine);
    Drawn drawn;
    double t = 0.0;
    for (int i = 0; i < 3000; ++i, t += step_s * (0.9 + 0.2 * even(engine))) {
        drawn.time_s.push_back(t);
        drawn.values.push_back(drift * t + swing * std::sin(t / 4.0) + noise * normal(engine));
    }
    drawn.spoilt.assign(drawn.values.size(), 0);
    for (std::size_t at = 20; at + 20 < drawn.values.size(); at += 60) {
        const std::size_t run = 1 + static_cast<std::size_t>(3.0 * even(engine));
        const double off = (even(engine) < 0.5 ? -1.0 : 1.0) * (25.0 + 100.0 * even(engine));
        for (std::size_t i = at; i < at + run; ++i) {
            drawn.values[i] += off;
            drawn.spoilt[i] = 1;
        }
    }
    return drawn;
}

bool near_spoilt(const Drawn& drawn, std::size_t i) {
    constexpr std::size_t reach = 3;
    const std::size_t from = i > reach ? i - reach : 0;
    const std::size_t to = std::min(drawn.spoilt.size(), i + reach + 1);
    return std::any_of(drawn.spoilt.begin() + static_cast<std::ptrdiff_t>(from),
                       drawn.spoilt.begin() + static_cast<std::ptrdiff_t>(to), [](std::uint8_t s) { return s != 0; });
}

TEST(Spikes, AreFoundInDrawnSeriesAndAwayFromThemNothingElse) {
    constexpr double harmless = 2.0;
    for (std::uint64_t seed = 0; seed < 40; ++seed) {
        std::mt19937_64 engine(seed);
        const Drawn drawn = drawn_series(engine);
        const auto found = spikes(drawn.time_s, drawn.values, harmless);
        for (std::size_t i = 0; i < found.size(); ++i) {
            EXPECT_TRUE(found[i] != 0 || drawn.spoilt[i] == 0) << seed << ": missed " << i;
            EXPECT_TRUE(found[i] == 0 || near_spoilt(drawn, i)) << seed << ": found " << i;
        }
    }
}

TEST(Spikes, AStepIsNone) {
    std::vector<double> time_s;
    std::vector<double> values;
    for (int i = 0; i < 100; ++i) {
        time_s.push_back(0.04 * i);
        values.push_back(i < 50 ? 0.0 : 30.0);
    }
    EXPECT_EQ(spikes(time_s, values, 1.0), std::vector<std::uint8_t>(100, 0));
}

} // namespace
} // namespace lapwright::motion
