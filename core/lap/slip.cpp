// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lap/slip.h"

#include "core/base/check.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <span>

namespace lapwright::lap {
namespace {

// L of L·Lᵀ of a tridiagonal matrix.
struct Cholesky {
    std::vector<double> diagonal;
    std::vector<double> below;

    Cholesky(std::span<const double> matrix_diagonal, std::span<const double> matrix_next) {
        const std::size_t n = matrix_diagonal.size();
        diagonal.resize(n);
        below.resize(n, 0.0);
        for (std::size_t k = 0; k < n; ++k) {
            const double under = k > 0 ? below[k - 1] : 0.0;
            diagonal[k] = std::sqrt(matrix_diagonal[k] - under * under);
            if (k + 1 < n) below[k] = matrix_next[k] / diagonal[k];
        }
    }
    [[nodiscard]] double log_determinant() const {
        double sum = 0.0;
        for (const double value : diagonal)
            sum += 2.0 * std::log(value);
        return sum;
    }
};

std::vector<double> forward(std::span<const double> diagonal, std::span<const double> below,
                            std::vector<double> right) {
    for (std::size_t k = 0; k < right.size(); ++k)
        right[k] = (right[k] - (k > 0 ? below[k - 1] * right[k - 1] : 0.0)) / diagonal[k];
    return right;
}

std::vector<double> backward(std::span<const double> diagonal, std::span<const double> below,
                             std::vector<double> right) {
    for (std::size_t k = right.size(); k-- > 0;)
        right[k] = (right[k] - (k + 1 < right.size() ? below[k] * right[k + 1] : 0.0)) / diagonal[k];
    return right;
}

std::vector<double> solved(const Cholesky& factor, std::vector<double> right) {
    return backward(factor.diagonal, factor.below, forward(factor.diagonal, factor.below, std::move(right)));
}

double dot(std::span<const double> x, std::span<const double> y) {
    return std::inner_product(x.begin(), x.end(), y.begin(), 0.0);
}

// Inner knots' precision: that of the walk and what the data adds.
struct Inner {
    std::vector<double> diagonal;
    std::vector<double> next; // one fewer
};

Inner inner_precision(const std::vector<double>& walk, const SlipSeen& seen) {
    Inner inner;
    for (std::size_t k = 1; k < walk.size(); ++k) {
        inner.diagonal.push_back(walk[k - 1] + walk[k] + seen.diagonal[k]);
        if (k + 1 < walk.size()) inner.next.push_back(-walk[k] + seen.next[k]);
    }
    return inner;
}

// What a size of 1 asks of the inner knots.
std::vector<double> pull_of(const std::vector<double>& walk, const Course& course) {
    std::vector<double> pull;
    for (std::size_t k = 0; k + 1 < walk.size(); ++k)
        pull.push_back(walk[k] * course.step_m[k] - walk[k + 1] * course.step_m[k + 1]);
    return pull;
}

// Precision of the sizes when the inner knots are summed out.
Eigen::MatrixXd sizes_precision(const SlipPrior& prior, const std::vector<double>& walk,
                                const std::vector<std::vector<double>>& pulls,
                                const std::vector<std::vector<double>>& answers) {
    const auto count = static_cast<Eigen::Index>(prior.courses.size());
    Eigen::MatrixXd precision(count, count);
    for (Eigen::Index d = 0; d < count; ++d)
        for (Eigen::Index e = 0; e <= d; ++e) {
            const Course& one = prior.courses[static_cast<std::size_t>(d)];
            const Course& other = prior.courses[static_cast<std::size_t>(e)];
            double sum = d == e ? 1.0 / (one.size_sd * one.size_sd) : 0.0;
            for (std::size_t k = 0; k < walk.size(); ++k)
                sum += walk[k] * one.step_m[k] * other.step_m[k];
            sum -= dot(pulls[static_cast<std::size_t>(d)], answers[static_cast<std::size_t>(e)]);
            precision(d, e) = precision(e, d) = sum;
        }
    return precision;
}

double log_determinant(const Eigen::LLT<Eigen::MatrixXd>& factor) {
    return 2.0 * factor.matrixLLT().diagonal().array().log().sum();
}

struct Bordered {
    Cholesky knots;
    std::vector<std::vector<double>> pulls;
    std::vector<std::vector<double>> answers;
    Eigen::LLT<Eigen::MatrixXd> sizes;
    [[nodiscard]] double log_determinant() const { return knots.log_determinant() + lap::log_determinant(sizes); }
};

Bordered bordered(const SlipPrior& prior, const std::vector<double>& walk, const SlipSeen& seen) {
    const Inner inner = inner_precision(walk, seen);
    Bordered system{Cholesky(inner.diagonal, inner.next), {}, {}, {}};
    for (const Course& course : prior.courses) {
        system.pulls.push_back(pull_of(walk, course));
        system.answers.push_back(solved(system.knots, system.pulls.back()));
    }
    system.sizes.compute(sizes_precision(prior, walk, system.pulls, system.answers));
    return system;
}

} // namespace

SlipSeen nothing_seen(const SlipPrior& prior) {
    const std::size_t knots = prior.variance_m2.size() + 1;
    return {std::vector<double>(knots, 0.0), std::vector<double>(knots, 0.0), std::vector<double>(knots, 0.0)};
}

Moved moved_by(const SlipSeen& seen, double move_m) {
    Moved moved{seen, 0.0};
    double precision = 0.0;
    for (std::size_t k = 0; k < seen.right.size(); ++k) {
        const double row = seen.diagonal[k] + seen.next[k] + (k > 0 ? seen.next[k - 1] : 0.0);
        moved.seen.right[k] -= row * move_m;
        moved.gained += seen.right[k] * move_m;
        precision += row;
    }
    moved.gained -= 0.5 * precision * move_m * move_m;
    return moved;
}

SlipPosterior slip_posterior(const SlipPrior& prior, double factor, const SlipSeen& seen) {
    const std::size_t steps = prior.variance_m2.size();
    base::check(steps >= 4 && seen.right.size() == steps + 1 && !prior.courses.empty(), "a slip of too few knots");
    std::vector<double> walk(steps);
    std::ranges::transform(prior.variance_m2, walk.begin(), [&](double v) { return 1.0 / (factor * v); });
    Bordered system = bordered(prior, walk, seen);
    const std::vector<double> right(seen.right.begin() + 1, seen.right.end() - 1);
    std::vector<double> inner = solved(system.knots, right);
    const auto count = static_cast<Eigen::Index>(prior.courses.size());
    Eigen::VectorXd asked(count);
    for (Eigen::Index d = 0; d < count; ++d)
        asked[d] = dot(system.pulls[static_cast<std::size_t>(d)], inner);
    const Eigen::VectorXd size = system.sizes.solve(asked);
    for (std::size_t d = 0; d < system.answers.size(); ++d)
        for (std::size_t k = 0; k < inner.size(); ++k)
            inner[k] += size[static_cast<Eigen::Index>(d)] * system.answers[d][k];

    SlipPosterior posterior;
    posterior.log_evidence = 0.5 * dot(right, inner) - 0.5 * system.log_determinant();
    posterior.mean_m.assign(steps + 1, 0.0);
    std::ranges::copy(inner, posterior.mean_m.begin() + 1);
    posterior.coupled_first = -walk.front() + seen.next.front();
    posterior.coupled_last = -walk.back() + seen.next[steps - 1];
    const Eigen::MatrixXd covariance = system.sizes.solve(Eigen::MatrixXd::Identity(count, count));
    const Eigen::MatrixXd spread = covariance.llt().matrixL();
    for (Eigen::Index d = 0; d < count; ++d)
        for (Eigen::Index e = 0; e < count; ++e)
            posterior.spread.push_back(spread(d, e));
    posterior.factor_diagonal = std::move(system.knots.diagonal);
    posterior.factor_below = std::move(system.knots.below);
    posterior.answers = std::move(system.answers);
    return posterior;
}

std::vector<double> drawn_slip(const SlipPosterior& posterior, double start_m, double end_m,
                               math::NormalStream& normals) {
    const std::size_t inner = posterior.factor_diagonal.size();
    const auto& diagonal = posterior.factor_diagonal;
    const auto& below = posterior.factor_below;
    std::vector<double> ends(inner, 0.0);
    ends.front() -= posterior.coupled_first * start_m;
    ends.back() -= posterior.coupled_last * end_m;
    ends = backward(diagonal, below, forward(diagonal, below, std::move(ends)));
    std::vector<double> noise(inner);
    for (double& value : noise)
        value = normals.next();
    noise = backward(diagonal, below, std::move(noise));
    const std::size_t count = posterior.answers.size();
    std::vector<double> standard(count);
    for (double& value : standard)
        value = normals.next();
    std::vector<double> shift = posterior.mean_m;
    shift.front() += start_m;
    shift.back() += end_m;
    for (std::size_t d = 0; d < count; ++d) {
        double size = 0.0;
        for (std::size_t e = 0; e <= d; ++e)
            size += posterior.spread[d * count + e] * standard[e];
        for (std::size_t k = 0; k < inner; ++k)
            shift[k + 1] += size * posterior.answers[d][k];
    }
    for (std::size_t k = 0; k < inner; ++k)
        shift[k + 1] += ends[k] + noise[k];
    return shift;
}

} // namespace lapwright::lap
