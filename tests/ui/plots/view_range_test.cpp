// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/view_range.h"

#include <gtest/gtest.h>

using namespace lapwright::plots;

TEST(ViewRange, ZoomingKeepsThePlaceUnderThePointer) {
    const ViewRange before{1000.0, 2000.0};
    const ViewRange after = zoomed(before, 0.5, 1250.0, 3000.0);
    EXPECT_DOUBLE_EQ(after.width(), 500.0);
    EXPECT_DOUBLE_EQ((1250.0 - after.lower_m) / after.width(), 0.25);
}

TEST(ViewRange, NeverLeavesTheLap) {
    EXPECT_EQ(panned({0.0, 500.0}, -100.0, 3000.0), (ViewRange{0.0, 500.0}));
    EXPECT_EQ(panned({2600.0, 2900.0}, 500.0, 3000.0), (ViewRange{2700.0, 3000.0}));
    EXPECT_EQ(zoomed({100.0, 2900.0}, 4.0, 2000.0, 3000.0), (ViewRange{0.0, 3000.0}));
}

TEST(ViewRange, IsNeverNarrowerThanCanBeRead) {
    EXPECT_DOUBLE_EQ(zoomed({100.0, 130.0}, 0.01, 110.0, 3000.0).width(), narrowest_view_m);
}

TEST(ViewRange, FollowsWhatLeavesIt) {
    EXPECT_EQ(following({100.0, 200.0}, 150.0, 3000.0), (ViewRange{100.0, 200.0}));
    EXPECT_EQ(following({100.0, 200.0}, 230.0, 3000.0), (ViewRange{130.0, 230.0}));
    EXPECT_EQ(following({100.0, 200.0}, 40.0, 3000.0), (ViewRange{40.0, 140.0}));
}
