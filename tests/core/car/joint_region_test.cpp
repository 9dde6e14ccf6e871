// SPDX-License-Identifier: GPL-3.0-or-later
// The ellipse of two figures holds the draws that it says, over drawn shapes.
#include "core/car/joint_region.h"

#include "core/math/random.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace lapwright;
using namespace lapwright::car;

namespace {

// Crossing number of a ray to the right.
bool inside(const JointRegion& region, double x, double y) {
    bool in = false;
    for (std::size_t i = 0; i + 1 < region.outline_x.size(); ++i) {
        const double y0 = region.outline_y[i];
        const double y1 = region.outline_y[i + 1];
        if ((y0 > y) == (y1 > y)) continue;
        const double at = region.outline_x[i] + (y - y0) / (y1 - y0) * (region.outline_x[i + 1] - region.outline_x[i]);
        if (at > x) in = !in;
    }
    return in;
}

} // namespace

TEST(JointRegion, HoldsNineteenDrawsInTwenty) {
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        math::Random random(seed, 77);
        const double r = 1.98 * random.uniform() - 0.99;
        const bool long_tailed = seed % 2 == 0;
        std::vector<double> x;
        std::vector<double> y;
        for (int i = 0; i < 400; ++i) {
            const double u = random.normal();
            const double w = r * u + std::sqrt(1.0 - r * r) * random.normal();
            x.push_back(1.3 + 0.04 * (long_tailed ? std::exp(u) : u));
            y.push_back(2.5 + 0.9 * w);
        }
        const JointRegion region = joint_region(x, y);
        ASSERT_FALSE(region.empty());
        EXPECT_EQ(region.outline_x.front(), region.outline_x.back());
        int held = 0;
        for (std::size_t i = 0; i < x.size(); ++i)
            held += inside(region, x[i], y[i]) ? 1 : 0;
        EXPECT_NEAR(held, 380, 3) << seed;
        if (!long_tailed) {
            EXPECT_NEAR(region.correlation, r, 0.15) << seed;
        }
    }
}

TEST(JointRegion, IsEmptyWhereThereIsNone) {
    const std::vector<double> few(10, 1.0);
    const std::vector<double> same(50, 1.0);
    std::vector<double> rising;
    for (int i = 0; i < 50; ++i)
        rising.push_back(i);
    EXPECT_TRUE(joint_region(few, few).empty());
    EXPECT_TRUE(joint_region(same, rising).empty());
    EXPECT_TRUE(joint_region(rising, rising).empty()) << "a line";
    EXPECT_TRUE(grip_and_downforce({}, false).empty()) << "no draws";
}
