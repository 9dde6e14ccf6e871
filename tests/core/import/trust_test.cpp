// SPDX-License-Identifier: GPL-3.0-or-later
// The trust report: figures a channel, gaps, wheel speed against satellites.
#include "core/import/import.h"
#include "core/import/trust.h"

#include "core/base/number_text.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace lapwright::import {
namespace {

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

std::string message_of(const recording::Recording& recording, std::string_view code) {
    const auto found = std::ranges::find(recording.warnings, code, &recording::Warning::code);
    return found == recording.warnings.end() ? "" : found->message;
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
    EXPECT_NE(message_of(*recording, "gaps").find("0.85 s"), std::string::npos);
}

TEST(Trust, HoldsWheelSpeedAgainstSatellites) {
    const auto high = import_bytes(session(1.018), "x.csv");
    ASSERT_TRUE(high.ok());
    EXPECT_NEAR(wheel_speed_scale(*high).value(), 1.018, 1e-4);
    EXPECT_NE(message_of(*high, "wheel_speed_scale").find("1.8 % high"), std::string::npos);
    const auto right = import_bytes(session(1.0), "x.csv");
    ASSERT_TRUE(right.ok());
    EXPECT_EQ(message_of(*right, "wheel_speed_scale"), "");
}

} // namespace
} // namespace lapwright::import
