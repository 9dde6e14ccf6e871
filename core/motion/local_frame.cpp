// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/local_frame.h"

#include "core/base/constants.h"

#include <GeographicLib/LocalCartesian.hpp>

namespace lapwright::motion {
namespace {

constexpr double degree_rad = base::pi / 180.0;

GeographicLib::LocalCartesian projection(const Geodetic& origin) {
    return {origin.latitude_rad / degree_rad, origin.longitude_rad / degree_rad, origin.height_m};
}

} // namespace

EastNorthUp to_local(const LocalFrame& frame, const Geodetic& point) {
    EastNorthUp local;
    projection(frame.origin)
        .Forward(point.latitude_rad / degree_rad, point.longitude_rad / degree_rad, point.height_m, local.east_m,
                 local.north_m, local.up_m);
    return local;
}

Geodetic to_geodetic(const LocalFrame& frame, const EastNorthUp& point) {
    double latitude_deg = 0.0;
    double longitude_deg = 0.0;
    double height_m = 0.0;
    projection(frame.origin).Reverse(point.east_m, point.north_m, point.up_m, latitude_deg, longitude_deg, height_m);
    return {latitude_deg * degree_rad, longitude_deg * degree_rad, height_m};
}

} // namespace lapwright::motion
