// SPDX-License-Identifier: GPL-3.0-or-later
// What a recording says about motion, sorted out for the estimators: positions in metres of a local frame, course as an
// angle of that frame, each series on its own stamps, values that a logger merely repeated left out.
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/motion/local_frame.h"
#include "core/motion/motion_estimate.h"
#include "core/recording/recording.h"

#include <cstddef>
#include <string>
#include <vector>

namespace lapwright::motion {

// One sensor: strictly increasing stamps and as many values; empty where the recording has none.
struct Series {
    std::vector<double> time_s;
    std::vector<double> values;
    std::string name;         // as the file calls it
    std::size_t left_out = 0; // spikes and frozen samples

    [[nodiscard]] std::size_t size() const { return values.size(); }
    [[nodiscard]] bool empty() const { return values.empty(); }
};

struct Measurements {
    LocalFrame frame;
    PositionSource source = PositionSource::dead_reckoning; // that: no positions
    std::vector<double> position_time_s;
    std::vector<Vec2> position_m;
    std::size_t positions_left_out = 0; // "no fix", frozen fixes, and spikes that no car could drive
    Series speed;
    Series course; // rad, clockwise from the frame's north, without jumps of a turn
    Series wheel_speed;
    Series longitudinal_mps2;
    Series lateral_mps2;
    Series yaw_rate_radps;
    std::vector<double> splits_s;
    std::vector<recording::Warning> warnings; // what was left out that a person should know of

    [[nodiscard]] bool has_positions() const { return position_time_s.size() >= 2; }
};

// Positions are latitude and longitude, or else the file's own metres.  All of them are taken at the height of the
// frame's origin, so that a session with altitude and one without lie on the same map.
// Error no_motion when there are neither two positions nor two speeds.
[[nodiscard]] base::Result<Measurements> measurements(const recording::Recording& recording, const LocalFrame& frame,
                                                      const base::Progress& progress = {});

// The series without the samples that only repeat the one before, if that is what most of its samples do (a slow sensor
// written into a fast table).  Exposed for tests.
[[nodiscard]] Series without_repeats(Series series);

} // namespace lapwright::motion
