// SPDX-License-Identifier: GPL-3.0-or-later
// Drawn brakings: wheels that fall short of the accelerometer's loss of speed are marked, rolling ones are not,
// whatever offset the accelerometer has.
#include "core/motion/wheel_slip.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

namespace lapwright::motion {
namespace {

struct Drawn {
    std::vector<Node> nodes;
    double apex_s = 0.0;
};

// From speed, down over a braking and away again; under the brakes the wheels lose up to `slip` of the speed.
Drawn braking(std::uint64_t seed, double slip) {
    std::mt19937_64 engine(seed);
    const auto between = [&](double low, double high) { return std::uniform_real_distribution(low, high)(engine); };
    std::normal_distribution normal;
    const double step_s = 1.0 / (seed % 2 == 0 ? 10.0 : 25.0);
    const double hardest = between(5.0, 12.0);
    const double duration_s = between(1.5, 4.0);
    const double offset = between(-0.8, 0.8);
    double speed = between(15.0, 25.0) + hardest * duration_s * 0.5;
    Drawn drawn;
    for (double t = 0.0; t < 3.0 + duration_s; t += step_s) {
        const double part = (t - 1.5) / duration_s;
        const bool brakes = part > 0.0 && part < 1.0;
        const double loss = brakes ? hardest * std::pow(std::sin(std::numbers::pi * part), 0.7) : -1.0;
        Node node;
        node.time_s = t;
        node.longitudinal_mps2 = -loss + offset + 0.15 * normal(engine);
        node.speed_mps = speed * (1.0 - (brakes ? slip * loss / hardest : 0.0)) + 0.03 * normal(engine);
        drawn.nodes.push_back(node);
        speed -= loss * step_s;
    }
    drawn.apex_s = 1.5 + 0.5 * duration_s;
    return drawn;
}

bool any_slips(const std::vector<Node>& nodes) {
    return std::ranges::any_of(nodes, &Node::slips);
}

TEST(WheelSlip, LockedWheelsAreMarkedWhereTheySlip) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        Drawn drawn = braking(seed, 0.06 + 0.002 * static_cast<double>(seed));
        mark_slip(drawn.nodes);
        const auto hardest = std::ranges::lower_bound(drawn.nodes, drawn.apex_s, {}, &Node::time_s);
        EXPECT_TRUE(hardest->slips) << "seed " << seed;
        EXPECT_FALSE(drawn.nodes.front().slips || drawn.nodes.back().slips) << "seed " << seed;
    }
}

TEST(WheelSlip, RollingWheelsAreNot) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        Drawn drawn = braking(seed, 0.0);
        mark_slip(drawn.nodes);
        EXPECT_FALSE(any_slips(drawn.nodes)) << "seed " << seed;
    }
}

TEST(WheelSlip, WithoutAccelerometerOrSpeedNothingIsKnown) {
    for (double Node::* gone : {&Node::longitudinal_mps2, &Node::speed_mps}) {
        Drawn drawn = braking(3, 0.15);
        for (Node& node : drawn.nodes)
            node.*gone = absent;
        mark_slip(drawn.nodes);
        EXPECT_FALSE(any_slips(drawn.nodes));
    }
}

} // namespace
} // namespace lapwright::motion
