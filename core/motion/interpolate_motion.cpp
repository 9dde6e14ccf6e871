// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/interpolate_motion.h"

#include "core/base/translation.h"
#include "core/math/local_polynomial.h"
#include "core/motion/estimate_motion.h"
#include "core/motion/sections.h"

#include <algorithm>
#include <cmath>
#include <span>

namespace lapwright::motion {
namespace {

using base::said;

std::vector<Vec2> derivative(std::span<const double> time_s, std::span<const Vec2> values) {
    std::vector<double> east(values.size());
    std::vector<double> north(values.size());
    std::ranges::transform(values, east.begin(), &Vec2::east);
    std::ranges::transform(values, north.begin(), &Vec2::north);
    east = math::derivative(time_s, east);
    north = math::derivative(time_s, north);
    std::vector<Vec2> rates(values.size());
    for (std::size_t i = 0; i < rates.size(); ++i)
        rates[i] = {east[i], north[i]};
    return rates;
}

// Whether the series was measured close enough to a moment to be read off there.
bool covers(const Series& series, double moment_s) {
    const auto after = std::ranges::lower_bound(series.time_s, moment_s);
    if (after == series.time_s.end()) return !series.empty() && moment_s - series.time_s.back() < 1e-3;
    if (after == series.time_s.begin()) return *after - moment_s < 1e-3;
    return *after - *(after - 1) <= longest_joined_gap_s;
}

Vec2 velocity_at(const Measurements& measured, double moment_s, const Vec2& from_positions) {
    if (!covers(measured.speed, moment_s)) return from_positions;
    const double speed = math::interpolated(measured.speed.time_s, measured.speed.values, moment_s);
    if (covers(measured.course, moment_s)) {
        const double course = math::interpolated(measured.course.time_s, measured.course.values, moment_s);
        return {speed * std::sin(course), speed * std::cos(course)};
    }
    const double length = std::hypot(from_positions.east, from_positions.north);
    if (length < 1.0) return from_positions; // no direction to go by at a walk
    return {from_positions.east * speed / length, from_positions.north * speed / length};
}

// Positions of a section that is long enough to differentiate are joined to the path.
void append_section(MotionEstimate& result, std::vector<double>& stamps, const Measurements& measured,
                    const Section& section) {
    const std::span time = std::span(measured.position_time_s).subspan(section.first, section.end - section.first);
    const std::span position = std::span(measured.position_m).subspan(section.first, section.end - section.first);
    std::vector<Vec2> velocity = derivative(time, position);
    for (std::size_t i = 0; i < velocity.size(); ++i)
        velocity[i] = velocity_at(measured, time[i], velocity[i]);
    const std::vector<Vec2> acceleration = derivative(time, velocity);
    if (!stamps.empty()) result.bridges.push_back({stamps.back(), time.front()});
    stamps.insert(stamps.end(), time.begin(), time.end());
    result.best.position_m.insert(result.best.position_m.end(), position.begin(), position.end());
    result.best.velocity_mps.insert(result.best.velocity_mps.end(), velocity.begin(), velocity.end());
    result.best.acceleration_mps2.insert(result.best.acceleration_mps2.end(), acceleration.begin(), acceleration.end());
}

} // namespace

base::Result<MotionEstimate> interpolate_motion(const Measurements& measured) {
    MotionEstimate result;
    result.frame = measured.frame;
    result.source = measured.source;
    std::vector<double> stamps;
    for (const Section& section : sections(measured.position_time_s, measured.splits_s))
        if (section.end - section.first >= 2) append_section(result, stamps, measured, section);
    if (stamps.size() < 2)
        return base::Error{base::ErrorCode::no_motion,
                           {},
                           said("the session has no positions that follow each other"),
                           said("export the session with latitude and longitude")};
    result.best.time_s = std::make_shared<const std::vector<double>>(std::move(stamps));
    result.sensors.push_back({"position", {}, {}, {}, {}, measured.position_time_s.size(), 0});
    return result;
}

base::Result<MotionEstimate> interpolate_motion(const recording::Recording& recording) {
    const base::Result<LocalFrame> frame = natural_frame(recording);
    if (!frame) return frame.error();
    const base::Result<Measurements> measured = measurements(recording, *frame);
    if (!measured) return measured.error();
    return interpolate_motion(*measured);
}

} // namespace lapwright::motion
