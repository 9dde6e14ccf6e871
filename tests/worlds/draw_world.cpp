// SPDX-License-Identifier: GPL-3.0-or-later
#include <cstdio>

#include "tests/worlds/draws.h"
#include "tests/worlds/world.h"

namespace worlds {
namespace {

const char* ending(FileForm form) {
    return form == FileForm::gpx ? ".gpx" : form == FileForm::nmea ? ".nmea" : ".csv";
}

Entry draw_entry(std::uint64_t seed, std::uint64_t stream, const std::shared_ptr<const truth::TrackShape>& track) {
    Entry entry;
    entry.car = draw_car(seed, stream);
    entry.driver = draw_driver(seed, stream, track->corners().size());
    entry.plan = draw_outing(seed, stream, *track);
    entry.stated = draw_stated(seed, stream, entry.car.mass_kg, entry.plan.air_density);
    entry.logger = draw_logger(seed, stream);
    draw_suspension(seed, stream, entry);
    entry.file_name = std::string(stream == 0 ? "a" : "b") + ending(entry.logger.form);
    entry.session = std::make_shared<const truth::Session>(
        truth::drive_session(track, entry.car, entry.driver, entry.plan, 1000 * seed + stream));
    write_file(entry, truth::log_session(*entry.session, entry.logger.spec, 2000 * seed + stream));
    return entry;
}

std::string words_of(const Entry& entry) {
    const LoggerPlan& logger = entry.logger;
    std::string words = logger.form == FileForm::gpx ? "GPX" : logger.form == FileForm::nmea ? "NMEA" : "table";
    words += ", " + std::to_string(static_cast<int>(logger.spec.position.rate_hz)) + " Hz";
    if (!logger.has_positions) words += ", no positions";
    if (!logger.has_speed) words += ", no speed";
    if (logger.has_lap_column) words += ", lap column";
    if (!logger.spec.drop_outs.empty())
        words += logger.freezes ? ", frozen fixes" : logger.writes_zeros ? ", zeros" : ", drop-outs";
    if (entry.stated.springs) words += ", suspension travel";
    if (!entry.plan.pit_lane) words += ", starts on the track";
    words += ", " + std::to_string(entry.plan.flying_laps) + " laps";
    if (entry.plan.traffic_lap > 0) words += ", traffic in " + std::to_string(entry.plan.traffic_lap);
    if (!entry.plan.mistakes.empty()) words += ", " + std::to_string(entry.plan.mistakes.size()) + " mistakes";
    return words;
}

} // namespace

World draw_world(std::uint64_t seed) {
    World world;
    world.seed = seed;
    world.track = draw_track(seed);
    world.a = draw_entry(seed, 0, world.track);
    world.b = draw_entry(seed, 1, world.track);
    world.in_words = std::to_string(static_cast<int>(world.track->length_m())) + " m, " +
                     std::to_string(world.track->corners().size()) + " corners; A: " + words_of(world.a) +
                     "; B: " + words_of(world.b);
    return world;
}

} // namespace worlds
