// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/measurements.h"

#include "core/base/constants.h"
#include "core/base/parallel.h"
#include "core/base/translation.h"
#include "core/math/local_polynomial.h"
#include "core/motion/derived_speed.h"
#include "core/motion/frozen.h"
#include "core/motion/speed_agreement.h"
#include "core/motion/spikes.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace lapwright::motion {
namespace {

using base::said;
using recording::Channel;
using recording::Meaning;

constexpr double earth_radius_m = 6378137.0; // WGS 84, semi-major axis
// Where a logger writes a slow sensor into a fast table, at least this share of its samples repeats the one before.
constexpr double repeated_share = 0.45;
// Spikes up to this size are left to the smoother.
constexpr double harmless_mps = 0.5;
constexpr double harmless_rad = 0.1;

Series series_of(const recording::Recording& recording, Meaning meaning) {
    const Channel* channel = recording.find(meaning);
    if (!channel || !channel->time_s || channel->size() < 2) return {};
    return without_repeats({*channel->time_s, channel->values, channel->name, 0});
}

// The second channel's values at the first one's stamps.
std::vector<double> on_stamps_of(const Channel& first, const Channel& second) {
    if (first.time_s == second.time_s || *first.time_s == *second.time_s) return second.values;
    std::vector<double> values(first.size());
    for (std::size_t i = 0; i < values.size(); ++i)
        values[i] = math::interpolated(*second.time_s, second.values, (*first.time_s)[i]);
    return values;
}

// Index of the samples that say something new of the pair.
std::vector<std::size_t> fresh_samples(const std::vector<double>& first, const std::vector<double>& second) {
    std::vector<std::size_t> fresh;
    for (std::size_t i = 0; i < first.size(); ++i)
        if (i == 0 || first[i] != first[i - 1] || second[i] != second[i - 1]) fresh.push_back(i);
    const auto repeats = static_cast<double>(first.size() - fresh.size());
    if (repeats >= repeated_share * static_cast<double>(first.size())) return fresh;
    fresh.resize(first.size());
    for (std::size_t i = 0; i < fresh.size(); ++i)
        fresh[i] = i;
    return fresh;
}

// The resolution of the writing, m.
double add_satellite_positions(Measurements& result, const Channel& latitude, const Channel& longitude) {
    const std::vector<double> longitudes = on_stamps_of(latitude, longitude);
    std::vector<std::size_t> fixes = fresh_samples(latitude.values, longitudes);
    result.positions_left_out += std::erase_if(fixes, [&](std::size_t i) {
        return latitude.values[i] == 0.0 && longitudes[i] == 0.0; // a receiver's word for "no fix"
    });
    result.position_time_s.resize(fixes.size());
    result.position_m.resize(fixes.size());
    constexpr std::size_t together = 4096;
    base::parallel_for(fixes.size() / together + 1, 0, [&](std::size_t block) {
        for (std::size_t k = block * together; k < std::min(fixes.size(), (block + 1) * together); ++k) {
            const std::size_t i = fixes[k];
            const EastNorthUp local =
                to_local(result.frame, {latitude.values[i], longitudes[i], result.frame.origin.height_m});
            result.position_time_s[k] = (*latitude.time_s)[i];
            result.position_m[k] = {local.east_m, local.north_m};
        }
    });
    result.source = PositionSource::satellites;
    return earth_radius_m *
           std::max(quantisation(latitude.values), std::cos(latitude.values.front()) * quantisation(longitudes));
}

double add_metre_positions(Measurements& result, const Channel& east, const Channel& north) {
    const std::vector<double> norths = on_stamps_of(east, north);
    for (const std::size_t i : fresh_samples(east.values, norths)) {
        result.position_time_s.push_back((*east.time_s)[i]);
        result.position_m.push_back({east.values[i], norths[i]});
    }
    result.source = PositionSource::local_metres;
    return std::max(quantisation(east.values), quantisation(norths));
}

// Moments at which a fix only repeated another while the car moved; these fixes are gone then.
std::vector<double> leave_out_frozen_fixes(Measurements& result, double quantisation_m) {
    const std::vector<std::uint8_t> frozen =
        frozen_fixes({result.position_time_s, result.position_m, quantisation_m}, result.speed, result.splits_s);
    std::vector<double> moments;
    std::size_t kept = 0;
    for (std::size_t i = 0; i < frozen.size(); ++i) {
        if (frozen[i] != 0) {
            moments.push_back(result.position_time_s[i]);
            continue;
        }
        result.position_time_s[kept] = result.position_time_s[i];
        result.position_m[kept++] = result.position_m[i];
    }
    result.position_time_s.resize(kept);
    result.position_m.resize(kept);
    result.positions_left_out += moments.size();
    if (!moments.empty())
        result.warnings.push_back({.kind = recording::WarningKind::fixes_frozen, .seen = {moments.size(), {}}});
    return moments;
}

void leave_out_frozen_velocity(Measurements& result, const std::vector<double>& frozen_fix_s) {
    std::vector<double> frozen_s;
    std::ranges::set_union(frozen_fix_s, frozen_velocity_s(result.speed, result.course), std::back_inserter(frozen_s));
    result.speed = without(result.speed, frozen_values(result.speed, frozen_s));
    result.course = without(result.course, frozen_values(result.course, frozen_s));
}

// Single positions that a car could not have driven to and back from, though it could well have driven past them; and
// short spikes in a fast receiver's.  False: nobody wants it any more.
bool leave_out_spikes(Measurements& result, const auto& go_on) {
    constexpr double fastest_mps = 150.0;
    constexpr double nearest_m = 3.0;
    constexpr double harmless_m = 0.5;
    const std::vector<double> time = std::move(result.position_time_s);
    const std::vector<Vec2> position = std::move(result.position_m);
    result.position_time_s.clear();
    result.position_m.clear();
    const auto too_far = [&](std::size_t i, std::size_t j) {
        const double distance = std::hypot(position[j].east - position[i].east, position[j].north - position[i].north);
        return distance > nearest_m + fastest_mps * (time[j] - time[i]);
    };
    const auto spikes_of = [&](double Vec2::* part) {
        std::vector<double> values(position.size());
        std::ranges::transform(position, values.begin(), part);
        return spikes(time, values, harmless_m);
    };
    std::vector<std::uint8_t> east;
    std::vector<std::uint8_t> north;
    base::parallel_for(
        2, 0, [&](std::size_t i) { (i == 0 ? east : north) = spikes_of(i == 0 ? &Vec2::east : &Vec2::north); });
    if (!go_on()) return false;
    for (std::size_t i = 0; i < time.size(); ++i) {
        const bool between = i > 0 && i + 1 < time.size();
        const bool impossible = between && too_far(i - 1, i) && too_far(i, i + 1) && !too_far(i - 1, i + 1);
        if (impossible || east[i] != 0 || north[i] != 0) {
            ++result.positions_left_out;
            continue;
        }
        result.position_time_s.push_back(time[i]);
        result.position_m.push_back(position[i]);
    }
    return true;
}

void unwrap(std::vector<double>& angles_rad) {
    constexpr double turn = 2.0 * base::pi;
    for (std::size_t i = 1; i < angles_rad.size(); ++i)
        angles_rad[i] -= turn * std::round((angles_rad[i] - angles_rad[i - 1]) / turn);
}

// A compass course is against the meridian of the place, the frame's north against that of the origin.
void turn_course_into_frame(Measurements& result) {
    if (!result.frame.on_earth || !result.has_positions()) return;
    const double per_metre = std::tan(result.frame.origin.latitude_rad) / earth_radius_m;
    std::vector<double> east(result.position_m.size());
    std::ranges::transform(result.position_m, east.begin(), &Vec2::east);
    for (std::size_t i = 0; i < result.course.size(); ++i)
        result.course.values[i] -=
            per_metre * math::interpolated(result.position_time_s, east, result.course.time_s[i]);
}

} // namespace

Series without_repeats(Series series) {
    Series fresh{{}, {}, series.name, series.left_out};
    std::size_t standing = 0; // a value of nothing repeats because nothing happens
    for (std::size_t i = 0; i < series.size(); ++i) {
        if (i > 0 && series.values[i] == series.values[i - 1]) {
            if (series.values[i] == 0.0) ++standing;
            if (series.values[i] != 0.0) continue;
        }
        fresh.time_s.push_back(series.time_s[i]);
        fresh.values.push_back(series.values[i]);
    }
    const auto moving = static_cast<double>(series.size() - standing);
    const auto repeats = static_cast<double>(series.size() - fresh.size());
    return repeats >= repeated_share * moving && fresh.size() >= 2 ? fresh : series;
}

base::Result<Measurements> measurements(const recording::Recording& recording, const LocalFrame& frame,
                                        const base::Progress& progress) {
    Measurements result;
    result.frame = frame;
    result.splits_s = recording.splits_s;
    const Channel* latitude = recording.find(Meaning::latitude);
    const Channel* longitude = recording.find(Meaning::longitude);
    const Channel* east = recording.find(Meaning::east);
    const Channel* north = recording.find(Meaning::north);
    result.speed = series_of(recording, Meaning::speed);
    double quantisation_m = 0.0;
    if (frame.on_earth && latitude && longitude)
        quantisation_m = add_satellite_positions(result, *latitude, *longitude);
    if (!frame.on_earth && east && north) quantisation_m = add_metre_positions(result, *east, *north);
    if (is_derived(result.speed, result.position_time_s, result.position_m)) result.speed = {};
    const std::vector<double> frozen_fix_s = leave_out_frozen_fixes(result, quantisation_m);
    const auto go_on = [&] { return base::go_on(progress, said("placing the positions"), 0.0); };
    if (!go_on() || !leave_out_spikes(result, go_on)) return base::cancelled();
    result.course = series_of(recording, Meaning::course);
    leave_out_frozen_velocity(result, frozen_fix_s);
    result.wheel_speed = series_of(recording, Meaning::wheel_speed);
    result.longitudinal_mps2 = series_of(recording, Meaning::longitudinal_acceleration);
    result.lateral_mps2 = series_of(recording, Meaning::lateral_acceleration);
    result.yaw_rate_radps = series_of(recording, Meaning::yaw_rate);
    if (!go_on()) return base::cancelled();
    unwrap(result.course.values);
    turn_course_into_frame(result);
    if (!go_on()) return base::cancelled();
    result.speed = without_spikes(result.speed, harmless_mps);
    settle_speed(result);
    if (!go_on()) return base::cancelled();
    result.course = without_spikes(result.course, harmless_rad);
    if (result.has_positions()) return result;
    result.source = PositionSource::dead_reckoning;
    if (!result.speed.empty() || !result.wheel_speed.empty()) return result;
    return base::Error{base::ErrorCode::no_motion,
                       {recording.source_file, {}, {}},
                       said("neither positions nor a speed were recorded"),
                       said("export the session with latitude and longitude, or with a speed")};
}

} // namespace lapwright::motion
