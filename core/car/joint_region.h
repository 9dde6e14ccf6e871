// SPDX-License-Identifier: GPL-3.0-or-later
// Two figures of a car at once: the ellipse that holds 95 % of the draws.  Its shape is their covariance; its size is
// the 95 % quantile of their Mahalanobis distances from the mean, so that it holds so many whatever the draws' own
// shape (a normal would give √5.99).  A long slanted ellipse is a split that the laps do not tell, with a sum that they
// do.
#pragma once

#include "core/car/car_figures.h"

#include <span>
#include <vector>

namespace lapwright::car {

struct JointRegion {
    double centre_x = 0.0;
    double centre_y = 0.0;
    double correlation = 0.0;
    // A closed outline: the last point is the first.  Empty where there is no region.
    std::vector<double> outline_x;
    std::vector<double> outline_y;

    [[nodiscard]] bool empty() const { return outline_x.empty(); }
};

// Equally many of both; empty with fewer than 20 draws, or where one figure does not vary or follows from the other.
[[nodiscard]] JointRegion joint_region(std::span<const double> x, std::span<const double> y);

// x: tyre grip, y: downforce area, m², or with per_kilogram m² on a tonne.  Empty where either cannot be told.
[[nodiscard]] JointRegion grip_and_downforce(const CarFigures& figures, bool per_kilogram);

} // namespace lapwright::car
