// SPDX-License-Identifier: GPL-3.0-or-later
// Grip and downforce in one model over corners and braking zones.
//
//   corner:  ln a_lat  =  m + n ln(1 + k v²/g) − τ f_c + b_c + e  b_c ~ N(0, σ_b)   the driver's share in this corner
//            or, with a chance that grows with speed, below the limit by an exponential deficit (nerve, a lift);
//            flat out: only that the limit is above.
//   zone:    ln a_brake = m + β + n ln(1 + k v²/g) + d_z + e      d_z ~ N(0, σ_d)   slower half
//            and  + δ_z Δv²/1500 for the faster half              δ_z ~ N(δ, σ_δ)   share that changes along the zone
//
// m: ln of the limit as used at no speed; k = ρ ClA / 2m; f_c: how the mean falls off about the
// corner's peak, τ: what of that the window loses of the limit.  Posterior by four chains of
// adaptive Metropolis (Haario, Saksman and Tamminen 2001) that start far apart and have to
// agree.  With nine corners a bootstrap over corners covers too seldom; here the spread between
// corners and zones is part of the model, and laps enter with the standard error of their mean.
//
// Stated priors (common practice, no source, unless named): limit 1.2 g ± 25 %; k from ClA 1.5 ± 2.0 m² on the
// car's mass; n 0.85 ± 0.10 from 0.6 to 1 (handbooks, from memory: 0.7…0.9 of one tyre over a wide range of load;
// 1 would be friction that load does not change); β ln 0.92 ± 0.06; δ 0 ± 0.06; τ 0.25 ± 0.6 within −0.5 to 2 (a
// parabola's top is 1/3, a sharp one 1, more where the recording has smoothed it; who only passes through the
// peak need not be at the limit there: 0, or below where it is a jolt); σ_b and σ_d log-normal about 0.025 and
// 0.035, a third either way; σ_δ half-normal 0.05.  σ_b is a driver's habit of some 2 % and the corner's own: a
// crossfall of 1° is worth 1.5 %, as are bumps and wind.  A half-normal σ_b would let a few corners that happen
// to lie on one curve pass for a driver who uses them all alike, and the interval be too narrow.
#pragma once

#include "core/base/fit_outcome.h"
#include "core/car/limit_evidence.h"
#include "core/math/convergence.h"

#include <cstdint>
#include <vector>

namespace lapwright::car {

struct GripPrior {
    double k_mean = 0.0; // 1/m
    double k_sd = 0.0;

    // Of the prior as it is, a normal cut off at min_downforce_factor.
    [[nodiscard]] double k_sd_cut() const;
};

inline constexpr double min_downforce_factor = -2.5e-4; // of k, 1/m: a car that lifts

struct GripDraw {
    double log_limit = 0.0; // m
    double k = 0.0;
    double load_exponent = 1.0;
    double log_braking = 0.0; // β
};

struct GripPosterior {
    std::vector<GripDraw> draws;
    std::vector<double> chance_at_limit; // one a corner of the evidence
    double peak_part = 0.0;              // τ, mean of the draws
    double acceptance = 0.0;             // share of the moves
    base::FitOutcome outcome;            // rests on corners and braking zones
    math::Convergence convergence;       // the worst of the parameters that figures are made of
};

// steps: of each chain, at least 250.
[[nodiscard]] GripPosterior fit_grip(const LimitEvidence& evidence, const GripPrior& prior, std::size_t draws,
                                     std::uint64_t seed, int steps = 20'000);

} // namespace lapwright::car
