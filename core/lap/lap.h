// SPDX-License-Identifier: GPL-3.0-or-later
// Laps of a session, and one lap as a function of distance.
#pragma once

#include "core/motion/motion_estimate.h"
#include "core/recording/meaning.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::lap {

enum class LapKind { out, flying, in, incomplete };

[[nodiscard]] std::string_view name(LapKind kind); // "out", "flying", "in", "incomplete"

struct Lap {
    int number = 0; // as the file counts, else the out lap is 0
    LapKind kind = LapKind::incomplete;
    double start_s = 0.0; // of the recording
    double end_s = 0.0;
    std::optional<double> time_sd_s; // standard uncertainty, from the ensemble
    bool clean = false;              // flying, and like the session's other laps
    std::string why_not_clean;       // in words, empty when clean

    [[nodiscard]] double time_s() const { return end_s - start_s; }
};

// A channel of the recording carried over to distance; NaN where it was not measured.
struct TraceChannel {
    std::string name;
    recording::Meaning meaning = recording::Meaning::other;
    base::Unit source_unit = base::Unit::none;
    std::vector<double> values;
};

// One lap on the grid of the reference line: sample i lies at distance_m[i]; the first is 0, the last the line's
// length. All vectors have the same length.
struct LapTrace {
    std::vector<double> distance_m;
    std::vector<double> time_s; // since the lap's start: increasing, first 0, last the lap time
    std::vector<double> speed_mps;
    std::vector<double> longitudinal_mps2;
    std::vector<double> lateral_mps2;
    std::vector<double> offset_m; // to the left of the reference line; NaN without positions
    std::vector<TraceChannel> channels;
    double driven_length_m = 0.0;

    [[nodiscard]] std::size_t size() const { return distance_m.size(); }
    [[nodiscard]] double lap_time_s() const { return time_s.back(); }
    [[nodiscard]] const TraceChannel* find(recording::Meaning meaning) const;
    // Index of the last grid point <= distance, at most size() - 2.
    [[nodiscard]] std::size_t index_before(double distance_m) const;
    // Linear between grid points; distance clamped to the lap.
    [[nodiscard]] double time_at(double distance_m) const;
    [[nodiscard]] double speed_at(double distance_m) const;
};

// The estimate and its draws, all on the same grid.
struct LapEnsemble {
    LapTrace best;
    std::vector<LapTrace> draws; // without channels; empty when the motion estimate has none
};

} // namespace lapwright::lap
