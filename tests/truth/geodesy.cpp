// SPDX-License-Identifier: GPL-3.0-or-later
// See geodesy.h.
#include "tests/truth/geodesy.h"

#include <cmath>
#include <numbers>

namespace truth {
namespace {

constexpr double kRadiansPerDegree = std::numbers::pi / 180.0;
constexpr double kSemiMajor_m = 6378137.0;
constexpr double kFlattening = 1.0 / 298.257223563;
constexpr double kSemiMinor_m = kSemiMajor_m * (1.0 - kFlattening);
constexpr double kEccentricity2 = kFlattening * (2.0 - kFlattening);
constexpr double kSecondEccentricity2 = kEccentricity2 / (1.0 - kEccentricity2);

double prime_vertical_m(const double sine) {
    return kSemiMajor_m / std::sqrt(1.0 - kEccentricity2 * sine * sine);
}

} // namespace

EarthCentred to_earth_centred(const GeodeticOrigin& place) {
    const double sine = std::sin(place.latitude_deg * kRadiansPerDegree);
    const double cosine = std::cos(place.latitude_deg * kRadiansPerDegree);
    const double radius = prime_vertical_m(sine);
    return {(radius + place.height_m) * cosine * std::cos(place.longitude_deg * kRadiansPerDegree),
            (radius + place.height_m) * cosine * std::sin(place.longitude_deg * kRadiansPerDegree),
            (radius * (1.0 - kEccentricity2) + place.height_m) * sine};
}

GeodeticOrigin to_geodetic(const EarthCentred& place) {
    const double p = std::hypot(place.x_m, place.y_m);
    double reduced = std::atan2(place.z_m * kSemiMajor_m, p * kSemiMinor_m);
    double latitude = 0.0;
    for (int i = 0; i < 3; ++i) {
        const double s = std::sin(reduced);
        const double c = std::cos(reduced);
        latitude = std::atan2(place.z_m + kSecondEccentricity2 * kSemiMinor_m * s * s * s,
                              p - kEccentricity2 * kSemiMajor_m * c * c * c);
        reduced = std::atan2((1.0 - kFlattening) * std::sin(latitude), std::cos(latitude));
    }
    const double sine = std::sin(latitude);
    const double radius = prime_vertical_m(sine);
    const double height = p * std::cos(latitude) + place.z_m * sine - radius * (1.0 - kEccentricity2 * sine * sine);
    return {latitude / kRadiansPerDegree, std::atan2(place.y_m, place.x_m) / kRadiansPerDegree, height};
}

GeodeticOrigin from_local(const GeodeticOrigin& origin, const double east_m, const double north_m, const double up_m) {
    const EarthCentred base = to_earth_centred(origin);
    const double sf = std::sin(origin.latitude_deg * kRadiansPerDegree);
    const double cf = std::cos(origin.latitude_deg * kRadiansPerDegree);
    const double sl = std::sin(origin.longitude_deg * kRadiansPerDegree);
    const double cl = std::cos(origin.longitude_deg * kRadiansPerDegree);
    return to_geodetic({base.x_m - sl * east_m - sf * cl * north_m + cf * cl * up_m,
                        base.y_m + cl * east_m - sf * sl * north_m + cf * sl * up_m,
                        base.z_m + cf * north_m + sf * up_m});
}

} // namespace truth
