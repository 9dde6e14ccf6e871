// SPDX-License-Identifier: GPL-3.0-or-later
// Linear regression that a few bad samples cannot pull away: iteratively reweighted least squares with Huber's (1964)
// or Tukey's biweight (Beaton and Tukey 1974) weights; scale from the median absolute residual, renewed each round.
#pragma once

#include "core/math/linear_least_squares.h"

namespace lapwright::math {

enum class RobustLoss {
    huber, // tuning 1.345: 95 % efficient on normal data
    tukey, // tuning 4.685: the same; starts from a Huber fit because it has more than one solution
};

struct RobustFit {
    base::FitOutcome outcome; // rests on the samples that count
    LinearFit fit;            // the last weighted fit; its standard errors take the weights for granted
    double scale = 0.0;       // robust standard deviation of the residuals
    Eigen::VectorXd weights;  // 0..1 a sample
};

// prior_weights: empty, or one >= 0 a sample, multiplied into the robust ones.
[[nodiscard]] RobustFit fit_robust(const Eigen::MatrixXd& design, const Eigen::VectorXd& y,
                                   Intercept intercept = Intercept::yes, RobustLoss loss = RobustLoss::huber,
                                   const Eigen::VectorXd& prior_weights = {});

} // namespace lapwright::math
