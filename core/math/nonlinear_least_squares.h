// SPDX-License-Identifier: GPL-3.0-or-later
// Nonlinear least squares for a handful of parameters: Levenberg 1944, Marquardt 1963 with his scaling, the damping
// changed by the gain ratio (Nielsen 1999).
#pragma once

#include "core/math/fit_status.h"

#include <Eigen/Core>

#include <functional>
#include <vector>

namespace lapwright::math {

// Residuals at these parameters; not finite where the model cannot be evaluated (the step is then shortened).
using Residuals = std::function<Eigen::VectorXd(const Eigen::VectorXd& parameters)>;
// Derivatives of the residuals, one column a parameter.
using Jacobian = std::function<Eigen::MatrixXd(const Eigen::VectorXd& parameters)>;

struct NonlinearOptions {
    int most_iterations = 200;
    double step_tolerance = 1e-11;     // relative, of the scaled parameters
    double decrease_tolerance = 1e-15; // relative, of the sum of squares
    // A direction whose singular value (columns scaled to length 1) is below this share of the greatest is not
    // identified.
    double identification_tolerance = 1e-8;
};

struct NonlinearFit {
    FitStatus status = FitStatus::not_run;
    Eigen::VectorXd parameters;
    Eigen::VectorXd standard_errors; // NaN where not identified or without residual degrees of freedom
    Eigen::MatrixXd covariance;      // residual variance times (JᵀJ)⁻¹
    std::vector<bool> identified;    // whether the data say anything of this parameter on its own
    double residual_sum_of_squares = 0.0;
    double residual_sd = 0.0;
    int iterations = 0;
};

// Without a Jacobian central differences are taken (about 1e-10 relative).
[[nodiscard]] NonlinearFit fit_nonlinear(const Residuals& residuals, const Eigen::VectorXd& start,
                                         const Jacobian& jacobian = {}, const NonlinearOptions& options = {});

} // namespace lapwright::math
