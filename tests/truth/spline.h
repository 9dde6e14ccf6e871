// SPDX-License-Identifier: GPL-3.0-or-later
// A uniform cubic B-spline y(x): coefficient j is centred on origin + j * spacing. The curve is C2, stays inside the
// hull of its coefficients, and its first two derivatives are exact. Outside the coefficients the end value holds.
#pragma once

#include <cstddef>
#include <vector>

namespace truth {

struct SplineValue {
    double value = 0.0;
    double first = 0.0;  // dy/dx
    double second = 0.0; // d2y/dx2
};

struct UniformSpline {
    double origin = 0.0;
    double spacing = 1.0;
    std::vector<double> coefficients;

    [[nodiscard]] SplineValue at(double x) const;
};

} // namespace truth
