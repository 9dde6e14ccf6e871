// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/local_polynomial.h"

#include <gtest/gtest.h>

namespace lapwright::math {
namespace {

const std::vector<double> uneven{0.0, 0.3, 0.5, 1.1, 1.2, 1.9, 2.5};

std::vector<double> quartic() {
    std::vector<double> y;
    for (const double x : uneven)
        y.push_back(1.0 + x * (2.0 + x * (-0.5 + x * (0.7 - 0.3 * x))));
    return y;
}

TEST(Derivative, IsExactOnQuarticsForUnevenStamps) {
    const std::vector<double> rate = derivative(uneven, quartic());
    for (std::size_t i = 0; i < uneven.size(); ++i) {
        const double x = uneven[i];
        EXPECT_NEAR(rate[i], 2.0 + x * (-1.0 + x * (2.1 - 1.2 * x)), 1e-12);
    }
}

// The five-point rule of the textbooks: (1, -8, 0, 8, -1) / 12h.
TEST(Derivative, IsTheFivePointRuleOnEvenStamps) {
    const std::vector<double> x{0, 1, 2, 3, 4};
    const std::vector<double> y{3.0, 1.0, 4.0, 1.0, 5.0};
    EXPECT_NEAR(derivative(x, y)[2], (3.0 - 8.0 * 1.0 + 8.0 * 1.0 - 5.0) / 12.0, 1e-14);
}

TEST(Derivative, ManagesShortSeries) {
    EXPECT_TRUE(derivative({}, {}).empty());
    EXPECT_EQ(derivative(std::vector{1.0}, std::vector{5.0}), std::vector{0.0});
    EXPECT_NEAR(derivative(std::vector{1.0, 3.0}, std::vector{5.0, 6.0})[1], 0.5, 1e-15);
}

TEST(Interpolated, IsExactOnCubicsAndClampsAtTheEnds) {
    std::vector<double> y;
    for (const double x : uneven)
        y.push_back(x * x * x - x);
    EXPECT_NEAR(interpolated(uneven, y, 0.8), 0.8 * 0.8 * 0.8 - 0.8, 1e-12);
    EXPECT_DOUBLE_EQ(interpolated(uneven, y, -4.0), y.front());
    EXPECT_DOUBLE_EQ(interpolated(uneven, y, 40.0), y.back());
}

} // namespace
} // namespace lapwright::math
