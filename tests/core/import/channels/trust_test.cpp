// SPDX-License-Identifier: GPL-3.0-or-later
// The trust report: figures a channel, gaps, wheel speed against satellites.
#include "core/import/channels/trust.h"
#include "core/import/channels/trust_words.h"
#include "core/import/formats/import.h"

#include "core/base/number_text.h"
#include "core/recording/warning_words.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace lapwright::import {
namespace {

using recording::Warning;
using recording::WarningKind;

std::string session(double wheel_scale) {
    std::string text = "time (s),gps speed (m/s),wheel speed (m/s)\n";
    for (int i = 0; i < 400; ++i) {
        const double time_s = i / 20.0 + (i >= 200 ? 0.8 : 0.0);
        const double speed = 20.0 + (i % 100) / 10.0;
        text += base::fixed_text(time_s, 2) + "," + base::fixed_text(speed, 3) + "," +
                base::fixed_text(speed * wheel_scale, 3) + "\n";
    }
    return text;
}

const Warning* find(const recording::Recording& recording, WarningKind kind) {
    const auto found = std::ranges::find(recording.warnings, kind, &Warning::kind);
    return found == recording.warnings.end() ? nullptr : &*found;
}

TEST(Trust, SaysRateRangeAndGapsOfAChannel) {
    const auto recording = import_bytes(session(1.0), "x.csv");
    ASSERT_TRUE(recording.ok());
    const auto trust = judge_channels(*recording);
    ASSERT_EQ(trust.size(), 2U);
    EXPECT_NEAR(trust[0].rate_hz, 20.0, 1e-6);
    EXPECT_EQ(trust[0].least, 20.0);
    EXPECT_EQ(trust[0].most, 29.9);
    EXPECT_EQ(trust[0].gaps, 1U);
    EXPECT_NEAR(trust[0].longest_gap_s, 0.85, 1e-9);
    EXPECT_NEAR(trust[0].longest_gap_at_s, 9.95, 1e-9);
    const Warning* const gaps = find(*recording, WarningKind::gaps);
    ASSERT_NE(gaps, nullptr);
    EXPECT_THAT(gaps->figures, testing::Pointwise(testing::DoubleNear(1e-9), {0.85, 9.95}));
}

TEST(Trust, HoldsWheelSpeedAgainstSatellites) {
    const auto high = import_bytes(session(1.018), "x.csv");
    ASSERT_TRUE(high.ok());
    EXPECT_NEAR(wheel_speed_scale(*high).value(), 1.018, 1e-4);
    const Warning* const scale = find(*high, WarningKind::wheel_speed_scale);
    ASSERT_NE(scale, nullptr);
    EXPECT_NEAR(scale->figures.at(0), 1.018, 1e-4);
    const auto right = import_bytes(session(1.0), "x.csv");
    ASSERT_TRUE(right.ok());
    EXPECT_EQ(find(*right, WarningKind::wheel_speed_scale), nullptr);
}

TEST(Trust, EveryChannelIsToldInWords) {
    const auto recording = import_bytes(session(1.018), "x.csv");
    ASSERT_TRUE(recording.ok());
    const Trust trust = judge(*recording);
    const auto words = channel_words(*recording, trust, base::UnitSystem::metric);
    ASSERT_EQ(words.size(), 2U);
    EXPECT_EQ(words[1].name, "wheel speed");
    EXPECT_EQ(words[1].meaning, "wheel speed");
    EXPECT_EQ(words[1].written, "m/s");
    EXPECT_EQ(words[0].rate, "20\u00a0Hz");
    EXPECT_EQ(words[0].range, "72.0 … 107.6\u00a0km/h");
    EXPECT_EQ(words[0].gaps, "1, longest 0.85 s at 9.9 s");
    EXPECT_EQ(wheel_words(trust), "Wheel speed reads 1.8 % high against satellite speed.");
    EXPECT_EQ(wheel_words({}), "");
}

TEST(Trust, WhatWasLeftOutIsToldWithItsLinesOnce) {
    const auto recording = import_bytes("time (s),v (m/s)\n0,1\n1,2\n2,3,9\n3,4\n4\n5,x7\n6,7\n", "x.csv");
    ASSERT_TRUE(recording.ok());
    int left_out = 0;
    for (const auto& warning : recording->warnings) {
        if (remark_of(warning.kind) != recording::Remark::left_out) continue;
        ++left_out;
        const std::string told = sentence(warning);
        EXPECT_EQ(told.find("(line"), told.rfind("(line")) << told;
        EXPECT_NE(told.find("(line"), std::string::npos) << told;
    }
    EXPECT_EQ(left_out, 2);
}

} // namespace
} // namespace lapwright::import
