// SPDX-License-Identifier: GPL-3.0-or-later
// The frame of a session: its origin is rounded, so that sessions
// at one track usually have the same frame and need no conversion.
#include "core/base/constants.h"
#include "core/base/translation.h"
#include "core/math/statistics.h"
#include "core/motion/estimate_motion.h"

#include <cmath>

namespace lapwright::motion {
namespace {

using base::said;
using recording::Channel;
using recording::Meaning;

constexpr double origin_step_rad = 0.01 * base::pi / 180.0;
// Coarser than altitudes of receivers differ between sessions;
// a height that is wrong by 100 m changes lengths by 16e-6.
constexpr double height_step_m = 200.0;

// Longitudes either side of the 180th meridian are brought to the side of the first.
std::vector<double> on_one_side(std::vector<double> longitudes_rad) {
    const double first = longitudes_rad.front();
    for (double& value : longitudes_rad)
        value -= 2.0 * base::pi * std::round((value - first) / (2.0 * base::pi));
    return longitudes_rad;
}

double rounded_to(double value, double step) {
    return std::round(value / step) * step;
}

} // namespace

base::Result<LocalFrame> natural_frame(const recording::Recording& recording) {
    const Channel* latitude = recording.find(Meaning::latitude);
    const Channel* longitude = recording.find(Meaning::longitude);
    if (latitude && longitude) {
        LocalFrame frame;
        frame.origin.latitude_rad = rounded_to(math::median(latitude->values), origin_step_rad);
        frame.origin.longitude_rad = rounded_to(math::median(on_one_side(longitude->values)), origin_step_rad);
        if (const Channel* altitude = recording.find(Meaning::altitude))
            frame.origin.height_m = rounded_to(math::median(altitude->values), height_step_m);
        return frame;
    }
    const bool moves = (recording.find(Meaning::east) && recording.find(Meaning::north)) ||
                       recording.find(Meaning::speed) || recording.find(Meaning::wheel_speed);
    if (moves) return LocalFrame{{}, false};
    return base::Error{base::ErrorCode::no_motion,
                       {recording.source_file, {}, {}},
                       said("neither positions nor a speed were recorded"),
                       said("export the session with latitude and longitude, or with a speed")};
}

} // namespace lapwright::motion
