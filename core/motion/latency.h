// SPDX-License-Identifier: GPL-3.0-or-later
// How late one sensor is against a path, and how its readings relate to it: the shift for which a straight line through
// readings over path values leaves least, found on a grid and refined by a parabola.  Every shift is held against the
// same samples, and these weigh by Huber's rule, so that a few wrong rows move nothing.
#pragma once

#include "core/motion/measurements.h"

#include <optional>
#include <span>

namespace lapwright::motion {

struct Relation {
    double latency_s = 0.0; // positive: the sensor is late
    double latency_sd_s = 0.0;
    double offset = 0.0; // reading = offset + slope * truth
    double slope = 1.0;
    double correlation = 0.0;

    // Large enough to act upon.
    [[nodiscard]] bool has_latency() const;
};

// truth[i] at time_s[i] (strictly increasing; NaN where nothing is known) against a series.  Nothing when they overlap
// too little, or the readings hardly follow the truth (correlation under 0.5).
[[nodiscard]] std::optional<Relation> relation(const Series& series, std::span<const double> time_s,
                                               std::span<const double> truth);

} // namespace lapwright::motion
