// SPDX-License-Identifier: GPL-3.0-or-later
// WGS 84 against the worked example of EPSG Guidance Note 7-2 (checks.md D), and there and back again.
#include "tests/truth/geodesy.h"

#include <gtest/gtest.h>

#include <cmath>

namespace truth {
namespace {

TEST(Geodesy, WorkedExampleOfTheGuidanceNote) {
    const GeodeticOrigin place{53.0 + 48.0 / 60.0 + 33.820 / 3600.0, 2.0 + 7.0 / 60.0 + 46.380 / 3600.0, 73.0};
    const EarthCentred centred = to_earth_centred(place);
    EXPECT_NEAR(centred.x_m, 3771793.968, 1e-3);
    EXPECT_NEAR(centred.y_m, 140253.342, 1e-3);
    EXPECT_NEAR(centred.z_m, 5124304.349, 1e-3);
    const GeodeticOrigin back = from_local({55.0, 5.0, 200.0}, -189013.8691, -128642.0403, -4220.1708);
    EXPECT_NEAR(back.latitude_deg, place.latitude_deg, 1e-8); // 1.1 mm: the example is given to the millimetre
    EXPECT_NEAR(back.longitude_deg, place.longitude_deg, 1e-8);
    EXPECT_NEAR(back.height_m, 73.0, 1e-3);
}

TEST(Geodesy, ThereAndBackAgain) {
    for (double latitude = -80.0; latitude <= 80.0; latitude += 16.0) {
        const GeodeticOrigin place{latitude, 1.7 * latitude, 350.0};
        const GeodeticOrigin back = to_geodetic(to_earth_centred(place));
        EXPECT_NEAR(back.latitude_deg, place.latitude_deg, 1e-13);
        EXPECT_NEAR(back.longitude_deg, place.longitude_deg, 1e-13);
        EXPECT_NEAR(back.height_m, place.height_m, 1e-8);
    }
}

TEST(Geodesy, LocalScaleAtFiftyTwoDegrees) {
    const GeodeticOrigin origin{52.0, 1.0, 0.0};
    const GeodeticOrigin north = from_local(origin, 0.0, 1.0, 0.0);
    const GeodeticOrigin east = from_local(origin, 1.0, 0.0, 0.0);
    EXPECT_NEAR(1.0 / (north.latitude_deg - 52.0), 111267.353, 0.2); // metres a degree, checks.md D
    EXPECT_NEAR(1.0 / (east.longitude_deg - 1.0), 68678.016, 0.2);
}

} // namespace
} // namespace truth
