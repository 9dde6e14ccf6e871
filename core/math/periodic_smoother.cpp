// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/periodic_smoother.h"

#include "core/base/check.h"
#include "core/base/constants.h"

#include <Eigen/SparseCholesky>
#include <array>
#include <cmath>
#include <cstddef>

namespace lapwright::math {
namespace {

// Row of D'D for the third difference: the coefficients of (1 − z)³(1 − 1/z)³.
constexpr std::array<double, 4> penalty_row{20.0, -15.0, 6.0, -1.0};

// At each node the sum over its neighbours on both sides, those behind times `mirror`.
template <std::size_t reach>
std::vector<double> periodic_sums(std::span<const double> y, const std::array<double, reach>& coefficients,
                                  double mirror) {
    const std::size_t n = y.size();
    std::vector<double> round(n + 2 * reach); // both ends once more
    for (std::size_t i = 0; i < round.size(); ++i)
        round[i] = y[(i + n - reach) % n];
    std::vector<double> sums(n, 0.0);
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t k = 1; k <= reach; ++k)
            sums[i] += coefficients[k - 1] * (round[i + reach + k] + mirror * round[i + reach - k]);
    return sums;
}

// (W + λD'D) z = right, factorised once.
class Solver {
  public:
    Solver(std::span<const double> weights, double lambda) {
        const std::size_t n = weights.size();
        base::check(n >= 8, "a closed curve needs eight nodes");
        std::vector<Eigen::Triplet<double>> entries;
        entries.reserve(n * penalty_row.size());
        for (std::size_t i = 0; i < n; ++i) {
            const auto row = static_cast<int>(i);
            entries.emplace_back(row, row, weights[i] + lambda * penalty_row[0]);
            for (std::size_t k = 1; k < penalty_row.size(); ++k) {
                const auto column = static_cast<int>((i + k) % n);
                entries.emplace_back(std::max(row, column), std::min(row, column), lambda * penalty_row[k]);
            }
        }
        Eigen::SparseMatrix<double> matrix(static_cast<Eigen::Index>(n), static_cast<Eigen::Index>(n));
        matrix.setFromTriplets(entries.begin(), entries.end());
        factors_.compute(matrix);
        base::check(factors_.info() == Eigen::Success, "the smoother's matrix is singular: all weights are zero");
    }

    [[nodiscard]] std::vector<double> solve(std::span<const double> right) const {
        const Eigen::Map<const Eigen::VectorXd> view(right.data(), static_cast<Eigen::Index>(right.size()));
        const Eigen::VectorXd z = factors_.solve(view);
        return {z.begin(), z.end()};
    }

  private:
    // In their own order the nodes fill in along the last rows only: no other ordering is worth its search.
    Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>, Eigen::Lower, Eigen::NaturalOrdering<int>> factors_;
};

} // namespace

double lambda_for_cutoff(double nodes_per_wave) {
    base::check(nodes_per_wave > 2.0, "a wave needs more than two nodes");
    return std::pow(2.0 * std::sin(base::pi / nodes_per_wave), -6.0);
}

std::vector<double> smooth_periodic(std::span<const double> y, std::span<const double> weights, double lambda) {
    base::check(y.size() == weights.size(), "as many weights as nodes");
    const Solver solver(weights, lambda);
    std::vector<double> right(y.size());
    for (std::size_t i = 0; i < y.size(); ++i)
        right[i] = weights[i] * y[i];
    return solver.solve(right);
}

SmoothedPair smooth_periodic_pair(std::span<const double> first, std::span<const double> second, double lambda) {
    base::check(first.size() == second.size(), "two coordinates of one curve");
    const Solver solver(std::vector<double>(first.size(), 1.0), lambda);
    return {solver.solve(first), solver.solve(second)};
}

std::vector<double> first_derivative_periodic(std::span<const double> y, double h) {
    constexpr std::array coefficients{45.0 / 60.0, -9.0 / 60.0, 1.0 / 60.0};
    std::vector<double> result = periodic_sums(y, coefficients, -1.0);
    for (double& value : result)
        value /= h;
    return result;
}

std::vector<double> second_derivative_periodic(std::span<const double> y, double h) {
    constexpr std::array coefficients{270.0 / 180.0, -27.0 / 180.0, 2.0 / 180.0};
    std::vector<double> result = periodic_sums(y, coefficients, 1.0);
    for (std::size_t i = 0; i < y.size(); ++i)
        result[i] = (result[i] - 490.0 / 180.0 * y[i]) / (h * h);
    return result;
}

} // namespace lapwright::math
