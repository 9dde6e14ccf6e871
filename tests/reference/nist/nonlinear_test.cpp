// SPDX-License-Identifier: GPL-3.0-or-later
// NIST StRD nonlinear set Misra1a, y = b1 (1 − exp(−b2 x)), from both of its starts (certified values).
#include "core/math/nonlinear_least_squares.h"
#include "reference/nist/matching_digits.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace lapwright::math;

namespace {

constexpr int n = 14;
constexpr double xs[n] = {77.6,  114.9, 141.1, 190.8, 239.9, 289.0, 332.8,
                          378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0};
constexpr double ys[n] = {10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02,
                          44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78};

Eigen::VectorXd residuals(const Eigen::VectorXd& b) {
    Eigen::VectorXd r(n);
    for (int i = 0; i < n; ++i)
        r[i] = b[0] * (1.0 - std::exp(-b[1] * xs[i])) - ys[i];
    return r;
}

Eigen::MatrixXd derivatives(const Eigen::VectorXd& b) {
    Eigen::MatrixXd j(n, 2);
    for (int i = 0; i < n; ++i) {
        j(i, 0) = 1.0 - std::exp(-b[1] * xs[i]);
        j(i, 1) = b[0] * xs[i] * std::exp(-b[1] * xs[i]);
    }
    return j;
}

void expect_certified(const NonlinearFit& fit, double digits) {
    ASSERT_EQ(fit.status, FitStatus::converged);
    EXPECT_GT(matching_digits(fit.parameters[0], 2.3894212918e2), digits);
    EXPECT_GT(matching_digits(fit.parameters[1], 5.5015643181e-4), digits);
    EXPECT_GT(matching_digits(fit.standard_errors[0], 2.7070075241), digits - 1.0);
    EXPECT_GT(matching_digits(fit.standard_errors[1], 7.2668688436e-6), digits - 1.0);
    EXPECT_GT(matching_digits(fit.residual_sum_of_squares, 1.2455138894e-1), 9.0);
    EXPECT_GT(matching_digits(fit.residual_sd, 1.0187876330e-1), 9.0);
    EXPECT_TRUE(fit.identified[0] && fit.identified[1]);
}

} // namespace

TEST(NistNonlinear, Misra1aFromTheFarStart) {
    expect_certified(fit_nonlinear(residuals, Eigen::Vector2d(500.0, 1e-4), derivatives), 8.5);
}

TEST(NistNonlinear, Misra1aFromTheNearStart) {
    expect_certified(fit_nonlinear(residuals, Eigen::Vector2d(250.0, 5e-4), derivatives), 8.5);
}

TEST(NistNonlinear, Misra1aWithoutDerivatives) {
    expect_certified(fit_nonlinear(residuals, Eigen::Vector2d(500.0, 1e-4)), 7.5);
}
