// SPDX-License-Identifier: GPL-3.0-or-later
// Local east-north-up metres to WGS 84 latitude, longitude, height, through earth-centred coordinates (no flat-earth
// shortcut). Constants of WGS 84; formulas as in EPSG Guidance Note 7-2, whose worked example is a test here.
#pragma once

#include "tests/truth/track_shape.h"

namespace truth {

struct EarthCentred {
    double x_m = 0.0;
    double y_m = 0.0;
    double z_m = 0.0;
};

[[nodiscard]] EarthCentred to_earth_centred(const GeodeticOrigin& place);
/// Within 1e-9 m for heights of a few kilometres (Bowring 1976, iterated a fixed number of times).
[[nodiscard]] GeodeticOrigin to_geodetic(const EarthCentred& place);
[[nodiscard]] GeodeticOrigin from_local(const GeodeticOrigin& origin, double east_m, double north_m, double up_m);

} // namespace truth
