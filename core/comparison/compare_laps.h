// SPDX-License-Identifier: GPL-3.0-or-later
// Two laps on one grid -> gap, gains, corner figures, each with the ensemble's uncertainty.
#pragma once

#include "core/comparison/comparison.h"
#include "core/lap/lap.h"
#include "core/track/track.h"

namespace lapwright::comparison {

// Both ensembles lie on the same grid of the same line, whose segments these are.  Uncertainties come from draw i of A
// beside draw i of B; with fewer than two draws on either side there are none.
[[nodiscard]] Comparison compare_laps(const lap::LapEnsemble& a, const lap::LapEnsemble& b,
                                      const std::vector<track::Segment>& segments);

// What one lap did in each segment, with the ensemble's uncertainty.
[[nodiscard]] std::vector<SegmentFigures> measured_figures(const lap::LapEnsemble& lap,
                                                           const std::vector<track::Segment>& segments);

// Times at the segments' boundaries, from 0 to the lap time: one more than segments.
[[nodiscard]] std::vector<double> boundary_times(const lap::LapTrace& trace,
                                                 const std::vector<track::Segment>& segments);

// Times of the segments, in their order; their sum is the lap time.
[[nodiscard]] std::vector<double> segment_times(const lap::LapTrace& trace,
                                                const std::vector<track::Segment>& segments);

// Rate at which A wins time along the lap, seconds per metre, on the gap's grid: slope of the gap over `window_m`.
[[nodiscard]] std::vector<double> winning_rate(const GapTrace& gap, double window_m = 30.0);

} // namespace lapwright::comparison
