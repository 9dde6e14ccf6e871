// SPDX-License-Identifier: GPL-3.0-or-later
// The moments at which the smoother looks at the car: every stamp of position, speed and course (each moved by its
// sensor's latency), and some more where nothing was measured for long.  Accelerations and wheel speed, which come
// faster, are averaged about these moments.
#pragma once

#include "core/motion/measurements.h"
#include "core/motion/motion_model.h"

#include <vector>

namespace lapwright::motion {

// Seconds by which a sensor is late against the positions.
struct Latencies {
    double speed_s = 0.0;
    double course_s = 0.0;
    double longitudinal_s = 0.0;
    double lateral_s = 0.0;
    double wheel_s = 0.0;
};

// A gap longer than this is not bridged with one state: the path starts afresh behind it.
inline constexpr double longest_bridge_s = 20.0;

// Nodes of positions alone.
[[nodiscard]] std::vector<Node> position_nodes(const Measurements& measured);
// Nodes of everything; strictly increasing in time.
[[nodiscard]] std::vector<Node> all_nodes(const Measurements& measured, const Latencies& latencies);
// Writes accelerations and wheel speed into nodes that exist.
void add_aids(std::vector<Node>& nodes, const Measurements& measured, const Latencies& latencies);

// The series as block means of at most `rate_hz`; unchanged if it is not faster.  Exposed for tests.
[[nodiscard]] Series thinned(const Series& series, double rate_hz);

} // namespace lapwright::motion
