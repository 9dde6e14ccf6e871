// SPDX-License-Identifier: GPL-3.0-or-later
// Learns noise levels, the car's restlessness and the path to linearise about, pass after pass.
//
// A pass smooths the session in pieces of a minute and moves each variance θ to θ Σ(θ û²) / Σ(θ d), with û the smoothed
// noise per unit of variance and d its variance: the fixed point of the likelihood's score (Koopman and Shephard 1992,
// Biometrika 79(4):823), in the fast form of MacKay 1992 (Neural Computation 4(3):415), plus some pseudo-observations
// at the prior.  Jerk is learnt locally, over some tenths of a second, as braking and a straight have little in common.
#pragma once

#include "core/base/fit_outcome.h"
#include "core/base/progress.h"
#include "core/motion/motion_model.h"

#include <array>
#include <vector>

namespace lapwright::motion {

struct Estimation {
    std::vector<Node> nodes;
    std::vector<Situation> situations; // one a node
    NoiseLevels levels;
    Path path; // of the last pass, at the nodes

    // The part of a sensor's noise that was told by the data and not by the prior, as a count of samples.
    std::array<double, sensors> samples_worth{};

    base::FitOutcome noise;    // of the levels; rests on samples
    NoiseLevels levels_before; // the last pass
};

// A pass that moves no sensor's noise by a greater factor has found it: no better is a
// standard deviation known from five to ten readings (JCGM 100:2008, table E.1: 36 to 24 %).
inline constexpr double settled_noise = 1.3;

// Sensors whose noise the last pass still moved; for these the greater of the last two levels is the safe one.
[[nodiscard]] std::vector<Sensor> restless_sensors(const Estimation& estimation);

struct Pass {
    Use use;
    double gate = 1e9;        // in standard deviations
    bool learn_levels = true; // false: the sensors' levels stay as they are
    bool learn_car = true;    // false: jerk and headings do
    unsigned threads = 0;
};

// One pass; false when it was cancelled.
[[nodiscard]] bool refine(Estimation& estimation, const Pass& pass, const base::Progress& progress, double part_done);

// Headings and speeds along a path, at the nodes; a heading is kept where the car all but stands.
void linearise(Estimation& estimation);

} // namespace lapwright::motion
