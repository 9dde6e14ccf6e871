// SPDX-License-Identifier: GPL-3.0-or-later
// The prior of the downforce, which is cut off where a car would lift.
#include "core/car/grip_model.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

using namespace lapwright::car;

TEST(GripPrior, ACutFarAwayChangesNothing) {
    EXPECT_NEAR((GripPrior{1e-3, 5e-5}).k_sd_cut(), 5e-5, 1e-9);
}

TEST(GripPrior, CutAtItsMeanItIsHalfANormal) {
    // Half-normal: variance 1 − 2/π.
    const GripPrior prior{min_downforce_factor, 1e-3};
    EXPECT_NEAR(prior.k_sd_cut(), 1e-3 * std::sqrt(1.0 - 2.0 / std::numbers::pi), 1e-9);
}
