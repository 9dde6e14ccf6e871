// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/presentation/figures.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace lapwright;
using namespace lapwright::presentation;
using base::UnitSystem;

TEST(Figures, AreRoundedToWhatIsKnown) {
    const comparison::Figure known{41.1944, 0.02, false}; // 148.3 km/h ±0.14
    const comparison::Figure vague{41.1944, 1.0, false};
    const comparison::Figure bare{41.1944, std::nullopt, false};
    EXPECT_EQ(speed_text(known, UnitSystem::metric, Margin::without), "148.3");
    EXPECT_EQ(speed_text(known, UnitSystem::metric, Margin::with), "148.3 ±0.1");
    EXPECT_EQ(speed_text(vague, UnitSystem::metric, Margin::with), "148 ±7");
    EXPECT_EQ(speed_text(bare, UnitSystem::metric, Margin::with), "148");
    EXPECT_EQ(speed_text(std::nullopt, UnitSystem::metric, Margin::with), "—");
    EXPECT_EQ(both_speeds(known, std::nullopt, UnitSystem::us), "92.1 · —");
    EXPECT_EQ(place_text(comparison::Figure{100.0, 0.5, false}, UnitSystem::us, Margin::with), "328 ±3");
}

TEST(Figures, AChanceNamesTheLikelierAndIsNeverCertain) {
    comparison::Repeatability repeatability;
    EXPECT_EQ(chance_text(repeatability), "—");
    repeatability.chance_a_wins = 0.97;
    EXPECT_EQ(chance_text(repeatability), "A 97\u00a0%");
    repeatability.chance_a_wins = 0.001;
    EXPECT_EQ(chance_text(repeatability), "B over 99\u00a0%");
}

TEST(Figures, TheLineIsToldInsideOrOutsideOrNot) {
    using base::UnitSystem;
    const comparison::LineAt clear{100.0, 0.8, 0.2};
    EXPECT_EQ(line_text(clear, 1.0, UnitSystem::metric), "A 0.8 ±0.4 m inside"); // left of B in a left-hander
    EXPECT_EQ(line_text(clear, -1.0, UnitSystem::metric), "A 0.8 ±0.4 m outside");
    EXPECT_EQ(line_text({100.0, -0.8, 0.2}, 1.0, UnitSystem::metric), "A 0.8 ±0.4 m outside");
    EXPECT_EQ(line_text({100.0, 0.8, 0.7}, 1.0, UnitSystem::metric), "line cannot be told");
    EXPECT_EQ(line_text({100.0, 0.1, 0.1}, 1.0, UnitSystem::metric), "line level");
    EXPECT_EQ(sideways_text(-0.8, 0.2, UnitSystem::metric), "A 0.8 ±0.4 m right");
    EXPECT_EQ(sideways_text(0.8, 0.7, UnitSystem::metric), "line cannot be told (±1.4\u00a0m)");
    EXPECT_EQ(sideways_text(std::nan(""), {}, UnitSystem::metric), "—");
}

TEST(Figures, ASignedDifferenceHasOneMinusSignAndNoneAtZero) {
    EXPECT_EQ(signed_with_margin(0.1812, 0.016, 3), "+0.18 ±0.03");
    EXPECT_EQ(signed_with_margin(-0.06, {}, 3), "−0.06");
    EXPECT_EQ(signed_with_margin(-0.001, 0.05, 3), "0.00 ±0.10");
}
