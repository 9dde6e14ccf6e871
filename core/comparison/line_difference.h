// SPDX-License-Identifier: GPL-3.0-or-later
// Where one car drove beside where the other did, sideways: A's offset from the reference line less B's, positive where
// A was further to the left.  Two receivers' positions differ by drift; the draws of both laps carry that, as far as
// the road and the drivers' usual lines tie the maps together (core/lap/align.h), and so does the band.
#pragma once

#include "core/lap/lap.h"
#include "core/track/track.h"

#include <optional>
#include <vector>

namespace lapwright::comparison {

// All as long as distance_m; NaN where either car's place across the road is not known; empty where it nowhere is.
struct LineDifference {
    std::vector<double> distance_m;
    std::vector<double> difference_m;
    std::vector<double> sd_m; // these three are empty without draws
    std::vector<double> low_m;
    std::vector<double> high_m;

    [[nodiscard]] bool empty() const { return distance_m.empty(); }
};

// At one place of the lap.
struct LineAt {
    double at_m = 0.0;
    double difference_m = 0.0;
    std::optional<double> sd_m;
};

// Of a corner; absent on straights, and where it cannot be known.
struct LineFigures {
    std::optional<LineAt> turn_in; // where the corner begins
    std::optional<LineAt> slowest; // half way between both drivers' slowest places
    std::optional<LineAt> exit;    // where the corner ends
};

// Both on one grid.
[[nodiscard]] LineDifference line_difference(const lap::LapEnsemble& a, const lap::LapEnsemble& b);

// slowest_m: half way between both drivers' slowest places; nothing: there is none.
[[nodiscard]] LineFigures line_figures(const LineDifference& line, const track::Segment& segment,
                                       std::optional<double> slowest_m);

} // namespace lapwright::comparison
