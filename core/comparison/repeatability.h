// SPDX-License-Identifier: GPL-3.0-or-later
// Is a difference real?  All clean laps of both sessions, segment
// by segment (methods: Welch 1947; Mann and Whitney 1947).
#pragma once

#include "core/track/track.h"

#include <optional>
#include <vector>

namespace lapwright::comparison {

struct Repeatability {
    std::vector<double> times_a_s; // the segment's time in each clean lap, in the order of the laps
    std::vector<double> times_b_s;
    // Difference of the means, B − A (positive: A is quicker), and its 95 % interval (Welch); absent with fewer than
    // two laps on either side.
    std::optional<double> mean_difference_s;
    std::optional<double> low_s;
    std::optional<double> high_s;
    // The chance that any lap of A beats any lap of B there: share of pairs, ties half.  Absent without laps.
    std::optional<double> chance_a_wins;
};

// The best of a driver's segments put together, and what noise alone would give.
struct IdealLap {
    std::optional<double> time_s;     // sum of the least segment times; absent with fewer than two laps
    std::optional<double> best_lap_s; // the fastest of the same laps
    // How far under the mean lap a sum of minima lies for laps that differ by nothing but chance: Σ sd_i · e_n with the
    // expected least of n normals e_n (Harter 1961).
    std::optional<double> noise_only_gain_s;
    std::optional<double> mean_lap_s;
};

// laps_a and laps_b: cumulative boundary times, one inner
// vector a lap with as many entries as segments + 1, increasing.
[[nodiscard]] std::vector<Repeatability> repeatability(const std::vector<std::vector<double>>& laps_a,
                                                       const std::vector<std::vector<double>>& laps_b,
                                                       std::size_t segments);
[[nodiscard]] IdealLap ideal_lap(const std::vector<std::vector<double>>& laps);

} // namespace lapwright::comparison
