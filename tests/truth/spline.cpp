// SPDX-License-Identifier: GPL-3.0-or-later
// Basis of the uniform cubic B-spline and its derivatives on one interval, u in [0, 1) from coefficient j:
// weights of coefficients j-1, j, j+1, j+2.
#include "tests/truth/spline.h"

#include <algorithm>
#include <cmath>

namespace truth {

SplineValue UniformSpline::at(const double x) const {
    const double place = (x - origin) / spacing;
    const double floor_place = std::floor(place);
    const double u = place - floor_place;
    const auto first_index = static_cast<std::ptrdiff_t>(floor_place) - 1;
    const auto last = static_cast<std::ptrdiff_t>(coefficients.size()) - 1;
    const auto coefficient = [&](const std::ptrdiff_t offset) {
        return coefficients[static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(first_index + offset, 0, last))];
    };
    const double a = coefficient(0);
    const double b = coefficient(1);
    const double c = coefficient(2);
    const double d = coefficient(3);
    const double w = 1.0 - u;
    SplineValue result;
    result.value = (w * w * w * a + (3.0 * u * u * u - 6.0 * u * u + 4.0) * b +
                    (3.0 * w * w * w - 6.0 * w * w + 4.0) * c + u * u * u * d) /
                   6.0;
    result.first =
        (-w * w * a + (3.0 * u * u - 4.0 * u) * b + (4.0 * w - 3.0 * w * w) * c + u * u * d) / (2.0 * spacing);
    result.second = (w * a + (3.0 * u - 2.0) * b + (3.0 * w - 2.0) * c + u * d) / (spacing * spacing);
    return result;
}

} // namespace truth
