// SPDX-License-Identifier: GPL-3.0-or-later
// Linear and robust fits: published robust fit, what is not identified is said, failure is said.
#include "core/math/linear_least_squares.h"
#include "core/math/robust_regression.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace lapwright;
using namespace lapwright::math;

namespace {

// Brownlee 1965, loss of ammonia in an acid plant: air flow, water temperature, acid concentration, loss.
constexpr double plant[21][4] = {
    {80, 27, 89, 42}, {80, 27, 88, 37}, {75, 25, 90, 37}, {62, 24, 87, 28}, {62, 22, 87, 18}, {62, 23, 87, 18},
    {62, 24, 93, 19}, {62, 24, 93, 20}, {58, 23, 87, 15}, {58, 18, 80, 14}, {58, 18, 89, 14}, {58, 17, 88, 13},
    {58, 18, 82, 11}, {58, 19, 93, 12}, {50, 18, 89, 8},  {50, 18, 86, 7},  {50, 19, 72, 8},  {50, 19, 79, 8},
    {50, 20, 80, 9},  {56, 20, 82, 15}, {70, 20, 91, 15}};

Eigen::MatrixXd plant_design() {
    Eigen::MatrixXd x(21, 3);
    for (int i = 0; i < 21; ++i)
        for (int j = 0; j < 3; ++j)
            x(i, j) = plant[i][j];
    return x;
}

Eigen::VectorXd plant_loss() {
    Eigen::VectorXd y(21);
    for (int i = 0; i < 21; ++i)
        y[i] = plant[i][3];
    return y;
}

} // namespace

TEST(Linear, PlantData) {
    // Least squares as printed in Draper and Smith and by R; from memory.
    const LinearFit fit = fit_linear(plant_design(), plant_loss());
    EXPECT_NEAR(fit.coefficients[0], -39.9197, 5e-5);
    EXPECT_NEAR(fit.coefficients[1], 0.7156, 5e-5);
    EXPECT_NEAR(fit.coefficients[2], 1.2953, 5e-5);
    EXPECT_NEAR(fit.coefficients[3], -0.1521, 5e-5);
    EXPECT_EQ(fit.degrees_of_freedom, 17);
}

TEST(Linear, DependentColumnIsNotIdentified) {
    Eigen::MatrixXd x(6, 3);
    Eigen::VectorXd y(6);
    for (int i = 0; i < 6; ++i) {
        x(i, 0) = i;
        x(i, 1) = i * i;
        x(i, 2) = 2.0 * i - 3.0 * i * i + 5.0;
        y[i] = 1.0 + 0.5 * i;
    }
    const LinearFit fit = fit_linear(x, y);
    ASSERT_EQ(fit.status, base::FitStatus::converged);
    int lost = 0;
    for (int i = 1; i < 4; ++i) {
        if (fit.identified[static_cast<std::size_t>(i)]) continue;
        ++lost;
        EXPECT_TRUE(std::isnan(fit.standard_errors[i]));
    }
    EXPECT_EQ(lost, 1);
    EXPECT_LT(fit.residuals.norm(), 1e-12);
}

TEST(Linear, SaysWhenItFailed) {
    EXPECT_EQ(LinearFit{}.status, base::FitStatus::not_run);
    EXPECT_EQ(fit_linear(Eigen::MatrixXd::Ones(1, 1), Eigen::VectorXd::Ones(1)).status, base::FitStatus::failed);
    Eigen::VectorXd y = plant_loss();
    y[3] = std::nan("");
    EXPECT_EQ(fit_linear(plant_design(), y).status, base::FitStatus::failed);
}

TEST(Linear, WeightsRepeatSamples) {
    // A weight of 2 is the sample taken twice (coefficients and sum of squares).
    Eigen::MatrixXd x(4, 1);
    x << 0, 1, 2, 3;
    Eigen::VectorXd y(4);
    y << 0.1, 0.9, 2.3, 2.8;
    Eigen::VectorXd w(4);
    w << 1, 2, 1, 1;
    Eigen::MatrixXd x2(5, 1);
    x2 << 0, 1, 1, 2, 3;
    Eigen::VectorXd y2(5);
    y2 << 0.1, 0.9, 0.9, 2.3, 2.8;
    const LinearFit weighted = fit_linear(x, y, Intercept::yes, w);
    const LinearFit repeated = fit_linear(x2, y2);
    EXPECT_NEAR((weighted.coefficients - repeated.coefficients).norm(), 0.0, 1e-13);
    EXPECT_NEAR(weighted.residual_sum_of_squares, repeated.residual_sum_of_squares, 1e-13);
}

TEST(Robust, PlantDataHuber) {
    // Huber's weights with k = 1.345 and the rescaled median absolute residual: Venables and Ripley 2002, from memory.
    const RobustFit robust = fit_robust(plant_design(), plant_loss());
    ASSERT_EQ(robust.outcome.status, base::FitStatus::converged);
    EXPECT_NEAR(robust.fit.coefficients[0], -41.0265, 2e-3);
    EXPECT_NEAR(robust.fit.coefficients[1], 0.8294, 2e-4);
    EXPECT_NEAR(robust.fit.coefficients[2], 0.9261, 2e-4);
    EXPECT_NEAR(robust.fit.coefficients[3], -0.1278, 2e-4);
    EXPECT_NEAR(robust.scale, 2.441, 1e-3);
}

// The scale is a median: here each round moves another residual into its place, and the next one moves it back.
TEST(Robust, RoundsThatGoToAndFroHaveNotConverged) {
    const auto fit = [](const std::vector<double>& values, RobustLoss loss) {
        const auto n = static_cast<Eigen::Index>(values.size());
        return fit_robust(Eigen::VectorXd::LinSpaced(n, 0.0, static_cast<double>(n - 1)),
                          Eigen::Map<const Eigen::VectorXd>(values.data(), n), Intercept::yes, loss);
    };
    const RobustFit huber = fit({-2.5, 2.0, 6.6, 27.1, 9.4}, RobustLoss::huber);
    EXPECT_EQ(huber.outcome.status, base::FitStatus::not_converged);
    EXPECT_EQ(huber.outcome.rounds, 100);
    EXPECT_EQ(huber.outcome.rests_on, 5U);
    const RobustFit tukey =
        fit({-4.7, 2.6, 4.1, 9.0, 10.4, 10.8, 5.8, 14.9, 16.8, 11.4, 18.6, 22.0}, RobustLoss::tukey);
    EXPECT_EQ(tukey.outcome.status, base::FitStatus::not_converged);
}

TEST(Robust, TukeyForgetsGrossErrors) {
    Eigen::MatrixXd x(40, 1);
    Eigen::VectorXd y(40);
    for (int i = 0; i < 40; ++i) {
        x(i, 0) = 0.1 * i;
        y[i] = 2.0 + 3.0 * x(i, 0) + 0.05 * std::sin(1.7 * i);
        if (i % 5 == 0) y[i] += 20.0;
    }
    const RobustFit robust = fit_robust(x, y, Intercept::yes, RobustLoss::tukey);
    ASSERT_EQ(robust.outcome.status, base::FitStatus::converged);
    EXPECT_NEAR(robust.fit.coefficients[0], 2.0, 0.05);
    EXPECT_NEAR(robust.fit.coefficients[1], 3.0, 0.03);
    for (int i = 0; i < 40; i += 5)
        EXPECT_EQ(robust.weights[i], 0.0);
    EXPECT_EQ(robust.outcome.rests_on, 32U); // what counts for nothing is no evidence
}
