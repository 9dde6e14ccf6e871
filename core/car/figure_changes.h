// SPDX-License-Identifier: GPL-3.0-or-later
// What a change did to a car's figures, from laps of one driver with and without it.  Each place is held against
// itself: the driver's habit in a corner, its crossfall, hills and the engine's curve are in both and drop out, so that
// a difference is known far better than the figures themselves.
//
//   corner:    Δ [ln a_lat − n ln(1 + k v²/g)] = Δm + Δk n v² / (g + k v²) + u       Δm: grip, Δk = ρ ΔClA / 2m
//   straight:  Δ [(1 + rotating) a − p/v + d v²] = Δp/v − Δd v² − 2 d v w·e + u      Δd = ρ ΔCdA / 2m, w: wind's change
//
// Δ of a place: least squares over its laps on the change and a linear drift (as core/comparison/trial.h takes it out).
// Places are then weighed by their own errors and a spread u between them that their disagreement shows (method of
// moments: DerSimonian and Laird 1986).  n and k are those of the car's own fit, and what is unsure of them counts.
// Stated priors (common practice, no source): tyres and track change by 2 % in grip, engine and fuel by 1 % in power,
// wind by 1 m/s along either axis.
#pragma once

#include "core/car/car_figures.h"

#include <cstddef>
#include <vector>

namespace lapwright::car {

struct DrivenLap {
    double order = 0.0; // laps driven before it
    bool changed = false;
};

// With less without the change; untold where no place tells.
struct FigureChanges {
    base::Estimate grip;              // relative: 0.01 is 1 % more
    base::Estimate downforce_area_m2; // on a tonne where the mass is unknown
    base::Estimate drag_area_m2;      // likewise
    base::Estimate power;             // relative
    bool on_a_tonne = false;
    std::size_t corners = 0; // that the first two rest on
    std::size_t straights = 0;
};

// driven: one a lap of data.  Errors: those of fit_car().
[[nodiscard]] base::Result<FigureChanges> figure_changes(const CarData& data, const std::vector<DrivenLap>& driven,
                                                         const FigureOptions& options = {});

} // namespace lapwright::car
