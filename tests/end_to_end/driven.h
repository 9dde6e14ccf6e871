// SPDX-License-Identifier: GPL-3.0-or-later
// What really happened in the sample sessions, from the simulator that wrote them, and how well a receiver with that
// simulator's position errors can know it.  Positions wander by 0.7 m on each axis with a correlation time of 120 s
// (Ornstein-Uhlenbeck); over a corner the error stands still while the car turns through it.
#pragma once

#include "tests/truth/session.h"

#include <string>

namespace lapwright::end_to_end {

// The session that a sample file records.
[[nodiscard]] const truth::Session& driven(const std::string& file);

// A lap of a session.
struct DrivenLap {
    const truth::Session* session = nullptr;
    int number = 0;

    [[nodiscard]] double time_s() const { return session->lap(number).time_s(); }
    // One sigma of the lap's time as the receiver sees it: the position error differs between the two crossings.
    [[nodiscard]] double time_sd_s() const;
};

// The true gain of lap a over lap b in a segment of the track, positive if a won time there, and one sigma of what two
// receivers make of it: a position error b moves an end by b·t / v, with t the direction and v the speed there.
struct TrueGain {
    double gain_s = 0.0;
    double sd_s = 0.0;
};
[[nodiscard]] TrueGain true_gain(const std::string& segment, const DrivenLap& a, const DrivenLap& b);

// As many sigmas as hold over some fifty checked figures: one draw in 16,000 lies outside.
inline constexpr double sigmas = 4.0;

} // namespace lapwright::end_to_end
