// SPDX-License-Identifier: GPL-3.0-or-later
// Wilson's interval against the four cases of Newcombe 1998 (Statistics in Medicine 17:857, table I, method 3), and how
// often it holds over all outcomes of few trials, by their exact binomial chances.
#include "core/math/share.h"

#include <cmath>
#include <gtest/gtest.h>
#include <tuple>

namespace lapwright::math {
namespace {

TEST(Share, IsNewcombesTable) {
    for (const auto& [successes, trials, low, high] :
         {std::tuple(81, 263, 0.2553, 0.3662), std::tuple(15, 148, 0.0624, 0.1605), std::tuple(0, 20, 0.0, 0.1611),
          std::tuple(1, 29, 0.0061, 0.1718)}) {
        const base::Estimate share = share_95(successes, trials);
        EXPECT_NEAR(share.low, low, 5e-5);
        EXPECT_NEAR(share.high, high, 5e-5);
        const base::Estimate rest = share_95(trials - successes, trials);
        EXPECT_NEAR(rest.low, 1.0 - share.high, 1e-12);
        EXPECT_NEAR(rest.high, 1.0 - share.low, 1e-12);
    }
    EXPECT_TRUE(std::isnan(share_95(0, 0).value));
}

TEST(Share, HoldsOnTheAverageOverTrueShares) {
    for (const int trials : {5, 12, 40}) {
        double holds = 0.0;
        int shares = 0;
        for (double p = 0.01; p < 1.0; p += 0.01, ++shares) {
            double chance = std::pow(1.0 - p, trials);
            for (int k = 0; k <= trials; ++k) {
                const base::Estimate share = share_95(k, trials);
                if (share.low <= p && p <= share.high) holds += chance;
                chance *= p / (1.0 - p) * (trials - k) / (k + 1);
            }
        }
        EXPECT_GT(holds / shares, 0.94) << trials;
        EXPECT_LT(holds / shares, 0.97) << trials;
    }
}

} // namespace
} // namespace lapwright::math
