// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/corner_moments.h"

#include <cmath>

namespace lapwright::comparison {
namespace {

constexpr double turned_in_share = 0.2;

std::optional<double> place_of(const MaybeFigure& figure) {
    return figure ? std::optional(figure->value) : std::nullopt;
}

// The grid point inside the corner at which the car is pushed sideways most.
std::optional<std::size_t> strongest(const track::Segment& corner, const lap::LapTrace& trace) {
    std::optional<std::size_t> most;
    for (std::size_t i = 0; i < trace.size(); ++i) {
        const bool inside = trace.distance_m[i] >= corner.start_m && trace.distance_m[i] <= corner.end_m;
        const double lateral = std::abs(trace.lateral_mps2[i]);
        if (inside && std::isfinite(lateral) && (!most || lateral > std::abs(trace.lateral_mps2[*most]))) most = i;
    }
    return most;
}

std::optional<double> turn_in(const track::Segment& corner, const lap::LapTrace& trace) {
    const auto most = strongest(corner, trace);
    if (!most || trace.lateral_mps2[*most] == 0.0) return {};
    const double side = trace.lateral_mps2[*most] > 0.0 ? 1.0 : -1.0;
    const double least = turned_in_share * std::abs(trace.lateral_mps2[*most]);
    for (std::size_t i = *most; i > 0; --i)
        if (!(side * trace.lateral_mps2[i - 1] >= least)) return trace.distance_m[i];
    return {};
}

} // namespace

CornerMoments corner_moments(const track::Segment& corner, const SegmentFigures& figures, const lap::LapTrace& trace) {
    return {turn_in(corner, trace), place_of(figures.min_speed_at_m), place_of(figures.full_throttle_m)};
}

} // namespace lapwright::comparison
