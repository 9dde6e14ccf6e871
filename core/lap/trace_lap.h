// SPDX-License-Identifier: GPL-3.0-or-later
// One lap measured on the reference line: time as a monotone
// function of distance, speed, accelerations, lateral offset.
//
// A stamp's distance is its orthogonal projection, followed along the lap; its rate is ṡ = v·t / (1 − κn) (Perantoni
// and Limebeer 2015, curvilinear kinematics, from memory).  Between stamps s(t) is the cubic Hermite through both, and
// the time at a grid station is its root.
#pragma once

#include "core/lap/lap.h"
#include "core/recording/recording.h"
#include "core/track/track.h"

#include <optional>

namespace lapwright::lap {

// Grid: step_m rounded so that it divides the line's length evenly.  Nothing when the lap does not follow the line all
// the way. start_s and end_s are the passings of the gate that is square to the line at station 0.
[[nodiscard]] std::optional<LapTrace> trace_lap(const motion::Path& path, double start_s, double end_s,
                                                const track::ReferenceLine& line, double step_m);
// Of the best estimate; offset_m is NaN all along where the recording had no positions: they were put on the line.
[[nodiscard]] std::optional<LapTrace> trace_lap(const motion::MotionEstimate& motion, double start_s, double end_s,
                                                const track::ReferenceLine& line, double step_m);

// The recording's other channels at the trace's moments; positions and speed are left out.  Gear, lap number and counts
// step, others are linear; a value is NaN where the channel has a hole there.
[[nodiscard]] LapTrace with_channels(LapTrace trace, double lap_start_s, const recording::Recording& recording);

// The best estimate with channels, and every draw timed by its own passings of the gate.
[[nodiscard]] std::optional<LapEnsemble> trace_ensemble(const motion::MotionEstimate& motion, const Lap& lap,
                                                        const track::Gate& gate, const track::ReferenceLine& line,
                                                        double step_m, const recording::Recording& recording);

} // namespace lapwright::lap
