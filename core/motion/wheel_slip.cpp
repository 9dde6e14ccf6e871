// SPDX-License-Identifier: GPL-3.0-or-later
// The limits are common practice, no source.
#include "core/motion/wheel_slip.h"

#include <algorithm>
#include <cmath>

namespace lapwright::motion {
namespace {

constexpr double under_brakes_mps2 = -2.0;
constexpr double margin_s = 0.3;        // the pedal's build-up and release
constexpr double longest_s = 8.0;       // of a braking
constexpr double min_slip_share = 0.02; // of the speed
constexpr double min_slip_mps = 0.3;
constexpr double widest_offset_mps2 = 1.5; // slope, pitch and the sensor's own

struct Braking {
    std::size_t first = 0; // the wheels roll here
    std::size_t last = 0;  // and here
};

bool is_joined(const std::vector<Node>& nodes, std::size_t i) {
    return i > 0 && !nodes[i].starts_afresh;
}

std::size_t widened(const std::vector<Node>& nodes, std::size_t from, int step) {
    std::size_t at = from;
    const auto may_go = [&] {
        return step < 0 ? is_joined(nodes, at) : at + 1 < nodes.size() && is_joined(nodes, at + 1);
    };
    while (may_go() && std::abs(nodes[at].time_s - nodes[from].time_s) < margin_s)
        at = step < 0 ? at - 1 : at + 1;
    return at;
}

std::vector<Braking> brakings(const std::vector<Node>& nodes) {
    std::vector<Braking> result;
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        if (!(nodes[i].longitudinal_mps2 < under_brakes_mps2)) continue;
        std::size_t end = i;
        while (end + 1 < nodes.size() && is_joined(nodes, end + 1) &&
               nodes[end + 1].longitudinal_mps2 < under_brakes_mps2)
            ++end;
        const Braking one{widened(nodes, i, -1), widened(nodes, end, 1)};
        if (!result.empty() && one.first <= result.back().last)
            result.back().last = one.last;
        else
            result.push_back(one);
        i = end;
    }
    return result;
}

// Speed lost by the accelerometer from the braking's first node to each of its nodes; empty where it is not known
// throughout.
std::vector<double> integrated(const std::vector<Node>& nodes, const Braking& braking) {
    std::vector<double> gained{0.0};
    for (std::size_t i = braking.first + 1; i <= braking.last; ++i) {
        const double step_s = nodes[i].time_s - nodes[i - 1].time_s;
        gained.push_back(gained.back() + 0.5 * step_s * (nodes[i].longitudinal_mps2 + nodes[i - 1].longitudinal_mps2));
        if (std::isnan(gained.back())) return {};
    }
    return gained;
}

} // namespace

void mark_slip(std::vector<Node>& nodes) {
    for (const Braking& braking : brakings(nodes)) {
        const Node& first = nodes[braking.first];
        const Node& last = nodes[braking.last];
        const double duration_s = last.time_s - first.time_s;
        const std::vector<double> gained = integrated(nodes, braking);
        if (gained.empty() || duration_s > longest_s || std::isnan(first.speed_mps + last.speed_mps)) continue;
        const double offset = (last.speed_mps - first.speed_mps - gained.back()) / duration_s;
        if (std::abs(offset) > widest_offset_mps2) continue;
        double most = 0.0;
        for (std::size_t i = braking.first; i <= braking.last; ++i) {
            const double rolled =
                first.speed_mps + gained[i - braking.first] + offset * (nodes[i].time_s - first.time_s);
            const double short_of = rolled - nodes[i].speed_mps;
            if (short_of > min_slip_mps) most = std::max(most, short_of / rolled);
        }
        if (most < min_slip_share) continue;
        for (std::size_t i = braking.first + 1; i < braking.last; ++i)
            nodes[i].slips = true;
    }
}

} // namespace lapwright::motion
