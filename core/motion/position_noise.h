// SPDX-License-Identifier: GPL-3.0-or-later
// How noisy positions are, from themselves alone: white noise, and the slow error that walks.
//
// Third differences take a car's motion away but for its jerk.  What is left has three spectra of known shape: of white
// noise, of a random walk (what a slow Gauss-Markov error is over seconds), and of white jerk; their sizes are those
// that fit the periodogram best in Whittle's likelihood (Whittle 1953, Arkiv för Matematik 2:423), found by
// multiplicative steps (Févotte, Bertin and Durrieu 2009, Neural Computation 21(3):793).
#pragma once

#include "core/motion/motion_model.h"

#include <optional>
#include <span>

namespace lapwright::motion {

struct PositionNoise {
    double white_sd_m = 0.0;
    double walk_m_per_root_s = 0.0; // standard deviation of the way that the error goes in a second, each axis
};

// Nothing where there are too few evenly spaced positions (some 320), or fewer than four a second.
[[nodiscard]] std::optional<PositionNoise> position_noise(std::span<const Node> nodes);

// The priors with what the positions say of their own noise.
[[nodiscard]] NoiseLevels levels_of_positions(std::span<const Node> nodes);

} // namespace lapwright::motion
