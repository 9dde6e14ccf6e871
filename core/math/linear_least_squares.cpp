// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/linear_least_squares.h"

#include <Eigen/QR>

#include <cmath>
#include <limits>

namespace lapwright::math {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double dependence_tolerance = 1e-10; // of a column that is scaled to length 1

struct Centred {
    Eigen::MatrixXd columns;
    Eigen::VectorXd y;
    Eigen::RowVectorXd column_means;
    Eigen::RowVectorXd scales;
    double y_mean = 0.0;
};

// Weighted means are taken twice: the second pass removes what rounding left (see mean()).
Centred centre(const Eigen::MatrixXd& design, const Eigen::VectorXd& y, const Eigen::VectorXd& w, bool intercept) {
    Centred c;
    c.columns = design;
    c.y = y;
    c.column_means = Eigen::RowVectorXd::Zero(design.cols());
    const double total = w.sum();
    for (int pass = 0; intercept && pass < 2; ++pass) {
        const Eigen::RowVectorXd means = (w.transpose() * c.columns) / total;
        const double y_mean = w.dot(c.y) / total;
        c.columns.rowwise() -= means;
        c.y.array() -= y_mean;
        c.column_means += means;
        c.y_mean += y_mean;
    }
    const Eigen::VectorXd root = w.cwiseSqrt();
    c.columns = root.asDiagonal() * c.columns;
    c.y = root.cwiseProduct(c.y);
    c.scales = c.columns.colwise().norm();
    for (Eigen::Index j = 0; j < c.scales.size(); ++j) {
        // A column that is nothing but what rounding left of a constant carries no information.
        const double magnitude = root.norm() * std::abs(c.column_means[j]);
        if (!(c.scales[j] > 1e-14 * magnitude)) {
            c.columns.col(j).setZero();
            c.scales[j] = 1.0;
        }
        c.columns.col(j) /= c.scales[j];
    }
    return c;
}

} // namespace

LinearFit fit_linear(const Eigen::MatrixXd& design, const Eigen::VectorXd& y, Intercept intercept,
                     const Eigen::VectorXd& weights) {
    LinearFit fit;
    fit.status = base::FitStatus::failed;
    const bool with_intercept = intercept == Intercept::yes;
    const Eigen::Index shift = with_intercept ? 1 : 0;
    const Eigen::Index count = design.cols() + shift;
    const Eigen::VectorXd w = weights.size() == 0 ? Eigen::VectorXd::Ones(y.size()) : weights;
    if (design.rows() != y.size() || w.size() != y.size() || count == 0) return fit;
    const auto used = static_cast<Eigen::Index>((w.array() > 0.0).count());
    if (used < count || !design.allFinite() || !y.allFinite() || !w.allFinite() || w.minCoeff() < 0.0) return fit;

    const Centred c = centre(design, y, w, with_intercept);
    fit.coefficients = Eigen::VectorXd::Zero(count);
    fit.standard_errors = Eigen::VectorXd::Constant(count, nan);
    fit.covariance = Eigen::MatrixXd::Constant(count, count, nan);
    fit.identified.assign(static_cast<std::size_t>(count), true);

    Eigen::ColPivHouseholderQR<Eigen::MatrixXd> qr(c.columns);
    qr.setThreshold(dependence_tolerance);
    const Eigen::Index rank = design.cols() == 0 ? 0 : qr.rank();
    const Eigen::VectorXd scaled = design.cols() == 0 ? Eigen::VectorXd() : Eigen::VectorXd(qr.solve(c.y));
    const Eigen::VectorXd slopes = scaled.cwiseQuotient(c.scales.transpose());
    fit.coefficients.tail(design.cols()) = slopes;
    if (with_intercept) fit.coefficients[0] = c.y_mean - c.column_means * slopes;

    const Eigen::VectorXd weighted_residuals = design.cols() == 0 ? c.y : Eigen::VectorXd(c.y - c.columns * scaled);
    fit.residuals = y - design * slopes;
    if (with_intercept) fit.residuals.array() -= fit.coefficients[0];
    fit.residual_sum_of_squares = weighted_residuals.squaredNorm();
    fit.degrees_of_freedom = static_cast<int>(used - rank - shift);
    const double variance = fit.degrees_of_freedom > 0 ? fit.residual_sum_of_squares / fit.degrees_of_freedom : nan;
    fit.residual_sd = std::sqrt(variance);
    const double total = c.y.squaredNorm();
    fit.r_squared = total > 0.0 ? 1.0 - fit.residual_sum_of_squares / total : nan;
    if (rank > 0) fit.f_statistic = (total - fit.residual_sum_of_squares) / static_cast<double>(rank) / variance;

    // Covariance of the identified slopes from R of the QR; the intercept follows from the means.
    if (rank > 0) {
        const Eigen::MatrixXd r = qr.matrixR().topLeftCorner(rank, rank).template triangularView<Eigen::Upper>();
        const Eigen::MatrixXd r_inverse =
            r.template triangularView<Eigen::Upper>().solve(Eigen::MatrixXd::Identity(rank, rank));
        const Eigen::MatrixXd inner = r_inverse * r_inverse.transpose() * variance;
        const auto& order = qr.colsPermutation().indices();
        for (Eigen::Index i = 0; i < rank; ++i)
            for (Eigen::Index j = 0; j < rank; ++j)
                fit.covariance(order[i] + shift, order[j] + shift) =
                    inner(i, j) / (c.scales[order[i]] * c.scales[order[j]]);
    }
    for (Eigen::Index i = rank; i < design.cols(); ++i)
        fit.identified[static_cast<std::size_t>(qr.colsPermutation().indices()[i] + shift)] = false;
    if (with_intercept) {
        const bool full = rank == design.cols();
        const Eigen::MatrixXd slope_covariance = fit.covariance.bottomRightCorner(design.cols(), design.cols());
        double extra = 0.0;
        if (full && design.cols() > 0) {
            const Eigen::VectorXd cross = -slope_covariance * c.column_means.transpose();
            fit.covariance.col(0).tail(design.cols()) = cross;
            fit.covariance.row(0).tail(design.cols()) = cross.transpose();
            extra = -c.column_means * cross;
        }
        fit.covariance(0, 0) = full ? variance / w.sum() + extra : nan;
        fit.identified[0] = full;
    }
    fit.standard_errors = fit.covariance.diagonal().cwiseSqrt();
    fit.status = base::FitStatus::converged;
    return fit;
}

} // namespace lapwright::math
