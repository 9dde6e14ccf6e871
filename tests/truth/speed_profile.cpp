// SPDX-License-Identifier: GPL-3.0-or-later
// Steps are explicit midpoint steps in E over the path. See speed_profile.h for the method and car.h for the forces.
#include "tests/truth/speed_profile.h"

#include <algorithm>
#include <cmath>

namespace truth {
namespace {

constexpr double kCeiling = 120.0 * 120.0; // m^2/s^2, above any speed reached
constexpr double kFloor = 0.25;            // E at 0.7 m/s: the car never quite stands

class Solver {
  public:
    Solver(const CarTruth& car, const double air_density, const std::vector<RoadPoint>& road, const Pedals& pedals)
        : car_(car), air_density_(air_density), drag_(drag_factor(car, air_density)), road_(road), pedals_(pedals) {}

    [[nodiscard]] std::vector<double> braking_limit(const double end_energy) const {
        std::vector<double> limit(road_.size());
        limit.back() = std::min(end_energy, corner_energy(road_.back()));
        for (std::size_t i = road_.size() - 1; i > 0; --i) {
            const RoadPoint& here = road_[i - 1];
            const double h = here.path_step_m;
            const double slow = deceleration(road_[i], limit[i]);
            const double middle = deceleration(here, limit[i] + 0.5 * h * slow);
            limit[i - 1] = std::min(limit[i] + h * middle, corner_energy(here));
        }
        return limit;
    }

    [[nodiscard]] SpeedProfile drive(const std::vector<double>& limit, const double start_energy,
                                     const std::vector<char>& lift) const {
        const std::size_t n = road_.size();
        SpeedProfile out{std::vector<double>(n), std::vector<double>(n, 0.0), std::vector<double>(n, 0.0),
                         std::vector<int>(n, 1)};
        out.energy[0] = std::min(start_energy, limit[0]);
        Foot foot;
        for (std::size_t i = 0; i + 1 < n; ++i) {
            const RoadPoint& here = road_[i];
            const double v = std::sqrt(2.0 * out.energy[i]);
            const double dt = here.path_step_m / v;
            change_gear(foot, v, dt);
            foot.coast_left_s = lift[i] != 0 ? 2.0 * pedals_.coast_s : std::max(0.0, foot.coast_left_s - dt);
            const double ramp = pedals_.throttle_ramp_s > 0.0 ? dt / pedals_.throttle_ramp_s : 1.0;
            const double pedal = foot.coast_left_s > 0.0 ? 0.0 : std::min(here.throttle_limit, foot.throttle + ramp);
            const double half = out.energy[i] + 0.5 * here.path_step_m * push(here, out.energy[i], pedal, foot);
            // A half step beyond the limit would find no grip left and stop the car just short of it.
            const double next =
                half >= limit[i + 1]
                    ? half
                    : out.energy[i] + here.path_step_m * push(here, std::max(half, kFloor), pedal, foot);
            out.gear[i] = foot.gear;
            out.energy[i + 1] = std::max(kFloor, std::min(next, limit[i + 1]));
            settle_pedals(here, out, i, next >= limit[i + 1], pedal, foot);
        }
        out.gear.back() = foot.gear;
        out.throttle.back() = out.throttle[n - 2];
        out.brake.back() = out.brake[n - 2];
        return out;
    }

  private:
    struct Foot {
        double throttle = 0.0;
        int gear = 1;
        double shift_left_s = 0.0;
        double coast_left_s = 0.0; // the brake normally ends a coast; this bounds one that misses its brake
    };

    [[nodiscard]] double corner_energy(const RoadPoint& p) const {
        const double help = std::copysign(1.0, p.curvature_per_m) * p.lateral_gravity_mps2;
        return 0.5 * corner_speed_squared(car_, air_density_, p.curvature_per_m, p.grip_share, kCeiling, help);
    }

    [[nodiscard]] double resistance(const RoadPoint& p, const double energy) const {
        return drag_ * air_speed_squared(p, energy) + (car_.rolling_resistance + p.slope) * kGravity_mps2;
    }

    /// Signed: a tailwind faster than the car pushes.
    [[nodiscard]] static double air_speed_squared(const RoadPoint& p, const double energy) {
        if (p.headwind_mps == 0.0) return 2.0 * energy;
        const double through_air = std::sqrt(2.0 * energy) + p.headwind_mps;
        return through_air * std::abs(through_air);
    }

    [[nodiscard]] double tyre_limit(const RoadPoint& p, const double energy) const {
        return tyre_limit_mps2(car_, air_density_, std::max(0.0, air_speed_squared(p, energy)));
    }

    /// Share of the longitudinal grip that cornering leaves (friction ellipse).
    [[nodiscard]] double room(const RoadPoint& p, const double energy, const double limit) const {
        const double lateral = p.curvature_per_m * 2.0 * energy - p.lateral_gravity_mps2;
        const double use = std::abs(lateral) / (p.grip_share * limit);
        return std::sqrt(std::max(0.0, 1.0 - use * use));
    }

    [[nodiscard]] double deceleration(const RoadPoint& p, const double energy) const {
        const double limit = tyre_limit(p, energy);
        const double tyre = p.brake_share * car_.brake_efficiency * limit * room(p, energy, limit);
        return (tyre + resistance(p, energy)) / (1.0 + car_.rotating_share);
    }

    [[nodiscard]] double traction(const RoadPoint& p, const double energy) const {
        const double limit = tyre_limit(p, energy);
        return p.exit_share * car_.traction_share * limit * room(p, energy, limit);
    }

    [[nodiscard]] double engine_push(const double energy, const int gear) const {
        const double v = std::sqrt(2.0 * energy);
        return power_at(car_, gear, v) / (car_.mass_kg * v);
    }

    [[nodiscard]] double push(const RoadPoint& p, const double energy, const double pedal, const Foot& foot) const {
        const double engine = foot.shift_left_s > 0.0 ? 0.0 : pedal * engine_push(energy, foot.gear);
        return (std::min(engine, traction(p, energy)) - resistance(p, energy)) / (1.0 + car_.rotating_share);
    }

    void change_gear(Foot& foot, const double v, const double dt) const {
        foot.shift_left_s = std::max(0.0, foot.shift_left_s - dt);
        const auto top = [&](const int gear) { return car_.gear_top_mps[static_cast<std::size_t>(gear - 1)]; };
        const int gears = static_cast<int>(car_.gear_top_mps.size());
        if (foot.gear < gears && v > top(foot.gear)) {
            ++foot.gear;
            if (foot.throttle > 0.0) foot.shift_left_s = car_.shift_s;
        } else if (foot.gear > 1 && v < 0.88 * top(foot.gear - 1)) {
            --foot.gear;
        }
    }

    void settle_pedals(const RoadPoint& here, SpeedProfile& out, const std::size_t i, const bool held,
                       const double pedal, Foot& foot) const {
        const double a = (out.energy[i + 1] - out.energy[i]) / here.path_step_m;
        const double tyre = (1.0 + car_.rotating_share) * a + resistance(here, out.energy[i]);
        const double full = engine_push(out.energy[i], foot.gear);
        const double needed = std::clamp(tyre / full, 0.0, 1.0);
        const bool power_limited = pedal * full <= traction(here, out.energy[i]);
        foot.throttle = held ? std::min(needed, pedal) : (power_limited ? pedal : needed);
        const bool shifting = foot.shift_left_s > 0.0 && !held;
        if (shifting) foot.throttle = pedal;
        out.throttle[i] = shifting && car_.lifts_to_shift ? 0.0 : foot.throttle;
        if (held) {
            const double most = car_.brake_efficiency * tyre_limit(here, out.energy[i]);
            out.brake[i] = std::clamp(-tyre / most, 0.0, 1.0);
            foot.coast_left_s = 0.0;
        }
    }

    const CarTruth& car_;
    double air_density_;
    double drag_;
    const std::vector<RoadPoint>& road_;
    const Pedals& pedals_;
};

/// Where the foot leaves the throttle: `coast_s` before each first touch of the brake.
std::vector<char> lift_points(const std::vector<RoadPoint>& road, const SpeedProfile& profile, const double coast_s) {
    constexpr double kTouch = 0.1;
    std::vector<char> lift(road.size(), 0);
    if (coast_s <= 0.0) return lift;
    for (std::size_t i = 1; i < road.size(); ++i) {
        if (profile.brake[i] < kTouch || profile.brake[i - 1] >= kTouch) continue;
        double waited = 0.0;
        std::size_t j = i;
        while (j > 0 && waited < coast_s && profile.throttle[j - 1] > 0.3) {
            --j;
            waited += road[j].path_step_m / std::sqrt(2.0 * profile.energy[j]);
        }
        lift[j] = 1;
    }
    return lift;
}

/// Biweight kernel of half width v * response over the grid, at least one step wide.
std::vector<double> smoothed(const std::vector<double>& values, const std::vector<double>& half_widths) {
    std::vector<double> result(values.size());
    const auto last = static_cast<std::ptrdiff_t>(values.size()) - 1;
    for (std::ptrdiff_t i = 0; i <= last; ++i) {
        const double width = half_widths[static_cast<std::size_t>(i)];
        const auto reach = static_cast<std::ptrdiff_t>(width);
        double sum = 0.0;
        double weights = 0.0;
        for (std::ptrdiff_t j = -reach; j <= reach; ++j) {
            const double u = static_cast<double>(j) / width;
            const double weight = (1.0 - u * u) * (1.0 - u * u);
            sum += weight * values[static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(i + j, 0, last))];
            weights += weight;
        }
        result[static_cast<std::size_t>(i)] = sum / weights;
    }
    return result;
}

} // namespace

SpeedProfile solve_speed(const CarTruth& car, const double air_density, const std::vector<RoadPoint>& road,
                         const Pedals& pedals, const double start_speed_mps, const double end_speed_mps) {
    const Solver solver(car, air_density, road, pedals);
    const std::vector<double> limit = solver.braking_limit(0.5 * end_speed_mps * end_speed_mps);
    const double start_energy = 0.5 * start_speed_mps * start_speed_mps;
    SpeedProfile profile = solver.drive(limit, start_energy, std::vector<char>(road.size(), 0));
    if (pedals.coast_s > 0.0) profile = solver.drive(limit, start_energy, lift_points(road, profile, pedals.coast_s));
    if (pedals.response_s <= 0.0) return profile;
    std::vector<double> half_widths(road.size());
    for (std::size_t i = 0; i < road.size(); ++i) {
        half_widths[i] = 1.0 + std::sqrt(2.0 * profile.energy[i]) * pedals.response_s / road[i].path_step_m;
    }
    half_widths = smoothed(half_widths, half_widths);
    profile.energy = smoothed(profile.energy, half_widths);
    profile.throttle = smoothed(profile.throttle, half_widths);
    profile.brake = smoothed(profile.brake, half_widths);
    return profile;
}

} // namespace truth
