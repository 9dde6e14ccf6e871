// SPDX-License-Identifier: GPL-3.0-or-later
// Predictions with honest intervals hold 95 times of 100, boastful ones do not, and what is too wide is not judged.
#include "core/comparison/prediction_score.h"

#include <cmath>
#include <gtest/gtest.h>
#include <random>
#include <vector>

namespace lapwright::comparison {
namespace {

constexpr double z95 = 1.959964;

base::Estimate around(double value, double sd) {
    return {value, value - z95 * sd, value + z95 * sd, {}};
}

// Both with errors of their own; the prediction's true one is `boast` times what it says.
double share_held(double boast, std::uint64_t seed) {
    std::mt19937_64 draw(seed);
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> uniform;
    std::vector<Verdict> verdicts;
    for (int i = 0; i < 20000; ++i) {
        const double truth = normal(draw);
        const double sd_predicted = 0.02 + 0.1 * uniform(draw);
        const double sd_observed = 0.02 + 0.1 * uniform(draw);
        verdicts.push_back(held_against(around(truth + boast * sd_predicted * normal(draw), sd_predicted),
                                        around(truth + sd_observed * normal(draw), sd_observed))
                               .verdict);
    }
    const Score score = score_of(verdicts);
    EXPECT_EQ(score.judged + score.too_wide, 20000);
    EXPECT_GT(score.judged, 10000);
    EXPECT_GT(score.share.value, score.share.low);
    return score.share.value;
}

TEST(PredictionScore, HonestIntervalsHoldNinetyFiveTimesInAHundred) {
    EXPECT_NEAR(share_held(1.0, 1), 0.95, 0.006);
    EXPECT_LT(share_held(2.0, 2), 0.85);
    EXPECT_GT(share_held(0.5, 3), 0.97);
}

TEST(PredictionScore, TakesTheSidesThatFaceEachOther) {
    const base::Estimate predicted{-0.30, -0.50, -0.25, {}}; // 0.20 towards quicker, 0.05 towards slower
    const HeldAgainst quicker = held_against(predicted, {-0.45, -0.52, -0.42, {}});
    EXPECT_NEAR(quicker.half_width_s, std::hypot(0.20, 0.03), 1e-12);
    EXPECT_EQ(quicker.verdict, Verdict::held);
    const HeldAgainst slower = held_against(predicted, {-0.15, -0.22, -0.12, {}});
    EXPECT_NEAR(slower.half_width_s, std::hypot(0.05, 0.07), 1e-12);
    EXPECT_EQ(slower.verdict, Verdict::missed);
    EXPECT_NEAR(slower.z, z95 * 0.15 / std::hypot(0.05, 0.07), 1e-6);
}

TEST(PredictionScore, WhatWouldAgreeWithAnythingIsNotJudged) {
    EXPECT_EQ(held_against({-0.3, -0.4, -0.2, {}}, {-0.3, -0.5, -0.1, {}}).verdict, Verdict::too_wide);
    EXPECT_EQ(held_against({-0.3, -0.4, -0.2, {}}, {-0.3, -0.44, -0.16, {}}).verdict, Verdict::held);
    EXPECT_EQ(held_against({0.01, -0.19, 0.21, {}}, {0.1, -0.05, 0.25, {}}).verdict, Verdict::held);
    const Score score = score_of({});
    EXPECT_EQ(score.judged, 0);
    EXPECT_TRUE(std::isnan(score.share.value));
}

} // namespace
} // namespace lapwright::comparison
