// SPDX-License-Identifier: GPL-3.0-or-later
// LRE of NIST: how many digits of a computed value agree with the certified one, at most 15.
#pragma once

#include <algorithm>
#include <cmath>

inline double matching_digits(double computed, double certified) {
    if (computed == certified) return 15.0;
    const double size = certified == 0.0 ? 1.0 : std::abs(certified);
    return std::min(15.0, -std::log10(std::abs(computed - certified) / size));
}
