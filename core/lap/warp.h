// SPDX-License-Identifier: GPL-3.0-or-later
// Where on the track a lap without positions was: station = distance + shift(distance), the shift fitted so that the
// lap's lateral acceleration is v² times the track's curvature there.  Curvature belongs to the track, speed to the
// driver, so speed alone never aligns.
//
// Model: lateral = g·v²·κ(d + shift) + b + rest.  g may be negative: a sensor that is positive to the right is told by
// that and does not matter.  Beforehand the shift is a walk over distance (wheel slip, another line through a corner),
// a far faster one where the wheels brake, around courses whose sizes are fitted with it: with distance and with
// braking (braked wheels turn too slowly, nobody knows by how much, and so the lap's length alone does not give the
// wheels' scale), and one slow wave (rolling radius and slip change over a lap).  How restless the walk is says each
// lap itself (slip.h).  What is left over of the lateral acceleration weighs against all this (Gauss-Newton).  Walk and
// weights are ours, no source.
#pragma once

#include "core/base/fit_outcome.h"
#include "core/lap/cornering.h"
#include "core/lap/slip.h"
#include "core/math/normal_random.h"

#include <cstddef>
#include <span>
#include <vector>

namespace lapwright::lap {

struct Warp {
    // One for each restlessness of the walk that is thought of.
    struct Case {
        double chance = 0.0; // they sum to 1
        SlipPosterior slip;
    };

    base::FitOutcome outcome; // rests on knots
    double knot_step_m = 0.0;
    std::vector<double> shift_m; // at the knots, 0 at the first and at the last (the passings of the gate)
    std::vector<double> rolling; // of the steps between them, the share that is not braked, 0..1
    std::vector<Case> cases;
    // By how much both ends together would lie better, were they not held, and how well that is known.
    double start_m = 0.0;
    double start_sd_m = 0.0;
    double gain = 1.0;        // g
    double correlation = 0.0; // of lateral acceleration with what the track's curvature asks for, -1..1
};

// curvature_per_m: the track's, closed, on as many places as the lap has, beginning where the lap begins.  Where the
// shift still moves after max_rounds the fit has not converged, and all but gain and correlation is unfitted_warp's.
[[nodiscard]] Warp fit_warp(const Cornering& lap, std::span<const double> curvature_per_m, int max_rounds = 40);

// Before anything is known but both ends: for laps that cannot be fitted.  Not run.
[[nodiscard]] Warp unfitted_warp(const Cornering& lap);

// A draw of the shift at the knots, given what it is at both ends.
[[nodiscard]] std::vector<double> drawn_shift(const Warp& warp, double start_m, double end_m,
                                              math::NormalStream& normals);

// Linear between the knots.
[[nodiscard]] double shift_at(const Warp& warp, std::span<const double> shift_m, double distance_m);

// Way over the distance of the wheels where they are not braked: braked wheels are short of some way, and a lap that is
// brought to its length as a whole makes it up elsewhere.
[[nodiscard]] double rolling_scale(const Warp& warp, std::span<const double> shift_m);

// By how much a lap's grid must be moved on so that its cornering agrees best with the closed curvature, metres in
// -length/2..length/2, and how well it then agrees (correlation, its sign taken off).
struct Offset {
    double offset_m = 0.0;
    double agreement = 0.0;
    double agreement_at_zero = 0.0;
};
[[nodiscard]] Offset best_offset(const Cornering& lap, std::span<const double> curvature_per_m);

} // namespace lapwright::lap
