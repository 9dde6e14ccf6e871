// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/spikes.h"

#include <Eigen/Dense>

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace lapwright::motion {
namespace {

constexpr double slowest_step_s = 0.26;
constexpr double wide_sds = 8.0;
constexpr std::size_t side = 3; // neighbours on either side
constexpr std::size_t longest_run = 3;
constexpr double worst_fit = 0.4; // of the limit: neighbours that fit worse are no ground to judge by

// Whether the first sample of a run may stand off by the limit.  The cubic through two neighbours on either side misses
// one that fits all of them by Σ|weight| times what they miss it by at most (Lagrange's weights), so that the fit
// itself is spared for almost all samples.
bool may_stand_off(std::span<const double> time_s, std::span<const double> values, std::size_t first, std::size_t run,
                   double limit) {
    const std::array<std::size_t, 4> at{first - 2, first - 1, first + run, first + run + 1};
    double through = 0.0;
    double sum = 0.0;
    for (const std::size_t i : at) {
        double weight = 1.0;
        for (const std::size_t j : at)
            if (j != i) weight *= (time_s[first] - time_s[j]) / (time_s[i] - time_s[j]);
        through += weight * values[i];
        sum += std::fabs(weight);
    }
    return std::fabs(values[first] - through) > (1.0 - worst_fit * sum) * limit * (1.0 - 1e-9);
}

// Whether samples first … first + run - 1 all stand off to one side from a cubic that fits their neighbours well.
bool stands_off(std::span<const double> time_s, std::span<const double> values, std::size_t first, std::size_t run,
                double limit) {
    const std::size_t begin = first - side;
    const std::size_t end = first + run + side;
    for (std::size_t i = begin; i + 1 < end; ++i)
        if (time_s[i + 1] - time_s[i] > slowest_step_s) return false;
    const double middle = 0.5 * (time_s[first] + time_s[first + run - 1]);
    const double reach = 0.5 * (time_s[end - 1] - time_s[begin]);
    Eigen::Matrix<double, 2 * side, 4> powers;
    Eigen::Matrix<double, 2 * side, 1> seen;
    for (std::size_t i = 0; i < 2 * side; ++i) {
        const std::size_t at = i < side ? begin + i : first + run + i - side;
        const double u = (time_s[at] - middle) / reach;
        powers.row(static_cast<Eigen::Index>(i)) << 1.0, u, u * u, u * u * u;
        seen[static_cast<Eigen::Index>(i)] = values[at];
    }
    const Eigen::Vector4d cubic = (powers.transpose() * powers).llt().solve(powers.transpose() * seen);
    if ((powers * cubic - seen).cwiseAbs().maxCoeff() > worst_fit * limit) return false;
    double sign = 0.0;
    for (std::size_t i = first; i < first + run; ++i) {
        const double u = (time_s[i] - middle) / reach;
        const double off = values[i] - (cubic[0] + u * (cubic[1] + u * (cubic[2] + u * cubic[3])));
        if (std::fabs(off) < limit || off * sign < 0.0) return false;
        sign = off;
    }
    return true;
}

} // namespace

double roughness(std::span<const double> values) {
    if (values.size() < 5) return 0.0;
    std::vector<double> off;
    off.reserve(values.size());
    for (std::size_t i = 2; i + 2 < values.size(); ++i)
        off.push_back(
            std::fabs(values[i] - (4.0 * (values[i - 1] + values[i + 1]) - values[i - 2] - values[i + 2]) / 6.0));
    const auto middle = off.begin() + static_cast<std::ptrdiff_t>(off.size() / 2);
    std::ranges::nth_element(off, middle);
    return 1.4826 * *middle;
}

std::vector<std::uint8_t> spikes(const std::vector<double>& time_s, const std::vector<double>& values,
                                 double harmless) {
    std::vector<std::uint8_t> found(values.size(), 0);
    const double limit = std::max(harmless, wide_sds * roughness(values));
    for (std::size_t run = longest_run; run >= 1; --run)
        for (std::size_t i = side; i + run + side <= values.size(); ++i) {
            // A spike begins with a step and ends with one.
            const std::size_t last = i + run - 1;
            if (std::fabs(values[i] - values[i - 1]) < 0.5 * limit) continue;
            if (std::fabs(values[last + 1] - values[last]) < 0.5 * limit) continue;
            if (may_stand_off(time_s, values, i, run, limit) && stands_off(time_s, values, i, run, limit))
                std::fill_n(found.begin() + static_cast<std::ptrdiff_t>(i), run, std::uint8_t{1});
        }
    return found;
}

Series without_spikes(const Series& series, double harmless) {
    return without(series, spikes(series.time_s, series.values, harmless));
}

Series without(const Series& series, const std::vector<std::uint8_t>& marks) {
    Series result{{}, {}, series.name, series.left_out};
    for (std::size_t i = 0; i < series.size(); ++i) {
        if (marks[i] != 0) {
            ++result.left_out;
            continue;
        }
        result.time_s.push_back(series.time_s[i]);
        result.values.push_back(series.values[i]);
    }
    return result;
}

} // namespace lapwright::motion
