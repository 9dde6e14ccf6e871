// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/full_push.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace lapwright::comparison {
namespace {

// Common practice, no source.
constexpr double min_drag_per_m = 1e-4;
constexpr double max_drag_per_m = 1.2e-3;
constexpr double prior_samples = 5.0; // grid points that the usual drag counts as
constexpr double min_gain_mps2 = 0.3;
constexpr double max_lateral_mps2 = 4.0;
constexpr double slowest_share = 0.5; // of the fastest speed: below, the tyres may be the limit
constexpr std::size_t speed_bins = 12;
constexpr std::size_t min_in_bin = 8;
constexpr std::size_t min_bins = 2;
constexpr double envelope = 0.8;
constexpr double middle_mps = 40.0; // keeps the normal equations near one

struct Point {
    double acceleration_mps2 = 0.0;
    double speed_mps = 0.0;
};

using Bins = std::array<std::vector<Point>, speed_bins>;

Bins gaining_speed(const lap::LapTrace& trace) {
    const double fastest = *std::ranges::max_element(trace.speed_mps);
    Bins bins;
    for (std::size_t i = 0; i < trace.size(); ++i) {
        const double above = trace.speed_mps[i] / fastest - slowest_share;
        if (above < 0.0 || trace.longitudinal_mps2[i] < min_gain_mps2) continue;
        if (std::abs(trace.lateral_mps2[i]) > max_lateral_mps2) continue;
        const auto bin = static_cast<std::size_t>(above / (1.0 - slowest_share) * static_cast<double>(speed_bins));
        bins[std::min(bin, speed_bins - 1)].push_back({trace.longitudinal_mps2[i], trace.speed_mps[i]});
    }
    return bins;
}

} // namespace

double FullPush::share(double speed_mps, double acceleration_mps2) const {
    const double push = acceleration_mps2 + usual_rolling_mps2 + drag_per_m * speed_mps * speed_mps;
    return push * speed_mps / power_w_per_kg;
}

std::optional<FullPush> full_push(const lap::LapTrace& trace) {
    // Normal equations of x p' − y d' = a + rolling with x = middle / v, y = v² / middle².
    double xx = 0.0;
    double xy = 0.0;
    double yy = prior_samples;
    double xa = 0.0;
    double ya = -prior_samples * usual_drag_per_m * middle_mps * middle_mps;
    std::size_t used = 0;
    for (std::vector<Point>& bin : gaining_speed(trace)) {
        if (bin.size() < min_in_bin) continue;
        const auto at = bin.begin() + static_cast<std::ptrdiff_t>(envelope * static_cast<double>(bin.size() - 1));
        std::ranges::nth_element(bin, at, {}, &Point::acceleration_mps2);
        const double weight = static_cast<double>(bin.size());
        const double x = middle_mps / at->speed_mps;
        const double y = at->speed_mps * at->speed_mps / (middle_mps * middle_mps);
        const double a = at->acceleration_mps2 + usual_rolling_mps2;
        xx += weight * x * x;
        xy += weight * x * y;
        yy += weight * y * y;
        xa += weight * x * a;
        ya += weight * y * a;
        ++used;
    }
    if (used < min_bins) return std::nullopt;
    // Unknowns p' and d', the latter with a minus.
    const double determinant = xx * yy - xy * xy;
    const double drag = (xy * xa - xx * ya) / determinant / (middle_mps * middle_mps);
    FullPush full;
    full.drag_per_m = std::clamp(drag, min_drag_per_m, max_drag_per_m);
    full.power_w_per_kg = middle_mps * (xa + full.drag_per_m * middle_mps * middle_mps * xy) / xx;
    if (!(full.power_w_per_kg > 0.0)) return std::nullopt;
    return full;
}

} // namespace lapwright::comparison
