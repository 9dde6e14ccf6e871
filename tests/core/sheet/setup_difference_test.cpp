// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/setup_difference.h"

#include <gtest/gtest.h>

namespace lapwright::sheet {
namespace {

TEST(SetupDifference, NamesWhatDiffersAndWhatOneSideLacks) {
    car::SetupSheet a;
    a.mass = car::Mass{1325.0, 5.0};
    a.tyre = "semi-slick 245";
    a.items = {{"Wing angle", "7 deg"}, {"Camber", "3 deg"}};
    car::SetupSheet b = a;
    b.mass->value_kg = 1465.0;
    b.items = {{"Camber", "3 deg"}, {"Ballast", "10 kg"}};
    const auto pairs = setup_difference(a, b, base::UnitSystem::metric);
    ASSERT_EQ(pairs.size(), 3U);
    EXPECT_EQ(pairs[0].text, "1325\u00a0kg · 1465\u00a0kg");
    EXPECT_EQ(pairs[1].name, "Wing angle");
    EXPECT_EQ(pairs[1].text, "7 deg · —");
    EXPECT_EQ(pairs[2].text, "— · 10 kg");
}

TEST(SetupDifference, IsEmptyWhereOneSetupIsNotKnown) {
    car::SetupSheet a;
    a.tyre = "semi-slick 245";
    EXPECT_TRUE(setup_difference(a, {}, base::UnitSystem::metric).empty());
}

} // namespace
} // namespace lapwright::sheet
