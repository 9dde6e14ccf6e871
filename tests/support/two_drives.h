// SPDX-License-Identifier: GPL-3.0-or-later
// The light aero car and the heavy powerful one on one track, each seed with drives of its own.
#pragma once

#include "truth/drive.h"
#include "truth/track_catalogue.h"

#include <cstdint>
#include <memory>

namespace lapwright::test {

struct TwoDrives {
    truth::Session a;
    truth::Session b;
};

inline TwoDrives two_drives(std::uint64_t seed, int flying_laps) {
    static const auto track = std::make_shared<const truth::TrackShape>(truth::ternbank());
    truth::SessionPlan plan;
    plan.flying_laps = flying_laps;
    truth::DriverTruth driver_a;
    driver_a.style_seed = 2 * seed + 1;
    truth::DriverTruth driver_b;
    driver_b.style_seed = 2 * seed + 2;
    return {truth::drive_session(track, truth::light_aero_hatch(), driver_a, plan, 2 * seed + 1),
            truth::drive_session(track, truth::heavy_powerful_coupe(), driver_b, plan, 2 * seed + 2)};
}

} // namespace lapwright::test
