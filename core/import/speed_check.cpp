// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/speed_check.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace lapwright::import {
namespace {

using base::Unit;

// Mean radius (2a + b) / 3 of WGS 84, as IUGG defines it.
constexpr double earth_radius_m = 6371008.8;
constexpr double chord_s = 0.5;
constexpr double least_speed_mps = 4.0;
constexpr std::size_t enough_rows = 8;
constexpr std::array speed_units{Unit::metre_per_second, Unit::kilometre_per_hour, Unit::mile_per_hour, Unit::knot,
                                 Unit::foot_per_second};

double median(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, middle);
    return *middle;
}

} // namespace

std::vector<double> speed_by_positions(const Samples& samples, std::span<const double> time_s,
                                       std::span<const double> latitude, std::span<const double> longitude) {
    std::vector<double> speed_mps(samples.rows.size(), std::numeric_limits<double>::quiet_NaN());
    for (std::size_t block = 0; block < samples.block_starts.size(); ++block) {
        const std::size_t begin = samples.block_starts[block];
        const std::size_t end =
            block + 1 < samples.block_starts.size() ? samples.block_starts[block + 1] : samples.rows.size();
        std::size_t to = begin;
        for (std::size_t from = begin; from < end; ++from) {
            to = std::max(to, from + 1);
            while (to < end && !(time_s[to] - time_s[from] >= chord_s && std::isfinite(latitude[to])))
                ++to;
            if (to >= end) break;
            const double north = latitude[to] - latitude[from];
            const double east = (longitude[to] - longitude[from]) * std::cos(latitude[from]);
            speed_mps[(from + to) / 2] = std::hypot(north, east) * earth_radius_m / (time_s[to] - time_s[from]);
        }
    }
    return speed_mps;
}

std::optional<double> ratio_to_speed(std::span<const double> column, std::span<const double> speed_mps) {
    std::vector<double> ratios;
    for (std::size_t i = 0; i < column.size(); ++i)
        if (std::isfinite(column[i]) && speed_mps[i] > least_speed_mps) ratios.push_back(column[i] / speed_mps[i]);
    if (ratios.size() < enough_rows) return std::nullopt;
    return median(std::move(ratios));
}

UnitFit unit_of_ratio(double ratio) {
    UnitFit best{Unit::none, std::numeric_limits<double>::infinity()};
    for (const Unit unit : speed_units) {
        const double misfit = std::abs(ratio * base::definition(unit).factor - 1.0);
        if (misfit < best.misfit) best = {unit, misfit};
    }
    return best;
}

} // namespace lapwright::import
