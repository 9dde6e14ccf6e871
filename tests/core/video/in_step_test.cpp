// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/in_step.h"

#include <gtest/gtest.h>

namespace lapwright::video::tests {
namespace {

TEST(InStep, ThereAndBack) {
    const InStep step{12.5, 80e-6, 300.0};
    for (const double video_s : {0.0, 300.0, 1200.0})
        EXPECT_NEAR(step.video_s(step.recording_s(video_s)), video_s, 1e-9);
    EXPECT_DOUBLE_EQ(step.recording_s(300.0), 312.5);
    EXPECT_DOUBLE_EQ(step.recording_s(1300.0), 1312.58);
}

TEST(InStep, MethodsHaveNamesThatReadBack) {
    for (const StepMethod method : {StepMethod::sound_and_engine_speed, StepMethod::sound_and_speed,
                                    StepMethod::picture_and_turning, StepMethod::clocks, StepMethod::by_hand})
        EXPECT_EQ(parse_step_method(name(method)), method);
    EXPECT_FALSE(parse_step_method("guess"));
}

TEST(InStep, ClocksGiveARoughStart) {
    const auto near = step_by_clocks(1000.0, 300.0, 900.0, 1200.0);
    ASSERT_TRUE(near.estimate);
    EXPECT_DOUBLE_EQ(near.estimate->step.offset_s, 100.0);
    EXPECT_LT(near.estimate->offset_low_s, 80.0);
    // Local time, two hours before UTC.
    const auto local = step_by_clocks(1000.0 + 7200.0, 300.0, 900.0, 1200.0);
    ASSERT_TRUE(local.estimate);
    EXPECT_DOUBLE_EQ(local.estimate->step.offset_s, 100.0);
    EXPECT_EQ(step_by_clocks(1e6, 300.0, 900.0, 1200.0).why_not, "the video was taken on another day");
    EXPECT_FALSE(step_by_clocks({}, 300.0, 900.0, 1200.0).estimate);
    EXPECT_FALSE(step_by_clocks(1000.0, 300.0, {}, 1200.0).estimate);
}

TEST(InStep, MarksByHand) {
    const auto one = step_by_hand({10.0, 25.0}, {});
    EXPECT_DOUBLE_EQ(one.step.recording_s(10.0), 25.0);
    const auto two = step_by_hand({10.0, 25.0}, Mark{610.0, 625.06});
    EXPECT_NEAR(two.step.recording_s(10.0), 25.0, 1e-9);
    EXPECT_NEAR(two.step.recording_s(610.0), 625.06, 1e-9);
    const auto close = step_by_hand({10.0, 25.0}, Mark{12.0, 27.04});
    EXPECT_DOUBLE_EQ(close.step.drift, 0.0);
    EXPECT_DOUBLE_EQ(close.step.offset_s, 15.02);
}

TEST(InStep, OffsetInWords) {
    StepEstimate estimate;
    estimate.step.offset_s = -3.25;
    estimate.offset_low_s = -3.26;
    estimate.offset_high_s = -3.24;
    EXPECT_EQ(offset_words(estimate), "the video begins 3.250 s ±0.010 before the recording's start");
}

} // namespace
} // namespace lapwright::video::tests
