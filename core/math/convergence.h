// SPDX-License-Identifier: GPL-3.0-or-later
// Whether chains of draws have settled on one distribution: rank-normalised split
// R̂, also of the folded draws, and the effective sample size of bulk and tails
// (Vehtari, Gelman, Simpson, Carpenter and Bürkner 2021, Bayesian Analysis 16, 667).
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace lapwright::math {

// Beyond, draws are not to be relied on: bounds of that paper, the size for two chains' worth of fifty each.
inline constexpr double max_r_hat = 1.05;
inline constexpr double min_effective_draws = 100.0;

struct Convergence {
    double r_hat = 0.0;          // the greater of bulk and folded; 1 when settled, infinite where nothing moves
    double effective_bulk = 0.0; // effective number of draws for the middle
    double effective_tail = 0.0; // the lesser one for the 5 and 95 % quantiles

    [[nodiscard]] bool settled() const {
        return r_hat <= max_r_hat && effective_bulk >= min_effective_draws && effective_tail >= min_effective_draws;
    }
};

// chains: at least one, all of the same length, at least 8 draws each, no NaN.
[[nodiscard]] Convergence convergence_of(std::span<const std::vector<double>> chains);

} // namespace lapwright::math
