// SPDX-License-Identifier: GPL-3.0-or-later
// The stated priors of grip_model.h, for every model that is made of such places; their reasons stand there.
#pragma once

#include <algorithm>

namespace lapwright::car {

inline constexpr double usual_limit_g = 1.2;
inline constexpr double log_limit_sd = 0.25;
inline constexpr double exponent_mean = 0.85;
inline constexpr double exponent_sd = 0.10;
inline constexpr double min_exponent = 0.6;
inline constexpr double braking_mean = -0.0834; // ln 0.92
inline constexpr double braking_sd = 0.06;
inline constexpr double drift_sd = 0.06;
inline constexpr double drift_spread = 0.05;
inline constexpr double zone_scale = 1500.0; // m²/s² over which δ acts
inline constexpr double peak_mean = 0.25;
inline constexpr double peak_sd = 0.6;
// Medians and logarithmic spread of σ_b and σ_d.
inline constexpr double usual_corner_spread = 0.025;
inline constexpr double usual_zone_spread = 0.035;
inline constexpr double usual_spread_sd = 0.3;
inline constexpr double max_downforce_factor = 4e-3; // of k, 1/m

// A driver's limit corners use 95 % ± 2 % of the tyres: nobody uses all of them lap after lap, and who is practised
// more than nine tenths (common practice, no source).  normal: one draw of a standard normal.
[[nodiscard]] inline double driver_share(double normal) {
    return std::clamp(0.95 + 0.02 * normal, 0.85, 0.999);
}

} // namespace lapwright::car
