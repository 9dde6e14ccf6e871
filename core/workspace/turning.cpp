// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/turning.h"

#include <utility>

namespace lapwright::workspace {

video::Turning turning_of(const analysis::Session& session) {
    constexpr double walking_mps = 2.0;
    video::Turning turning;
    if (!session.motion) return turning;
    const motion::Path& path = session.motion->best;
    turning.time_s = *path.time_s;
    turning.rate_radps.reserve(path.size());
    for (std::size_t i = 0; i < path.size(); ++i) {
        const motion::Moment moment{turning.time_s[i], path.position_m[i], path.velocity_mps[i],
                                    path.acceleration_mps2[i]};
        const double speed_mps = moment.speed_mps();
        turning.rate_radps.push_back(speed_mps > walking_mps ? moment.lateral_mps2() / speed_mps : 0.0);
    }
    return turning;
}

base::Result<video::StepProposal> proposed_step(const analysis::Session& session, video::Video& video,
                                                const video::GoOn& go_on) {
    auto heard = video::propose_step(*session.recording, video, go_on);
    if (!heard) return heard.error();
    return video::ask_picture(std::move(heard).value(), turning_of(session), video, go_on);
}

} // namespace lapwright::workspace
