// SPDX-License-Identifier: GPL-3.0-or-later
// Puts the driver's shares on a grid of unwrapped stations, solves the speed over all laps in one go (so that laps join
// without a seam) and hands the curves to Session.
#include "tests/truth/drive.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "tests/truth/random.h"

namespace truth {
namespace {

struct Shares {
    double grip = 1.0;
    double brake = 1.0;
};

Shares habit(const DriverTruth& driver, Random& style, const std::size_t corner) {
    const double factor = corner < driver.corner_factor.size() ? driver.corner_factor[corner] : 1.0;
    const double grip = std::min(0.995, driver.grip_share + driver.grip_share_habit_sd * style.normal());
    return {factor * grip, std::min(0.99, driver.brake_share + driver.brake_share_habit_sd * style.normal())};
}

std::vector<Shares> habits(const TrackShape& track, const DriverTruth& driver) {
    Random style(driver.style_seed, 31);
    std::vector<Shares> result;
    const std::size_t corners = std::max<std::size_t>(1, track.corners().size());
    for (std::size_t c = 0; c < corners; ++c)
        result.push_back(habit(driver, style, c));
    return result;
}

/// Shares by lap and corner, laps counted from the out lap.
std::vector<std::vector<Shares>> lap_shares(const TrackShape& track, const DriverTruth& driver, const int laps,
                                            const std::uint64_t seed) {
    Random spread(seed, 37);
    const std::vector<Shares> usual = habits(track, driver);
    std::vector<std::vector<Shares>> result;
    for (int lap = 0; lap < laps; ++lap) {
        std::vector<Shares> row;
        for (const Shares& share : usual) {
            const double grip = share.grip + driver.grip_share_lap_sd * spread.normal();
            const double brake = share.brake + driver.brake_share_lap_sd * spread.normal();
            row.push_back({std::min(0.998, grip), std::min(0.998, brake)});
        }
        result.push_back(std::move(row));
    }
    return result;
}

/// Share of a station: a corner's own inside it, blended linearly along the straight between two corners.
struct Blend {
    std::size_t corner = 0;
    double towards_next = 0.0; // 0 in the corner, grows to 1 along the straight after it
};

Blend blend_at(const std::vector<TrackSegment>& corners, const double length_m, const double station_m) {
    if (corners.size() < 2) return {};
    std::size_t c = corners.size() - 1;
    while (c > 0 && corners[c].start_m > station_m)
        --c;
    const bool before_first = station_m < corners.front().start_m;
    if (before_first) c = corners.size() - 1;
    const double since = station_m - corners[c].end_m + (before_first ? length_m : 0.0);
    if (since <= 0.0) return {c, 0.0};
    const std::size_t next = (c + 1) % corners.size();
    const double gap = corners[next].start_m - corners[c].end_m + (next == 0 ? length_m : 0.0);
    return {c, std::min(1.0, since / gap)};
}

class Grid {
  public:
    Grid(const TrackShape& track, const DriverTruth& driver, const SessionPlan& plan, const std::uint64_t seed)
        : track_(track), driver_(driver), plan_(plan), corners_(track.corners()),
          shares_(lap_shares(track, driver, plan.flying_laps + 2, seed)) {}

    [[nodiscard]] RoadPoint point(const DrivenLine& line, const double S, const double step_m) const {
        const double length = track_.length_m();
        const int lap = std::clamp(static_cast<int>(std::floor(S / length)), 0, plan_.flying_laps + 1);
        const double station = S - length * std::floor(S / length);
        const DrivenLine::Geometry here = line.geometry(track_, S);
        const DrivenLine::Geometry middle = line.geometry(track_, S + step_m / 2.0);
        RoadPoint p;
        p.path_step_m = step_m * middle.stretch;
        p.curvature_per_m = here.curvature_per_m;
        p.slope = track_.slope(S) / here.stretch;
        p.lateral_gravity_mps2 = track_.lateral_gravity_mps2(S);
        const double heading = here.bend.heading_rad + here.drift_rad;
        p.headwind_mps = -(plan_.wind_east_mps * std::cos(heading) + plan_.wind_north_mps * std::sin(heading));
        p.exit_share = driver_.exit_share;
        const Blend blend = blend_at(corners_, length, station);
        const Shares now = shares_at(lap, blend.corner);
        const bool wraps = blend.corner + 1 >= std::max<std::size_t>(1, corners_.size());
        const bool in_next_lap = wraps && station > corners_end();
        const bool in_last_lap = wraps && !in_next_lap && blend.towards_next > 0.0;
        const Shares from = in_last_lap ? shares_at(lap - 1, blend.corner) : now;
        const Shares to = shares_at(in_next_lap ? lap + 1 : lap, wraps ? 0 : blend.corner + 1);
        p.grip_share = from.grip + blend.towards_next * (to.grip - from.grip);
        p.brake_share = blend.towards_next > 0.0 ? to.brake : from.brake;
        slow_down(p, lap, station);
        return p;
    }

  private:
    [[nodiscard]] double corners_end() const { return corners_.empty() ? 0.0 : corners_.back().end_m; }

    [[nodiscard]] Shares shares_at(const int lap, const std::size_t corner) const {
        const int last = static_cast<int>(shares_.size()) - 1;
        return shares_[static_cast<std::size_t>(std::clamp(lap, 0, last))][corner];
    }

    void apply(RoadPoint& p, const double grip, const double throttle) const {
        p.grip_share *= grip;
        p.brake_share *= grip;
        p.throttle_limit = std::min(p.throttle_limit, throttle);
    }

    void slow_down(RoadPoint& p, const int lap, const double station) const {
        const double length = track_.length_m();
        const double part = station / length;
        if (plan_.pit_lane && lap == 0 && part < 0.80) apply(p, 0.72, part < 0.08 ? 0.25 : 0.55);
        if (plan_.pit_lane && lap == plan_.flying_laps + 1 && part > 0.06) apply(p, 0.66, part > 0.85 ? 0.3 : 0.45);
        if (lap == plan_.traffic_lap && lap > 0 && part > 0.30 && part < 0.75) apply(p, 0.88, 0.72);
        for (const Slowing& slowing : plan_.mistakes) {
            if (slowing.lap == lap && station >= slowing.from_m && station <= slowing.to_m) {
                apply(p, slowing.grip_factor, slowing.throttle_limit);
            }
        }
    }

    const TrackShape& track_;
    const DriverTruth& driver_;
    const SessionPlan& plan_;
    std::vector<TrackSegment> corners_;
    std::vector<std::vector<Shares>> shares_;
};

std::vector<LapTruth> lap_list(const SessionPlan& plan) {
    std::vector<LapTruth> laps{{0, LapKind::out, 0.0, 0.0}};
    for (int lap = 1; lap <= plan.flying_laps; ++lap) {
        const bool mistake = std::any_of(plan.mistakes.begin(), plan.mistakes.end(),
                                         [lap](const Slowing& slowing) { return slowing.lap == lap; });
        laps.push_back({lap,
                        lap == plan.traffic_lap ? LapKind::traffic : (mistake ? LapKind::mistake : LapKind::flying),
                        0.0, 0.0});
    }
    laps.push_back({plan.flying_laps + 1, LapKind::in, 0.0, 0.0});
    return laps;
}

} // namespace

std::vector<double> habitual_grip_shares(const TrackShape& track, const DriverTruth& driver) {
    std::vector<double> result;
    for (const Shares& share : habits(track, driver))
        result.push_back(share.grip);
    return result;
}

Session drive_session(const std::shared_ptr<const TrackShape>& track, const CarTruth& car, const DriverTruth& driver,
                      const SessionPlan& plan, const std::uint64_t seed) {
    const double length = track->length_m();
    const double step = length / std::round(length / plan.grid_step_m);
    PitLane pit;
    pit.start_m = plan.pit_lane ? step * std::round(150.0 / step) : 0.0;
    pit.end_m = length * (plan.flying_laps + 2) - (plan.pit_lane ? step * std::round(220.0 / step) : 0.0);
    if (!plan.pit_lane) pit.offset_m = 0.0;
    DrivenLine line(*track, driver, pit, seed);

    const Grid grid(*track, driver, plan, seed);
    const auto points = static_cast<std::size_t>(std::round((pit.end_m - pit.start_m) / step)) + 1;
    std::vector<RoadPoint> road;
    road.reserve(points);
    for (std::size_t i = 0; i < points; ++i) {
        road.push_back(grid.point(line, pit.start_m + step * static_cast<double>(i), step));
    }
    const Pedals pedals{driver.coast_s, driver.throttle_ramp_s, driver.response_s};
    const double end_speed = plan.pit_lane ? plan.start_speed_mps : 120.0;
    const SpeedProfile profile = solve_speed(car, plan.air_density, road, pedals, plan.start_speed_mps, end_speed);
    return Session(track, car, plan.air_density, std::move(line), pit.start_m, step, profile, lap_list(plan),
                   plan.standing_s);
}

Session drive_session(const TrackShape& track, const CarTruth& car, const DriverTruth& driver, const SessionPlan& plan,
                      const std::uint64_t seed) {
    return drive_session(std::make_shared<const TrackShape>(track), car, driver, plan, seed);
}

} // namespace truth
