// SPDX-License-Identifier: GPL-3.0-or-later
// Drift elimination: readings A = 10 + 0.3 t, B = 12 + 0.3 t
// at t = 0, 1, 2: B − mean(A) = 2 exactly, A-B alone gives 2.3.
#include "core/comparison/trial.h"

#include <gtest/gtest.h>
#include <random>

using namespace lapwright::comparison;

namespace {

TrialLap trial_lap(double order, bool changed, std::vector<double> times) {
    return {order, changed, std::move(times)};
}

} // namespace

TEST(SetupTrial, TakesALinearDriftOutExactly) {
    std::vector<TrialLap> laps;
    for (const double t : {0.0, 1.0, 2.0, 3.0, 4.0, 5.0}) {
        const bool changed = t == 2.0 || t == 3.0;
        laps.push_back(trial_lap(t, changed, {(changed ? 12.0 : 10.0) + 0.3 * t, 20.0}));
    }
    const auto trial = setup_trial(laps);
    ASSERT_TRUE(trial);
    EXPECT_NEAR(trial->segments[0].gain_s, -2.0, 1e-10);
    EXPECT_NEAR(trial->segments[0].drift_s_per_lap, 0.3, 1e-10);
    EXPECT_NEAR(trial->segments[1].gain_s, 0.0, 1e-10);
    EXPECT_NEAR(trial->lap.gain_s, -2.0, 1e-10);
    EXPECT_EQ(trial->baseline_laps, 4);
}

TEST(SetupTrial, SegmentsSumToTheLap) {
    std::mt19937_64 random(4);
    std::normal_distribution<double> noise(0.0, 0.1);
    std::vector<TrialLap> laps;
    for (int i = 0; i < 12; ++i)
        laps.push_back(trial_lap(i, i >= 4 && i < 8, {10 + noise(random), 20 + noise(random), 30 + noise(random)}));
    const auto trial = setup_trial(laps);
    ASSERT_TRUE(trial);
    double sum = 0.0;
    for (const auto& s : trial->segments)
        sum += s.gain_s;
    EXPECT_NEAR(sum, trial->lap.gain_s, 1e-9);
}

TEST(SetupTrial, TheIntervalHoldsTheTruthAsOftenAsItSays) {
    std::mt19937_64 random(9);
    std::normal_distribution<double> noise(0.0, 0.08);
    int held = 0;
    constexpr int trials = 2000;
    for (int k = 0; k < trials; ++k) {
        std::vector<TrialLap> laps;
        for (int i = 0; i < 9; ++i) {
            const bool changed = i >= 3 && i < 6;
            laps.push_back(trial_lap(i, changed, {30.0 - (changed ? 0.2 : 0.0) + 0.02 * i + noise(random)}));
        }
        const auto trial = setup_trial(laps);
        held += trial->lap.low_s <= 0.2 && 0.2 <= trial->lap.high_s;
    }
    EXPECT_NEAR(held, 0.95 * trials, 3.0 * std::sqrt(0.95 * 0.05 * trials));
}

TEST(SetupTrial, SaysWhenTheChangeCannotBeTold) {
    std::vector<TrialLap> laps;
    for (int i = 0; i < 6; ++i)
        laps.push_back(trial_lap(i, i >= 3, {30.0}));
    const auto trial = setup_trial(laps);
    ASSERT_FALSE(trial);
    EXPECT_NE(trial.error().what.find("drift"), std::string::npos);
    EXPECT_FALSE(setup_trial({trial_lap(0, false, {1.0}), trial_lap(1, true, {1.0})}));
    for (auto& one : laps)
        one.changed = false;
    EXPECT_FALSE(setup_trial(laps));
}
