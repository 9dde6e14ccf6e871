// SPDX-License-Identifier: GPL-3.0-or-later
// From the passings of a gate to the laps of a session.
#pragma once

#include "core/lap/lap.h"
#include "core/recording/recording.h"
#include "core/track/track.h"

#include <vector>

namespace lapwright::lap {

// All laps in order of time.  The piece before the first passing is the out lap when it starts slowly, else incomplete;
// the piece after the last one is the in lap when it ends slowly, else incomplete.  A lap in which the clock jumped or
// nothing was measured for more than two seconds is incomplete, and so is what no car would call a lap: too short, too
// long, at walking pace, or a long way that leads nowhere.  Numbers come from the file's lap column where it
// counts upwards with these laps.  `clean` is left false.  Empty when the gate is never passed.
[[nodiscard]] std::vector<Lap> find_laps(const motion::MotionEstimate& motion, const track::Gate& gate,
                                         const recording::Recording& recording);

// The same from passings that are known already, increasing.
[[nodiscard]] std::vector<Lap> laps_between(const std::vector<double>& passings_s, const motion::MotionEstimate& motion,
                                            const track::Gate& gate, const recording::Recording& recording);

// What a lap must stay within to say something about car and driver.  All common practice, no source.
struct CleanLimits {
    double min_loss_in_section_s = 0.35; // lost in one of the sections against the session's median there
    double section_spreads = 6.0;        // … and at least so many robust standard deviations
    double lap_share = 0.02;             // slower than the median lap by this share
    double lap_spreads = 4.0;            // … and at least so many robust standard deviations
    double length_share = 0.02;          // driven length against the median
    double alone_share = 0.07;           // with fewer than three flying laps: slower than the fastest by this share
    std::size_t sections = 24;
};

// The same laps with `clean` and `why_not_clean` decided from the session's own flying laps.  traces[i] belongs to
// laps[i] and is empty (size 0) where the lap is not flying or could not be traced.
[[nodiscard]] std::vector<Lap> judged(std::vector<Lap> laps, const std::vector<LapTrace>& traces,
                                      const CleanLimits& limits = {});

} // namespace lapwright::lap
