// SPDX-License-Identifier: GPL-3.0-or-later
// A track is drawn until it is one that could be built: straights that stay straights when the lap is closed, and no
// two pieces of road on top of each other.
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "tests/worlds/draws.h"
#include "tests/worlds/world.h"

namespace worlds {
namespace {

constexpr double degree = std::numbers::pi / 180.0;
constexpr double min_straight_m = 20.0;
constexpr double min_between_roads_m = 25.0;

// Corners of both hands whose turns add up to once round.
std::vector<truth::CornerPlan> draw_corners(truth::Random& random, double way_round) {
    const std::size_t count = 5 + index_below(random, 11);
    std::vector<truth::CornerPlan> corners(count);
    double sum = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        truth::CornerPlan& corner = corners[i];
        corner.name = "Bend " + std::to_string(i + 1);
        corner.straight_name = "After bend " + std::to_string(i + 1);
        const double hand = chance(random, 0.72) ? way_round : -way_round;
        corner.turn_deg = hand * between(random, 35.0, 150.0);
        corner.radius_m = between_log(random, 18.0, 190.0);
        corner.straight_after_m = between_log(random, 60.0, 620.0);
        corner.bank_rad = chance(random, 0.3) ? degree * between(random, -1.5, 4.0) : 0.0;
        sum += corner.turn_deg;
    }
    // The rest is shared by all corners of the way round.
    double shared = 0.0;
    for (const truth::CornerPlan& corner : corners)
        if (corner.turn_deg * way_round > 0.0) shared += std::abs(corner.turn_deg);
    const double scale = shared > 0.0 ? 1.0 + (360.0 * way_round - sum) * way_round / shared : 0.0;
    for (truth::CornerPlan& corner : corners) {
        if (corner.turn_deg * way_round > 0.0) corner.turn_deg *= scale;
        const double arc_m = std::abs(corner.turn_deg) * degree * corner.radius_m;
        corner.transition_m = std::min(between(random, 12.0, 40.0), 0.45 * arc_m);
    }
    return corners;
}

bool turns_are_corners(const std::vector<truth::CornerPlan>& corners) {
    return std::ranges::all_of(corners, [](const truth::CornerPlan& corner) {
        return std::abs(corner.turn_deg) > 22.0 && std::abs(corner.turn_deg) < 205.0;
    });
}

bool could_be_built(const truth::TrackShape& track) {
    if (track.length_m() < 1400.0 || track.length_m() > 6000.0 || track.closure_error_m() > 1e-3) return false;
    for (const truth::TrackSegment& segment : track.segments())
        if (!segment.is_corner && segment.end_m - segment.start_m < min_straight_m) return false;
    constexpr double step_m = 10.0;
    std::vector<truth::TrackPoint> points;
    for (double s = 0.0; s < track.length_m(); s += step_m)
        points.push_back(track.at(s));
    const auto apart = static_cast<std::size_t>(90.0 / step_m);
    for (std::size_t i = 0; i < points.size(); ++i)
        for (std::size_t j = i + apart; j < std::min(points.size(), i + points.size() - apart); ++j)
            if (std::hypot(points[i].x_m - points[j].x_m, points[i].y_m - points[j].y_m) < min_between_roads_m)
                return false;
    return true;
}

std::vector<truth::HeightWave> draw_hills(truth::Random& random, double length_m) {
    std::vector<truth::HeightWave> waves;
    for (int cycles = 1; cycles <= 3; ++cycles) {
        const double steepest = between(random, 0.0, 0.02); // of this wave alone
        waves.push_back({steepest * length_m / (2.0 * std::numbers::pi * cycles), cycles,
                         between(random, 0.0, 2.0 * std::numbers::pi)});
    }
    return waves;
}

} // namespace

std::shared_ptr<const truth::TrackShape> draw_track(std::uint64_t seed) {
    for (std::uint64_t attempt = 0;; ++attempt) {
        truth::Random random(seed, 10'000 + attempt);
        truth::CircuitPlan plan;
        const double way_round = chance(random, 0.5) ? 1.0 : -1.0;
        plan.corners = draw_corners(random, way_round);
        if (!turns_are_corners(plan.corners)) continue;
        plan.name = "Invented track " + std::to_string(seed);
        plan.first_straight_name = "Start";
        plan.first_straight_m = between(random, 180.0, 420.0);
        plan.corners.back().straight_after_m = between(random, 120.0, 320.0);
        plan.length_m = plan.first_straight_m;
        for (const truth::CornerPlan& corner : plan.corners)
            plan.length_m +=
                corner.straight_after_m + std::abs(corner.turn_deg) * degree * corner.radius_m + corner.transition_m;
        plan.origin = {between(random, -55.0, 62.0), between(random, -179.0, 179.0), between(random, 0.0, 700.0)};
        plan.start.heading_rad = between(random, 0.0, 2.0 * std::numbers::pi);
        if (chance(random, 0.6)) plan.waves = draw_hills(random, plan.length_m);
        auto track = std::make_shared<const truth::TrackShape>(truth::build_circuit(plan));
        if (could_be_built(*track)) return track;
    }
}

} // namespace worlds
