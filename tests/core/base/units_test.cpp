// SPDX-License-Identifier: GPL-3.0-or-later
// Exact units: NIST SP 811 (2008) appendix B (factors from memory, recomputed from the definitions).
#include "core/base/units.h"

#include <gtest/gtest.h>

using namespace lapwright::base;

TEST(Units, ExactFactors) {
    EXPECT_DOUBLE_EQ(to_si(1.0, Unit::mile_per_hour), 0.44704);
    EXPECT_DOUBLE_EQ(to_si(22.4, Unit::knot), 22.4 * 1852.0 / 3600.0);
    EXPECT_DOUBLE_EQ(to_si(1.0, Unit::pound), 0.45359237);
    EXPECT_NEAR(to_si(1.0, Unit::pound_force), 4.4482216152605, 1e-13);
    EXPECT_NEAR(to_si(1.0, Unit::pound_force_foot), 1.3558179483314004, 1e-15);
    EXPECT_NEAR(to_si(1.0, Unit::pound_per_square_inch), 6894.757293168, 1e-9);
    EXPECT_NEAR(to_si(1.0, Unit::horsepower), 745.69987158227022, 1e-11);
    EXPECT_NEAR(to_si(1.0, Unit::metric_horsepower), 735.49875, 1e-11);
    EXPECT_DOUBLE_EQ(to_si(212.0, Unit::fahrenheit), 373.15);
    EXPECT_NEAR(to_si(32.0, Unit::fahrenheit), 273.15, 1e-12);
}

TEST(Units, EveryUnitSurvivesARoundTrip) {
    for (int i = 0; i <= static_cast<int>(Unit::ampere); ++i) {
        const auto unit = static_cast<Unit>(i);
        EXPECT_NEAR(from_si(to_si(12.345, unit), unit), 12.345, 1e-12) << symbol(unit);
        EXPECT_DOUBLE_EQ(definition(si_unit(quantity(unit))).factor, 1.0) << symbol(unit);
    }
}
