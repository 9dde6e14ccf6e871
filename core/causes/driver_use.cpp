// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/causes/driver_use.h"

#include <algorithm>
#include <cmath>

namespace lapwright::causes {
namespace {

// A corner's time goes with the grip to −1/2 and a straight's with the push to −1/3 at most; the exponents are a little
// smaller than the inverse, so that neighbours that share a braking zone settle.
constexpr double corner_exponent = 1.7;
constexpr double straight_exponent = 2.2;
constexpr double min_use = 0.4;
constexpr double max_use = 1.5;

} // namespace

FittedUse fit_use(const car::SimulatedCar& car, const car::Course& course, const std::vector<track::Segment>& segments,
                  std::span<const double> measured_s, const car::DriverUse& start, int rounds) {
    FittedUse fitted;
    fitted.use = start;
    if (fitted.use.grip.empty()) fitted.use.grip.assign(segments.size(), 0.96);
    if (fitted.use.drive.empty()) fitted.use.drive.assign(segments.size(), 0.97);
    for (int round = 0;; ++round) {
        fitted.segment_s = car::simulate_lap(car, course, fitted.use).segment_time_s;
        if (round == rounds) break;
        for (std::size_t k = 0; k < segments.size(); ++k) {
            const double ratio = fitted.segment_s[k] / measured_s[k];
            const bool corner = segments[k].kind == track::SegmentKind::corner;
            double& use = corner ? fitted.use.grip[k] : fitted.use.drive[k];
            const double factor = std::pow(ratio, corner ? corner_exponent : straight_exponent);
            use = std::clamp(use * std::clamp(factor, 0.7, 1.4), min_use, max_use);
        }
    }
    for (std::size_t k = 0; k < segments.size(); ++k)
        fitted.worst_misfit_s = std::max(fitted.worst_misfit_s, std::abs(fitted.segment_s[k] - measured_s[k]));
    return fitted;
}

} // namespace lapwright::causes
