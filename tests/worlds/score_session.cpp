// SPDX-License-Identifier: GPL-3.0-or-later
// Each flying lap as the session alone times it.
#include <cmath>

#include "core/base/wording.h"
#include "tests/worlds/passings.h"
#include "tests/worlds/score_world.h"

namespace worlds {

using namespace lapwright;

namespace {

// How far the session's own map lies off during a lap.
Vec2 map_shift(const Entry& entry, const analysis::Session& session, const lap::Lap& lap) {
    Vec2 sum;
    double count = 0.0;
    for (double t = lap.start_s; t < lap.end_s; t += 0.5) {
        const Vec2 seen = session.motion->best.at(t).position_m;
        const Vec2 truly = true_place(entry, session.motion->frame, entry.true_time_s(t));
        sum = {sum.east + truly.east - seen.east, sum.north + truly.north - seen.north};
        count += 1.0;
    }
    return {sum.east / count, sum.north / count};
}

std::optional<double> true_lap_s(const Entry& entry, const analysis::Session& session, const lap::Lap& lap) {
    if (!entry.logger.has_positions) {
        const double length = entry.session->track().length_m();
        const double middle = entry.true_time_s(0.5 * (lap.start_s + lap.end_s));
        const double from = length * std::floor(entry.session->at_time(middle).unwrapped_m / length);
        return entry.session->time_at_unwrapped(from + length) - entry.session->time_at_unwrapped(from);
    }
    const Map map{session.motion->frame, map_shift(entry, session, lap)};
    const Vec2 direction{std::cos(session.gate.heading_rad), std::sin(session.gate.heading_rad)};
    const auto start = passing(entry, map, session.gate.centre_m, direction, entry.true_time_s(lap.start_s));
    const auto end = passing(entry, map, session.gate.centre_m, direction, entry.true_time_s(lap.end_s));
    return start && end ? std::optional(*end - *start) : std::nullopt;
}

} // namespace

void score_session(const Entry& entry, const analysis::Session& session, Score& score) {
    const std::string kind = kind_of(entry.logger);
    if (session.why_no_laps) {
        if (any_clean_lap(entry))
            score.breaches.push_back({"laps lost", entry.file_name + ": " + session.why_no_laps->what});
        return;
    }
    const double length = entry.session->track().length_m();
    for (const lap::Lap& lap : session.laps) {
        if (lap.kind != lap::LapKind::flying) continue;
        const auto at = [&](double t) { return entry.session->at_time(entry.true_time_s(t)).unwrapped_m; };
        if (std::abs(at(lap.end_s) - at(lap.start_s) - length) > 60.0) {
            score.breaches.push_back(
                {"a flying lap is no lap", entry.file_name + " lap " + std::to_string(lap.number) + " covers " +
                                               std::to_string(at(lap.end_s) - at(lap.start_s)) + " m"});
            continue;
        }
        const auto truly = true_lap_s(entry, session, lap);
        if (!truly || !lap.time_sd_s) continue;
        const double error = lap.time_s() - entry.shown_duration_s(*truly);
        const double half = base::half_width_95(*lap.time_sd_s);
        score.intervals.push_back({"lap time", kind, error, half, std::abs(error) <= half});
    }
}

} // namespace worlds
