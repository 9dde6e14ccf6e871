// SPDX-License-Identifier: GPL-3.0-or-later
// Passing a gate, and where to put one.  A crossing is the root of the smoothed path's signed distance to the gate, not
// a line between two fixes.
#pragma once

#include "core/recording/recording.h"
#include "core/track/track.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lapwright::track {

// Times at which the path passes the gate in its direction, increasing, at least `min_apart_s` apart.
[[nodiscard]] std::vector<double> crossings(const motion::Path& path, const Gate& gate, double min_apart_s = 10.0);

// The passing closest to `guess_s`, sought so near it: where the ensemble's draws pass.
inline constexpr double crossing_search_s = 2.0;
[[nodiscard]] std::optional<double> crossing_near(const motion::Path& path, const Gate& gate, double guess_s);

// Passings of the timing line that the file itself stamps.
struct RecordedPassings {
    std::vector<double> time_s;  // middle of the two samples between which the lap changed; at least 10 s apart
    std::vector<double> error_s; // the greatest error of each: half the step between those samples
    std::string origin;          // in words: "lap column of the file"
};

// From the beacon channel, else the lap column, also one that counts down.  Nothing with fewer than two passings, or
// where the column changes every few seconds: such a one counts no laps.
[[nodiscard]] std::optional<RecordedPassings> recorded_passings(const recording::Recording& recording);

struct ProposedGate {
    Gate gate;
    std::string origin; // in words: "lap column of the file"
};

// The gate that the recording's own beacon or lap column implies: the middle of the places where the lap changed.
[[nodiscard]] std::optional<ProposedGate> gate_from_channels(const motion::Path& path,
                                                             const recording::Recording& recording);

// A gate proposed by the program, square to the path.  Of the places that see most of the drive as laps of one length
// it is the one where a lap is timed best: a crossing's error is position error over speed, and grows where speed
// changes (before and in braking two laps differ most) or the road turns.  Nothing where no place is passed twice.
[[nodiscard]] std::string proposed_origin(); // of such a one
[[nodiscard]] std::optional<ProposedGate> propose_gate(const motion::Path& path);

} // namespace lapwright::track
