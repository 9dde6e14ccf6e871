// SPDX-License-Identifier: GPL-3.0-or-later
// Linear least squares with standard errors: min Σ w_i (y_i − x_i·b)², by Householder QR with column pivoting on
// columns that are centred (with an intercept) and scaled, so that badly placed data keep their digits.
#pragma once

#include "core/base/fit_outcome.h"

#include <Eigen/Core>

#include <vector>

namespace lapwright::math {

struct LinearFit {
    base::FitStatus status = base::FitStatus::not_run;
    // Intercept first when there is one, then one a column of the design.
    Eigen::VectorXd coefficients;
    Eigen::VectorXd standard_errors; // NaN where not identified, or without residual degrees of freedom
    Eigen::MatrixXd covariance;
    std::vector<bool> identified;
    Eigen::VectorXd residuals;            // y − fit, unweighted
    double residual_sum_of_squares = 0.0; // weighted
    double residual_sd = 0.0;
    double r_squared = 0.0;
    double f_statistic = 0.0;
    int degrees_of_freedom = 0;
};

enum class Intercept { yes, no };

// design: one row a sample; weights: empty, or one >= 0 a sample.  `failed` when there are fewer samples of positive
// weight than coefficients or something is not finite.  Columns that follow from others are not identified: the pivoted
// QR leaves them at 0.
[[nodiscard]] LinearFit fit_linear(const Eigen::MatrixXd& design, const Eigen::VectorXd& y,
                                   Intercept intercept = Intercept::yes, const Eigen::VectorXd& weights = {});

} // namespace lapwright::math
