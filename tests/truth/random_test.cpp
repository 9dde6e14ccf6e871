// SPDX-License-Identifier: GPL-3.0-or-later
// The random numbers: fixed values (the engine's ten-thousandth output is in the C++ standard, [rand.predef]), the
// moments of the normal generator, independence of streams.
#include "tests/truth/random.h"

#include <gtest/gtest.h>

#include <cmath>

namespace truth {
namespace {

TEST(Random, EngineIsTheStandardOne) {
    std::mt19937_64 engine;
    engine.discard(9999);
    EXPECT_EQ(engine(), 9981545732273789042ULL);
}

TEST(Random, NormalHasItsMomentsAndTails) {
    Random random(42);
    constexpr int kDraws = 400000;
    double mean = 0.0;
    double square = 0.0;
    double fourth = 0.0;
    int beyond = 0;
    for (int i = 0; i < kDraws; ++i) {
        const double x = random.normal();
        mean += x / kDraws;
        square += x * x / kDraws;
        fourth += x * x * x * x / kDraws;
        if (std::abs(x) > 1.959963984540054) ++beyond;
    }
    EXPECT_NEAR(mean, 0.0, 4.0 / std::sqrt(kDraws));
    EXPECT_NEAR(square, 1.0, 4.0 * std::sqrt(2.0 / kDraws));
    EXPECT_NEAR(fourth, 3.0, 4.0 * std::sqrt(96.0 / kDraws));
    EXPECT_NEAR(beyond / static_cast<double>(kDraws), 0.05, 4.0 * std::sqrt(0.0475 / kDraws));
}

TEST(Random, StreamsAndSeedsAreUncorrelated) {
    constexpr int kDraws = 100000;
    for (const auto& [first, second] : {std::pair{Random(1, 0), Random(1, 1)}, std::pair{Random(1), Random(2)}}) {
        Random a = first;
        Random b = second;
        double product = 0.0;
        for (int i = 0; i < kDraws; ++i)
            product += a.normal() * b.normal() / kDraws;
        EXPECT_NEAR(product, 0.0, 4.0 / std::sqrt(kDraws));
    }
}

TEST(Random, UniformStaysInsideTheOpenInterval) {
    Random random(7);
    double mean = 0.0;
    for (int i = 0; i < 100000; ++i) {
        const double u = random.uniform();
        ASSERT_GT(u, 0.0);
        ASSERT_LT(u, 1.0);
        mean += u / 100000.0;
    }
    EXPECT_NEAR(mean, 0.5, 0.004);
}

} // namespace
} // namespace truth
