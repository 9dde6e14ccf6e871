// SPDX-License-Identifier: GPL-3.0-or-later
// Whittaker smoother on a ring: the damping of a pure wave is known in closed form (Eilers 2003); derivatives against
// those of a sine.
#include "core/math/periodic_smoother.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

using namespace lapwright::math;

namespace {

std::vector<double> wave(std::size_t n, double cycles) {
    std::vector<double> y(n);
    for (std::size_t i = 0; i < n; ++i)
        y[i] = std::sin(2.0 * std::numbers::pi * cycles * static_cast<double>(i) / static_cast<double>(n));
    return y;
}

} // namespace

TEST(PeriodicSmoother, DampsAWaveAsTheClosedFormSays) {
    constexpr std::size_t n = 400;
    const std::vector<double> ones(n, 1.0);
    for (const double cycles : {2.0, 10.0, 16.0, 40.0}) {
        const double lambda = lambda_for_cutoff(25.0);
        const double omega = 2.0 * std::numbers::pi * cycles / n;
        const double gain = 1.0 / (1.0 + lambda * std::pow(2.0 * std::sin(omega / 2.0), 6.0));
        const auto y = wave(n, cycles);
        const auto z = smooth_periodic(y, ones, lambda);
        for (std::size_t i = 0; i < n; i += 7)
            EXPECT_NEAR(z[i], gain * y[i], 1e-9);
    }
}

TEST(PeriodicSmoother, HalvesTheCutoffWave) {
    constexpr std::size_t n = 250;
    const auto y = wave(n, 10.0);
    const auto z = smooth_periodic(y, std::vector<double>(n, 1.0), lambda_for_cutoff(25.0));
    EXPECT_NEAR(z[6] / y[6], 0.5, 1e-9);
}

TEST(PeriodicSmoother, BridgesNodesWithoutWeight) {
    constexpr std::size_t n = 200;
    const auto y = wave(n, 1.0);
    auto holed = y;
    std::vector<double> weights(n, 1.0);
    for (std::size_t i = 60; i < 80; ++i) {
        holed[i] = 1e6;
        weights[i] = 0.0;
    }
    const auto z = smooth_periodic(holed, weights, 1.0);
    for (std::size_t i = 60; i < 80; ++i)
        EXPECT_NEAR(z[i], y[i], 2e-3);
}

TEST(PeriodicDerivatives, AreOfSixthOrder) {
    const auto error = [](std::size_t n) {
        const auto y = wave(n, 3.0);
        const double h = 1.0 / static_cast<double>(n);
        const auto first = first_derivative_periodic(y, h);
        const auto second = second_derivative_periodic(y, h);
        const double omega = 6.0 * std::numbers::pi;
        double worst = 0.0;
        for (std::size_t i = 0; i < n; ++i) {
            const double phase = omega * static_cast<double>(i) * h;
            worst = std::max(worst, std::abs(first[i] - omega * std::cos(phase)) / omega);
            worst = std::max(worst, std::abs(second[i] + omega * omega * std::sin(phase)) / (omega * omega));
        }
        return worst;
    };
    EXPECT_LT(error(120), 1e-6);
    EXPECT_NEAR(std::log2(error(60) / error(120)), 6.0, 0.3);
}
