// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/trial.h"

#include "core/base/translation.h"
#include "core/math/distributions.h"
#include "core/math/linear_least_squares.h"

#include <algorithm>

namespace lapwright::comparison {
namespace {

using base::said;

base::Error cannot(const std::string& what, const std::string& remedy) {
    return {base::ErrorCode::cannot_be_computed, {}, what, remedy};
}

// The runs with and without the change overlap in time; one after the other, drift and change are one.
bool interleaved(const std::vector<TrialLap>& laps) {
    const auto range = [&](bool changed) {
        double low = 1e300;
        double high = -1e300;
        for (const TrialLap& lap : laps)
            if (lap.changed == changed) {
                low = std::min(low, lap.order);
                high = std::max(high, lap.order);
            }
        return std::pair{low, high};
    };
    const auto base = range(false);
    const auto change = range(true);
    return base.first < change.second && change.first < base.second;
}

TrialEffect effect(const Eigen::MatrixXd& design, const Eigen::VectorXd& times) {
    const math::LinearFit fit = math::fit_linear(design, times);
    const double t = math::student_t_quantile(0.975, static_cast<double>(fit.degrees_of_freedom));
    const double gain = -fit.coefficients[1];
    const double half = t * fit.standard_errors[1];
    return {gain, gain - half, gain + half, fit.coefficients[2]};
}

} // namespace

base::Result<Trial> setup_trial(const std::vector<TrialLap>& laps) {
    Trial trial;
    trial.changed_laps = static_cast<int>(std::ranges::count_if(laps, &TrialLap::changed));
    trial.baseline_laps = static_cast<int>(laps.size()) - trial.changed_laps;
    if (laps.size() < 4)
        return cannot(said("a trial needs four clean laps or more"), said("drive more laps of each setup"));
    if (trial.changed_laps == 0 || trial.baseline_laps == 0)
        return cannot(said("all laps were driven with the same setup"),
                      said("choose sessions with and without the change"));
    if (!interleaved(laps))
        return cannot(said("the change cannot be told from a drift of tyres or track"),
                      said("drive the baseline once more after the change"));
    const auto n = static_cast<Eigen::Index>(laps.size());
    Eigen::MatrixXd design(n, 2);
    for (Eigen::Index i = 0; i < n; ++i) {
        const TrialLap& lap = laps[static_cast<std::size_t>(i)];
        design(i, 0) = lap.changed ? 1.0 : 0.0;
        design(i, 1) = lap.order;
    }
    Eigen::VectorXd total = Eigen::VectorXd::Zero(n);
    for (std::size_t s = 0; s < laps.front().segment_s.size(); ++s) {
        Eigen::VectorXd times(n);
        for (Eigen::Index i = 0; i < n; ++i)
            times[i] = laps[static_cast<std::size_t>(i)].segment_s[s];
        total += times;
        trial.segments.push_back(effect(design, times));
    }
    trial.lap = effect(design, total);
    return trial;
}

} // namespace lapwright::comparison
