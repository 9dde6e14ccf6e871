// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/segment_figures.h"

#include <algorithm>
#include <cmath>

namespace lapwright::comparison {
namespace {

// The parabola takes the samples that lie within a small rise of the extreme speed, and at most this far from it: few,
// for the bottom of a corner is no parabola for long, but more where the samples scatter.
constexpr double min_rise_share = 0.004;
constexpr double max_rise_share = 0.015;
constexpr double rise_of_scatter = 6.0;
constexpr double furthest_m = 25.0;
constexpr std::size_t min_points = 5;

// Least-squares parabola through (x, y), x centred by the caller: y = c0 + c1 x + c2 x².
struct Parabola {
    double c0, c1, c2;
    bool usable;
};

Parabola fit(const std::vector<double>& x, const std::vector<double>& y) {
    double s1 = 0, s2 = 0, s3 = 0, s4 = 0, y0 = 0, y1 = 0, y2 = 0;
    const auto n = static_cast<double>(x.size());
    for (std::size_t i = 0; i < x.size(); ++i) {
        const double xx = x[i] * x[i];
        s1 += x[i], s2 += xx, s3 += xx * x[i], s4 += xx * xx;
        y0 += y[i], y1 += y[i] * x[i], y2 += y[i] * xx;
    }
    const double det = n * (s2 * s4 - s3 * s3) - s1 * (s1 * s4 - s2 * s3) + s2 * (s1 * s3 - s2 * s2);
    if (std::abs(det) < 1e-12) return {0, 0, 0, false};
    return {(y0 * (s2 * s4 - s3 * s3) - s1 * (y1 * s4 - y2 * s3) + s2 * (y1 * s3 - y2 * s2)) / det,
            (n * (y1 * s4 - y2 * s3) - y0 * (s1 * s4 - s2 * s3) + s2 * (s1 * y2 - s2 * y1)) / det,
            (n * (s2 * y2 - s3 * y1) - s1 * (s1 * y2 - s2 * y1) + y0 * (s1 * s3 - s2 * s2)) / det, true};
}

// Standard deviation of white scatter in the samples, from their second differences, whose variance is 6 sd².
double scatter(const std::vector<double>& values, std::size_t from, std::size_t to) {
    double sum = 0.0;
    for (std::size_t i = from + 1; i < to; ++i) {
        const double second = values[i - 1] - 2.0 * values[i] + values[i + 1];
        sum += second * second / 6.0;
    }
    return to > from + 1 ? std::sqrt(sum / static_cast<double>(to - from - 1)) : 0.0;
}

// sign +1 seeks the lowest, −1 the highest.
Extreme extreme(const lap::LapTrace& trace, double from_m, double to_m, double sign) {
    const std::size_t first =
        trace.index_before(from_m) + (trace.distance_m[trace.index_before(from_m)] < from_m ? 1 : 0);
    const std::size_t last = std::max(first, trace.index_before(to_m) + (trace.distance_m.back() <= to_m ? 1 : 0));
    std::size_t best = first;
    for (std::size_t i = first; i <= last; ++i)
        if (sign * trace.speed_mps[i] < sign * trace.speed_mps[best]) best = i;
    const Extreme sample{trace.distance_m[best], trace.speed_mps[best]};
    // At a boundary there is no bottom, and the boundary lies between two samples.
    if (best == first) return {from_m, trace.speed_at(from_m)};
    if (best == last) return {to_m, trace.speed_at(to_m)};
    const double rise_mps = std::clamp(rise_of_scatter * scatter(trace.speed_mps, first, last),
                                       min_rise_share * sample.speed_mps, max_rise_share * sample.speed_mps);
    const auto belongs = [&](std::size_t i) {
        return std::abs(trace.speed_mps[i] - sample.speed_mps) <= rise_mps &&
               std::abs(trace.distance_m[i] - sample.distance_m) <= furthest_m;
    };
    std::size_t left = best;
    while (left > 0 && belongs(left - 1))
        --left;
    std::size_t right = best;
    while (right + 1 < trace.size() && belongs(right + 1))
        ++right;
    if (right - left + 1 < min_points) return sample;
    std::vector<double> x;
    std::vector<double> y;
    for (std::size_t i = left; i <= right; ++i) {
        x.push_back((trace.distance_m[i] - sample.distance_m) / furthest_m);
        y.push_back(trace.speed_mps[i]);
    }
    const Parabola p = fit(x, y);
    if (!p.usable || sign * p.c2 <= 0.0) return sample;
    const double vertex = -p.c1 / (2.0 * p.c2);
    const double place = sample.distance_m + furthest_m * vertex;
    // A bottom outside the segment or the fitted piece is no bottom: the speed still falls (or rises) at the boundary.
    if (vertex < x.front() || vertex > x.back() || place < from_m || place > to_m) return sample;
    return {place, p.c0 - p.c1 * p.c1 / (4.0 * p.c2)};
}

} // namespace

Extreme lowest_speed(const lap::LapTrace& trace, double from_m, double to_m) {
    return extreme(trace, from_m, to_m, 1.0);
}

Extreme highest_speed(const lap::LapTrace& trace, double from_m, double to_m) {
    return extreme(trace, from_m, to_m, -1.0);
}

} // namespace lapwright::comparison
