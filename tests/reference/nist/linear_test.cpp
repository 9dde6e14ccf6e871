// SPDX-License-Identifier: GPL-3.0-or-later
// NIST StRD linear regression sets Norris and Longley, itl.nist.gov/div898/strd (certified values).
#include "core/math/linear_least_squares.h"
#include "reference/nist/matching_digits.h"

#include <gtest/gtest.h>

#include <array>

using namespace lapwright;
using namespace lapwright::math;

namespace {

constexpr std::array<double, 36> norris_x{0.2,   337.4, 118.2, 884.6, 10.1,  226.5, 666.3, 996.3, 448.6,
                                          777.0, 558.2, 0.4,   0.6,   775.5, 666.9, 338.0, 447.5, 11.6,
                                          556.0, 228.1, 995.8, 887.6, 120.2, 0.3,   0.3,   556.8, 339.1,
                                          887.2, 999.0, 779.0, 11.1,  118.3, 229.2, 669.1, 448.9, 0.5};
constexpr std::array<double, 36> norris_y{0.1,   338.8, 118.1, 888.0, 9.2,   228.1, 668.5, 998.5, 449.1,
                                          778.9, 559.2, 0.3,   0.1,   778.1, 668.8, 339.3, 448.9, 10.8,
                                          557.7, 228.3, 998.0, 888.8, 119.6, 0.3,   0.6,   557.6, 339.3,
                                          888.0, 998.5, 778.9, 10.2,  117.6, 228.9, 668.4, 449.2, 0.2};

constexpr double longley[16][7] = {
    {60323, 83.0, 234289, 2356, 1590, 107608, 1947},  {61122, 88.5, 259426, 2325, 1456, 108632, 1948},
    {60171, 88.2, 258054, 3682, 1616, 109773, 1949},  {61187, 89.5, 284599, 3351, 1650, 110929, 1950},
    {63221, 96.2, 328975, 2099, 3099, 112075, 1951},  {63639, 98.1, 346999, 1932, 3594, 113270, 1952},
    {64989, 99.0, 365385, 1870, 3547, 115094, 1953},  {63761, 100.0, 363112, 3578, 3350, 116219, 1954},
    {66019, 101.2, 397469, 2904, 3048, 117388, 1955}, {67857, 104.6, 419180, 2822, 2857, 118734, 1956},
    {68169, 108.4, 442769, 2936, 2798, 120445, 1957}, {66513, 110.8, 444546, 4681, 2637, 121950, 1958},
    {68655, 112.6, 482704, 3813, 2552, 123366, 1959}, {69564, 114.2, 502601, 3931, 2514, 125368, 1960},
    {69331, 115.7, 518173, 4806, 2572, 127852, 1961}, {70551, 116.9, 554894, 4007, 2827, 130081, 1962}};

} // namespace

TEST(NistLinear, Norris) {
    Eigen::MatrixXd x(36, 1);
    Eigen::VectorXd y(36);
    for (int i = 0; i < 36; ++i) {
        x(i, 0) = norris_x[static_cast<std::size_t>(i)];
        y[i] = norris_y[static_cast<std::size_t>(i)];
    }
    const LinearFit fit = fit_linear(x, y);
    ASSERT_EQ(fit.status, base::FitStatus::converged);
    EXPECT_GT(matching_digits(fit.coefficients[0], -0.262323073774029), 11.0);
    EXPECT_GT(matching_digits(fit.coefficients[1], 1.00211681802045), 13.0);
    EXPECT_GT(matching_digits(fit.standard_errors[0], 0.232818234301152), 12.0);
    EXPECT_GT(matching_digits(fit.standard_errors[1], 0.429796848199937e-3), 12.0);
    EXPECT_GT(matching_digits(fit.residual_sd, 0.884796396144373), 12.0);
    EXPECT_GT(matching_digits(fit.r_squared, 0.999993745883712), 14.0);
    EXPECT_GT(matching_digits(fit.residual_sum_of_squares, 26.6173985294224), 12.0);
    EXPECT_GT(matching_digits(fit.f_statistic, 5436385.54079785), 12.0);
}

TEST(NistLinear, Longley) {
    Eigen::MatrixXd x(16, 6);
    Eigen::VectorXd y(16);
    for (int i = 0; i < 16; ++i) {
        y[i] = longley[i][0];
        for (int j = 0; j < 6; ++j)
            x(i, j) = longley[i][j + 1];
    }
    const LinearFit fit = fit_linear(x, y);
    ASSERT_EQ(fit.status, base::FitStatus::converged);
    const double values[] = {-3482258.63459582, 15.0618722713733,    -0.0358191792925910, -2.02022980381683,
                             -1.03322686717359, -0.0511041056535807, 1829.15146461355};
    const double errors[] = {890420.383607373,  84.9149257747669,  0.0334910077722432, 0.488399681651699,
                             0.214274163161675, 0.226073200069370, 455.478499142212};
    for (int i = 0; i < 7; ++i) {
        EXPECT_GT(matching_digits(fit.coefficients[i], values[i]), 10.5) << i;
        EXPECT_GT(matching_digits(fit.standard_errors[i], errors[i]), 10.5) << i;
    }
    EXPECT_GT(matching_digits(fit.residual_sd, 304.854073561965), 11.0);
    EXPECT_GT(matching_digits(fit.residual_sum_of_squares, 836424.055505915), 11.0);
    EXPECT_GT(matching_digits(fit.r_squared, 0.995479004577296), 12.0);
    EXPECT_GT(matching_digits(fit.f_statistic, 330.285339234588), 11.0);
}
