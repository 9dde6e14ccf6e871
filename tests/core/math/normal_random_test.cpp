// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/normal_random.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace lapwright::math {
namespace {

std::vector<double> numbers(std::uint64_t seed, std::uint64_t stream, std::size_t count) {
    NormalStream normals(seed, stream);
    std::vector<double> values(count);
    for (double& value : values)
        value = normals.next();
    return values;
}

// Kolmogorov's statistic against the normal distribution; 1.63 / √n is exceeded by chance in 1 % of cases.
TEST(NormalStream, IsNormallyDistributed) {
    std::vector<double> values = numbers(7, 3, 400000);
    std::ranges::sort(values);
    const auto n = static_cast<double>(values.size());
    double farthest = 0.0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        const double share = 0.5 * std::erfc(-values[i] / std::sqrt(2.0));
        farthest = std::max({farthest, std::fabs(share - static_cast<double>(i) / n),
                             std::fabs(share - static_cast<double>(i + 1) / n)});
    }
    EXPECT_LT(farthest, 1.63 / std::sqrt(n));
}

TEST(NormalStream, HasTheTailsOfANormal) {
    const std::vector<double> values = numbers(11, 0, 2000000);
    const auto beyond = [&](double limit) {
        return static_cast<double>(std::ranges::count_if(values, [&](double v) { return std::fabs(v) > limit; }));
    };
    for (const double limit : {2.0, 3.0, 3.6, 4.0}) { // 3.44 is where the tail's own method begins
        const double expected = std::erfc(limit / std::sqrt(2.0)) * static_cast<double>(values.size());
        EXPECT_NEAR(beyond(limit), expected, 4.0 * std::sqrt(expected)) << limit;
    }
}

TEST(NormalStream, RepeatsForASeedAndDiffersBetweenStreams) {
    EXPECT_EQ(numbers(1, 2, 100), numbers(1, 2, 100));
    EXPECT_NE(numbers(1, 2, 100), numbers(1, 3, 100));
    EXPECT_NE(numbers(1, 2, 100), numbers(2, 2, 100));
    const std::vector<double> a = numbers(1, 0, 100000);
    const std::vector<double> b = numbers(1, 1, 100000);
    double product = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i)
        product += a[i] * b[i];
    EXPECT_LT(std::fabs(product / 100000.0), 4.0 / std::sqrt(100000.0));
}

// Long enough for each to pass through its slow path many times.
TEST(NormalStreams, AreTheSingleOnesSideBySide) {
    constexpr std::size_t count = 16;
    NormalStreams<count> together(5, 40);
    std::vector<NormalStream> single;
    for (std::size_t c = 0; c < count; ++c)
        single.emplace_back(5, 40 + c);
    for (int i = 0; i < 20000; ++i) {
        std::array<float, count> z{};
        together.next(z.data());
        for (std::size_t c = 0; c < count; ++c)
            ASSERT_EQ(z.at(c), static_cast<float>(single[c].next())) << i;
    }
}

} // namespace
} // namespace lapwright::math
