// SPDX-License-Identifier: GPL-3.0-or-later
// Slope from altitudes that drift from lap to lap.
#include "core/car/slope.h"

#include "core/math/random.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace lapwright;

namespace {

constexpr double length = 3900.0;
constexpr double number = 2.0 * 3.14159265358979323846 * 2.0 / length;

std::vector<double> stations() {
    std::vector<double> s;
    for (int i = 0; i <= 1950; ++i)
        s.push_back(2.0 * i);
    return s;
}

std::vector<std::vector<double>> laps(double amplitude, int count) {
    math::Random random(3);
    std::vector<std::vector<double>> all;
    for (int lap = 0; lap < count; ++lap) {
        double drift = random.normal();
        std::vector<double> altitude;
        for (const double s : stations()) {
            drift += 0.02 * random.normal(); // a random walk of about a metre a lap
            altitude.push_back(40.0 + amplitude * std::sin(number * s) + drift);
        }
        all.push_back(altitude);
    }
    return all;
}

} // namespace

TEST(Slope, HillsAreFoundUnderDrift) {
    const auto s = stations();
    const auto slope = car::slope_of(laps(3.0, 8), s);
    ASSERT_EQ(slope.size(), s.size());
    double worst = 0.0;
    for (std::size_t i = 0; i < s.size(); ++i)
        worst = std::max(worst, std::abs(slope[i] - 3.0 * number * std::cos(number * s[i])));
    EXPECT_LT(worst, 0.002); // of slopes up to 0.0097
}

TEST(Slope, AFlatTrackIsCalledFlat) {
    for (const double value : car::slope_of(laps(0.0, 8), stations()))
        EXPECT_LT(std::abs(value), 0.002);
    EXPECT_TRUE(car::slope_of(laps(3.0, 2), stations()).empty());
}
