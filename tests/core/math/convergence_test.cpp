// SPDX-License-Identifier: GPL-3.0-or-later
// Chains whose state is known by construction: independent draws, autoregressive ones with their known effective size,
// and chains that disagree in place or in width.
#include "core/math/convergence.h"

#include "core/math/random.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace lapwright::math;

namespace {

// x_i = φ x_{i−1} + √(1 − φ²) z: a standard normal whose draws count as (1 − φ)/(1 + φ) each.
std::vector<double> chain(double phi, std::size_t length, std::uint64_t seed, double shift = 0.0, double scale = 1.0) {
    Random random(seed, 5);
    std::vector<double> draws;
    double x = random.normal();
    for (std::size_t i = 0; i < length; ++i) {
        x = phi * x + std::sqrt(1.0 - phi * phi) * random.normal();
        draws.push_back(shift + scale * x);
    }
    return draws;
}

} // namespace

TEST(Convergence, IndependentDrawsHaveSettled) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const std::vector<std::vector<double>> chains{chain(0.0, 250, seed), chain(0.0, 250, seed + 100),
                                                      chain(0.0, 250, seed + 200), chain(0.0, 250, seed + 300)};
        const Convergence c = convergence_of(chains);
        EXPECT_LT(c.r_hat, 1.03) << seed;
        EXPECT_GT(c.r_hat, 0.98) << seed;
        EXPECT_NEAR(c.effective_bulk, 1000.0, 400.0) << seed;
        EXPECT_TRUE(c.settled()) << seed;
    }
}

TEST(Convergence, EffectiveSizeOfAnAutoregressionIsItsKnownShare) {
    for (const double phi : {0.3, 0.6, 0.9}) {
        double sum = 0.0;
        for (std::uint64_t seed = 1; seed <= 20; ++seed) {
            const std::vector<std::vector<double>> chains{chain(phi, 2000, seed), chain(phi, 2000, seed + 100),
                                                          chain(phi, 2000, seed + 200), chain(phi, 2000, seed + 300)};
            sum += convergence_of(chains).effective_bulk / 20.0;
        }
        const double expected = 8000.0 * (1.0 - phi) / (1.0 + phi);
        EXPECT_NEAR(sum / expected, 1.0, 0.1) << phi;
    }
}

TEST(Convergence, ChainsThatDisagreeAreFound) {
    const std::vector<std::vector<double>> shifted{chain(0.0, 250, 1), chain(0.0, 250, 2, 1.0)};
    EXPECT_GT(convergence_of(shifted).r_hat, 1.1);
    // The same place, another width: only the folded draws show it.
    const std::vector<std::vector<double>> wide{chain(0.0, 500, 1), chain(0.0, 500, 2, 0.0, 3.0)};
    EXPECT_GT(convergence_of(wide).r_hat, 1.1);
    // A chain that drifts disagrees with itself.
    std::vector<double> drifting = chain(0.0, 400, 3);
    for (std::size_t i = 0; i < drifting.size(); ++i)
        drifting[i] += 0.01 * static_cast<double>(i);
    EXPECT_FALSE(convergence_of(std::vector<std::vector<double>>{drifting}).settled());
}

TEST(Convergence, AChainThatStandsStillHasNotSettled) {
    const std::vector<std::vector<double>> still(4, std::vector<double>(100, 2.0));
    EXPECT_FALSE(convergence_of(still).settled());
}

TEST(Convergence, RanksMakeHeavyTailsHarmless) {
    // Cauchy draws have no variance, their ranks do.
    std::vector<std::vector<double>> chains;
    for (std::uint64_t seed = 1; seed <= 4; ++seed) {
        const auto top = chain(0.0, 500, seed);
        const auto below = chain(0.0, 500, seed + 50);
        chains.emplace_back();
        for (std::size_t i = 0; i < top.size(); ++i)
            chains.back().push_back(top[i] / below[i]);
    }
    EXPECT_TRUE(convergence_of(chains).settled());
}
