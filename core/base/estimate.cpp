// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/estimate.h"

#include <limits>
#include <utility>

namespace lapwright::base {

Estimate untold(std::string why) {
    constexpr double nothing = std::numeric_limits<double>::quiet_NaN();
    return {nothing, nothing, nothing, std::move(why)};
}

Estimate scaled(Estimate estimate, double factor) {
    return {estimate.value * factor, estimate.low * factor, estimate.high * factor, std::move(estimate.untold)};
}

} // namespace lapwright::base
