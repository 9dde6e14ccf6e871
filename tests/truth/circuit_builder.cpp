// SPDX-License-Identifier: GPL-3.0-or-later
// From a list of corners to a closed track. The headings of the straights are fixed by the turns, so the end point and
// the length are linear in the straights' lengths: three equations, solved for the change that is smallest in
// sum(change^2 / length).
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

#include "tests/truth/track_catalogue.h"

namespace truth {
namespace {

constexpr double kDegree = std::numbers::pi / 180.0;

TrackPiece straight_piece(const double length_m) {
    return {length_m, {0.0, 0.0, 0.0, 0.0}};
}

TrackPiece transition(const double length_m, const double from, const double to, const bool linear) {
    const double rise = to - from;
    if (linear) return {length_m, {from, rise / length_m, 0.0, 0.0}};
    return {length_m, {from, 0.0, 3.0 * rise / (length_m * length_m), -2.0 * rise / (length_m * length_m * length_m)}};
}

void add_corner(std::vector<TrackPiece>& pieces, const CornerPlan& corner, const bool clothoids) {
    const double curvature = std::copysign(1.0 / corner.radius_m, corner.turn_deg);
    const double arc_m = std::abs(corner.turn_deg) * kDegree * corner.radius_m - corner.transition_m;
    pieces.push_back(transition(corner.transition_m, 0.0, curvature, clothoids));
    pieces.push_back({arc_m, {curvature, 0.0, 0.0, 0.0}});
    pieces.push_back(transition(corner.transition_m, curvature, 0.0, clothoids));
}

struct Layout {
    std::vector<TrackPiece> pieces;
    std::vector<TrackSegment> segments;
};

Layout lay_out(const CircuitPlan& plan, const std::vector<double>& straights) {
    Layout layout;
    double station = 0.0;
    const auto add_straight = [&](const std::string& name, const double length_m) {
        layout.pieces.push_back(straight_piece(length_m));
        layout.segments.push_back({name, false, station, station + length_m});
        station += length_m;
    };
    add_straight(plan.first_straight_name, straights[0]);
    for (std::size_t i = 0; i < plan.corners.size(); ++i) {
        const std::size_t before = layout.pieces.size();
        add_corner(layout.pieces, plan.corners[i], plan.clothoids);
        double length = 0.0;
        for (std::size_t p = before; p < layout.pieces.size(); ++p)
            length += layout.pieces[p].length_m;
        layout.segments.push_back({plan.corners[i].name, true, station, station + length});
        station += length;
        add_straight(plan.corners[i].straight_name, straights[i + 1]);
    }
    return layout;
}

using Row = std::array<double, 4>;

std::array<double, 3> solve3(std::array<Row, 3> m) {
    for (std::size_t column = 0; column < 3; ++column) {
        std::size_t pivot = column;
        for (std::size_t r = column + 1; r < 3; ++r) {
            if (std::abs(m[r][column]) > std::abs(m[pivot][column])) pivot = r;
        }
        std::swap(m[column], m[pivot]);
        for (std::size_t r = 0; r < 3; ++r) {
            if (r == column) continue;
            const double factor = m[r][column] / m[column][column];
            for (std::size_t c = column; c < 4; ++c)
                m[r][c] -= factor * m[column][c];
        }
    }
    return {m[0][3] / m[0][0], m[1][3] / m[1][1], m[2][3] / m[2][2]};
}

std::vector<double> closed_straights(const CircuitPlan& plan, std::vector<double> straights) {
    const TrackShape open(plan.name, lay_out(plan, straights).pieces, {}, plan.start);
    const TrackPoint end = open.at(open.length_m() * (1.0 - 1e-15));
    double heading = plan.start.heading_rad;
    std::array<Row, 3> equations{};
    std::vector<std::array<double, 3>> directions;
    for (std::size_t i = 0; i < straights.size(); ++i) {
        directions.push_back({std::cos(heading), std::sin(heading), 1.0});
        for (std::size_t r = 0; r < 3; ++r) {
            for (std::size_t c = 0; c < 3; ++c)
                equations[r][c] += straights[i] * directions[i][r] * directions[i][c];
        }
        if (i < plan.corners.size()) heading += plan.corners[i].turn_deg * kDegree;
    }
    equations[0][3] = plan.start.x_m - end.x_m;
    equations[1][3] = plan.start.y_m - end.y_m;
    equations[2][3] = plan.length_m - open.length_m();
    const auto multiplier = solve3(equations);
    for (std::size_t i = 0; i < straights.size(); ++i) {
        const auto& d = directions[i];
        straights[i] *= 1.0 + multiplier[0] * d[0] + multiplier[1] * d[1] + multiplier[2] * d[2];
    }
    return straights;
}

} // namespace

TrackShape build_circuit(const CircuitPlan& plan) {
    std::vector<double> straights{plan.first_straight_m};
    for (const CornerPlan& corner : plan.corners)
        straights.push_back(corner.straight_after_m);
    for (int pass = 0; pass < 3; ++pass)
        straights = closed_straights(plan, straights);
    Layout layout = lay_out(plan, straights);
    std::vector<double> banks;
    for (const CornerPlan& corner : plan.corners)
        banks.push_back(corner.bank_rad);
    return TrackShape(plan.name, std::move(layout.pieces), std::move(layout.segments), plan.start, plan.origin,
                      plan.waves, std::move(banks));
}

} // namespace truth
