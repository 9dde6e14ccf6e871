// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/channels/axis_check.h"

#include "core/import/channels/agreement.h"
#include "core/import/columns/speed_check.h"

#include <algorithm>
#include <vector>

namespace lapwright::import {
namespace {

using recording::Channel;
using recording::Recording;

constexpr std::size_t enough_stretches = 50;

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

std::vector<AxisSample> stretches_of(const Recording& recording, const Channel& channel) {
    const Means means(channel);
    std::vector<AxisSample> stretches;
    for (const GroundAcceleration& place : ground_accelerations(recording))
        if (const auto mean = means.over(place.from_s, place.to_s))
            stretches.push_back({place.longitudinal_mps2, place.lateral_mps2, *mean});
    return stretches;
}

} // namespace

std::optional<AxisFit> fit_axis(const Recording& recording, const Channel& channel) {
    return fit_axis(stretches_of(recording, channel), enough_stretches);
}

std::optional<double> size_of_axis(const Recording& recording, const Channel& channel, bool lateral) {
    std::vector<double> read;
    std::vector<double> driven;
    for (const AxisSample& stretch : stretches_of(recording, channel)) {
        read.push_back(stretch.read);
        driven.push_back(lateral ? stretch.left : stretch.along);
    }
    return read.size() < enough_stretches ? std::nullopt : ratio_of_sizes(read, driven);
}

} // namespace lapwright::import
