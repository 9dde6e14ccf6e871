// SPDX-License-Identifier: GPL-3.0-or-later
// By how much a sensor reads too much or too little: its readings summed over some seconds against what the path says
// (the way that it covers, or by how much its speed or direction changed).  Summed readings have next to no noise, so
// that the line through the path's sums over them is not pulled to zero, as one through single samples would be.
#pragma once

#include "core/math/linear_least_squares.h"
#include "core/motion/measurements.h"

#include <span>
#include <vector>

namespace lapwright::motion {

// Of a path, from each border to the next; NaN where it is not known.
struct Sums {
    std::vector<double> borders_s;
    std::vector<double> values; // one fewer
};

// Of a figure at stamps of the path (strictly increasing, two or more; the figure is NaN where nothing is known).
[[nodiscard]] Sums sums_of(std::span<const double> time_s, std::span<const double> figure);
// Ways, from places alone: arcs of circles through three of them.  The path's speed
// is no measure where it is noisy, for an error across the path makes it greater
// whichever way it points.  Unknown where the car all but stands, brakes or pushes.
[[nodiscard]] Sums ways_of(const Path& path);

// A wheel under brakes turns too slowly, and so it seems to be both early and small.
[[nodiscard]] Series without_braking(const Series& wheel_speed);

struct SensorScale {
    double scale = 1.0;   // reading = scale * truth, plus a bias where there is an intercept
    double later_s = 0.0; // than was thought
};

// The readings are thought to be late by latency_s: what they changed by over a window tells the rest of it.  As it
// was where nothing can be told.
[[nodiscard]] SensorScale sensor_scale(const Series& readings, double latency_s, const Sums& truth,
                                       math::Intercept intercept);

} // namespace lapwright::motion
