// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/driver_display.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace lapwright::findings {
namespace {

using comparison::Figure;

causes::SegmentRow row() {
    causes::SegmentRow row;
    row.segment.name = "Sweep";
    row.segment.end_m = 200.0;
    row.segment.kind = track::SegmentKind::corner;
    row.use_a = 0.97;
    row.use_b = 0.93;
    row.driving_a.braking_point_m = Figure{112.0, std::nullopt, false};
    row.driving_b.braking_point_m = Figure{100.0, 2.0, true};
    row.driving_a.min_speed_at_m = Figure{150.0, 1.0, false};
    row.driving_b.min_speed_at_m = Figure{148.0, 1.0, false};
    row.driving_a.lift_to_brakes_s = Figure{0.30, 0.05, true};
    row.driving_b.lift_to_brakes_s = Figure{0.25, 0.05, true};
    row.driving_a.shifts = Figure{2.0, std::nullopt, false};
    return row;
}

const DriverFigure* named(const std::vector<DriverFigure>& all, const std::string& name) {
    const auto found = std::ranges::find(all, name, &DriverFigure::name);
    return found == all.end() ? nullptr : &*found;
}

TEST(DriverDisplay, SaysWhoBrakesLaterAndWhatWasTakenFromMotion) {
    const auto all = driver_figures(row(), base::UnitSystem::metric);
    const DriverFigure* brakes = named(all, "brakes, m before slowest");
    ASSERT_NE(brakes, nullptr);
    EXPECT_EQ(brakes->a, "38");
    EXPECT_EQ(brakes->b.substr(0, std::string("≈48").size()), "≈48");
    EXPECT_EQ(brakes->says, "A 12\u00a0m later");
    EXPECT_EQ(brakes->favours, Favours::a);
    EXPECT_EQ(named(all, "tyres used")->b, "93 %");
}

TEST(DriverDisplay, FiguresBelowZeroHaveTheMinusOfPrint) {
    causes::SegmentRow before = row();
    before.driving_a.throttle_opens_m = Figure{144.0, std::nullopt, false};
    before.driving_b.throttle_opens_m = Figure{140.0, 1.0, true};
    before.driving_a.shift_cost_s = Figure{-0.02, 0.01, false};
    before.driving_b.shift_cost_s = Figure{-0.004, std::nullopt, false};
    const auto all = driver_figures(before, base::UnitSystem::metric);
    EXPECT_EQ(named(all, "throttle opens, m after slowest")->a, "−6");
    EXPECT_TRUE(named(all, "throttle opens, m after slowest")->b.starts_with("≈−8 ±"));
    EXPECT_TRUE(named(all, "lost in shifts, s")->a.starts_with("−0.02 ±"));
    EXPECT_EQ(named(all, "lost in shifts, s")->b, "0.00");
}

// Whoever the sides are, over drawn differences and errors: a claim and a colour only outside the error.
TEST(DriverDisplay, WhatMayBeChanceIsNotClaimed) {
    std::mt19937 engine(7);
    std::uniform_real_distribution<double> metres(-150.0, 150.0);
    std::uniform_real_distribution<double> errors(0.05, 80.0);
    int claims = 0;
    for (int i = 0; i < 500; ++i) {
        causes::SegmentRow drawn = row();
        const double later_m = metres(engine);
        const double sd_m = errors(engine);
        drawn.driving_a.braking_point_m = Figure{100.0 + later_m, sd_m, true};
        drawn.driving_b.braking_point_m = Figure{100.0, 0.01, true};
        drawn.driving_a.min_speed_at_m = drawn.driving_b.min_speed_at_m;
        causes::SegmentRow swapped = drawn;
        std::swap(swapped.driving_a, swapped.driving_b);
        const std::string name = "brakes, m before slowest";
        const auto all = driver_figures(drawn, base::UnitSystem::metric);
        const auto turned = driver_figures(swapped, base::UnitSystem::metric);
        const std::string& says = named(all, name)->says;
        const bool claimed = says.starts_with("A ") || says.starts_with("B ");
        const bool sure = std::abs(later_m) > 1.96 * std::hypot(sd_m, 0.01);
        if (std::abs(later_m) > 0.6 && std::abs(std::abs(later_m) - 1.96 * sd_m) > 0.01 * sd_m) {
            EXPECT_EQ(claimed, sure) << later_m << " ±" << 1.96 * sd_m << ": " << says;
        }
        EXPECT_EQ(claimed, named(all, name)->favours != Favours::neither);
        if (!claimed) {
            EXPECT_TRUE(says == "level" || says == "cannot be told") << says;
            EXPECT_EQ(named(turned, name)->says, says);
        } else {
            EXPECT_EQ(named(turned, name)->says.substr(1), says.substr(1));
            EXPECT_NE(named(turned, name)->says, says);
        }
        claims += claimed ? 1 : 0;
    }
    EXPECT_GT(claims, 100);
    EXPECT_LT(claims, 400);
    EXPECT_EQ(named(driver_figures(row(), base::UnitSystem::metric), "lift to brakes, s")->says, "cannot be told");
}

TEST(DriverDisplay, AbsentIsADashAndWhatNobodyHasIsLeftOut) {
    const auto all = driver_figures(row(), base::UnitSystem::us);
    EXPECT_EQ(named(all, "shifts")->a, "2");
    EXPECT_EQ(named(all, "shifts")->b, "—");
    EXPECT_EQ(named(all, "neither pedal, s"), nullptr);
    EXPECT_EQ(named(all, "full throttle, ft after slowest"), nullptr);
    ASSERT_NE(named(all, "brakes, ft before slowest"), nullptr);
    EXPECT_EQ(named(all, "brakes, ft before slowest")->says, "A 39\u00a0ft later");
}

TEST(DriverDisplay, TheLapIsTheSumOfItsSegments) {
    causes::Explanation e;
    e.segments = {row(), row()};
    const auto all = driver_figures(e);
    EXPECT_EQ(named(all, "shifts")->a, "4");
    EXPECT_EQ(named(all, "lift to brakes, s")->a, "≈0.60 ±0.14"); // 1.96 · 0.05 · √2
    EXPECT_EQ(named(all, "tyres used in corners")->a, "97 %");
    EXPECT_EQ(named(all, "engine used on straights"), nullptr);
}

} // namespace
} // namespace lapwright::findings
