// SPDX-License-Identifier: GPL-3.0-or-later
// A figure and its 95 % interval, or why it cannot be told.
#pragma once

#include <string>

namespace lapwright::base {

// All three are NaN where the data cannot tell.
struct Estimate {
    double value = 0.0;
    double low = 0.0;
    double high = 0.0;
    std::string untold = {}; // empty, or why the data cannot tell: "the laps do not tell the drag of B"

    [[nodiscard]] bool told() const { return untold.empty(); }
    [[nodiscard]] double half_width() const { return 0.5 * (high - low); }
    [[nodiscard]] bool told_apart_from_zero() const { return low > 0.0 || high < 0.0; }
};

[[nodiscard]] Estimate untold(std::string why);
// In another unit; factor > 0.
[[nodiscard]] Estimate scaled(Estimate estimate, double factor);

} // namespace lapwright::base
