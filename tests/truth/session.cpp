// SPDX-License-Identifier: GPL-3.0-or-later
// E(S) = v^2/2 is a cubic B-spline, so speed, acceleration and time are functions of the same curve:
// dS/dt = v / stretch, a_long = (dE/dS) / stretch, a_lat = v^2 * path curvature, t = integral of stretch / v dS by a
// four-point Gauss-Legendre rule on each grid step (steps of about a metre).
#include "tests/truth/session.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace truth {
namespace {

constexpr double kTwoPi = 2.0 * std::numbers::pi;
constexpr std::array<double, 4> kNodes{-0.861136311594052575, -0.339981043584856265, 0.339981043584856265,
                                       0.861136311594052575};
constexpr std::array<double, 4> kWeights{0.347854845137453857, 0.652145154862546143, 0.652145154862546143,
                                         0.347854845137453857};

double wrapped_angle(const double angle) {
    const double rest = angle - kTwoPi * std::floor(angle / kTwoPi);
    return rest < kTwoPi ? rest : 0.0;
}

} // namespace

Session::Session(std::shared_ptr<const TrackShape> track, CarTruth car, const double air_density, DrivenLine line,
                 const double grid_origin_m, const double grid_step_m, const SpeedProfile& profile,
                 std::vector<LapTruth> laps, const double standing_s)
    : track_(std::move(track)), car_(std::move(car)), air_density_(air_density), line_(std::move(line)),
      energy_{grid_origin_m, grid_step_m, profile.energy}, throttle_{grid_origin_m, grid_step_m, profile.throttle},
      brake_{grid_origin_m, grid_step_m, profile.brake}, gears_(profile.gear), laps_(std::move(laps)) {
    find_breaks();
    times_.assign(profile.energy.size(), standing_s);
    for (std::size_t i = 1; i < times_.size(); ++i) {
        const double from = grid_origin_m + grid_step_m * static_cast<double>(i - 1);
        times_[i] = times_[i - 1] + elapsed(i - 1, from, from + grid_step_m);
    }
    const double length = track_->length_m();
    for (LapTruth& lap : laps_) {
        lap.start_s = lap.number == 0 ? 0.0 : time_at_unwrapped(length * lap.number);
        lap.end_s = lap.kind == LapKind::in ? times_.back() : time_at_unwrapped(length * (lap.number + 1));
    }
}

Session::Motion Session::motion(const double unwrapped_m) const {
    Motion m{line_.geometry(*track_, unwrapped_m), energy_.at(unwrapped_m), 0.0};
    m.station_rate_mps = std::sqrt(2.0 * m.energy.value) / m.geometry.stretch;
    return m;
}

void Session::find_breaks() {
    breaks_.assign(energy_.coefficients.size(), std::numeric_limits<double>::quiet_NaN());
    const double length = track_->length_m();
    const double last = energy_.origin + energy_.spacing * static_cast<double>(breaks_.size());
    for (double lap_start = 0.0; lap_start < last; lap_start += length) {
        for (const double end : track_->piece_ends()) {
            const double place = std::floor((lap_start + end - energy_.origin) / energy_.spacing);
            if (place < 0.0 || place >= static_cast<double>(breaks_.size())) continue;
            breaks_[static_cast<std::size_t>(place)] = lap_start + end;
        }
    }
}

double Session::elapsed(const std::size_t step, const double from_m, const double to_m) const {
    const double at_m = breaks_[step];
    if (from_m < at_m && at_m < to_m) return smooth_elapsed(from_m, at_m) + smooth_elapsed(at_m, to_m);
    return smooth_elapsed(from_m, to_m);
}

double Session::smooth_elapsed(const double from_m, const double to_m) const {
    const double half = (to_m - from_m) / 2.0;
    double sum = 0.0;
    for (std::size_t i = 0; i < kNodes.size(); ++i) {
        sum += kWeights[i] / motion(from_m + half * (1.0 + kNodes[i])).station_rate_mps;
    }
    return half * sum;
}

double Session::time_at_unwrapped(const double unwrapped_m) const {
    const double place = (unwrapped_m - energy_.origin) / energy_.spacing;
    const double last = static_cast<double>(times_.size() - 1);
    const double knot = std::clamp(std::floor(place), 0.0, last);
    const double from = energy_.origin + knot * energy_.spacing;
    const auto step = static_cast<std::size_t>(knot);
    return times_[step] + elapsed(step, from, unwrapped_m);
}

TruthSample Session::at_time(const double time_s) const {
    if (time_s < times_.front()) return standing(time_s);
    const auto after = std::upper_bound(times_.begin(), times_.end(), time_s);
    const auto index = static_cast<std::size_t>(std::max<std::ptrdiff_t>(0, after - times_.begin() - 1));
    const double from = energy_.origin + energy_.spacing * static_cast<double>(index);
    double S = from + (time_s - times_[index]) * motion(from).station_rate_mps;
    for (int i = 0; i < 4; ++i) { // Newton on the elapsed time; a millionth of a metre off, the next step is exact
        const double change_m = (time_s - times_[index] - elapsed(index, from, S)) * motion(S).station_rate_mps;
        S += change_m;
        if (std::abs(change_m) < 1e-7) break;
    }
    return sample(time_s, S);
}

TruthSample Session::standing(const double time_s) const {
    TruthSample out = sample(time_s, energy_.origin);
    out.speed_mps = 0.0;
    out.a_long_mps2 = 0.0;
    out.a_lat_mps2 = 0.0;
    out.yaw_rate_radps = 0.0;
    out.throttle = 0.0;
    out.brake = 0.0;
    out.engine_rpm = 1000.0;
    return out;
}

TruthSample Session::at_unwrapped(const double unwrapped_m) const {
    return sample(time_at_unwrapped(unwrapped_m), unwrapped_m);
}

TruthSample Session::sample(const double time_s, const double unwrapped_m) const {
    const Motion m = motion(unwrapped_m);
    const TrackPoint centre = track_->at(unwrapped_m);
    const double length = track_->length_m();
    TruthSample out;
    out.time_s = time_s;
    out.unwrapped_m = unwrapped_m;
    out.lap = static_cast<int>(std::floor(unwrapped_m / length));
    out.station_m = unwrapped_m - length * out.lap;
    out.offset_m = m.geometry.offset.value;
    out.x_m = centre.x_m - out.offset_m * std::sin(centre.bend.heading_rad);
    out.y_m = centre.y_m + out.offset_m * std::cos(centre.bend.heading_rad);
    out.height_m = track_->height_m(unwrapped_m);
    out.slope = track_->slope(unwrapped_m) / m.geometry.stretch;
    out.speed_mps = std::sqrt(2.0 * m.energy.value);
    out.heading_rad = m.geometry.bend.heading_rad + m.geometry.drift_rad;
    out.course_rad = wrapped_angle(std::numbers::pi / 2.0 - out.heading_rad);
    out.path_curvature_per_m = m.geometry.curvature_per_m;
    out.a_long_mps2 = m.energy.first / m.geometry.stretch;
    out.a_lat_mps2 = 2.0 * m.energy.value * m.geometry.curvature_per_m;
    out.yaw_rate_radps = out.speed_mps * m.geometry.curvature_per_m;
    out.throttle = std::clamp(throttle_.at(unwrapped_m).value, 0.0, 1.0);
    out.brake = std::clamp(brake_.at(unwrapped_m).value, 0.0, 1.0);
    const double place = std::floor((unwrapped_m - energy_.origin) / energy_.spacing);
    out.gear = gears_[static_cast<std::size_t>(std::clamp(place, 0.0, static_cast<double>(gears_.size() - 1)))];
    out.engine_rpm = std::max(1000.0, truth::engine_rpm(car_, out.gear, out.speed_mps));
    return out;
}

double Session::lap_clock_s(const int lap_number, const double station_m) const {
    return time_at_unwrapped(track_->length_m() * lap_number + station_m) - lap(lap_number).start_s;
}

double Session::speed_mps(const int lap_number, const double station_m) const {
    return std::sqrt(2.0 * energy_.at(track_->length_m() * lap_number + station_m).value);
}

int Session::fastest_lap() const {
    int best = 1;
    double best_time = 1e300;
    for (const LapTruth& candidate : laps_) {
        if (candidate.kind != LapKind::flying || candidate.time_s() >= best_time) continue;
        best = candidate.number;
        best_time = candidate.time_s();
    }
    return best;
}

std::vector<TruthSample> Session::dense(const double rate_hz) const {
    std::vector<TruthSample> result;
    const auto count = static_cast<std::size_t>(duration_s() * rate_hz) + 1;
    result.reserve(count);
    for (std::size_t i = 0; i < count; ++i)
        result.push_back(at_time(static_cast<double>(i) / rate_hz));
    return result;
}

} // namespace truth
