// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/end_to_end/driven.h"

#include "tests/truth/sample_sessions.h"
#include "tests/truth/track_catalogue.h"

#include <cmath>
#include <map>
#include <memory>
#include <stdexcept>

namespace lapwright::end_to_end {
namespace {

const truth::LoggerSpec receiver; // both sample loggers have its position errors

truth::TruthSample sample_at(const DrivenLap& lap, double station_m) {
    return lap.session->at_unwrapped(lap.number * lap.session->track().length_m() + station_m);
}

// Variance of one lap's time in a segment: a standing error on two axes, seen along the track at both ends.
double variance_s2(const DrivenLap& lap, const truth::TrackSegment& part) {
    const truth::TruthSample in = sample_at(lap, part.start_m);
    const truth::TruthSample out = sample_at(lap, part.end_m);
    const double x = std::cos(out.heading_rad) / out.speed_mps - std::cos(in.heading_rad) / in.speed_mps;
    const double y = std::sin(out.heading_rad) / out.speed_mps - std::sin(in.heading_rad) / in.speed_mps;
    // What the error wanders meanwhile.
    const double duration_s =
        lap.session->lap_clock_s(lap.number, part.end_m) - lap.session->lap_clock_s(lap.number, part.start_m);
    const double wander =
        2.0 * (1.0 - std::exp(-duration_s / receiver.position_bias_tau_s)) / (in.speed_mps * out.speed_mps);
    return receiver.position_bias_sd_m * receiver.position_bias_sd_m * (x * x + y * y + wander);
}

} // namespace

double DrivenLap::time_sd_s() const {
    const double speed_mps = sample_at(*this, 0.0).speed_mps;
    const double decorrelated = 2.0 * (1.0 - std::exp(-time_s() / receiver.position_bias_tau_s));
    return receiver.position_bias_sd_m * std::sqrt(decorrelated) / speed_mps;
}

const truth::Session& driven(const std::string& file) {
    static std::map<std::string, truth::Session> sessions;
    if (const auto found = sessions.find(file); found != sessions.end()) {
        return found->second;
    }
    const auto track = std::make_shared<const truth::TrackShape>(truth::ternbank());
    for (const truth::DemoEntry& entry : truth::demo_entries()) {
        if (entry.file == file) {
            return sessions.emplace(file, truth::drive_entry(track, entry)).first->second;
        }
    }
    throw std::invalid_argument(file + " is no sample session");
}

TrueGain true_gain(const std::string& segment, const DrivenLap& a, const DrivenLap& b) {
    const auto gap_s = [&](double station_m) {
        return b.session->lap_clock_s(b.number, station_m) - a.session->lap_clock_s(a.number, station_m);
    };
    for (const truth::TrackSegment& part : a.session->track().segments()) {
        if (part.name == segment) {
            return {gap_s(part.end_m) - gap_s(part.start_m), std::sqrt(variance_s2(a, part) + variance_s2(b, part))};
        }
    }
    throw std::invalid_argument("the track has no segment " + segment);
}

} // namespace lapwright::end_to_end
