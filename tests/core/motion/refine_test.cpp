// SPDX-License-Identifier: GPL-3.0-or-later
// Noise that is far from what it is thought to be beforehand: pass by pass the level comes nearer, and until a pass
// leaves it where it was the fit has not converged.
#include "core/motion/refine.h"

#include "core/motion/nodes.h"
#include "core/motion/recorded_drive.h"

#include <gmock/gmock.h>

namespace lapwright::motion {
namespace {

constexpr double noise_sd_m = 1.5; // 0.05 is thought of beforehand

Estimation noisy_positions() {
    const test::Drive drive;
    std::mt19937_64 engine(4);
    std::normal_distribution<double> normal(0.0, noise_sd_m);
    Measurements measured;
    for (double t = 0.0; t < 60.0; t += 0.1) {
        measured.position_time_s.push_back(t);
        measured.position_m.push_back({drive.east(t) + normal(engine), drive.north(t) + normal(engine)});
    }
    Estimation estimation;
    estimation.nodes = position_nodes(measured);
    estimation.situations.resize(estimation.nodes.size());
    estimation.path.time_s = std::make_shared<const std::vector<double>>(measured.position_time_s);
    return estimation;
}

TEST(Refine, SaysWhichSensorsNoiseStillMoves) {
    Estimation estimation = noisy_positions();
    const Pass pass{.use = {false, false}, .threads = 1};
    ASSERT_TRUE(refine(estimation, pass, {}, 0.0));
    EXPECT_EQ(estimation.noise.status, base::FitStatus::not_converged);
    EXPECT_EQ(estimation.noise.rounds, 1);
    EXPECT_GT(estimation.noise.rests_on, 0U);
    EXPECT_THAT(restless_sensors(estimation), testing::ElementsAre(by_position));
    for (int round = 0; round < 30; ++round)
        ASSERT_TRUE(refine(estimation, pass, {}, 0.0));
    EXPECT_TRUE(estimation.noise.converged());
    EXPECT_EQ(estimation.noise.rounds, 31);
    EXPECT_THAT(restless_sensors(estimation), testing::IsEmpty());
    EXPECT_NEAR(estimation.levels.sd[by_position], noise_sd_m, 0.3);
}

} // namespace
} // namespace lapwright::motion
