// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lap/road_shift.h"

#include "core/base/check.h"
#include "core/base/constants.h"

#include <Eigen/Dense>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace lapwright::lap {
namespace {

// Over so much a habit hangs together, and so much of its variance may be white.
constexpr std::array lengths_m{25.0, 50.0, 100.0, 200.0, 400.0};
constexpr std::array smoothnesses{0.5, 1.5, 3.5, 7.5};
constexpr std::array noise_shares{1e-4, 1e-3, 1e-2, 1e-1, 0.5};
constexpr Eigen::Index pieces = 10;   // of the jackknife
constexpr double shift_figures = 2.0; // east and north are fitted
// Better than so much is not believed: cells are means, and a line through laps is smoothed.  Ours, no source.
constexpr double min_sd_m = 0.05;

// Orthonormal waves on n cells: a constant, pairs of cosine and sine, and for even n the alternation.
Eigen::MatrixXd waves_on(Eigen::Index n) {
    Eigen::MatrixXd waves(n, n);
    for (Eigen::Index k = 0; k < n; ++k) {
        const Eigen::Index turns = (k + 1) / 2;
        const bool alone = turns == 0 || 2 * turns == n;
        const double size = std::sqrt((alone ? 1.0 : 2.0) / static_cast<double>(n));
        for (Eigen::Index i = 0; i < n; ++i) {
            const double phase = 2.0 * base::pi * static_cast<double>(turns * i % n) / static_cast<double>(n);
            waves(i, k) = size * (k % 2 == 1 ? std::cos(phase) : k == 0 ? 1.0 : std::sin(phase));
        }
    }
    return waves;
}

// Every spectrum thought of: the variance of each wave's coefficient, on average 1 and the noise.
std::vector<Habit> habits_on(const Eigen::MatrixX2d& coefficients, const Eigen::ArrayXd& frequency) {
    std::vector<Habit> habits;
    for (const double length_m : lengths_m)
        for (const double smoothness : smoothnesses) {
            const Eigen::ArrayXd smooth = (1.0 + (length_m * frequency).square()).pow(-(smoothness + 0.5));
            for (const double noise_share : noise_shares) {
                const Eigen::ArrayXd variance = smooth / smooth.mean() + noise_share;
                Habit habit{variance.sqrt().inverse(), {}, {}, variance.log().sum()};
                habit.normals = habit.whitening.matrix().asDiagonal() * coefficients;
                habit.information = habit.normals.transpose() * habit.normals;
                habit.log_determinants += std::log(std::max(habit.information.determinant(), 1e-300));
                habits.push_back(std::move(habit));
            }
        }
    return habits;
}

struct Fit {
    double log_likelihood = -INFINITY;
    Eigen::Vector2d shift;
    const Habit* habit = nullptr;
};

Fit likeliest(const std::vector<Habit>& habits, const Eigen::VectorXd& offsets) {
    Fit best;
    Eigen::VectorXd y(offsets.size());
    const double degrees_of_freedom = static_cast<double>(y.size()) - shift_figures;
    for (const Habit& habit : habits) {
        y = habit.whitening.matrix().cwiseProduct(offsets);
        const auto& x = habit.normals;
        const Eigen::Vector2d shift = habit.information.ldlt().solve(x.transpose() * y);
        const double rest = std::max((y - shift[0] * x.col(0) - shift[1] * x.col(1)).squaredNorm(), 1e-12);
        const double log_likelihood =
            -0.5 * (degrees_of_freedom * std::log(rest / degrees_of_freedom) + habit.log_determinants);
        if (log_likelihood > best.log_likelihood) best = {log_likelihood, shift, &habit};
    }
    return best;
}

// Straight between the neighbours that are known, round the lap.
Eigen::VectorXd filled(std::span<const double> offsets) {
    const std::size_t n = offsets.size();
    std::vector<std::size_t> known;
    for (std::size_t i = 0; i < n; ++i)
        if (!std::isnan(offsets[i])) known.push_back(i);
    Eigen::VectorXd all = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(n));
    for (std::size_t k = 0; k < known.size(); ++k) {
        const std::size_t from = known[k];
        const std::size_t to = known[(k + 1) % known.size()];
        const std::size_t gap = known.size() == 1 ? n : (to + n - from) % n;
        for (std::size_t j = 0; j < gap; ++j)
            all[static_cast<Eigen::Index>((from + j) % n)] =
                offsets[from] + (offsets[to] - offsets[from]) * static_cast<double>(j) / static_cast<double>(gap);
    }
    return all;
}

// Delete-one-piece jackknife: what the rest of the lap would say (Efron and Tibshirani 1993, An Introduction to the
// Bootstrap, 11.5).
Eigen::Matrix2d jackknife(const Eigen::MatrixX2d& x, const Eigen::VectorXd& rest, const Eigen::Matrix2d& information) {
    Eigen::Matrix2d covariance = Eigen::Matrix2d::Zero();
    for (Eigen::Index p = 0; p < pieces; ++p) {
        const Eigen::Index first = x.rows() * p / pieces;
        const Eigen::Index count = x.rows() * (p + 1) / pieces - first;
        const auto piece = x.middleRows(first, count);
        const Eigen::Matrix2d others = information - piece.transpose() * piece;
        const Eigen::Vector2d change = others.ldlt().solve(piece.transpose() * rest.segment(first, count));
        covariance += change * change.transpose();
    }
    return covariance * static_cast<double>(pieces - 1) / static_cast<double>(pieces);
}

} // namespace

RoadShift::RoadShift(std::vector<Eigen::Vector2d> normals, double cell_m) : normals_(std::move(normals)) {
    base::check(normals_.size() >= 16, "a road of too few cells");
    const auto n = static_cast<Eigen::Index>(normals_.size());
    waves_ = waves_on(n);
    Eigen::MatrixX2d rows(n, 2);
    for (Eigen::Index i = 0; i < n; ++i)
        rows.row(i) = normals_[static_cast<std::size_t>(i)].transpose();
    coefficients_ = waves_.transpose() * rows;
    Eigen::ArrayXd frequency(n); // of the waves, rad/m
    for (Eigen::Index k = 0; k < n; ++k)
        frequency[k] = 2.0 * base::pi * static_cast<double>((k + 1) / 2) / (static_cast<double>(n) * cell_m);
    habits_ = habits_on(coefficients_, frequency);
}

std::vector<double> RoadShift::offsets(const Eigen::Vector2d& shift) const {
    std::vector<double> result(normals_.size());
    std::ranges::transform(normals_, result.begin(), [&](const Eigen::Vector2d& n) { return n.dot(shift); });
    return result;
}

Shift RoadShift::of(std::span<const double> offsets_m) const {
    base::check(offsets_m.size() == normals_.size(), "offsets of another road");
    const Eigen::VectorXd offsets = waves_.transpose() * filled(offsets_m);
    const Fit best = likeliest(habits_, offsets);
    // Whitened, and back on the road: what is left at one place says little of the next.
    const Eigen::MatrixX2d x = waves_ * best.habit->normals;
    const Eigen::VectorXd rest =
        waves_ * (best.habit->whitening.matrix().asDiagonal() * (offsets - coefficients_ * best.shift));
    const Eigen::Matrix2d model_error = min_sd_m * min_sd_m * Eigen::Matrix2d::Identity();
    return {best.shift, jackknife(x, rest, best.habit->information) + model_error,
            static_cast<double>(pieces) - shift_figures};
}

} // namespace lapwright::lap
