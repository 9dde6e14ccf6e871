// SPDX-License-Identifier: GPL-3.0-or-later
// A setup trial: baseline, change, baseline again.  Tyres, fuel and track drift from lap to lap; a linear drift over
// the laps is estimated with the change and taken out (drift elimination by least squares: Sutton and Clarkson 1994,
// Metrologia 30:487; for three readings it is B − (A₁ + A₂)/2).
#pragma once

#include "core/base/result.h"

#include <optional>
#include <vector>

namespace lapwright::comparison {

struct TrialLap {
    double order = 0.0;            // laps driven before it, pauses included if they matter; any unit
    bool changed = false;          // driven with the change
    std::vector<double> segment_s; // its time in each segment; as many in every lap
};

// What the change is worth: positive seconds are gained by it.
struct TrialEffect {
    double gain_s = 0.0;
    double low_s = 0.0; // 95 % interval, Student's t on the residual degrees of freedom
    double high_s = 0.0;
    double drift_s_per_lap = 0.0; // positive: getting slower
};

struct Trial {
    std::vector<TrialEffect> segments;
    TrialEffect lap;
    int baseline_laps = 0;
    int changed_laps = 0;
};

// Error cannot_be_computed: fewer than four laps, all with or all without the change, or a change that cannot be told
// from drift (baseline and change each driven in one run with no baseline after).
[[nodiscard]] base::Result<Trial> setup_trial(const std::vector<TrialLap>& laps);

} // namespace lapwright::comparison
