// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/own_reserve.h"

#include "core/comparison/segment_figures.h"

#include <algorithm>

namespace lapwright::comparison {
namespace {

void reach(double& most, const MaybeFigure& further, const MaybeFigure& here, double sign) {
    if (further && here) most = std::max(most, sign * (further->value - here->value));
}

} // namespace

std::vector<OwnReserve> own_reserve(const lap::LapTrace& compared, std::span<const lap::LapTrace> clean,
                                    const std::vector<track::Segment>& segments) {
    lap::LapTrace from_motion = compared;
    from_motion.channels.clear();
    const std::vector<SegmentFigures> here = figures_of_lap(from_motion, segments);
    std::vector<OwnReserve> reserve(segments.size());
    for (const lap::LapTrace& other : clean) {
        if (other.size() != compared.size()) continue;
        const std::vector<SegmentFigures> there = figures_of_lap(other, segments);
        for (std::size_t k = 0; k < segments.size(); ++k) {
            reach(reserve[k].min_speed_mps, there[k].min_speed_mps, here[k].min_speed_mps, 1.0);
            reach(reserve[k].entry_speed_mps, there[k].entry_speed_mps, here[k].entry_speed_mps, 1.0);
            reach(reserve[k].braking_m, there[k].braking_point_m, here[k].braking_point_m, 1.0);
            reach(reserve[k].throttle_m, there[k].full_throttle_m, here[k].full_throttle_m, -1.0);
        }
    }
    return reserve;
}

} // namespace lapwright::comparison
