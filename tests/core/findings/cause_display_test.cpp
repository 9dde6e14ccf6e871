// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/cause_display.h"
#include "core/findings/wording.h"

#include <gtest/gtest.h>

namespace lapwright::findings {
namespace {

using causes::Seconds;

TEST(CauseCell, NamesWhomItFavoursAndWhetherThatIsSure) {
    const Cell a = cell({0.334, 0.25, 0.41});
    EXPECT_EQ(a.text, "A 0.33");
    EXPECT_EQ(a.favours, Favours::a);
    EXPECT_TRUE(a.told);
    const Cell b = cell({-0.058, -0.2, 0.08});
    EXPECT_EQ(b.text, "B 0.06");
    EXPECT_FALSE(b.told);
    EXPECT_EQ(cell({-0.004, -0.01, 0.01}).text, "·");
    EXPECT_EQ(seconds_in_full({0.334, -0.02, 0.41}), "A 0.33 s, 95 % between B 0.02 and A 0.41");
    EXPECT_EQ(seconds_in_full({-0.334, -0.41, -0.2}), "B 0.33 s, 95 % between B 0.20 and B 0.41") << "low to high";
}

// The half-width of a cause reads the same in the matrix and in its finding, from two hundredths on.
TEST(IntervalCell, HasTheCharactersOfTheFinding) {
    for (double half = 0.02; half < 20.0; half *= 1.13) {
        const Seconds seconds{-1.85, -1.85 - half, -1.85 + half};
        const std::string worth = worth_text(seconds.value, seconds.low, seconds.high);
        EXPECT_EQ(interval_cell(seconds), worth.substr(worth.find("±"))) << half;
    }
}

TEST(LapChange, KeepsItsSignAndIsRoundedToWhatIsKnown) {
    EXPECT_EQ(lap_change_text({-0.1432, -0.2, -0.08}), "−0.14 ±0.06\u00a0s");
    EXPECT_EQ(predicted_lap_text(89.888, {-0.1432, -0.2, -0.08}), "1:29.74");
}

TEST(ChangeText, IsInTheShownUnit) {
    EXPECT_EQ(change_text(Lever::downforce, 0.10, base::UnitSystem::metric), "+10\u00a0%");
    EXPECT_EQ(change_text(Lever::mass, -20.0, base::UnitSystem::metric), "−20\u00a0kg");
    EXPECT_EQ(change_text(Lever::mass, -20.0 * 0.45359237, base::UnitSystem::us), "−20\u00a0lb");
    EXPECT_EQ(change_text(Lever::power, 0.0, base::UnitSystem::metric), "as it is");
}

TEST(Levers, AddToTheirOwnFigure) {
    causes::Change change;
    add(change, Lever::grip, 0.01);
    add(change, Lever::mass, -10.0);
    add(change, Lever::mass, -5.0);
    EXPECT_DOUBLE_EQ(change.grip_share, 0.01);
    EXPECT_DOUBLE_EQ(change.mass_kg, -15.0);
    EXPECT_DOUBLE_EQ(change.power_w, 0.0);
}

TEST(WithHalfWidth, RoundsBothToWhatIsKnown) {
    EXPECT_EQ(with_half_width(10184.0, 2703.0, 0), "10000 ±3000");
    EXPECT_EQ(with_half_width(3235.0, 142.0, 0), "3240 ±140");
    EXPECT_EQ(with_half_width(312.6, 8.2, 1), "313 ±8");
    EXPECT_EQ(with_half_width(1325.0, 10.2, 0), "1325 ±10");
    EXPECT_EQ(with_half_width(-0.314, 0.12, 2), "−0.31 ±0.12");
    EXPECT_EQ(with_half_width(-40.0, 210.0, 0), "0 ±200");
    EXPECT_EQ(with_half_width(1.284, 0.047, 3), "1.28 ±0.05");
}

TEST(MissingMass, SaysWhoseItIs) {
    causes::Explanation e;
    EXPECT_EQ(missing_mass_sentence(e), "");
    e.per_kilogram = true;
    EXPECT_NE(missing_mass_sentence(e).find("neither car"), std::string::npos);
    e.car_a.mass_kg = car::CarFigure{{1300.0, 1290.0, 1310.0}, car::DecidedBy::setup};
    EXPECT_NE(missing_mass_sentence(e).find("car B is not known"), std::string::npos);
}

} // namespace
} // namespace lapwright::findings
