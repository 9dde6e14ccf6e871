// SPDX-License-Identifier: GPL-3.0-or-later
// Shapes with closed forms. The ellipse's curvature is known at every point, and is carried between its points by
// cubic Hermite pieces; the figure eight is the sine-generated curve whose amplitude is the first zero of J0.
#include <cmath>
#include <numbers>
#include <utility>

#include "tests/truth/track_catalogue.h"

namespace truth {
namespace {

constexpr double kPi = std::numbers::pi;
constexpr std::size_t kPieces = 720;

TrackPiece hermite(const double length_m, const double k0, const double rate0, const double k1, const double rate1) {
    const double h = length_m;
    const double mean_rate = (k1 - k0) / h;
    return {h, {k0, rate0, (3.0 * mean_rate - 2.0 * rate0 - rate1) / h, (rate0 + rate1 - 2.0 * mean_rate) / (h * h)}};
}

struct EllipsePoint {
    double speed; // ds/dphi
    double curvature;
    double rate; // d curvature / ds
};

EllipsePoint ellipse_point(const double a, const double b, const double phi) {
    const double s = std::sin(phi);
    const double c = std::cos(phi);
    const double square = a * a * s * s + b * b * c * c;
    const double speed = std::sqrt(square);
    const double by_angle = -3.0 * a * b * (a * a - b * b) * s * c / (square * square * speed);
    return {speed, a * b / (square * speed), by_angle / speed};
}

double arc_length(const double a, const double b, const double from, const double to) {
    const double half = (to - from) / 2.0;
    const double middle = (from + to) / 2.0;
    const double node = half * std::sqrt(0.6);
    return half *
           (5.0 * ellipse_point(a, b, middle - node).speed + 8.0 * ellipse_point(a, b, middle).speed +
            5.0 * ellipse_point(a, b, middle + node).speed) /
           9.0;
}

} // namespace

TrackShape circle(const double radius_m) {
    return TrackShape("circle", {{2.0 * kPi * radius_m, {1.0 / radius_m, 0.0, 0.0, 0.0}}}, {},
                      {radius_m, 0.0, kPi / 2.0});
}

TrackShape stadium(const double straight_m, const double radius_m) {
    const TrackPiece straight{straight_m, {}};
    const TrackPiece half_circle{kPi * radius_m, {1.0 / radius_m, 0.0, 0.0, 0.0}};
    const double turn = half_circle.length_m;
    const double lap = 2.0 * (straight_m + turn);
    return TrackShape("stadium", {straight, half_circle, straight, half_circle},
                      {{"first straight", false, 0.0, straight_m},
                       {"first turn", true, straight_m, straight_m + turn},
                       {"second straight", false, straight_m + turn, lap - turn},
                       {"second turn", true, lap - turn, lap}});
}

TrackShape ellipse(const double a_m, const double b_m) {
    std::vector<TrackPiece> pieces;
    const double step = 2.0 * kPi / static_cast<double>(kPieces);
    for (std::size_t i = 0; i < kPieces; ++i) {
        const double from = step * static_cast<double>(i);
        const double to = step * static_cast<double>(i + 1);
        const EllipsePoint start = ellipse_point(a_m, b_m, from);
        const EllipsePoint end = ellipse_point(a_m, b_m, to);
        pieces.push_back(hermite(arc_length(a_m, b_m, from, to), start.curvature, start.rate, end.curvature, end.rate));
    }
    return TrackShape("ellipse", std::move(pieces), {}, {a_m, 0.0, kPi / 2.0});
}

TrackShape figure_eight(const double length_m) {
    constexpr double kFirstZeroOfJ0 = 2.404825557695773;
    const double rate = 2.0 * kPi / length_m;
    const double peak = kFirstZeroOfJ0 * rate;
    std::vector<TrackPiece> pieces;
    const double step = length_m / static_cast<double>(kPieces);
    for (std::size_t i = 0; i < kPieces; ++i) {
        const double from = rate * step * static_cast<double>(i);
        const double to = rate * step * static_cast<double>(i + 1);
        pieces.push_back(hermite(step, peak * std::sin(from), peak * rate * std::cos(from), peak * std::sin(to),
                                 peak * rate * std::cos(to)));
    }
    return TrackShape("figure eight", std::move(pieces));
}

} // namespace truth
