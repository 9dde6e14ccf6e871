// SPDX-License-Identifier: GPL-3.0-or-later
// NIST StRD univariate sets NumAcc1 and NumAcc4 (certified values).
#include "core/math/statistics.h"
#include "reference/nist/matching_digits.h"

#include <gtest/gtest.h>

#include <vector>

using namespace lapwright::math;

TEST(NistUnivariate, NumAcc1) {
    const std::vector<double> sample{10000001.0, 10000003.0, 10000002.0};
    EXPECT_DOUBLE_EQ(mean(sample), 10000002.0);
    EXPECT_DOUBLE_EQ(standard_deviation(sample), 1.0);
}

TEST(NistUnivariate, NumAcc4) {
    std::vector<double> sample{10000000.2};
    for (int i = 0; i < 500; ++i) {
        sample.push_back(10000000.1);
        sample.push_back(10000000.3);
    }
    EXPECT_GT(matching_digits(mean(sample), 10000000.2), 14.0);
    // The data themselves lose the digits when written in double:
    // about eight can be had (checked against NIST's notes).
    EXPECT_GT(matching_digits(standard_deviation(sample), 0.1), 8.0);
}
