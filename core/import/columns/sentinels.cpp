// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/columns/sentinels.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace lapwright::import {
namespace {

using recording::Meaning;

constexpr std::array never_negative{Meaning::speed,
                                    Meaning::wheel_speed,
                                    Meaning::course,
                                    Meaning::throttle,
                                    Meaning::brake,
                                    Meaning::brake_pressure,
                                    Meaning::satellites,
                                    Meaning::position_dilution,
                                    Meaning::position_accuracy,
                                    Meaning::humidity,
                                    Meaning::air_pressure,
                                    Meaning::engine_speed,
                                    Meaning::lap_number,
                                    Meaning::distance};
constexpr std::array codes{999.0,   9999.0, 99999.0, 999999.0,     9999999.0,    999.9,        9999.9, 32767.0, 32768.0,
                           65535.0, 655.35, 6553.5,  2147483647.0, 2147483648.0, 4294967295.0, 1e10,   1e20,    1e30};
// So many times as far from zero as the farthest value.
constexpr double far_off = 4.0;

struct Range {
    double least = std::numeric_limits<double>::infinity();
    double most = -std::numeric_limits<double>::infinity();
    std::size_t count = 0;
};

// Comparisons with NaN are false: what is absent does not count.
Range range_without(std::span<const double> values, double code) {
    Range range;
    for (const double value : values) {
        if (value == code || !(value == value)) continue;
        range.least = value < range.least ? value : range.least;
        range.most = value > range.most ? value : range.most;
        ++range.count;
    }
    return range;
}

bool is_code(double value) {
    return std::ranges::any_of(codes, [&](double code) { return std::abs(std::abs(value) - code) <= 1e-9 * code; });
}

bool is_never_negative(Meaning meaning) {
    return std::ranges::find(never_negative, meaning) != never_negative.end();
}

} // namespace

bool may_be_code(double least, double most, Meaning meaning) {
    return (least == -1.0 && is_never_negative(meaning)) || is_code(least) || is_code(most);
}

std::optional<double> sentinel_among(std::span<const double> written, Meaning meaning) {
    if (meaning == Meaning::other) return std::nullopt;
    const Range all = range_without(written, std::numeric_limits<double>::quiet_NaN());
    if (is_never_negative(meaning) && all.least == -1.0) {
        const Range rest = range_without(written, -1.0);
        if (rest.count > 0 && rest.least >= 0.0) return -1.0;
    }
    for (const double end : {all.least, all.most}) {
        if (!is_code(end)) continue;
        const Range rest = range_without(written, end);
        const double farthest = std::max(std::abs(rest.least), std::abs(rest.most));
        if (rest.count > 0 && std::abs(end) > far_off * farthest) return end;
    }
    return std::nullopt;
}

std::size_t blank_sentinels(std::span<double> written, Meaning meaning) {
    std::size_t blanked = 0;
    for (auto code = sentinel_among(written, meaning); code; code = sentinel_among(written, meaning)) {
        for (double& value : written) {
            if (value != *code) continue;
            value = std::numeric_limits<double>::quiet_NaN();
            ++blanked;
        }
    }
    return blanked;
}

} // namespace lapwright::import
