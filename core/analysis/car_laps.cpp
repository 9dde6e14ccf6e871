// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/car_laps.h"

#include "core/car/slope.h"
#include "core/lap/trace_lap.h"
#include "core/math/statistics.h"

#include <optional>

namespace lapwright::analysis {
namespace {

using recording::Meaning;

// Median of a weather channel, where the logger had one.
std::optional<double> recorded(const recording::Recording& recording, Meaning meaning) {
    const recording::Channel* channel = recording.find(meaning);
    if (channel == nullptr || channel->values.empty()) return std::nullopt;
    return math::median(channel->values);
}

car::AirDensity air_of(const Session& session, const car::SetupSheet& setup) {
    car::AirConditions conditions = setup.conditions;
    const recording::Recording& recording = *session.recording;
    if (!conditions.temperature_k) conditions.temperature_k = recorded(recording, Meaning::air_temperature);
    if (!conditions.pressure_pa) conditions.pressure_pa = recorded(recording, Meaning::air_pressure);
    if (!conditions.humidity) conditions.humidity = recorded(recording, Meaning::humidity);
    const std::vector<double>& altitude = session.motion->altitude_m;
    if (!conditions.altitude_m && !altitude.empty()) conditions.altitude_m = math::median(altitude);
    return car::air_density(conditions);
}

// Altitude of one lap at its grid points, linear between its stamps; empty where it was not recorded all the way.
std::vector<double> altitude_of(const motion::MotionEstimate& motion, const lap::LapTrace& trace, double start_s) {
    const std::vector<double>& stamps = motion.altitude_time_s;
    if (stamps.size() < 2 || stamps.front() > start_s || stamps.back() < start_s + trace.lap_time_s()) return {};
    std::vector<double> values;
    values.reserve(trace.size());
    std::size_t k = 0;
    for (const double t_lap : trace.time_s) {
        const double t = start_s + t_lap;
        while (k + 2 < stamps.size() && stamps[k + 1] <= t)
            ++k;
        const double u = (t - stamps[k]) / (stamps[k + 1] - stamps[k]);
        values.push_back(motion.altitude_m[k] + u * (motion.altitude_m[k + 1] - motion.altitude_m[k]));
    }
    return values;
}

} // namespace

void CarLaps::take(const Session& session, const motion::MotionEstimate& motion, const lap::LapTrace& trace,
                   double start_s) {
    laps_.push_back(lap::with_channels(trace, start_s, *session.recording));
    auto altitude = altitude_of(motion, trace, start_s);
    if (!altitude.empty()) altitudes_.push_back(std::move(altitude));
}

car::CarData CarLaps::data(const Session& session, const car::SetupSheet& setup,
                           const std::vector<track::Segment>& segments, double length_sd) const {
    car::CarData data;
    data.laps = laps_;
    data.segments = segments;
    data.length_sd = length_sd;
    data.air = air_of(session, setup);
    data.mass = setup.mass;
    data.springs = setup.springs;
    data.known = setup.known;
    if (!laps_.empty() && altitudes_.size() == laps_.size())
        data.slope = car::slope_of(altitudes_, laps_.front().distance_m);
    return data;
}

} // namespace lapwright::analysis
