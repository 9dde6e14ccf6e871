// SPDX-License-Identifier: GPL-3.0-or-later
// The recorded figure that the sound of an engine follows, as time stamps and values.
#pragma once

#include <span>

namespace lapwright::video {

enum class FollowedKind {
    engine_speed, // rev/s: the orders of an engine are whole and half multiples of it
    speed,        // m/s: within a gear the engine follows it, at a ratio that is not known
};

struct Followed {
    FollowedKind kind = FollowedKind::engine_speed;
    std::span<const double> time_s; // of the recording, strictly increasing
    std::span<const double> values; // as many
};

// Linear between samples; NaN outside, across a gap of more than a second, and where it says nothing (an engine below
// 900 rev/min, a car below 8 m/s: idling and coasting).
[[nodiscard]] double value_at(const Followed& followed, double time_s);

} // namespace lapwright::video
