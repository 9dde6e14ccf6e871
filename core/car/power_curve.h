// SPDX-License-Identifier: GPL-3.0-or-later
// How power leans on engine speed, or, where that was not recorded, on the car's own:
//   P(x) = P̄ (1 + Σ c_k φ_k)
// each φ_k freed of its mean, so that P̄ is the weighted mean over the samples.  Over engine speed φ are the first two
// powers of it, scaled to ± 1 over what was used: a low order, because no lap shows more of the curve than the stretch
// between two shifts.  Over the car's own speed, which a simulation needs since the gears are in it, the curve returns
// with every gear: φ are cosines over the logarithm of the speed.  The fast ones, which no drag resembles, show how far
// the engine's curve goes up and down, and so how large the slow ones may be that a drag could be taken for.
#pragma once

#include "core/car/full_throttle.h"
#include "core/car/lap_simulation.h"

#include <Eigen/Core>

#include <optional>
#include <vector>

namespace lapwright::car {

inline constexpr int max_curve_terms = 10;
using CurveTerms = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, max_curve_terms, 1>; // φ_k, or their c_k

using CurveCovariance = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, 0, max_curve_terms, max_curve_terms>;

// A possible spread of the c_k, and how likely it is among others before the samples are seen.
struct CurvePrior {
    CurveCovariance covariance;
    double log_weight = 0.0;
};

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
    [[nodiscard]] Eigen::Index term_count() const { return mean_.size(); }
    [[nodiscard]] std::vector<CurvePrior> priors() const;
    [[nodiscard]] double unseen_sd() const { return over_engine_speed_ ? unseen_gear_known_engine_sd : unseen_gear_sd; }
    // rev/s or m/s
    [[nodiscard]] double slowest() const { return slowest_; }
    [[nodiscard]] double fastest() const { return fastest_; }

  private:
    bool over_engine_speed_ = false;
    double slowest_ = 0.0;
    double fastest_ = 1.0;
    CurveTerms mean_;
};

// Mean φ of the samples about each of the car's speeds: what the gears make of the curve.
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
