// SPDX-License-Identifier: GPL-3.0-or-later
// A session without positions, brought onto a line: each lap's distance scaled to the line's length (so the wheels'
// scale is found lap by lap) and warped on lateral acceleration (warp.h).  Behind it the session has positions, on the
// line itself, and is timed and compared like any other; how far across the road the car was stays unknown.
#pragma once

#include "core/lap/lap.h"
#include "core/motion/motion_estimate.h"
#include "core/track/track.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace lapwright::lap {

// Speeds and turning of the motion are used, its positions are not; so a motion that was placed already can be placed
// on another line.
struct DeadReckoned {
    const motion::MotionEstimate* motion = nullptr;
    std::vector<double> passings_s; // of the file's timing line, at least two, within the motion
    std::vector<double> error_s;    // the greatest error of each
};

struct OnLine {
    motion::MotionEstimate motion;   // laterally positive to the left, as the line's curvature says
    std::vector<double> passings_s;  // of the line's station 0
    double agreement = 0.0;          // correlation of lateral acceleration with the line's, middle lap, 0..1
    bool turned_round = false;       // its lateral acceleration was recorded positive to the right
    std::size_t laps_not_placed = 0; // whose warp did not converge: placed by their distance alone
};

// Where on the line the file's timing line lies, by the middle lap's cornering, -length/2..length/2.
struct Start {
    double station_m = 0.0;
    double sd_m = 0.0;
    // 0 agrees about as well: a timing line that both know may be taken to be the same one.
    bool may_be_same = true;
};

// Of the length of a line that is a session's own distance: a wheel reads some per cent high or low, as the tyre and
// the logger's figure for it go, and nothing tells by how much.  Ours, no source.
inline constexpr double dead_reckoned_length_sd = 0.02;

// start: the station of the file's timing line, and how well it is known.  frame: the line's.  length_sd: how well the
// line's length is known, as a share of it; what it makes of the speeds is the same in every session.  Laps whose
// distance is far from the others' are placed by their distance alone, with the middle lap's scale of speed.
[[nodiscard]] OnLine placed_on_line(const DeadReckoned& session, const track::ReferenceLine& line,
                                    const motion::LocalFrame& frame, const Start& start, std::uint64_t seed,
                                    double length_sd = 0.0);

// Nothing where no place agrees: the session is of another track.
[[nodiscard]] std::optional<Start> start_on_line(const DeadReckoned& session, const track::ReferenceLine& line);

// The line of a track that no session has positions of: distance and curvature
// are the laps' own, brought onto the middle one; its length is the middle lap's,
// or the one given.  Nothing for laps shorter than 100 m or longer than 50 km.
[[nodiscard]] std::optional<track::ReferenceLine> dead_reckoned_line(const DeadReckoned& session,
                                                                     std::optional<double> length_m = {});

} // namespace lapwright::lap
