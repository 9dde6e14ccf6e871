// SPDX-License-Identifier: GPL-3.0-or-later
// By how much a lap's own distance is off along the lap, as a Gaussian field on evenly spaced knots, given what is seen
// of it.  Both ends are known.
//
// Notation: s the shift at the knots, m.  Its steps from knot to knot are independent, of variance factor·v, around
// courses of known shape and unknown size: step = Σ size·course + √(factor·v)·normal.  How large the factor is says the
// data (its evidence); a sum over factors has heavier tails than any normal, so that a lap that slips more than usual
// is believed.  Precision matrices are tridiagonal but for a row per course (bordered by block elimination; Rue and
// Held 2005, Gaussian Markov Random Fields, 2.4, from memory).
#pragma once

#include "core/math/normal_random.h"

#include <cstddef>
#include <vector>

namespace lapwright::lap {

// All per step between neighbouring knots.
struct Course {
    std::vector<double> step_m; // for a size of 1
    double size_sd = 1.0;       // beforehand, around 0
};

struct SlipPrior {
    std::vector<double> variance_m2; // v; at least 4 steps, all positive
    std::vector<Course> courses;     // at least one
};

// Precision that the data adds at the knots (both ends included),
// to itself and to the next one, and precision times what is seen.
struct SlipSeen {
    std::vector<double> diagonal;
    std::vector<double> next;
    std::vector<double> right;
};

struct SlipPosterior {
    std::vector<double> mean_m; // at the knots, 0 at both ends
    // Of the data, up to a constant of it and without what the prior alone gives (log_determinant).
    double log_evidence = 0.0;
    // Cholesky factor of the inner knots' precision given the sizes: diagonal, and below it (the last one couples to
    // the last knot and is a precision, as coupled_first is to the first).
    std::vector<double> factor_diagonal;
    std::vector<double> factor_below;
    double coupled_first = 0.0;
    double coupled_last = 0.0;
    std::vector<std::vector<double>> answers; // of the inner knots to each course's size
    std::vector<double> spread;               // Cholesky factor of the sizes' covariance, row by row
};

[[nodiscard]] SlipPosterior slip_posterior(const SlipPrior& prior, double factor, const SlipSeen& seen);

[[nodiscard]] SlipSeen nothing_seen(const SlipPrior& prior);

// What is seen of the rest when the whole lap, ends included, is moved by so much; the evidence changes by `gained`.
struct Moved {
    SlipSeen seen;
    double gained = 0.0;
};
[[nodiscard]] Moved moved_by(const SlipSeen& seen, double move_m);

// A draw of the shift at the knots, given what it is at both ends.
[[nodiscard]] std::vector<double> drawn_slip(const SlipPosterior& posterior, double start_m, double end_m,
                                             math::NormalStream& normals);

} // namespace lapwright::lap
