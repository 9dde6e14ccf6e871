// SPDX-License-Identifier: GPL-3.0-or-later
// Least curvature: minimise the integral of (kappa + n'' + kappa^2 n)^2 + small * n'^2 over a periodic B-spline with
// bounded coefficients, by projected Gauss-Seidel sweeps with over-relaxation (a fixed number, so that every machine
// does the same). Path geometry: see Frenet relations in checks.md A4; with q = 1 - n kappa the path's heading is
// theta + atan2(n', q), its length rate sqrt(q^2 + n'^2).
#include "tests/truth/driven_line.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "tests/truth/random.h"

namespace truth {
namespace {

constexpr double kLineSpacing_m = 15.0;
constexpr double kWanderSpacing_m = 110.0;
constexpr std::size_t kPointsPerSpan = 4;
constexpr int kSweeps = 1500;
constexpr double kRelaxation = 1.7;

using Band = std::array<double, 7>;

struct Normal {
    std::vector<Band> rows; // coefficient of neighbours -3..3
    std::vector<double> right;
};

std::size_t wrapped(const std::ptrdiff_t index, const std::size_t size) {
    const auto n = static_cast<std::ptrdiff_t>(size);
    return static_cast<std::size_t>(((index % n) + n) % n);
}

struct Basis {
    std::array<double, 4> value;
    std::array<double, 4> first;
    std::array<double, 4> second;
};

Basis basis(const double u, const double spacing) {
    const double w = 1.0 - u;
    const double h = spacing;
    return {{w * w * w / 6.0, (3 * u * u * u - 6 * u * u + 4) / 6.0, (3 * w * w * w - 6 * w * w + 4) / 6.0,
             u * u * u / 6.0},
            {-w * w / (2 * h), (3 * u * u - 4 * u) / (2 * h), (4 * w - 3 * w * w) / (2 * h), u * u / (2 * h)},
            {w / (h * h), (3 * u - 2) / (h * h), (3 * w - 2) / (h * h), u / (h * h)}};
}

Normal normal_equations(const TrackShape& track, const std::size_t count, const double spacing) {
    constexpr double kStraightness = 3e-6; // keeps the line from wandering where curvature does not care
    Normal normal{std::vector<Band>(count, Band{}), std::vector<double>(count, 0.0)};
    for (std::size_t span = 0; span < count; ++span) {
        for (std::size_t q = 0; q < kPointsPerSpan; ++q) {
            const double u = (static_cast<double>(q) + 0.5) / static_cast<double>(kPointsPerSpan);
            const double kappa = track.bend((static_cast<double>(span) + u) * spacing).curvature_per_m;
            const Basis b = basis(u, spacing);
            for (std::size_t i = 0; i < 4; ++i) {
                const std::size_t row = wrapped(static_cast<std::ptrdiff_t>(span + i) - 1, count);
                const double bend_i = b.second[i] + kappa * kappa * b.value[i];
                normal.right[row] -= bend_i * kappa;
                for (std::size_t j = 0; j < 4; ++j) {
                    const double bend_j = b.second[j] + kappa * kappa * b.value[j];
                    normal.rows[row][3 + j - i] += bend_i * bend_j + kStraightness * b.first[i] * b.first[j];
                }
            }
        }
    }
    return normal;
}

std::vector<double> min_curvature_line(const TrackShape& track, const double half_width_m, const std::size_t count,
                                       const double spacing) {
    std::vector<double> n(count, 0.0);
    if (half_width_m <= 0.0) return n;
    const Normal normal = normal_equations(track, count, spacing);
    const auto neighbour = [count](const std::size_t i, const std::size_t j) { // i + j - 3, around the lap
        const std::size_t shifted = i + j + count - 3;
        return shifted >= 2 * count ? shifted - 2 * count : (shifted >= count ? shifted - count : shifted);
    };
    for (int sweep = 0; sweep < kSweeps; ++sweep) {
        for (std::size_t i = 0; i < count; ++i) {
            double rest = normal.right[i];
            for (std::size_t j = 0; j < 7; ++j) {
                if (j != 3) rest -= normal.rows[i][j] * n[neighbour(i, j)];
            }
            const double wish = n[i] + kRelaxation * (rest / normal.rows[i][3] - n[i]);
            n[i] = std::clamp(wish, -half_width_m, half_width_m);
        }
    }
    return n;
}

double smooth_step(const double u) {
    const double x = std::clamp(u, 0.0, 1.0);
    return x * x * x * (10.0 - 15.0 * x + 6.0 * x * x);
}

double pit_offset(const PitLane& pit, const double at_m) {
    const double leaving = 1.0 - smooth_step((at_m - pit.start_m - 40.0) / pit.merge_m);
    const double entering = smooth_step((at_m - pit.end_m + 40.0 + pit.merge_m) / pit.merge_m);
    return pit.offset_m * (leaving + entering);
}

/// Periodic over the lap: three copies of one lap's coefficients, to be read in the middle one.
UniformSpline habit_line(const DriverTruth& driver, const double length_m) {
    const auto count = static_cast<std::size_t>(std::max(4.0, std::round(length_m / kWanderSpacing_m)));
    Random style(driver.style_seed, 17);
    std::vector<double> lap;
    for (std::size_t i = 0; i < count; ++i)
        lap.push_back(driver.line_habit_sd_m * style.normal());
    UniformSpline habit{-length_m, length_m / static_cast<double>(count), {}};
    for (int copy = 0; copy < 3; ++copy)
        habit.coefficients.insert(habit.coefficients.end(), lap.begin(), lap.end());
    return habit;
}

} // namespace

DrivenLine::DrivenLine(const TrackShape& track, const DriverTruth& driver, const PitLane& pit,
                       const std::uint64_t seed) {
    const double length = track.length_m();
    const auto count = static_cast<std::size_t>(std::max(8.0, std::round(length / kLineSpacing_m)));
    const double spacing = length / static_cast<double>(count);
    std::vector<double> base = min_curvature_line(track, driver.line_half_width_m, count, spacing);

    const UniformSpline habit = habit_line(driver, length);
    for (std::size_t i = 0; i < count; ++i)
        base[i] += habit.at(static_cast<double>(i) * spacing).value;

    const auto first = static_cast<std::ptrdiff_t>(std::floor(pit.start_m / spacing)) - 3;
    const auto last = static_cast<std::ptrdiff_t>(std::ceil(pit.end_m / spacing)) + 3;
    line_ = {static_cast<double>(first) * spacing, spacing, {}};
    for (std::ptrdiff_t j = first; j <= last; ++j) {
        const double at_m = static_cast<double>(j) * spacing;
        const bool is_session = pit.offset_m != 0.0;
        line_.coefficients.push_back(base[wrapped(j, count)] + (is_session ? pit_offset(pit, at_m) : 0.0));
    }

    Random lap_to_lap(seed, 23);
    wander_ = {pit.start_m - 2.0 * kWanderSpacing_m, kWanderSpacing_m, {}};
    for (double at_m = wander_.origin; at_m <= pit.end_m + 2.0 * kWanderSpacing_m; at_m += kWanderSpacing_m) {
        wander_.coefficients.push_back(driver.line_lap_sd_m * lap_to_lap.normal());
    }
}

SplineValue DrivenLine::offset(const double unwrapped_m) const {
    const SplineValue line = line_.at(unwrapped_m);
    const SplineValue wander = wander_.at(unwrapped_m);
    return {line.value + wander.value, line.first + wander.first, line.second + wander.second};
}

DrivenLine::Geometry DrivenLine::geometry(const TrackShape& track, const double unwrapped_m) const {
    Geometry g;
    g.offset = offset(unwrapped_m);
    g.bend = track.bend(unwrapped_m);
    const double n = g.offset.value;
    const double n1 = g.offset.first;
    const double kappa = g.bend.curvature_per_m;
    const double q = 1.0 - n * kappa;
    const double q1 = -n1 * kappa - n * g.bend.curvature_rate_per_m2;
    const double square = q * q + n1 * n1;
    g.stretch = std::sqrt(square);
    g.drift_rad = std::atan2(n1, q);
    g.curvature_per_m = (kappa + (g.offset.second * q - n1 * q1) / square) / g.stretch;
    return g;
}

} // namespace truth
