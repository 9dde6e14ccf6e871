// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/robust_regression.h"

#include "core/math/statistics.h"

#include <cmath>

namespace lapwright::math {
namespace {

constexpr int max_rounds = 100;
constexpr double settled = 1e-10; // relative change of the residuals
// The scale is a median, so that rounds may go to and fro for ever between two
// samples; closer together than this share of the scale they say the same.
constexpr double same_answer = 1e-3;

double weight(RobustLoss loss, double u) {
    const double size = std::abs(u);
    if (loss == RobustLoss::huber) return size <= 1.345 ? 1.0 : 1.345 / size;
    if (size >= 4.685) return 0.0;
    const double part = u / 4.685;
    return (1.0 - part * part) * (1.0 - part * part);
}

// Median absolute residual (about zero, not about its median) over 0.6745, of the samples that count.
double residual_scale(const Eigen::VectorXd& residuals, const Eigen::VectorXd& prior) {
    std::vector<double> sizes;
    for (Eigen::Index i = 0; i < residuals.size(); ++i)
        if (prior[i] > 0.0) sizes.push_back(std::abs(residuals[i]));
    return median(sizes) / 0.6745;
}

void reweight(RobustFit& robust, const Eigen::MatrixXd& design, const Eigen::VectorXd& y, Intercept intercept,
              RobustLoss loss, const Eigen::VectorXd& prior) {
    robust.outcome.status = base::FitStatus::not_converged;
    for (int round = 0; round < max_rounds; ++round) {
        const Eigen::VectorXd before = robust.fit.residuals;
        robust.scale = residual_scale(before, prior);
        // A perfect fit has no scale; there is nothing to reweight.
        if (!(robust.scale > 1e-13 * y.cwiseAbs().maxCoeff())) {
            robust.outcome.status = base::FitStatus::converged;
            return;
        }
        for (Eigen::Index i = 0; i < y.size(); ++i)
            robust.weights[i] = weight(loss, before[i] / robust.scale);
        robust.fit = fit_linear(design, y, intercept, prior.cwiseProduct(robust.weights));
        ++robust.outcome.rounds;
        if (robust.fit.status != base::FitStatus::converged) {
            robust.outcome.status = base::FitStatus::failed;
            return;
        }
        const double change = (robust.fit.residuals - before).norm();
        if (change <= settled * before.norm()) {
            robust.outcome.status = base::FitStatus::converged;
            return;
        }
        const bool ends_here = round + 1 == max_rounds && change <= same_answer * robust.scale * std::sqrt(y.size());
        if (ends_here) robust.outcome.status = base::FitStatus::converged;
    }
}

} // namespace

RobustFit fit_robust(const Eigen::MatrixXd& design, const Eigen::VectorXd& y, Intercept intercept, RobustLoss loss,
                     const Eigen::VectorXd& prior_weights) {
    RobustFit robust;
    const Eigen::VectorXd prior = prior_weights.size() == 0 ? Eigen::VectorXd::Ones(y.size()) : prior_weights;
    robust.fit = fit_linear(design, y, intercept, prior);
    robust.outcome.status = robust.fit.status;
    if (robust.outcome.status != base::FitStatus::converged) return robust;
    robust.weights = Eigen::VectorXd::Ones(y.size());
    reweight(robust, design, y, intercept, RobustLoss::huber, prior);
    if (loss == RobustLoss::tukey && robust.outcome.status != base::FitStatus::failed)
        reweight(robust, design, y, intercept, RobustLoss::tukey, prior);
    robust.outcome.rests_on = static_cast<std::size_t>((robust.weights.array() * prior.array() > 0.0).count());
    return robust;
}

} // namespace lapwright::math
