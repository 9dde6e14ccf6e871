// SPDX-License-Identifier: GPL-3.0-or-later
// The noise of positions, found from themselves: drawn motions with drawn noises, at drawn rates.
#include "core/math/normal_random.h"
#include "core/motion/position_noise.h"
#include "core/motion/recorded_drive.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lapwright::motion {
namespace {

struct Plan {
    double rate_hz = 10.0;
    double white_sd_m = 0.03;
    double walk_m = 0.09; // a root second
    double jerk = 20.0;
    double lasts_s = 600.0;
};

// A walk of the error on a smooth drive and a walk of the acceleration.
std::vector<Node> drawn(const Plan& plan, std::uint64_t seed) {
    math::NormalStream normals(seed, 0);
    const test::Drive drive;
    const double h = 1.0 / plan.rate_hz;
    Vec2 error;
    Vec2 way;
    Vec2 speed;
    Vec2 push;
    std::vector<Node> nodes;
    for (double t = 0.0; t < plan.lasts_s; t += h) {
        Node node;
        node.time_s = t;
        node.position_m = {drive.east(t) + way.east + error.east + plan.white_sd_m * normals.next(),
                           drive.north(t) + way.north + error.north + plan.white_sd_m * normals.next()};
        nodes.push_back(node);
        for (double Vec2::* axis : {&Vec2::east, &Vec2::north}) {
            error.*axis += plan.walk_m * std::sqrt(h) * normals.next();
            way.*axis += h * (speed.*axis + 0.5 * h * push.*axis);
            speed.*axis += h * push.*axis - 0.2 * h * speed.*axis;
            push.*axis += std::sqrt(plan.jerk * h) * normals.next() - 0.5 * h * push.*axis;
        }
    }
    return nodes;
}

TEST(PositionNoise, BothNoisesAreFoundWhateverTheyAre) {
    math::NormalStream plans(7, 1);
    for (std::uint64_t seed = 1; seed <= 24; ++seed) {
        const auto between = [&](double low, double high) {
            return low * std::pow(high / low, 0.5 * std::erfc(plans.next() / std::sqrt(2.0)));
        };
        const Plan plan{between(10.0, 30.0), between(0.01, 0.06), between(0.05, 0.3), between(1.0, 60.0)};
        const auto found = position_noise(drawn(plan, seed));
        ASSERT_TRUE(found);
        EXPECT_NEAR(std::log(found->walk_m_per_root_s / plan.walk_m), 0.0, 0.3) << seed;
        EXPECT_NEAR(found->white_sd_m, plan.white_sd_m, 0.004 + 0.1 * plan.white_sd_m) << seed;
    }
}

TEST(PositionNoise, AReceiverWithoutSlowErrorShowsNone) {
    for (std::uint64_t seed = 1; seed <= 8; ++seed) {
        const auto found = position_noise(drawn({20.0, 0.03, 0.0, 20.0}, seed));
        ASSERT_TRUE(found);
        EXPECT_LT(found->walk_m_per_root_s, 0.05);
        EXPECT_NEAR(found->white_sd_m, 0.03, 0.004);
    }
}

TEST(PositionNoise, JumpsAndHolesChangeNothing) {
    const Plan plan;
    std::vector<Node> nodes = drawn(plan, 3);
    for (std::size_t i = 500; i < nodes.size(); i += 1300)
        for (std::size_t k = i; k < nodes.size(); ++k)
            nodes[k].position_m.east += 3.0;
    std::erase_if(nodes, [](const Node& node) { return std::fmod(node.time_s, 90.0) < 1.5; });
    const auto found = position_noise(nodes);
    ASSERT_TRUE(found);
    EXPECT_NEAR(std::log(found->walk_m_per_root_s / plan.walk_m), 0.0, 0.3);
    EXPECT_NEAR(found->white_sd_m, plan.white_sd_m, 0.006);
}

TEST(PositionNoise, TooFewOrTooSlowPositionsSayNothing) {
    EXPECT_FALSE(position_noise(drawn({10.0, 0.03, 0.09, 20.0, 25.0}, 1)));
    EXPECT_FALSE(position_noise(drawn({1.0, 0.03, 0.09, 20.0, 1200.0}, 1)));
    EXPECT_EQ(levels_of_positions({}).bias_sd_m, NoiseLevels{}.bias_sd_m);
}

} // namespace
} // namespace lapwright::motion
