// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/followed.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::video {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double longest_gap_s = 1.0;

double least_of(FollowedKind kind) {
    return kind == FollowedKind::engine_speed ? 15.0 : 8.0;
}

} // namespace

double value_at(const Followed& followed, double time_s) {
    const auto later = std::ranges::upper_bound(followed.time_s, time_s);
    if (later == followed.time_s.begin() || later == followed.time_s.end()) return nan;
    const auto i = static_cast<std::size_t>(later - followed.time_s.begin());
    const double width_s = followed.time_s[i] - followed.time_s[i - 1];
    if (width_s > longest_gap_s) return nan;
    const double share = (time_s - followed.time_s[i - 1]) / width_s;
    const double value = (1.0 - share) * followed.values[i - 1] + share * followed.values[i];
    return value >= least_of(followed.kind) ? value : nan;
}

} // namespace lapwright::video
