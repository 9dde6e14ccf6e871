// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/channels/axis_check.h"

#include "core/import/channels/agreement.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace lapwright::import {
namespace {

using recording::Channel;
using recording::Recording;

constexpr std::size_t enough_stretches = 50;
// What a receiver's noise alone could make.
constexpr double least_spread_mps2 = 0.4;

// Means of a channel over stretches of time, from sums up to each sample.
class Means {
  public:
    explicit Means(const Channel& channel) : stamps_(*channel.time_s), sums_{0.0} {
        for (const double value : channel.values)
            sums_.push_back(sums_.back() + value);
    }

    [[nodiscard]] std::optional<double> over(double from_s, double to_s) const {
        const auto first = std::ranges::lower_bound(stamps_, from_s) - stamps_.begin();
        const auto last = std::ranges::upper_bound(stamps_, to_s) - stamps_.begin();
        if (last <= first) return std::nullopt;
        return (sums_[static_cast<std::size_t>(last)] - sums_[static_cast<std::size_t>(first)]) /
               static_cast<double>(last - first);
    }

  private:
    const std::vector<double>& stamps_;
    std::vector<double> sums_;
};

struct Stretch {
    double along = 0.0;
    double left = 0.0;
    double read = 0.0;
};

// The mean of each taken away.
void centre(std::vector<Stretch>& stretches) {
    Stretch mean;
    const auto n = static_cast<double>(stretches.size());
    for (const Stretch& s : stretches)
        mean = {mean.along + s.along / n, mean.left + s.left / n, mean.read + s.read / n};
    for (Stretch& s : stretches)
        s = {s.along - mean.along, s.left - mean.left, s.read - mean.read};
}

} // namespace

std::optional<AxisFit> fit_axis(const Recording& recording, const Channel& channel) {
    const Means means(channel);
    std::vector<Stretch> stretches;
    for (const GroundAcceleration& place : ground_accelerations(recording))
        if (const auto mean = means.over(place.from_s, place.to_s))
            stretches.push_back({place.longitudinal_mps2, place.lateral_mps2, *mean});
    if (stretches.size() < enough_stretches) return std::nullopt;
    centre(stretches);
    double aa = 0.0, bb = 0.0, ab = 0.0, ay = 0.0, by = 0.0, yy = 0.0;
    for (const Stretch& s : stretches) {
        aa += s.along * s.along;
        bb += s.left * s.left;
        ab += s.along * s.left;
        ay += s.along * s.read;
        by += s.left * s.read;
        yy += s.read * s.read;
    }
    const double least = static_cast<double>(stretches.size()) * least_spread_mps2 * least_spread_mps2;
    const double determinant = aa * bb - ab * ab;
    if (!(aa > least && bb > least && yy > 0.0) || !(determinant > 1e-3 * aa * bb)) return std::nullopt;
    const double along = (ay * bb - by * ab) / determinant;
    const double left = (by * aa - ay * ab) / determinant;
    return AxisFit{along, left, std::sqrt(std::clamp((along * ay + left * by) / yy, 0.0, 1.0))};
}

} // namespace lapwright::import
