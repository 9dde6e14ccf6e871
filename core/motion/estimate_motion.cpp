// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/estimate_motion.h"

#include "core/motion/measurements.h"
#include "core/motion/smooth_motion.h"

namespace lapwright::motion {
namespace {

void add_altitude(MotionEstimate& result, const recording::Recording& recording) {
    const recording::Channel* altitude = recording.find(recording::Meaning::altitude);
    if (!altitude || !altitude->time_s) return;
    result.altitude_time_s = *altitude->time_s;
    result.altitude_m = altitude->values;
}

} // namespace

base::Result<MotionEstimate> estimate_motion(const recording::Recording& recording, const Options& options,
                                             const base::Progress& progress) {
    const base::Result<LocalFrame> natural = natural_frame(recording);
    if (!natural) return natural.error();
    const LocalFrame frame = options.frame && options.frame->on_earth == natural->on_earth ? *options.frame : *natural;
    const base::Result<Measurements> measured = measurements(recording, frame);
    if (!measured) return measured.error();
    base::Result<MotionEstimate> result = smooth_motion(*measured, options, progress);
    if (!result) return result.error();
    MotionEstimate motion = std::move(result).value();
    add_altitude(motion, recording);
    return motion;
}

} // namespace lapwright::motion
