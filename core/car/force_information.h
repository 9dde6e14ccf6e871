// SPDX-License-Identifier: GPL-3.0-or-later
// The linear model behind driving_force.h: sums over the samples of each straight, and from them the information on
//   x = (p, d, d w₁, d w₂, p c₁, p c₂ …)
// with every straight's own offset integrated out.
#pragma once

#include "core/base/constants.h"
#include "core/car/power_curve.h"

#include <Eigen/Core>

#include <cstddef>
#include <map>
#include <optional>
#include <vector>

namespace lapwright::car {

inline constexpr double usual_rolling = 0.014;
inline constexpr double usual_rotating = 0.03;

inline constexpr Eigen::Index wind_at = 2;  // two components
inline constexpr Eigen::Index curve_at = 4; // c₁ …
inline constexpr Eigen::Index max_unknowns = curve_at + max_curve_terms;
using Unknowns = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, max_unknowns, 1>;
using Normal = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, 0, max_unknowns, max_unknowns>;

// One sample's columns: of p, of d, of d times the headwind along and across the lap's first direction, of p c_k.  A
// wind of w against the car makes v² of the drag (v + w)² = v² + 2 v w, but for w².
[[nodiscard]] Unknowns columns(const ThrottleSample& s, const std::optional<CurveScale>& scale);

// Sums over the samples of one straight, over all laps: normal equations, right sides for a, for the slope and for 1.
struct Straight {
    explicit Straight(Eigen::Index unknowns)
        : normal(Normal::Zero(unknowns, unknowns)), acceleration(Unknowns::Zero(unknowns)),
          slope(Unknowns::Zero(unknowns)), one(Unknowns::Zero(unknowns)) {}

    Normal normal;
    Unknowns acceleration;
    Unknowns slope;
    Unknowns one;
    double acceleration_sum = 0.0;
    double slope_sum = 0.0;
    double weight = 0.0;
};

[[nodiscard]] std::map<std::size_t, Straight> straights_of(const std::vector<ThrottleSample>& samples,
                                                           const Eigen::VectorXd& weights,
                                                           const std::optional<CurveScale>& scale);

// What no lap can tell, as one draw of it.
struct Nuisance {
    double rolling = usual_rolling;
    double rotating = usual_rotating;
    double tilt = 0.0;
};

struct ForceNoise {
    double variance = 0.0;          // of one sample, times the samples that share their error
    double straight_variance = 0.0; // of what all samples of a straight share
};

// Every straight's own offset u ~ N(0, straight_variance) integrated out (random intercepts: Laird and Ware 1982):
// information = Σ (N − ρ m mᵀ) / s², ρ = 1 / (s²/τ² + n).
struct ForceInformation {
    Normal matrix;
    Unknowns acceleration;
    Unknowns slope;
    Unknowns one;

    [[nodiscard]] Unknowns right_side(const Nuisance& n) const {
        return (1.0 + n.rotating) * acceleration + slope + n.rolling * base::standard_gravity_mps2 * one;
    }
};

[[nodiscard]] ForceInformation information_of(const std::map<std::size_t, Straight>& straights,
                                              const ForceNoise& noise);

} // namespace lapwright::car
