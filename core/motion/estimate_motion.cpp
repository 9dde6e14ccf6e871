// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/estimate_motion.h"

#include "core/base/translation.h"
#include "core/motion/measurements.h"
#include "core/motion/smooth_motion.h"

#include <array>
#include <bit>

namespace lapwright::motion {
namespace {

using base::said;

void add_altitude(MotionEstimate& result, const recording::Recording& recording) {
    const recording::Channel* altitude = recording.find(recording::Meaning::altitude);
    if (!altitude || !altitude->time_s) return;
    result.altitude_time_s = *altitude->time_s;
    result.altitude_m = altitude->values;
}

} // namespace

// After FNV-1a (Fowler, Noll and Vo, from memory), by whole words, turned so that high bits reach the low ones.
std::uint64_t own_seed(const recording::Recording& recording, std::uint64_t seed) {
    using recording::Meaning;
    std::uint64_t hash = 0xCBF29CE484222325ULL ^ seed;
    for (const Meaning meaning : std::array{Meaning::latitude, Meaning::east, Meaning::speed, Meaning::wheel_speed}) {
        const recording::Channel* channel = recording.find(meaning);
        if (!channel) continue;
        for (const double value : channel->values)
            hash = std::rotl((hash ^ std::bit_cast<std::uint64_t>(value)) * 0x100000001B3ULL, 29);
    }
    return hash;
}

base::Result<MotionEstimate> estimate_motion(const recording::Recording& recording, const Options& options,
                                             const base::Progress& progress) {
    const base::Result<LocalFrame> natural = natural_frame(recording);
    if (!natural) return natural.error();
    const LocalFrame frame = options.frame && options.frame->on_earth == natural->on_earth ? *options.frame : *natural;
    const base::Result<Measurements> measured = measurements(recording, frame, progress);
    if (!measured) return measured.error();
    if (!base::go_on(progress, said("placing the positions"), 0.0)) return base::cancelled();
    Options own = options;
    own.seed = own_seed(recording, options.seed);
    base::Result<MotionEstimate> result = smooth_motion(*measured, own, progress);
    if (!result) return result.error();
    MotionEstimate motion = std::move(result).value();
    add_altitude(motion, recording);
    motion.warnings.insert(motion.warnings.begin(), measured->warnings.begin(), measured->warnings.end());
    return motion;
}

} // namespace lapwright::motion
