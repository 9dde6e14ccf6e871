// SPDX-License-Identifier: GPL-3.0-or-later
// Descriptive statistics, distributions, two samples, bootstrap, random effects against published values.
#include "core/math/bootstrap.h"
#include "core/math/distributions.h"
#include "core/math/random.h"
#include "core/math/special_functions.h"
#include "core/math/statistics.h"
#include "core/math/two_samples.h"
#include "core/math/variance_components.h"

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

TEST(Distributions, IncompleteBetaOnClosedForms) {
    // I_x(a, 1) = x^a; I_x(1, b) = 1 − (1 − x)^b; symmetry.
    EXPECT_NEAR(incomplete_beta(3.5, 1.0, 0.3), std::pow(0.3, 3.5), 1e-15);
    EXPECT_NEAR(incomplete_beta(1.0, 4.2, 0.3), 1.0 - std::pow(0.7, 4.2), 1e-14);
    EXPECT_NEAR(incomplete_beta(2.0, 5.0, 0.4) + incomplete_beta(5.0, 2.0, 0.6), 1.0, 1e-14);
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
    // Student 1908 (Cushny and Peebles); interval, freedom and p as R 4 prints them for t.test, from memory.
    const std::vector<double> x{0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
    const std::vector<double> y{1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};
    const auto result = welch(x, y);
    ASSERT_TRUE(result);
    EXPECT_NEAR(result->difference, 1.58, 1e-12);
    EXPECT_NEAR(result->freedom, 17.776, 5e-4);
    EXPECT_NEAR(result->interval.low, -0.2054832, 5e-7);
    EXPECT_NEAR(result->interval.high, 3.3654832, 5e-7);
    EXPECT_NEAR(result->p_two_sided, 0.07939, 5e-6);
    EXPECT_FALSE(welch(x, std::vector<double>{1.0}));
    EXPECT_FALSE(welch(std::vector<double>{1.0, 1.0}, std::vector<double>{2.0, 2.0}));
}

TEST(TwoSamples, RanksOnTheMembraneData) {
    // Hollander and Wolfe 1973, table 4.1: 35 pairs with x > y of 50, one-sided p = 0.1272 (R prints it so; from
    // memory).
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

namespace {

// Law schools, Efron and Tibshirani 1986, table 1.
const std::vector<double> lsat{576, 635, 558, 578, 666, 580, 555, 661, 651, 605, 653, 575, 545, 572, 594};
const std::vector<double> gpa{3.39, 3.30, 2.81, 3.03, 3.44, 3.07, 3.00, 3.43, 3.36, 3.13, 3.12, 2.74, 2.76, 2.88, 2.96};

double law_school_correlation(std::span<const std::size_t> chosen) {
    std::vector<double> x;
    std::vector<double> y;
    for (const std::size_t i : chosen) {
        x.push_back(lsat[i]);
        y.push_back(gpa[i]);
    }
    return correlation(x, y);
}

} // namespace

TEST(Bootstrap, LawSchools) {
    EXPECT_NEAR(correlation(lsat, gpa), 0.776374491, 5e-10);
    const auto left_out = jackknife(15, law_school_correlation);
    EXPECT_NEAR(jackknife_standard_error(left_out), 0.142518619, 5e-10);
    const auto replicates = bootstrap(15, 20000, 1, law_school_correlation);
    // Efron and Tibshirani 1993 print 0.13; 100 000 replicates of another generator gave 0.1337 and 0.523..0.948.
    EXPECT_NEAR(standard_deviation(replicates), 0.1337, 0.003);
    const auto ninety = percentile_interval(replicates, 0.90);
    ASSERT_TRUE(ninety);
    EXPECT_NEAR(ninety->low, 0.523, 0.015);
    EXPECT_NEAR(ninety->high, 0.948, 0.005);
    // The correction moves the interval of a correlation down (Efron 1987).
    const auto corrected = bca_interval(correlation(lsat, gpa), replicates, left_out, 0.90);
    ASSERT_TRUE(corrected);
    EXPECT_LT(corrected->low, ninety->low);
    EXPECT_LT(corrected->high, ninety->high);
    EXPECT_FALSE(percentile_interval(std::vector<double>{1.0, 2.0}));
}

TEST(Bootstrap, BcaCoversASkewedMeanBetterThanPercentiles) {
    // Twenty exponentials, mean 1: the percentile interval covers too seldom, the corrected one more often.
    Random random(5);
    int plain = 0;
    int corrected = 0;
    constexpr int trials = 300;
    for (int trial = 0; trial < trials; ++trial) {
        std::vector<double> sample(20);
        for (double& x : sample)
            x = -std::log(random.uniform());
        const auto statistic = [&](std::span<const std::size_t> chosen) {
            double sum = 0.0;
            for (const std::size_t i : chosen)
                sum += sample[i];
            return sum / static_cast<double>(chosen.size());
        };
        const auto replicates = bootstrap(20, 400, static_cast<std::uint64_t>(trial), statistic);
        plain += percentile_interval(replicates)->contains(1.0) ? 1 : 0;
        const auto bca = bca_interval(mean(sample), replicates, jackknife(20, statistic));
        corrected += bca->contains(1.0) ? 1 : 0;
    }
    EXPECT_GE(corrected, plain);
    EXPECT_GT(corrected, trials * 88 / 100);
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

TEST(VarianceComponents, Dyestuff) {
    // Davies and Goldsmith 1972; the values are those that lme4's documentation prints for its REML fit.
    const std::vector<std::vector<double>> batches{{1545, 1440, 1440, 1520, 1580}, {1540, 1555, 1490, 1560, 1495},
                                                   {1595, 1550, 1605, 1510, 1560}, {1445, 1440, 1595, 1465, 1545},
                                                   {1595, 1630, 1515, 1635, 1625}, {1520, 1455, 1450, 1480, 1445}};
    const VarianceComponents fit = fit_variance_components(batches);
    ASSERT_EQ(fit.status, FitStatus::converged);
    EXPECT_NEAR(fit.mean, 1527.5, 1e-9);
    EXPECT_NEAR(fit.between_sd, 42.0006, 5e-4);
    EXPECT_NEAR(fit.within_sd, 49.5101, 5e-5);
    EXPECT_NEAR(fit.mean_standard_error, 19.3834, 5e-4);
    EXPECT_NEAR(fit.criterion, 319.6542768, 5e-7);
    const double effects[] = {-17.607, 0.391, 28.562, -23.085, 56.733, -44.995};
    for (std::size_t i = 0; i < 6; ++i)
        EXPECT_NEAR(fit.effects[i], effects[i], 1e-3);
    EXPECT_EQ(fit_variance_components({{1.0}, {2.0}}).status, FitStatus::failed);
}
