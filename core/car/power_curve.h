// SPDX-License-Identifier: GPL-3.0-or-later
// How power leans on engine speed, or, where that was not recorded, on the car's own:
//   P(x) = P̄ (1 + c₁ φ₁ + c₂ φ₂)
// with φ₁, φ₂ the first two powers of that speed, scaled to ± 1 over what was used and freed of their means, so that P̄
// is the weighted mean over the samples.  A low order, because no lap shows more of the curve than the stretch between
// two shifts.  By the car's own speed it is what a simulation needs: the gears are in it.
#pragma once

#include "core/car/full_throttle.h"
#include "core/car/lap_simulation.h"

#include <Eigen/Core>

#include <array>
#include <optional>
#include <vector>

namespace lapwright::car {

inline constexpr std::size_t curve_terms = 2;
using CurveTerms = std::array<double, curve_terms>; // φ₁, φ₂, or their c₁, c₂

// Stated priors of c₁ and c₂ (common practice, no source): over the engine speeds used in a lap power changes by some
// fifth.  Gears keep the engine where it is strong, so over the car's own speed power changes by some twentieth.
inline constexpr CurveTerms engine_curve_sd{0.15, 0.10};
inline constexpr CurveTerms speed_curve_sd{0.022, 0.015};
// Of the power in gears of which no sample tells, relative; less where the engine's curve is known.
inline constexpr double unseen_gear_sd = 0.08;
inline constexpr double unseen_gear_known_engine_sd = 0.03;

class CurveScale {
  public:
    // Over engine speed where that was recorded and changes; else over the car's speed; absent where that hardly
    // changes either.  weights: one a sample.
    [[nodiscard]] static std::optional<CurveScale> of(const std::vector<ThrottleSample>& samples,
                                                      const Eigen::VectorXd& weights);
    [[nodiscard]] CurveTerms terms(const ThrottleSample& sample) const;
    [[nodiscard]] CurveTerms terms_at(double speed) const; // rev/s or m/s
    [[nodiscard]] bool over_engine_speed() const { return over_engine_speed_; }
    [[nodiscard]] const CurveTerms& prior_sd() const { return over_engine_speed_ ? engine_curve_sd : speed_curve_sd; }
    [[nodiscard]] double unseen_sd() const { return over_engine_speed_ ? unseen_gear_known_engine_sd : unseen_gear_sd; }
    [[nodiscard]] double slowest() const { return middle_ - half_; }
    [[nodiscard]] double fastest() const { return middle_ + half_; }

  private:
    bool over_engine_speed_ = false;
    double middle_ = 0.0;
    double half_ = 1.0;
    CurveTerms mean_{};
};

// Mean φ₁ and φ₂ of the samples about each of the car's speeds: what the gears make of the curve.
class CurveBySpeed {
  public:
    CurveBySpeed(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& weights, const CurveScale& scale);
    // unseen: relative change of power at speeds far below all samples.
    [[nodiscard]] PowerShares shares(const CurveTerms& c, double unseen) const;

  private:
    std::vector<CurveTerms> terms_; // at 0, 1, 2 … steps of PowerShares
    double slowest_mps_ = 0.0;      // of the samples
};

} // namespace lapwright::car
