// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/sensor_scale.h"

#include "core/math/local_polynomial.h"
#include "core/math/robust_regression.h"

#include <cmath>
#include <limits>

namespace lapwright::motion {
namespace {

// Long enough for speeds from positions to have changed by more than they err, short against a change of slope.
constexpr double figure_window_s = 2.0;
constexpr double way_window_s = 0.5; // in which a curve is about a circle
constexpr double slowest_way_mps = 5.0;
constexpr double braking_mps2 = 3.0;     // from here on a wheel may slip. Ours, no source.
constexpr double rate_reach_s = 0.15;    // to either side
constexpr double longest_summed_s = 0.5; // between stamps, to be summed over
constexpr std::size_t min_windows = 20;
// A sensor's own tolerance, a tyre's radius, the weight's share
// in it when the car leans on its springs. Ours, no source.
constexpr double scale_prior_sd = 0.03;
constexpr double unknown = std::numeric_limits<double>::quiet_NaN();

// A figure summed over time by trapezoids, to be read between moments that come in order.
class RunningSum {
  public:
    RunningSum(std::span<const double> time_s, std::span<const double> values)
        : time_s_(time_s), sums_(time_s.size(), 0.0), holes_(time_s.size(), 0) {
        for (std::size_t i = 1; i < time_s.size(); ++i) {
            const double step = time_s[i] - time_s[i - 1];
            const double area = 0.5 * step * (values[i] + values[i - 1]);
            const bool hole = std::isnan(area) || step > longest_summed_s;
            sums_[i] = sums_[i - 1] + (hole ? 0.0 : area);
            holes_[i] = holes_[i - 1] + (hole ? 1 : 0);
        }
    }

    // NaN over a hole and outside the stamps.
    [[nodiscard]] double between(double from_s, double to_s) {
        if (from_s < time_s_.front() || to_s > time_s_.back()) return unknown;
        const std::size_t first = interval(from_s);
        const double before = at(from_s);
        const std::size_t last = interval(to_s);
        return holes_[last + 1] == holes_[first] ? at(to_s) - before : unknown;
    }

  private:
    std::size_t interval(double moment_s) {
        while (at_ + 2 < time_s_.size() && time_s_[at_ + 1] < moment_s)
            ++at_;
        return at_;
    }
    [[nodiscard]] double at(double moment_s) const {
        const double u = (moment_s - time_s_[at_]) / (time_s_[at_ + 1] - time_s_[at_]);
        return sums_[at_] + u * (sums_[at_ + 1] - sums_[at_]);
    }

    std::span<const double> time_s_;
    std::vector<double> sums_;
    std::vector<std::size_t> holes_;
    std::size_t at_ = 0;
};

std::vector<double> borders(double from_s, double to_s, double window_s) {
    std::vector<double> result;
    for (double t = from_s; t <= to_s; t += window_s)
        result.push_back(t);
    return result;
}

// Of the circle through three places, the middle one half way: an angle of 4 atan(2h/c) at its centre, c the chord and
// h the height over it.
double arc(const Vec2& from, const Vec2& middle, const Vec2& to) {
    const double chord = std::hypot(to.east - from.east, to.north - from.north);
    if (chord == 0.0) return unknown;
    const double height =
        ((to.east - from.east) * (middle.north - from.north) - (to.north - from.north) * (middle.east - from.east)) /
        chord;
    const double half_angle = 2.0 * std::atan(2.0 * std::fabs(height) / chord);
    return half_angle > 1e-6 ? chord * half_angle / std::sin(half_angle) : chord;
}

} // namespace

Sums sums_of(std::span<const double> time_s, std::span<const double> figure) {
    Sums sums{borders(time_s.front(), time_s.back(), figure_window_s), {}};
    RunningSum running(time_s, figure);
    for (std::size_t i = 1; i < sums.borders_s.size(); ++i)
        sums.values.push_back(running.between(sums.borders_s[i - 1], sums.borders_s[i]));
    return sums;
}

Sums ways_of(const Path& path) {
    Sums sums{borders(path.start_s(), path.end_s(), way_window_s), {}};
    std::size_t index = 0;
    const auto place = [&](double moment_s) {
        index = path.index_before(moment_s, index);
        return path.at(moment_s, index).position_m;
    };
    for (std::size_t i = 1; i < sums.borders_s.size(); ++i) {
        const Vec2 from = place(sums.borders_s[i - 1]);
        const Vec2 middle = place(0.5 * (sums.borders_s[i - 1] + sums.borders_s[i]));
        const double way = arc(from, middle, place(sums.borders_s[i]));
        sums.values.push_back(way > slowest_way_mps * way_window_s ? way : unknown);
    }
    return sums;
}

Series without_braking(const Series& wheel_speed) {
    Series result{{}, {}, wheel_speed.name, wheel_speed.left_out};
    std::size_t before = 0;
    std::size_t after = 0;
    for (std::size_t i = 0; i < wheel_speed.size(); ++i) {
        const double moment_s = wheel_speed.time_s[i];
        while (wheel_speed.time_s[before] < moment_s - rate_reach_s)
            ++before;
        while (after + 1 < wheel_speed.size() && wheel_speed.time_s[after] < moment_s + rate_reach_s)
            ++after;
        const double change = wheel_speed.values[after] - wheel_speed.values[before];
        if (change < -braking_mps2 * (wheel_speed.time_s[after] - wheel_speed.time_s[before])) continue;
        result.time_s.push_back(moment_s);
        result.values.push_back(wheel_speed.values[i]);
    }
    return result;
}

SensorScale sensor_scale(const Series& readings, double latency_s, const Sums& truth, math::Intercept intercept) {
    if (readings.size() < 2) return {};
    RunningSum running(readings.time_s, readings.values);
    std::vector<double> read;
    std::vector<double> changes;
    std::vector<double> truly;
    for (std::size_t i = 0; i < truth.values.size(); ++i) {
        const double from_s = truth.borders_s[i] + latency_s;
        const double to_s = truth.borders_s[i + 1] + latency_s;
        const double sum = running.between(from_s, to_s);
        if (std::isnan(sum) || std::isnan(truth.values[i])) continue;
        read.push_back(sum);
        changes.push_back(math::interpolated(readings.time_s, readings.values, to_s) -
                          math::interpolated(readings.time_s, readings.values, from_s));
        truly.push_back(truth.values[i]);
    }
    if (read.size() < min_windows) return {};
    const auto count = static_cast<Eigen::Index>(read.size());
    Eigen::MatrixXd design(count, 2);
    design << Eigen::Map<const Eigen::VectorXd>(read.data(), count),
        Eigen::Map<const Eigen::VectorXd>(changes.data(), count);
    const math::RobustFit line =
        math::fit_robust(design, Eigen::Map<const Eigen::VectorXd>(truly.data(), count), intercept);
    if (!line.outcome.converged()) return {};
    const Eigen::Index slope = line.fit.coefficients.size() - 2;
    const double variance = std::pow(line.fit.standard_errors[slope], 2);
    const double believed = scale_prior_sd * scale_prior_sd / (scale_prior_sd * scale_prior_sd + variance);
    const double truth_over_reading = 1.0 + believed * (line.fit.coefficients[slope] - 1.0);
    if (truth_over_reading <= 0.0) return {};
    return {1.0 / truth_over_reading, line.fit.coefficients[slope + 1] / truth_over_reading};
}

} // namespace lapwright::motion
