// SPDX-License-Identifier: GPL-3.0-or-later
// How power leans on engine speed: at full throttle  P(ω) = P̄ (1 + c₁ φ₁ + c₂ φ₂)  with φ₁, φ₂ the first two powers of
// the engine speed, scaled to ± 1 over what was used and freed of their means, so that P̄ is the weighted mean over the
// samples.
// A low order, because no lap shows more of the curve than the stretch between two shifts.
#pragma once

#include "core/car/full_throttle.h"

#include <Eigen/Core>

#include <array>
#include <optional>
#include <vector>

namespace lapwright::car {

inline constexpr std::size_t curve_terms = 2;
// Stated priors of c₁ and c₂ (common practice, no source): over the engine speeds used in a lap power changes by some
// fifth.
inline constexpr std::array<double, curve_terms> curve_prior_sd{0.15, 0.10};

class EngineScale {
  public:
    // Absent where engine speed was not recorded, or hardly changes.  weights: one a sample.
    [[nodiscard]] static std::optional<EngineScale> of(const std::vector<ThrottleSample>& samples,
                                                       const Eigen::VectorXd& weights);
    [[nodiscard]] std::array<double, curve_terms> terms(double engine_rev_s) const;
    [[nodiscard]] double slowest_rev_s() const { return middle_ - half_; }
    [[nodiscard]] double fastest_rev_s() const { return middle_ + half_; }

  private:
    double middle_ = 0.0;
    double half_ = 1.0;
    std::array<double, curve_terms> mean_{};
};

} // namespace lapwright::car
