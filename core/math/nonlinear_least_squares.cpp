// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/nonlinear_least_squares.h"

#include <Eigen/QR>
#include <Eigen/SVD>

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::math {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

Eigen::MatrixXd central_differences(const Residuals& residuals, const Eigen::VectorXd& at, Eigen::Index rows) {
    Eigen::MatrixXd columns(rows, at.size());
    for (Eigen::Index j = 0; j < at.size(); ++j) {
        const double h = 6e-6 * std::max(std::abs(at[j]), 1e-8);
        Eigen::VectorXd moved = at;
        moved[j] = at[j] + h;
        const Eigen::VectorXd above = residuals(moved);
        moved[j] = at[j] - h;
        columns.col(j) = (above - residuals(moved)) / (2.0 * h);
    }
    return columns;
}

// Least-squares step of the damped problem, solved as one QR of [J; sqrt(λ) D].
Eigen::VectorXd damped_step(const Eigen::MatrixXd& j, const Eigen::VectorXd& r, const Eigen::VectorXd& d,
                            double lambda) {
    Eigen::MatrixXd stacked(j.rows() + j.cols(), j.cols());
    stacked << j, Eigen::MatrixXd((std::sqrt(lambda) * d).asDiagonal());
    Eigen::VectorXd right = Eigen::VectorXd::Zero(stacked.rows());
    right.head(r.size()) = -r;
    return stacked.colPivHouseholderQr().solve(right);
}

void judge(NonlinearFit& fit, const Eigen::MatrixXd& j, double tolerance) {
    const Eigen::Index count = j.cols();
    Eigen::VectorXd scales = j.colwise().norm();
    fit.identified.assign(static_cast<std::size_t>(count), true);
    for (Eigen::Index k = 0; k < count; ++k) {
        if (scales[k] > 0.0) continue;
        scales[k] = 1.0;
        fit.identified[static_cast<std::size_t>(k)] = false;
    }
    const Eigen::MatrixXd scaled = j * scales.cwiseInverse().asDiagonal();
    const Eigen::JacobiSVD<Eigen::MatrixXd> svd(scaled, Eigen::ComputeThinU | Eigen::ComputeThinV);
    const Eigen::VectorXd& values = svd.singularValues();
    Eigen::MatrixXd inverse = Eigen::MatrixXd::Zero(count, count);
    for (Eigen::Index k = 0; k < values.size(); ++k) {
        const Eigen::VectorXd direction = svd.matrixV().col(k);
        if (values[k] > tolerance * values[0] && values[k] > 0.0) {
            inverse += direction * direction.transpose() / (values[k] * values[k]);
            continue;
        }
        for (Eigen::Index p = 0; p < count; ++p)
            if (std::abs(direction[p]) > 1e-3) fit.identified[static_cast<std::size_t>(p)] = false;
    }
    const Eigen::Index freedom = j.rows() - count;
    const double variance = freedom > 0 ? fit.residual_sum_of_squares / static_cast<double>(freedom) : nan;
    fit.residual_sd = std::sqrt(variance);
    fit.covariance = scales.cwiseInverse().asDiagonal() * inverse * scales.cwiseInverse().asDiagonal() * variance;
    fit.standard_errors = fit.covariance.diagonal().cwiseSqrt();
    for (Eigen::Index p = 0; p < count; ++p)
        if (!fit.identified[static_cast<std::size_t>(p)]) fit.standard_errors[p] = nan;
}

} // namespace

NonlinearFit fit_nonlinear(const Residuals& residuals, const Eigen::VectorXd& start, const Jacobian& jacobian,
                           const NonlinearOptions& options) {
    NonlinearFit fit;
    fit.status = FitStatus::failed;
    fit.parameters = start;
    Eigen::VectorXd r = residuals(start);
    if (start.size() == 0 || r.size() < start.size() || !r.allFinite()) return fit;
    const auto derive = [&](const Eigen::VectorXd& at) {
        return jacobian ? jacobian(at) : central_differences(residuals, at, r.size());
    };
    Eigen::MatrixXd j = derive(start);
    if (!j.allFinite() || j.cols() != start.size() || j.rows() != r.size()) return fit;
    fit.residual_sum_of_squares = r.squaredNorm();
    fit.status = FitStatus::not_converged;
    Eigen::VectorXd d = j.colwise().norm().cwiseMax(1e-300);
    double lambda = 1e-3;
    double growth = 2.0;
    while (fit.iterations < options.most_iterations) {
        ++fit.iterations;
        const Eigen::VectorXd step = damped_step(j, r, d, lambda);
        if (!step.allFinite()) break;
        const double step_size = d.cwiseProduct(step).norm();
        const bool small_step = step_size <= options.step_tolerance * (d.cwiseProduct(fit.parameters).norm() + 1e-300);
        const Eigen::VectorXd moved = fit.parameters + step;
        const Eigen::VectorXd r_moved = residuals(moved);
        const double sum = r_moved.allFinite() ? r_moved.squaredNorm() : std::numeric_limits<double>::infinity();
        const double foreseen = fit.residual_sum_of_squares - (r + j * step).squaredNorm();
        const double won = fit.residual_sum_of_squares - sum;
        const bool better = sum <= fit.residual_sum_of_squares;
        if (better) {
            const Eigen::MatrixXd j_moved = derive(moved);
            if (!j_moved.allFinite()) break;
            fit.parameters = moved;
            r = r_moved;
            j = j_moved;
            fit.residual_sum_of_squares = sum;
            d = d.cwiseMax(j.colwise().norm().transpose());
            const double ratio = foreseen > 0.0 ? won / foreseen : 1.0;
            lambda *= std::max(1.0 / 3.0, 1.0 - std::pow(2.0 * ratio - 1.0, 3));
            growth = 2.0;
        } else {
            lambda *= growth;
            growth *= 2.0;
        }
        const bool no_more = std::abs(foreseen) <= options.decrease_tolerance * fit.residual_sum_of_squares;
        if (small_step || no_more || fit.residual_sum_of_squares == 0.0) {
            fit.status = FitStatus::converged;
            break;
        }
    }
    judge(fit, j, options.identification_tolerance);
    return fit;
}

} // namespace lapwright::math
