// SPDX-License-Identifier: GPL-3.0-or-later
// Files of the demo. JSON is written by hand here: a dozen keys, all text of our own (no character needs escaping).
#include "tests/truth/sample_sessions.h"

#include <cmath>
#include <numbers>

#include "tests/truth/geodesy.h"
#include "tests/truth/track_catalogue.h"

namespace truth {
namespace {

std::string quoted(const std::string& text) {
    return '"' + text + '"';
}

std::string segment_json(const TrackSegment& segment) {
    return "    {\"name\": " + quoted(segment.name) +
           ", \"kind\": " + (segment.is_corner ? "\"corner\"" : "\"straight\"") +
           ", \"start_m\": " + fixed_text(segment.start_m, 2) + ", \"end_m\": " + fixed_text(segment.end_m, 2) + "}";
}

} // namespace

Session drive_entry(const std::shared_ptr<const TrackShape>& track, const DemoEntry& entry) {
    return drive_session(track, entry.car, entry.driver, entry.plan, entry.drive_seed);
}

std::string track_record_json(const TrackShape& track) {
    const TrackPoint gate = track.at(0.0);
    const GeodeticOrigin place = from_local(track.origin(), gate.x_m, gate.y_m, track.height_m(0.0));
    const double course_deg = 90.0 - gate.bend.heading_rad * 180.0 / std::numbers::pi;
    std::string text = "{\n  \"name\": " + quoted(track.name()) +
                       ",\n  \"gate\": {\"latitude_deg\": " + fixed_text(place.latitude_deg, 8) +
                       ", \"longitude_deg\": " + fixed_text(place.longitude_deg, 8) +
                       ", \"heading_deg\": " + fixed_text(course_deg - 360.0 * std::floor(course_deg / 360.0), 4) +
                       ", \"half_width_m\": " + fixed_text(track.gate_half_width_m(), 1) +
                       "},\n  \"length_m\": " + fixed_text(track.length_m(), 2) + ",\n  \"segments\": [\n";
    const auto& segments = track.segments();
    for (std::size_t i = 0; i < segments.size(); ++i) {
        text += segment_json(segments[i]) + (i + 1 < segments.size() ? ",\n" : "\n");
    }
    return text + "  ]\n}\n";
}

std::string setup_json(const DemoEntry& entry) {
    std::string text = "{\n  \"mass_kg\": " + fixed_text(entry.car.mass_kg, 0) +
                       ",\n  \"mass_sd_kg\": 5,\n  \"driver\": " + quoted(entry.driver.name) +
                       ",\n  \"car\": " + quoted(entry.car_name) + ",\n  \"tyre\": " + quoted(entry.tyre) +
                       ",\n  \"items\": [\n";
    for (std::size_t i = 0; i < entry.setup.size(); ++i) {
        text += "    {\"name\": " + quoted(entry.setup[i].name) + ", \"value\": " + quoted(entry.setup[i].value) +
                (i + 1 < entry.setup.size() ? "},\n" : "}\n");
    }
    return text +
           "  ],\n  \"conditions\": {\"air_temperature_c\": " + fixed_text(entry.conditions.air_temperature_c, 1) +
           ", \"pressure_hpa\": " + fixed_text(entry.conditions.pressure_hpa, 1) +
           ", \"humidity_percent\": " + fixed_text(entry.conditions.humidity_percent, 0) + "}\n}\n";
}

std::vector<NamedText> sample_files() {
    const auto track = std::make_shared<const TrackShape>(ternbank());
    std::vector<NamedText> files{{"ternbank.track.json", track_record_json(*track)}};
    for (const DemoEntry& entry : demo_entries()) {
        const LoggedSession logged = log_session(drive_entry(track, entry), entry.logger, entry.logger_seed);
        files.push_back({entry.file, write_text(logged, entry.dialect)});
        files.push_back({entry.setup_file, setup_json(entry)});
    }
    return files;
}

} // namespace truth
