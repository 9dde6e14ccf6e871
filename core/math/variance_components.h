// SPDX-License-Identifier: GPL-3.0-or-later
// One-way random effects y_ij = μ + b_i + e_ij by restricted maximum likelihood (Patterson and Thompson 1971); groups
// may differ in size.
#pragma once

#include "core/math/fit_status.h"

#include <vector>

namespace lapwright::math {

struct VarianceComponents {
    FitStatus status = FitStatus::not_run;
    double mean = 0.0;
    double mean_standard_error = 0.0;
    double between_sd = 0.0;     // of b; 0 when the data ask for no more
    double within_sd = 0.0;      // of e
    double criterion = 0.0;      // −2 × restricted log-likelihood, constants included
    std::vector<double> effects; // best linear unbiased predictions of b, one a group
};

// `failed` without two groups or without a repeated value in any.
[[nodiscard]] VarianceComponents fit_variance_components(const std::vector<std::vector<double>>& groups);

} // namespace lapwright::math
