// SPDX-License-Identifier: GPL-3.0-or-later
// A filter that has gone astray comes back, along one axis too: what moves is refused at first by one that has learned
// that nothing moves, while the other axis goes on to fit.
#include "core/motion/motion_model.h"

#include "core/math/gaussian_smoother.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace lapwright::motion {
namespace {

constexpr double stands_s = 20.0;

double gone_m(double t, double pull_mps2) {
    return t < stands_s ? 0.0 : 0.5 * pull_mps2 * (t - stands_s) * (t - stands_s);
}

std::vector<Node> launch(unsigned seed, double rate_hz, double pull_mps2, const Vec2& along) {
    std::mt19937_64 engine(seed);
    std::normal_distribution<double> normal;
    std::vector<Node> nodes;
    for (double t = 0.0; t < stands_s + 8.0; t += 1.0 / rate_hz) {
        Node node;
        node.time_s = t;
        const double gone = gone_m(t, pull_mps2);
        node.position_m = {along.east * gone + 0.02 * normal(engine), along.north * gone + 0.02 * normal(engine)};
        nodes.push_back(node);
    }
    return nodes;
}

TEST(MotionModel, AFilterComesBackAlongEachAxisByItself) {
    for (const Vec2& along : {Vec2{1.0, 0.0}, Vec2{0.0, 1.0}, Vec2{-0.6, 0.8}}) {
        for (unsigned seed = 1; seed <= 12; ++seed) {
            const double pull_mps2 = 4.0 + 0.4 * seed;
            const std::vector<Node> nodes = launch(seed, seed % 2 == 0 ? 10.0 : 25.0, pull_mps2, along);
            std::vector<Situation> situations(nodes.size());
            for (Situation& situation : situations)
                situation.jerk = 0.01;
            NoiseLevels levels;
            levels.sd[by_position] = 0.02;
            levels.bias_sd_m = 0.05;
            const auto model = motion_model<8>(nodes, situations, levels, {false, false});
            const auto filtered = math::Filter<MotionTransition<8>>::run(model, 8.0);
            const auto& last = filtered.mean.back();
            const double gone = gone_m(nodes.back().time_s, pull_mps2);
            EXPECT_LT(std::hypot(last[0] - along.east * gone, last[4] - along.north * gone), 25.0) << "seed " << seed;
            bool refused_long = false;
            for (const int axis : {0, 4}) {
                double refused_since_s = nodes.front().time_s;
                for (std::size_t k = 0; k < nodes.size(); ++k)
                    for (std::size_t j = model.steps[k].first_observation; j < model.observations_end(k); ++j) {
                        if (model.observations[j].index[0] != axis) continue;
                        if (filtered.accepted[j] != 0) refused_since_s = nodes[k].time_s;
                        refused_long = refused_long || nodes[k].time_s - refused_since_s > 2.0;
                    }
            }
            EXPECT_FALSE(refused_long) << "seed " << seed;
        }
    }
}

} // namespace
} // namespace lapwright::motion
