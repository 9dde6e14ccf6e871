// SPDX-License-Identifier: GPL-3.0-or-later
// Shapley: phi_i = sum over sets S without i of |S|! (n - |S|
// - 1)! / n! * (time(S + i) - time(S)), exact over 2^5 sets.
#include "tests/truth/true_causes.h"

#include <bit>
#include <memory>

namespace truth {
namespace {

constexpr std::size_t kSets = std::size_t{1} << kCauseCount;
constexpr std::array<double, kCauseCount> kWeight{1.0 / 5.0, 1.0 / 20.0, 1.0 / 30.0, 1.0 / 20.0, 1.0 / 5.0};

CarTruth mixture(const CarTruth& a, const CarTruth& b, const std::size_t set) {
    CarTruth car = a;
    const auto from_b = [set](const std::size_t cause) { return (set >> cause & 1U) != 0; };
    if (from_b(0)) {
        car.mu = b.mu;
        car.load_exponent = b.load_exponent;
    }
    if (from_b(1)) car.downforce_area_m2 = b.downforce_area_m2;
    if (from_b(2)) {
        car.drag_area_m2 = b.drag_area_m2;
        car.rolling_resistance = b.rolling_resistance;
    }
    if (from_b(3)) {
        car.power_w = b.power_w;
        car.power_curve = b.power_curve;
        car.redline_rpm = b.redline_rpm;
        car.gear_top_mps = b.gear_top_mps;
        car.rotating_share = b.rotating_share;
    }
    if (from_b(4)) car.mass_kg = b.mass_kg;
    return car;
}

std::vector<double> segment_times(const Session& session) {
    std::vector<double> times;
    for (const TrackSegment& segment : session.track().segments()) {
        times.push_back(session.lap_clock_s(1, segment.end_m) - session.lap_clock_s(1, segment.start_m));
    }
    return times;
}

} // namespace

DriverTruth without_spread(DriverTruth driver) {
    driver.grip_share_lap_sd = 0.0;
    driver.brake_share_lap_sd = 0.0;
    driver.line_lap_sd_m = 0.0;
    return driver;
}

TrueCauses true_causes(const TrackShape& track, const CarTruth& a, const CarTruth& b, const DriverTruth& driver,
                       const double air_density, const double grid_step_m) {
    const auto shared_track = std::make_shared<const TrackShape>(track);
    SessionPlan plan;
    plan.flying_laps = 1;
    plan.pit_lane = false;
    plan.air_density = air_density;
    plan.grid_step_m = grid_step_m;
    std::vector<std::vector<double>> times;
    for (std::size_t set = 0; set < kSets; ++set) {
        times.push_back(
            segment_times(drive_session(shared_track, mixture(a, b, set), without_spread(driver), plan, 1)));
    }
    TrueCauses result;
    for (std::size_t segment = 0; segment < times.front().size(); ++segment) {
        CauseSeconds causes{};
        for (std::size_t set = 0; set < kSets; ++set) {
            for (std::size_t cause = 0; cause < kCauseCount; ++cause) {
                const std::size_t with = set | (std::size_t{1} << cause);
                if (with == set) continue;
                const double weight = kWeight[static_cast<std::size_t>(std::popcount(set))];
                causes[cause] += weight * (times[with][segment] - times[set][segment]);
            }
        }
        for (std::size_t cause = 0; cause < kCauseCount; ++cause)
            result.total[cause] += causes[cause];
        result.segments.push_back(causes);
        result.segment_gain_s.push_back(times[kSets - 1][segment] - times[0][segment]);
        result.gain_s += result.segment_gain_s.back();
    }
    return result;
}

} // namespace truth
