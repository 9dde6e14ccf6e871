// SPDX-License-Identifier: GPL-3.0-or-later
// When a true car passed a line that the program drew: the bridge between the program's map and the truth's.
#pragma once

#include <optional>

#include "core/track/track.h"
#include "tests/worlds/run_world.h"

namespace worlds {

using lapwright::track::Vec2;

// The program's map lies off the true one by its receiver's error: what it must be moved by to lie on the road.
struct Map {
    lapwright::motion::LocalFrame frame;
    Vec2 shift_m;
};

// The truth's own place in the program's frame.
[[nodiscard]] Vec2 true_place(const Entry& entry, const lapwright::motion::LocalFrame& frame, double true_time_s);

// The mean difference of the truth from the lap's trace, over the lap.
[[nodiscard]] Vec2 shift_of(const Entry& entry, const lapwright::track::Track& track,
                            const lapwright::analysis::Side& side);
[[nodiscard]] Map map_of(const World& world, const lapwright::analysis::Pairing& pairing);

// True time of passing the normal of a place with a direction, within 0.6 s of a guess; nothing where it is not passed.
[[nodiscard]] std::optional<double> passing(const Entry& entry, const Map& map, const Vec2& place,
                                            const Vec2& direction, double guess_true_s);

} // namespace worlds
