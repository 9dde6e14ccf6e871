// SPDX-License-Identifier: GPL-3.0-or-later
// East-north-up frame tangent to the WGS 84 ellipsoid at an origin (GeographicLib::LocalCartesian; Karney 2013).
#pragma once

namespace lapwright::motion {

struct Geodetic {
    double latitude_rad = 0.0;
    double longitude_rad = 0.0;
    double height_m = 0.0; // above the ellipsoid
};

struct EastNorthUp {
    double east_m = 0.0;
    double north_m = 0.0;
    double up_m = 0.0;
};

struct LocalFrame {
    Geodetic origin;
    // False: positions came in metres of the file's own frame, and `origin` says nothing.
    bool on_earth = true;
};

[[nodiscard]] EastNorthUp to_local(const LocalFrame& frame, const Geodetic& point);
[[nodiscard]] Geodetic to_geodetic(const LocalFrame& frame, const EastNorthUp& point);

} // namespace lapwright::motion
