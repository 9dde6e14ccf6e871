// SPDX-License-Identifier: GPL-3.0-or-later
// A later sheet reaches what was expected with all else as before, and with nothing else.
#include "core/car/setup_reached.h"

#include <gtest/gtest.h>

namespace lapwright::car {
namespace {

SetupSheet before() {
    SetupSheet sheet;
    sheet.mass = Mass{1325.0, 5.0};
    sheet.tyre = "semi-slick 245";
    sheet.items = {{"Wing angle", "7 deg"}, {"Splitter height", "46 mm"}};
    sheet.known.downforce_area_m2 = KnownFigure{2.0, 0.2};
    return sheet;
}

SetupSheet with_wing(const std::string& value) {
    SetupSheet sheet = before();
    sheet.items[0].value = value;
    return sheet;
}

SetupSheet wing(const std::string& value) {
    SetupSheet sheet;
    sheet.items = {{"wing angle", value}};
    return sheet;
}

TEST(SetupReached, ByTheItemThatWasToBeChangedAlone) {
    EXPECT_TRUE(reached(with_wing("3 deg"), before(), wing("3 deg")));
    EXPECT_TRUE(reached(with_wing("3.0 DEG"), before(), wing("3 deg")));
    EXPECT_FALSE(reached(with_wing("3.2 deg"), before(), wing("3 deg")));
    EXPECT_FALSE(reached(with_wing("3 mm"), before(), wing("3 deg")));
    EXPECT_FALSE(reached(before(), before(), wing("3 deg")));
    SetupSheet more = with_wing("3 deg");
    more.items[1].value = "40 mm";
    EXPECT_FALSE(reached(more, before(), wing("3 deg"))) << "the splitter was changed too";
    more = with_wing("3 deg");
    more.tyre = "slick";
    EXPECT_FALSE(reached(more, before(), wing("3 deg"))) << "another tyre";
    more = with_wing("3 deg");
    more.mass->value_kg += 30.0;
    EXPECT_FALSE(reached(more, before(), wing("3 deg"))) << "a passenger";
    more = with_wing("3 deg");
    more.items.push_back({"Gurney", "10 mm"});
    EXPECT_FALSE(reached(more, before(), wing("3 deg"))) << "one more part";
    more = with_wing("3 deg");
    more.mass->value_kg -= 6.0;
    EXPECT_TRUE(reached(more, before(), wing("3 deg"))) << "some fuel";
}

TEST(SetupReached, ByMassAndKnownFiguresToAFifthOfTheirChange) {
    SetupSheet lighter;
    lighter.mass = Mass{1285.0, 5.0};
    SetupSheet sheet = before();
    for (const auto& [mass_kg, fits] : {std::pair(1285.0, true), std::pair(1292.5, true), std::pair(1277.5, true),
                                        std::pair(1294.0, false), std::pair(1325.0, false)}) {
        sheet.mass->value_kg = mass_kg;
        EXPECT_EQ(reached(sheet, before(), lighter), fits) << mass_kg;
    }
    SetupSheet more;
    more.known.downforce_area_m2 = KnownFigure{2.5, 0.2};
    sheet = before();
    EXPECT_FALSE(reached(sheet, before(), more));
    sheet.known.downforce_area_m2->value = 2.42;
    EXPECT_TRUE(reached(sheet, before(), more));
    sheet.known.downforce_area_m2.reset();
    EXPECT_FALSE(reached(sheet, before(), more));
}

TEST(SetupReached, NeverByAnExpectationOfNothing) {
    EXPECT_TRUE(expects_nothing({}));
    EXPECT_FALSE(reached(before(), before(), {}));
    EXPECT_TRUE(as_before(before(), before()));
    EXPECT_FALSE(as_before(with_wing("3 deg"), before()));
    EXPECT_TRUE(as_before({}, {}));
    EXPECT_FALSE(as_before({}, before()));
}

} // namespace
} // namespace lapwright::car
