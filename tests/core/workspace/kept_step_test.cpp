// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/kept_step.h"

#include <gtest/gtest.h>

using namespace lapwright;

TEST(KeptStep, ComesBackAsItWasFound) {
    for (const video::StepMethod method : {video::StepMethod::sound_and_engine_speed, video::StepMethod::clocks}) {
        video::StepEstimate found;
        found.step = {12.25, 3e-5, 600.0};
        found.offset_low_s = 12.0;
        found.offset_high_s = 12.5;
        found.method = method;
        const auto back = workspace::estimate_of(workspace::kept_step(found));
        ASSERT_TRUE(back);
        EXPECT_EQ(back->step.offset_s, 12.25);
        EXPECT_EQ(back->step.drift, 3e-5);
        EXPECT_EQ(back->step.around_s, 600.0);
        EXPECT_EQ(back->offset_low_s, 12.0);
        EXPECT_EQ(back->offset_high_s, 12.5);
        EXPECT_EQ(back->method, method);
    }
    EXPECT_FALSE(workspace::kept_step({}));
    EXPECT_FALSE(workspace::estimate_of({}));
}

TEST(KeptStep, AnUnknownMethodCountsAsSetByHand) {
    book::KeptStep kept;
    kept.method = "by a method of a later program";
    EXPECT_EQ(workspace::estimate_of(kept)->method, video::StepMethod::by_hand);
}
