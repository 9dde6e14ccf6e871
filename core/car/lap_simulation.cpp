// SPDX-License-Identifier: GPL-3.0-or-later
// Works on w = v²: its slope over the path is twice the acceleration.  Steps are explicit midpoint steps.
#include "core/car/lap_simulation.h"

#include "core/base/check.h"
#include "core/base/constants.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lapwright::car {
namespace {

constexpr double g = base::standard_gravity_mps2;
constexpr double ceiling = simulation_ceiling_mps * simulation_ceiling_mps;
constexpr double floor_w = 0.25;
constexpr std::size_t table_cells = 256;

// The tyres' limit as a function of v²: a table with linear interpolation, exact for n = 1 and good to 1e-6 below.
class GripTable {
  public:
    explicit GripTable(const SimulatedCar& car) {
        const double load = car.downforce_n_per_mps2 / (car.mass_kg * g);
        for (std::size_t i = 0; i <= table_cells; ++i) {
            const double w = static_cast<double>(i) * cell;
            const double share = std::max(0.05, 1.0 + load * w); // lift never takes all of the load
            limit_[i] = car.grip * g * (car.load_exponent == 1.0 ? share : std::pow(share, car.load_exponent));
        }
    }
    // The least that the tyres ever give: at rest, or at the top where the car lifts.
    [[nodiscard]] double least() const { return std::min(limit_.front(), limit_.back()); }
    [[nodiscard]] double at(double w) const {
        const double place = w * (1.0 / cell);
        const std::size_t i = std::min(static_cast<std::size_t>(place), table_cells - 1);
        return limit_[i] + (place - static_cast<double>(i)) * (limit_[i + 1] - limit_[i]);
    }
    // Greatest w with curvature · w <= use · limit(w): by table cell (the cell is found by bisection, because lateral
    // need less limit grows with w), then exactly within the cell's straight piece.
    [[nodiscard]] double corner(double curvature, double use) const {
        const auto need = [&](std::size_t i) { return curvature * static_cast<double>(i) * cell - use * limit_[i]; };
        if (need(table_cells) <= 0.0) return ceiling;
        std::size_t low = 0;
        std::size_t high = table_cells;
        while (high - low > 1) {
            const std::size_t middle = (low + high) / 2;
            (need(middle) > 0.0 ? high : low) = middle;
        }
        const double at_low = need(low);
        return (static_cast<double>(low) + at_low / (at_low - need(high))) * cell;
    }

  private:
    static constexpr double cell = ceiling / static_cast<double>(table_cells);
    std::array<double, table_cells + 1> limit_{};
};

// The tyres' part of a car: with a course and a driver's use of the grip it decides how fast corners are.
std::array<double, 4> tyres_of(const SimulatedCar& car) {
    return {car.grip, car.load_exponent, car.downforce_n_per_mps2, car.mass_kg};
}

// Factors by segment to factors by node.
std::vector<double> spread(const std::vector<double>& by_segment, const Course& course) {
    std::vector<double> by_node(course.size(), 1.0);
    if (by_segment.empty()) return by_node;
    std::size_t segment = 0;
    for (std::size_t i = 0; i < by_node.size(); ++i) {
        while (segment + 1 < course.segments() && static_cast<double>(i) >= course.segment_starts[segment + 1])
            ++segment;
        by_node[i] = by_segment[segment];
    }
    return by_node;
}

// Cars of the same tyres on one course, side by side: each node is asked for all of them, so that while the root of the
// one is taken the others need not wait.
class Solver {
  public:
    Solver(std::span<const SimulatedCar> cars, const Course& course, const DriverUse& use)
        : course_(course), table_(cars.front()), grip_(spread(use.grip, course)), drive_(spread(use.drive, course)),
          min_limit_(table_.least()), flat_(course.slope.empty()) {
        std::vector<double> limit(course_.size());
        for (std::size_t i = 0; i < limit.size(); ++i)
            limit[i] = table_.corner(std::abs(course_.curvature_per_m[i]), grip_[i]);
        // Both passes start at the slowest place, which braking can only confirm.
        start_ = static_cast<std::size_t>(std::ranges::min_element(limit) - limit.begin());
        for (const SimulatedCar& car : cars)
            runs_.push_back({car, car.drag_n_per_mps2 / car.mass_kg, 1.0 / (1.0 + car.rotating_share),
                             car.power_w / car.mass_kg, limit});
    }

    // v² at the nodes, of each car.
    [[nodiscard]] std::vector<std::vector<double>> solve() {
        brake();
        for (Run& run : runs_)
            run.w = run.limit;
        // A second round is needed only where not even the slowest place is limited by grip.
        constexpr int most_rounds = 40;
        for (int round = 0; round < most_rounds; ++round) {
            std::vector<Run*> left;
            for (Run& run : runs_)
                if (!run.settled) left.push_back(&run);
            if (left.empty()) break;
            accelerate(left);
        }
        std::vector<std::vector<double>> all;
        for (Run& run : runs_)
            all.push_back(std::move(run.w));
        return all;
    }

  private:
    struct Run {
        const SimulatedCar& car;
        double drag;
        double inertia;
        double specific_power;
        std::vector<double> limit;  // v² that corners, then brakes allow
        std::vector<double> w = {}; // v²
        bool settled = false;
    };

    [[nodiscard]] double resistance(const Run& run, std::size_t cell, double w) const {
        const double slope = flat_ ? 0.0 : course_.slope[cell];
        return run.drag * w + (run.car.rolling_resistance + slope) * g;
    }

    // What cornering leaves of the grip, m/s².
    static double room(double lateral, double limit) {
        const double rest = limit * limit - lateral * lateral;
        return rest > 0.0 ? std::sqrt(rest) : 0.0;
    }

    [[nodiscard]] double deceleration(const Run& run, std::size_t cell, double curvature, double use, double w) const {
        const double tyre = run.car.braking_share * room(curvature * w, use * table_.at(w));
        return (tyre + resistance(run, cell, w)) * run.inertia;
    }

    [[nodiscard]] double push(const Run& run, std::size_t cell, double curvature, double use, double w) const {
        const double drive = drive_[cell];
        const double v = std::sqrt(w);
        // Less than all is the time that shifts and a late foot take from engine and tyres alike.
        const double pushing = std::min(1.0, drive);
        const double engine = std::max(1.0, drive) * run.specific_power * run.car.power_shares.at(v) / v;
        const double lateral = curvature * w;
        const double sure = use * min_limit_;
        // Nearly straight and far from the tyres' limit: the engine decides, and the root need not be taken. With 0.3
        // of the least limit spent sideways 95 % are left.
        if (lateral < 0.3 * sure && engine < 0.95 * run.car.traction_share * sure)
            return (pushing * engine - resistance(run, cell, w)) * run.inertia;
        const double traction = run.car.traction_share * room(lateral, use * table_.at(w));
        return (pushing * std::min(engine, traction) - resistance(run, cell, w)) * run.inertia;
    }

    void brake() {
        const std::size_t n = course_.size();
        std::size_t next = start_;
        for (std::size_t count = 0; count < n; ++count) {
            const std::size_t i = next == 0 ? n - 1 : next - 1;
            const double h = course_.step_m[i];
            const double near = std::abs(course_.curvature_per_m[next]);
            const double middle = 0.5 * (near + std::abs(course_.curvature_per_m[i]));
            const double use = 0.5 * (grip_[i] + grip_[next]);
            for (Run& run : runs_) {
                const double reached = run.limit[next];
                if (run.limit[i] <= reached && flat_) continue; // nothing to brake for
                const double half = std::min(ceiling, reached + h * deceleration(run, i, near, grip_[next], reached));
                run.limit[i] = std::min(run.limit[i], reached + 2.0 * h * deceleration(run, i, middle, use, half));
            }
            next = i;
        }
    }

    void accelerate(const std::vector<Run*>& runs) const {
        const std::size_t n = course_.size();
        std::vector<double> before;
        for (const Run* run : runs)
            before.push_back(run->w[start_]);
        std::size_t i = start_;
        for (std::size_t count = 0; count < n; ++count) {
            const std::size_t next = i + 1 == n ? 0 : i + 1;
            const double h = course_.step_m[i];
            const double here = std::abs(course_.curvature_per_m[i]);
            const double middle = 0.5 * (here + std::abs(course_.curvature_per_m[next]));
            const double use = 0.5 * (grip_[i] + grip_[next]);
            for (Run* run : runs) {
                const double w = run->w[i];
                const double half = std::max(floor_w, w + h * push(*run, i, here, grip_[i], w));
                const double reached = w + 2.0 * h * push(*run, i, middle, use, half);
                run->w[next] = std::clamp(reached, floor_w, run->limit[next]);
            }
            i = next;
        }
        for (std::size_t k = 0; k < runs.size(); ++k)
            runs[k]->settled = std::abs(runs[k]->w[start_] - before[k]) <= 1e-9 * before[k];
    }

    const Course& course_;
    GripTable table_;
    std::vector<double> grip_;
    std::vector<double> drive_;
    double min_limit_;
    bool flat_; // resistance never pushes
    std::size_t start_ = 0;
    std::vector<Run> runs_;
};

// Time from the start at a place in nodes and fractions.
double time_at(const std::vector<double>& clock, double place) {
    const std::size_t i = std::min(static_cast<std::size_t>(place), clock.size() - 2);
    return clock[i] + (place - static_cast<double>(i)) * (clock[i + 1] - clock[i]);
}

SimulatedLap timed(std::vector<double> speed_squared, const Course& course) {
    const std::size_t n = course.size();
    SimulatedLap lap;
    lap.speed_mps = std::move(speed_squared);
    for (double& v : lap.speed_mps)
        v = std::sqrt(v);
    std::vector<double> clock(n + 1, 0.0);
    for (std::size_t i = 0; i < n; ++i) {
        const double next = lap.speed_mps[i + 1 == n ? 0 : i + 1];
        clock[i + 1] = clock[i] + 2.0 * course.step_m[i] / (lap.speed_mps[i] + next);
    }
    lap.lap_time_s = clock.back();
    for (std::size_t k = 0; k < course.segments(); ++k) {
        const bool last = k + 1 == course.segments();
        const double end = last ? static_cast<double>(n) : course.segment_starts[k + 1];
        lap.segment_time_s.push_back(time_at(clock, end) - time_at(clock, course.segment_starts[k]));
    }
    return lap;
}

} // namespace

std::vector<SimulatedLap> simulate_laps(std::span<const SimulatedCar> cars, const Course& course,
                                        const DriverUse& use) {
    const std::size_t n = course.size();
    base::check(n >= 2 && course.curvature_per_m.size() == n, "a course needs a curvature for every cell");
    base::check(use.grip.empty() || use.grip.size() == course.segments(), "one grip use a segment");
    base::check(use.drive.empty() || use.drive.size() == course.segments(), "one drive use a segment");
    std::vector<SimulatedLap> laps;
    while (!cars.empty()) {
        const auto alike = std::ranges::find_if(
            cars, [&](const SimulatedCar& car) { return tyres_of(car) != tyres_of(cars.front()); });
        const auto count = static_cast<std::size_t>(alike - cars.begin());
        for (std::vector<double>& speed_squared : Solver(cars.first(count), course, use).solve())
            laps.push_back(timed(std::move(speed_squared), course));
        cars = cars.subspan(count);
    }
    return laps;
}

SimulatedLap simulate_lap(const SimulatedCar& car, const Course& course, const DriverUse& use) {
    return std::move(simulate_laps({&car, 1}, course, use).front());
}

} // namespace lapwright::car
