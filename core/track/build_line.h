// SPDX-License-Identifier: GPL-3.0-or-later
// The one line on which both laps are measured: a closed periodic smoothing spline through laps, parameterised by arc
// length from the gate, with curvature.
#pragma once

#include "core/track/track.h"

#include <optional>
#include <span>

namespace lapwright::track {

// A lap's piece of path.
struct Stretch {
    const motion::Path* path = nullptr;
    double start_s = 0.0;
    double end_s = 0.0;
};

// Waves of the line shorter than this are noise of the laps, longer ones are the road; a hairpin of 15 m radius keeps
// its curvature to better than 1 %.
inline constexpr double line_cutoff_wave_m = 25.0;

// The first stretch seeds the line, the middle (median over laps) of all places it.  All stretches run from the gate to
// the gate.  The line starts where it passes the gate and the tangent there is its direction. Nothing when the first
// stretch is shorter than 100 m or longer than 50 km or does not close to within 60 m.
[[nodiscard]] std::optional<ReferenceLine> build_line(std::span<const Stretch> laps, const Gate& gate, int rounds = 3);

// The same line with nodes about step_m apart, from any closed curve's points in order (first not repeated, spacing
// below 5 m), smoothed; node 0 stays at the first point.
[[nodiscard]] ReferenceLine line_through(std::span<const Vec2> closed_points, double step_m,
                                         double cutoff_wave_m = line_cutoff_wave_m);

} // namespace lapwright::track
