// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/columns/speed_check.h"

#include "core/math/statistics.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace lapwright::import {
namespace {

using base::Unit;

constexpr double chord_s = 0.5;
constexpr double min_speed_mps = 4.0;
constexpr std::size_t enough_rows = 8;
constexpr std::array speed_units{
    Unit::metre_per_second, Unit::kilometre_per_hour,    Unit::mile_per_hour,        Unit::knot,
    Unit::foot_per_second,  Unit::centimetre_per_second, Unit::millimetre_per_second};

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
            speed_mps[(from + to) / 2] = std::hypot(north, east) * mean_earth_radius_m / (time_s[to] - time_s[from]);
        }
    }
    return speed_mps;
}

Accelerations accelerations_by_positions(const Samples& samples, std::span<const double> time_s,
                                         std::span<const double> latitude, std::span<const double> longitude) {
    const std::vector<double> absent(samples.rows.size(), std::numeric_limits<double>::quiet_NaN());
    Accelerations result{absent, absent};
    const auto behind = [&](std::size_t from, std::size_t end) {
        std::size_t to = from + 1;
        while (to < end && !(time_s[to] - time_s[from] >= chord_s && std::isfinite(latitude[to])))
            ++to;
        return to;
    };
    const auto velocity = [&](std::size_t from, std::size_t to) {
        const double step_s = time_s[to] - time_s[from];
        return std::pair{(longitude[to] - longitude[from]) * std::cos(latitude[from]) * mean_earth_radius_m / step_s,
                         (latitude[to] - latitude[from]) * mean_earth_radius_m / step_s};
    };
    for (std::size_t block = 0; block < samples.block_starts.size(); ++block) {
        const std::size_t end =
            block + 1 < samples.block_starts.size() ? samples.block_starts[block + 1] : samples.rows.size();
        for (std::size_t from = samples.block_starts[block]; from < end; ++from) {
            const std::size_t middle = behind(from, end);
            const std::size_t to = middle < end ? behind(middle, end) : end;
            if (to >= end) break;
            const auto [east1, north1] = velocity(from, middle);
            const auto [east2, north2] = velocity(middle, to);
            const double speed = std::hypot(east1 + east2, north1 + north2) / 2.0;
            if (!(speed > min_speed_mps)) continue;
            const double step_s = (time_s[to] - time_s[from]) / 2.0;
            const double east = (east1 + east2) / (2.0 * speed);
            const double north = (north1 + north2) / (2.0 * speed);
            result.longitudinal_mps2[middle] = ((east2 - east1) * east + (north2 - north1) * north) / step_s;
            result.lateral_mps2[middle] = ((north2 - north1) * east - (east2 - east1) * north) / step_s;
        }
    }
    return result;
}

std::optional<double> ratio_of_sizes(std::span<const double> column, std::span<const double> other) {
    constexpr double min_mps2 = 0.4;
    constexpr double unrelated = 0.5;
    double most = 0.0;
    for (const double value : other)
        if (std::isfinite(value)) most = std::max(most, std::abs(value));
    const double clear_mps2 = std::max(min_mps2, 0.3 * most);
    std::vector<double> ratios;
    for (std::size_t i = 0; i < column.size(); ++i)
        if (std::isfinite(column[i]) && std::abs(other[i]) > clear_mps2)
            ratios.push_back(std::abs(column[i] / other[i]));
    if (ratios.size() < enough_rows) return std::nullopt;
    const double middle = math::median(ratios);
    for (double& ratio : ratios)
        ratio = std::abs(ratio - middle);
    if (math::median(ratios) > unrelated * middle) return std::nullopt;
    return middle;
}

std::optional<Ratio> ratio_to_speed(std::span<const double> column, std::span<const double> speed_mps) {
    std::vector<double> ratios;
    for (std::size_t i = 0; i < column.size(); ++i)
        if (std::isfinite(column[i]) && speed_mps[i] > min_speed_mps) ratios.push_back(column[i] / speed_mps[i]);
    if (ratios.size() < enough_rows) return std::nullopt;
    const double middle = math::median(ratios);
    for (double& ratio : ratios)
        ratio = std::abs(ratio - middle);
    return Ratio{middle, math::median(ratios) / std::abs(middle)};
}

std::vector<double> growth(const Samples& samples, std::span<const double> time_s, std::span<const double> column) {
    std::vector<double> grown(column.size(), std::numeric_limits<double>::quiet_NaN());
    const auto rows = static_cast<std::size_t>(std::min(column.size(), time_s.size()));
    std::size_t to = 0;
    for (std::size_t from = 0; from < rows; ++from) {
        to = std::max(to, from + 1);
        while (to < rows && !(time_s[to] - time_s[from] >= chord_s))
            ++to;
        if (to >= rows) break;
        const auto block = std::ranges::upper_bound(samples.block_starts, from);
        if (block != samples.block_starts.end() && *block <= to) continue;
        grown[(from + to) / 2] = (column[to] - column[from]) / (time_s[to] - time_s[from]);
    }
    return grown;
}

std::optional<Ratio> growth_over_speed(const Samples& samples, std::span<const double> time_s,
                                       std::span<const double> column, std::span<const double> speed_mps) {
    return ratio_to_speed(growth(samples, time_s, column), speed_mps);
}

std::optional<Unit> unit_of_growth(const Ratio& ratio) {
    constexpr double fits = 0.1;
    constexpr double same_motion = 0.2;
    if (ratio.spread > same_motion) return std::nullopt;
    for (const Unit unit : {Unit::metre, Unit::kilometre, Unit::mile, Unit::foot})
        if (std::abs(ratio.middle * base::definition(unit).factor - 1.0) < fits) return unit;
    return std::nullopt;
}

std::optional<double> misfit_to_speed(std::span<const double> column, const std::optional<Unit>& written,
                                      std::span<const double> speed_mps) {
    constexpr double one_motion = 0.15;
    constexpr double fits_unwritten = 0.05; // mph and knots are 15 % apart
    constexpr double fits_written = 0.2;    // wheels slip
    const auto ratio = ratio_to_speed(column, speed_mps);
    if (!ratio || ratio->spread > one_motion) return std::nullopt;
    // What stands still or creeps is no speed of a car that drives evenly.
    constexpr double moves_more = 3.0;
    const auto still = ratio_to_speed(std::vector<double>(speed_mps.size(), 1.0), speed_mps);
    if (!written && still && still->spread < moves_more * ratio->spread) return std::nullopt;
    const double off = written ? std::abs(ratio->middle * base::definition(*written).factor - 1.0)
                               : unit_of_ratio(ratio->middle).misfit;
    if (off > (written ? fits_written : fits_unwritten)) return std::nullopt;
    return off + ratio->spread;
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
