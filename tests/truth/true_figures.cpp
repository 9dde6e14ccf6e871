// SPDX-License-Identifier: GPL-3.0-or-later
// Scans every quarter of a metre, then refines the slowest point with a parabola through three samples.
#include "tests/truth/true_figures.h"

#include <algorithm>
#include <cmath>

namespace truth {
namespace {

constexpr double kStep_m = 0.25;

struct Walk {
    const Session& session;
    double lap_start_m;
    [[nodiscard]] TruthSample at(const double station_m) const { return session.at_unwrapped(lap_start_m + station_m); }
};

std::optional<double> brake_onset(const Walk& walk, const double slowest_m, const double from_m) {
    double hardest = 0.0;
    for (double s = slowest_m; s > from_m; s -= kStep_m) {
        const double brake = walk.at(s).brake;
        hardest = std::max(hardest, brake);
        if (hardest > 0.2 && brake < 0.05) return s + kStep_m;
    }
    return std::nullopt;
}

std::optional<double> full_throttle(const Walk& walk, const double slowest_m) {
    for (double s = slowest_m; s < slowest_m + 300.0; s += kStep_m) {
        if (walk.at(s).throttle > 0.98) return s;
    }
    return std::nullopt;
}

// Where the straight before a corner begins; before the lap's first corner it may lie on the lap before.
double straight_before(const TrackShape& track, const TrackSegment& corner) {
    const std::vector<TrackSegment> corners = track.corners();
    double begins = corners.empty() ? 0.0 : corners.back().end_m - track.length_m();
    for (const TrackSegment& other : corners) {
        if (other.end_m <= corner.start_m) begins = other.end_m;
    }
    return begins;
}

} // namespace

CornerTruth corner_truth(const Session& session, const int lap, const TrackSegment& corner) {
    const Walk walk{session, session.track().length_m() * lap};
    CornerTruth result;
    result.entry_mps = session.speed_mps(lap, corner.start_m);
    result.exit_mps = session.speed_mps(lap, corner.end_m);
    result.min_mps = result.entry_mps;
    result.min_at_m = corner.start_m;
    for (double s = corner.start_m; s <= corner.end_m; s += kStep_m) {
        const TruthSample here = walk.at(s);
        result.max_lateral_mps2 = std::max(result.max_lateral_mps2, std::abs(here.a_lat_mps2));
        if (here.speed_mps >= result.min_mps) continue;
        result.min_mps = here.speed_mps;
        result.min_at_m = s;
    }
    const double before = session.speed_mps(lap, result.min_at_m - kStep_m);
    const double after = session.speed_mps(lap, result.min_at_m + kStep_m);
    const double bend = before - 2.0 * result.min_mps + after;
    if (before > result.min_mps && after > result.min_mps && bend > 0.0) {
        const double shift = 0.5 * (before - after) / bend;
        result.min_at_m += shift * kStep_m;
        result.min_mps -= 0.25 * (before - after) * shift;
    }
    result.brake_at_m = brake_onset(walk, result.min_at_m, straight_before(session.track(), corner));
    result.full_throttle_at_m = full_throttle(walk, result.min_at_m);
    return result;
}

double true_gap_s(const Session& a, const int lap_a, const Session& b, const int lap_b, const double station_m) {
    return b.lap_clock_s(lap_b, station_m) - a.lap_clock_s(lap_a, station_m);
}

} // namespace truth
