// SPDX-License-Identifier: GPL-3.0-or-later
// Descriptive statistics, distributions and two samples against published values.
#include "core/math/distributions.h"
#include "core/math/random.h"
#include "core/math/statistics.h"
#include "core/math/two_samples.h"

#include "core/base/constants.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>
#include <vector>

using namespace lapwright::math;

TEST(Statistics, QuantilesAreType7) {
    // Hyndman and Fan 1996, definition 7, by hand: 1 + (n − 1) p.
    const std::vector<double> sample{4.0, 1.0, 3.0, 2.0};
    EXPECT_DOUBLE_EQ(quantile(sample, 0.25), 1.75);
    EXPECT_DOUBLE_EQ(quantile(sample, 0.0), 1.0);
    EXPECT_DOUBLE_EQ(quantile(sample, 1.0), 4.0);
    EXPECT_DOUBLE_EQ(median(sample), 2.5);
    EXPECT_NEAR(robust_sd(sample), 1.4826, 1e-12);
    EXPECT_TRUE(std::isnan(median({})));
    EXPECT_TRUE(std::isnan(mean({})));
    EXPECT_TRUE(std::isnan(standard_deviation(std::vector<double>{1.0})));
}

TEST(Statistics, ExpectedGreatestOfNormals) {
    // Harter 1961, from memory; n = 2 and 3 are 1/sqrt(pi) and 3/(2 sqrt(pi)) exactly.
    EXPECT_NEAR(expected_max_of_normals(2), 1.0 / std::sqrt(lapwright::base::pi), 1e-9);
    EXPECT_NEAR(expected_max_of_normals(3), 1.5 / std::sqrt(lapwright::base::pi), 1e-9);
    EXPECT_NEAR(expected_max_of_normals(5), 1.16296, 5e-6);
    EXPECT_NEAR(expected_max_of_normals(8), 1.42360, 5e-6);
    EXPECT_NEAR(expected_max_of_normals(10), 1.53875, 5e-6);
    EXPECT_NEAR(expected_max_of_normals(20), 1.86748, 5e-6);
    EXPECT_NEAR(expected_max_of_normals(30), 2.04276, 5e-6);
    EXPECT_DOUBLE_EQ(expected_max_of_normals(1), 0.0);
}

TEST(Distributions, Normal) {
    EXPECT_NEAR(normal_quantile(0.975), 1.959963984540054, 1e-14);
    EXPECT_NEAR(normal_quantile(0.5), 0.0, 1e-16);
    EXPECT_NEAR(normal_cdf(normal_quantile(1e-12)), 1e-12, 1e-24);
    EXPECT_NEAR(log_normal_cdf(-29.999), log_normal_cdf(-30.001), 0.07);
    // ln Φ is continuous where the expansion takes over: its slope there is about 30.
    EXPECT_NEAR(log_normal_cdf(-30.0 + 1e-9) - log_normal_cdf(-30.0), 30.03e-9, 1e-7);
    EXPECT_TRUE(std::isinf(normal_quantile(1.0)));
    EXPECT_TRUE(std::isnan(normal_quantile(-0.1)));
}

TEST(Distributions, StudentT) {
    // One and two degrees of freedom have closed forms; the third value is in every table (Student 1908, Fisher 1925).
    EXPECT_NEAR(student_t_cdf(1.7, 1.0), 0.5 + std::atan(1.7) / lapwright::base::pi, 1e-14);
    EXPECT_NEAR(student_t_cdf(-0.8, 2.0), 0.5 - 0.8 / (2.0 * std::sqrt(2.0 + 0.64)), 1e-14);
    EXPECT_NEAR(student_t_quantile(0.975, 1.0), std::tan(0.475 * lapwright::base::pi), 1e-10);
    EXPECT_NEAR(student_t_quantile(0.975, 5.0), 2.570581836, 1e-8);
    EXPECT_NEAR(student_t_quantile(0.025, 30.0), -2.042272456, 1e-8);
    EXPECT_NEAR(student_t_quantile(0.975, 1e7), normal_quantile(0.975), 1e-6);
}

TEST(TwoSamples, WelchOnTheSleepData) {
    // Student 1908 (Cushny and Peebles); interval, degrees of freedom and p as R 4 prints them for t.test, from memory.
    const std::vector<double> x{0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
    const std::vector<double> y{1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};
    const auto result = welch(x, y);
    ASSERT_TRUE(result);
    EXPECT_NEAR(result->difference, 1.58, 1e-12);
    EXPECT_NEAR(result->degrees_of_freedom, 17.776, 5e-4);
    EXPECT_NEAR(result->interval.low, -0.2054832, 5e-7);
    EXPECT_NEAR(result->interval.high, 3.3654832, 5e-7);
    EXPECT_NEAR(result->p_two_sided, 0.07939, 5e-6);
    EXPECT_FALSE(welch(x, std::vector<double>{1.0}));
    EXPECT_FALSE(welch(std::vector<double>{1.0, 1.0}, std::vector<double>{2.0, 2.0}));
}

TEST(TwoSamples, RanksOnTheMembraneData) {
    // Hollander and Wolfe 1973, table 4.1: 35 pairs with x > y
    // of 50, one-sided p = 0.1272 (R prints it so; from memory).
    const std::vector<double> x{0.80, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46};
    const std::vector<double> y{1.15, 0.88, 0.90, 0.74, 1.21};
    const auto result = mann_whitney(x, y);
    ASSERT_TRUE(result);
    EXPECT_DOUBLE_EQ(result->u, 15.0);
    EXPECT_DOUBLE_EQ(result->chance_x_less, 0.3);
    EXPECT_NEAR(result->p_two_sided, 2.0 * 0.1272, 1.5e-4);
    // Three against three, all of one below the other: one arrangement in twenty a side.
    const auto apart = mann_whitney(std::vector<double>{1, 2, 3}, std::vector<double>{4, 5, 6});
    EXPECT_NEAR(apart->p_two_sided, 0.1, 1e-12);
    // Ties count half.
    EXPECT_DOUBLE_EQ(mann_whitney(std::vector<double>{1, 2}, std::vector<double>{1, 2})->chance_x_less, 0.5);
}

TEST(RandomNumbers, MomentsAndIndependenceOfStreams) {
    Random random(7);
    std::vector<double> sample(20000);
    for (double& x : sample)
        x = random.normal();
    EXPECT_NEAR(mean(sample), 0.0, 4.0 / std::sqrt(20000.0));
    EXPECT_NEAR(standard_deviation(sample), 1.0, 0.02);
    EXPECT_NEAR(quantile(sample, 0.975), 1.96, 0.06);
    EXPECT_NE(Random(7, 0).next(), Random(7, 1).next());
    EXPECT_EQ(Random(7, 3).next(), Random(7, 3).next());
    std::vector<int> counts(7, 0);
    for (int i = 0; i < 70000; ++i)
        ++counts[random.below(7)];
    for (const int count : counts)
        EXPECT_NEAR(count, 10000, 500);
}

// A normal error over the spread that n draws of it show has a variance of 1 only with this spread.
TEST(StandardUncertainty, HoldsForSpreadsKnownFromFewDraws) {
    for (const std::size_t n : {10U, 16U, 32U}) {
        Random random(3, n);
        constexpr int rounds = 40000;
        double squares = 0.0;
        std::vector<double> draws(n);
        for (int i = 0; i < rounds; ++i) {
            for (double& draw : draws)
                draw = random.normal();
            squares += std::pow(random.normal() / standard_uncertainty(draws), 2) / rounds;
        }
        EXPECT_NEAR(squares, 1.0, 0.04) << n;
    }
    EXPECT_TRUE(std::isnan(standard_uncertainty(std::vector<double>{1.0})));
    EXPECT_DOUBLE_EQ(standard_uncertainty(std::vector<double>{1.0, 2.0, 3.0}), 1.0);
}
