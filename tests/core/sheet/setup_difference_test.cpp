// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/setup_difference.h"

#include <gtest/gtest.h>

#include <algorithm>

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

// Whatever the order in which it was written down.
TEST(SetupDifference, TheMostImportantComesFirst) {
    car::SetupSheet a;
    a.tyre = "semi-slick 245";
    a.items = {{"Fuel at start", "22 l"}, {"Tyre pressure hot", "1.85 bar"}, {"REAR WING angle", "7 deg"}};
    car::SetupSheet b;
    b.tyre = "semi-slick 275";
    b.items = {{"Fuel at start", "30 l"}, {"Tyre pressure hot", "2.05 bar"}, {"Front splitter", "60 mm"}};
    std::vector<std::string> names;
    for (const Pair& pair : setup_difference(a, b, base::UnitSystem::metric))
        names.push_back(pair.name);
    EXPECT_EQ(names, (std::vector<std::string>{"tyre", "REAR WING angle", "Front splitter", "Tyre pressure hot",
                                               "Fuel at start"}));
    std::ranges::reverse(a.items);
    std::ranges::reverse(b.items);
    std::vector<std::string> again;
    for (const Pair& pair : setup_difference(a, b, base::UnitSystem::metric))
        again.push_back(pair.name);
    EXPECT_EQ(again, names);
}

TEST(SetupDifference, IsEmptyWhereOneSetupIsNotKnown) {
    car::SetupSheet a;
    a.tyre = "semi-slick 245";
    EXPECT_TRUE(setup_difference(a, {}, base::UnitSystem::metric).empty());
}

} // namespace
} // namespace lapwright::sheet
