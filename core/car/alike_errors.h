// SPDX-License-Identifier: GPL-3.0-or-later
// Two cars on one track are misjudged alike: the same hills, banks and bumps, which nobody measured, and mostly the
// same wind.  Each car's draws are brought into an order of which a part is common to all cars, so that draw i of one
// goes with draw i of another, without a change to the draws themselves (rank correlation by reordering: Iman and
// Conover 1982).
#pragma once

#include "core/math/random.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <vector>

namespace lapwright::car {

// Correlation of the errors of two cars' drags, downforces and grips (0.2 to 0.35 in tests/worlds).
inline constexpr double alike_errors = 0.3;

// figure: what the draws are ordered by.  seed: of this car.  stream: of the figure.
template <typename Draw>
void order_alike(std::vector<Draw>& draws, double Draw::* figure, std::uint64_t seed, std::uint64_t stream) {
    constexpr std::uint64_t common_seed = 1;
    math::Random common(common_seed, stream);
    math::Random own(seed, stream);
    std::vector<double> wanted(draws.size());
    for (double& value : wanted) {
        const double shared = common.normal();
        value = std::sqrt(alike_errors) * shared + std::sqrt(1.0 - alike_errors) * own.normal();
    }
    std::vector<std::size_t> place(draws.size());
    std::iota(place.begin(), place.end(), std::size_t{0});
    std::ranges::sort(place, {}, [&](std::size_t i) { return wanted[i]; });
    std::ranges::sort(draws, {}, figure);
    std::vector<Draw> ordered(draws.size());
    for (std::size_t rank = 0; rank < draws.size(); ++rank)
        ordered[place[rank]] = std::move(draws[rank]);
    draws = std::move(ordered);
}

} // namespace lapwright::car
