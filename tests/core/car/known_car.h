// SPDX-License-Identifier: GPL-3.0-or-later
// A simulated session as lap traces, without the motion estimate: noisy speed and course at the logger's rate, smoothed
// by local quadratics of ±0.3 s or three samples, put on a grid of the true centre line.  So the car figures are tested
// on their own, with noise like that of a satellite receiver.
#pragma once

#include "core/lap/lap.h"
#include "core/track/track.h"
#include "truth/drive.h"
#include "truth/random.h"
#include "truth/suspension.h"
#include "truth/track_catalogue.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <optional>
#include <vector>

namespace lapwright::test {

struct KnownNoise {
    double rate_hz = 25.0;
    double speed_sd_mps = 0.04;
    double course_sd_rad = 0.15 * 3.14159265358979323846 / 180.0;
    bool pedals = true;
    bool engine_speed = false;
    std::optional<truth::SuspensionTruth> suspension = {};
};

// Local quadratic through noisy samples on an even clock.
struct SmoothedSignal {
    double rate_hz = 25.0;
    std::vector<double> samples;

    struct Value {
        double value = 0.0;
        double rate = 0.0;
    };
    [[nodiscard]] Value at(double time_s) const {
        const double half = std::max(0.3, 3.01 / rate_hz);
        double m[5] = {};
        double r[3] = {};
        const auto from = static_cast<std::ptrdiff_t>(std::ceil((time_s - half) * rate_hz));
        const auto to = static_cast<std::ptrdiff_t>(std::floor((time_s + half) * rate_hz));
        for (std::ptrdiff_t i = std::max<std::ptrdiff_t>(0, from); i <= to && i < std::ssize(samples); ++i) {
            const double t = static_cast<double>(i) / rate_hz - time_s;
            const double w = 1.0 - t * t / (half * half) * 0.999;
            double power = w;
            for (int k = 0; k < 5; ++k) {
                m[k] += power;
                if (k < 3) r[k] += power * samples[static_cast<std::size_t>(i)];
                power *= t;
            }
        }
        // The window is nearly symmetric: solve the 3 by 3 normal equations by Cramer's rule.
        const auto det = [](double a, double b, double c, double d, double e, double f, double p, double q, double s) {
            return a * (e * s - f * q) - b * (d * s - f * p) + c * (d * q - e * p);
        };
        const double whole = det(m[0], m[1], m[2], m[1], m[2], m[3], m[2], m[3], m[4]);
        return {det(r[0], m[1], m[2], r[1], m[2], m[3], r[2], m[3], m[4]) / whole,
                det(m[0], r[0], m[2], m[1], r[1], m[3], m[2], r[2], m[4]) / whole};
    }
};

inline std::vector<track::Segment> true_segments(const truth::TrackShape& shape) {
    std::vector<track::Segment> segments;
    for (const truth::TrackSegment& from : shape.segments()) {
        track::Segment s;
        s.name = from.name;
        s.kind = from.is_corner ? track::SegmentKind::corner : track::SegmentKind::straight;
        s.start_m = from.start_m;
        s.end_m = from.end_m;
        segments.push_back(s);
    }
    return segments;
}

// The clean flying laps of a session.
inline std::vector<lap::LapTrace> known_traces(const truth::Session& session, const KnownNoise& noise,
                                               std::uint64_t seed, double step_m = 2.0) {
    truth::Random random(seed, 99);
    SmoothedSignal speed{noise.rate_hz, {}};
    SmoothedSignal course{noise.rate_hz, {}};
    const auto count = static_cast<std::size_t>(session.duration_s() * noise.rate_hz);
    for (std::size_t i = 0; i < count; ++i) {
        const truth::TruthSample s = session.at_time(static_cast<double>(i) / noise.rate_hz);
        speed.samples.push_back(s.speed_mps + noise.speed_sd_mps * random.normal());
        course.samples.push_back(s.heading_rad + noise.course_sd_rad * random.normal());
    }
    std::vector<lap::LapTrace> traces;
    const double length = session.track().length_m();
    for (const truth::LapTruth& lap : session.laps()) {
        if (lap.kind != truth::LapKind::flying) continue;
        lap::LapTrace trace;
        const auto cells = static_cast<std::size_t>(std::round(length / step_m));
        lap::TraceChannel throttle{"throttle", recording::Meaning::throttle, base::Unit::percent, {}};
        lap::TraceChannel brake{"brake", recording::Meaning::brake, base::Unit::percent, {}};
        lap::TraceChannel gear{"gear", recording::Meaning::gear, base::Unit::none, {}};
        lap::TraceChannel engine{"engine", recording::Meaning::engine_speed, base::Unit::revolution_per_minute, {}};
        std::array travels{
            lap::TraceChannel{"fl", recording::Meaning::suspension_front_left, base::Unit::millimetre, {}},
            lap::TraceChannel{"fr", recording::Meaning::suspension_front_right, base::Unit::millimetre, {}},
            lap::TraceChannel{"rl", recording::Meaning::suspension_rear_left, base::Unit::millimetre, {}},
            lap::TraceChannel{"rr", recording::Meaning::suspension_rear_right, base::Unit::millimetre, {}}};
        for (std::size_t i = 0; i <= cells; ++i) {
            const double station = length * static_cast<double>(i) / static_cast<double>(cells);
            const truth::TruthSample truth = session.at_unwrapped(length * lap.number + station);
            const auto v = speed.at(truth.time_s);
            trace.distance_m.push_back(station);
            trace.time_s.push_back(truth.time_s - lap.start_s);
            trace.speed_mps.push_back(v.value);
            trace.longitudinal_mps2.push_back(v.rate);
            trace.lateral_mps2.push_back(v.value * course.at(truth.time_s).rate);
            trace.offset_m.push_back(truth.offset_m);
            throttle.values.push_back(truth.throttle);
            brake.values.push_back(truth.brake);
            gear.values.push_back(truth.gear);
            engine.values.push_back(truth.engine_rpm / 60.0);
            if (!noise.suspension) continue;
            const auto pressed =
                truth::suspension_travel_m(*noise.suspension, session.car(), session.air_density(), truth);
            for (std::size_t wheel = 0; wheel < travels.size(); ++wheel)
                travels[wheel].values.push_back(pressed[wheel] + noise.suspension->noise_sd_m * random.normal());
        }
        if (noise.pedals) trace.channels = {throttle, brake, gear};
        if (noise.engine_speed) trace.channels.push_back(engine);
        if (noise.suspension) trace.channels.insert(trace.channels.end(), travels.begin(), travels.end());
        traces.push_back(std::move(trace));
    }
    return traces;
}

} // namespace lapwright::test
