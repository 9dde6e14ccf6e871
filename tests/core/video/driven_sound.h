// SPDX-License-Identifier: GPL-3.0-or-later
// A made-up drive and what a camera on board hears of it.  Shares no code with what it tests.
#pragma once

#include "core/video/media_file.h"

#include <cstdint>
#include <vector>

namespace lapwright::video::tests {

struct DriveRecipe {
    std::uint64_t car_seed = 1;   // gearbox, engine and track
    std::uint64_t drive_seed = 1; // how each lap was driven
    double length_s = 300.0;
    double channel_rate_hz = 20.0;
};

// Engine speed (rev/s) and speed (m/s) as a logger writes them, on one set of stamps.
struct Drive {
    std::vector<double> time_s;
    std::vector<double> engine_rev_s;
    std::vector<double> speed_mps;
    // The truth between the stamps, every millisecond from 0.
    std::vector<double> true_engine_rev_s;
    std::vector<double> true_speed_mps;
    std::vector<double> true_throttle;
};

[[nodiscard]] Drive drive(const DriveRecipe& recipe);

struct SoundRecipe {
    std::uint64_t seed = 1;
    double begins_s = 20.0; // the video's zero in the drive's time
    double length_s = 200.0;
    double drift = 0.0;               // the camera's clock runs slow by this share
    double engine_over_noise_db = 10; // of power, over the whole band
};

[[nodiscard]] Sound heard(const Drive& drive, const SoundRecipe& recipe);

} // namespace lapwright::video::tests
