// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/derived_speed.h"

#include "core/motion/spikes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace lapwright::motion {
namespace {

constexpr std::size_t min_pairs = 40;
constexpr double harmless_noise_mps = 0.005; // positions so exact may count twice
constexpr double shared_roughness = 0.25;    // of the difference against that of the positions' own speed

// Samples before and behind the place that a difference is taken between.
struct Scheme {
    std::size_t back;
    std::size_t ahead;
};
constexpr std::array schemes{Scheme{1, 1}, Scheme{1, 0}, Scheme{0, 1}};

struct Pairs {
    std::vector<double> by_positions;
    std::vector<double> less; // speed less that
};

Pairs pairs(const Series& speed, std::span<const double> time_s, std::span<const Vec2> position_m, Scheme scheme) {
    Pairs found;
    std::size_t k = 0;
    for (std::size_t i = 0; i < speed.size(); ++i) {
        while (k < time_s.size() && time_s[k] < speed.time_s[i])
            ++k;
        if (k < scheme.back || k + scheme.ahead >= time_s.size() || time_s[k] != speed.time_s[i]) continue;
        const std::size_t from = k - scheme.back;
        const std::size_t to = k + scheme.ahead;
        const double way =
            std::hypot(position_m[to].east - position_m[from].east, position_m[to].north - position_m[from].north);
        found.by_positions.push_back(way / (time_s[to] - time_s[from]));
        found.less.push_back(speed.values[i] - found.by_positions.back());
    }
    return found;
}

} // namespace

bool is_derived(const Series& speed, std::span<const double> time_s, std::span<const Vec2> position_m) {
    return std::ranges::any_of(schemes, [&](const Scheme& scheme) {
        const Pairs found = pairs(speed, time_s, position_m, scheme);
        if (found.less.size() < min_pairs) return false;
        const double noise = roughness(found.by_positions);
        return noise > harmless_noise_mps && roughness(found.less) < shared_roughness * noise;
    });
}

} // namespace lapwright::motion
