// SPDX-License-Identifier: GPL-3.0-or-later
// Drawn receivers: Gauss-Markov errors of drawn correlation times, of which the draws know the rate of walk alone.
#include "core/lap/level_cases.h"

#include "core/motion/motion_model.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <random>

namespace lapwright::lap {
namespace {

using Eigen::Vector2d;

constexpr double span_s = 600.0;

// Mean over the span of a process whose standard deviation is sd_m.
double drawn_mean(std::mt19937_64& engine, double sd_m, double tau_s) {
    std::normal_distribution<double> normal;
    constexpr int steps = 600;
    const double decay = std::exp(-span_s / steps / tau_s);
    double error = sd_m * normal(engine);
    double sum = 0.0;
    for (int i = 0; i < steps; ++i) {
        sum += error;
        error = decay * error + sd_m * std::sqrt(1.0 - decay * decay) * normal(engine);
    }
    return sum / steps;
}

struct Receiver {
    Vector2d level;
    DrawnLevel drawn;
};

// Walks as fast as one whose errors hang together over the model's time with a standard deviation of 0.6 m.
Receiver drawn_receiver(std::mt19937_64& engine) {
    std::uniform_real_distribution<double> even(0.0, 1.0);
    const double model_tau_s = motion::NoiseLevels{}.bias_correlation_s;
    const double tau_s = 40.0 * std::pow(16.0, even(engine));
    const double sd_m = 0.6 * std::sqrt(tau_s / model_tau_s);
    const double share = model_tau_s / span_s;
    const double variance = 0.36 * 2.0 * share * (1.0 - share * (1.0 - std::exp(-1.0 / share)));
    return {{drawn_mean(engine, sd_m, tau_s), drawn_mean(engine, sd_m, tau_s)}, {variance, span_s}};
}

// Over receivers that forget fast and slowly, the shift lies inside as often as said, however well laps show it.
TEST(LevelCases, KnowHowFarTwoMapsLieApart) {
    for (const double seen_sd_m : {0.1, 0.4, 1.5}) {
        std::mt19937_64 engine(31);
        std::normal_distribution<double> normal;
        int inside = 0;
        int plain_inside = 0;
        double missed = 0.0;
        double plain_missed = 0.0;
        constexpr int draws = 300;
        for (int i = 0; i < draws; ++i) {
            const Receiver own = drawn_receiver(engine);
            const Receiver first = drawn_receiver(engine);
            const Vector2d truth = own.level - first.level;
            Shift seen;
            seen.value = truth + seen_sd_m * Vector2d{normal(engine), normal(engine)};
            seen.covariance = seen_sd_m * seen_sd_m * Eigen::Matrix2d::Identity();
            const auto cases = level_cases(own.drawn, first.drawn, seen);
            const double best = mean_gain(cases) * seen.value[0];
            double variance = 0.0;
            for (const LevelCase& one : cases)
                variance += one.chance * (one.gain * seen.variance() + std::pow(one.gain * seen.value[0] - best, 2));
            if (std::fabs(best - truth[0]) <= 1.96 * std::sqrt(variance)) ++inside;
            const double beforehand = own.drawn.variance + first.drawn.variance;
            const double gain = beforehand / (beforehand + seen.variance());
            const double plain = gain * seen.value[0];
            if (std::fabs(plain - truth[0]) <= 1.96 * std::sqrt(gain * seen.variance())) ++plain_inside;
            missed += std::pow(best - truth[0], 2);
            plain_missed += std::pow(plain - truth[0], 2);
        }
        std::printf("  seen to %.1f m: inside %d of %d, with one time for all %d; RMS %.3f m, %.3f m\n", seen_sd_m,
                    inside, draws, plain_inside, std::sqrt(missed / draws), std::sqrt(plain_missed / draws));
        EXPECT_GE(inside, 0.92 * draws);
        EXPECT_LE(inside, 0.985 * draws);
        EXPECT_LE(missed, plain_missed);
    }
}

TEST(LevelCases, SumToOneHoweverFarAMapLies) {
    for (const double far_m : {0.0, 1.0, 1e4}) {
        Shift seen;
        seen.value = {far_m, 0.0};
        seen.covariance = 0.01 * Eigen::Matrix2d::Identity();
        const auto cases = level_cases({0.1, span_s}, {0.1, span_s}, seen);
        double sum = 0.0;
        for (const LevelCase& one : cases)
            sum += one.chance;
        EXPECT_NEAR(sum, 1.0, 1e-9);
        EXPECT_EQ(&case_at(cases, 1.0 + 1e-6), &cases.back());
    }
}

TEST(LevelCases, LeaveReceiversThatKnowTheirPlace) {
    Shift seen;
    seen.value = {0.3, 0.0};
    seen.covariance = 0.04 * Eigen::Matrix2d::Identity();
    EXPECT_LT(mean_gain(level_cases({1e-6, span_s}, {1e-6, span_s}, seen)), 1e-3);
}

} // namespace
} // namespace lapwright::lap
