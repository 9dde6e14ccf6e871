// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/known_track.h"

#include "core/analysis/dead_reckoned_session.h"
#include "core/book/names.h"
#include "core/lap/find_laps.h"

#include <algorithm>
#include <cmath>

namespace lapwright::analysis {
namespace {

constexpr double length_share = 0.05; // a driver's line against the reference line, and another layout

double driven_m(const motion::Path& path, const lap::Lap& lap) {
    const std::vector<double>& time_s = *path.time_s;
    double length_m = 0.0;
    for (std::size_t i = path.index_before(lap.start_s); i + 1 < path.size() && time_s[i] < lap.end_s; ++i)
        length_m += std::hypot(path.position_m[i + 1].east - path.position_m[i].east,
                               path.position_m[i + 1].north - path.position_m[i].north);
    return length_m;
}

// How far the middle flying lap is from the record's length, as a share; nothing where the gate makes no such lap.
std::optional<double> misfit(const track::TrackRecord& record, const recording::Recording& recording,
                             const motion::MotionEstimate& motion) {
    std::vector<double> lengths_m;
    for (const lap::Lap& lap : lap::find_laps(motion, gate_of(record, motion), recording))
        if (lap.kind == lap::LapKind::flying) lengths_m.push_back(driven_m(motion.best, lap));
    if (lengths_m.empty()) return std::nullopt;
    if (record.length_m <= 0.0) return length_share;
    const auto middle = lengths_m.begin() + static_cast<std::ptrdiff_t>(lengths_m.size() / 2);
    std::nth_element(lengths_m.begin(), middle, lengths_m.end());
    const double share = std::abs(*middle / record.length_m - 1.0);
    return share <= length_share ? std::optional(share) : std::nullopt;
}

} // namespace

track::Gate gate_of(const track::TrackRecord& record, const motion::MotionEstimate& motion) {
    const motion::EastNorthUp centre = motion::to_local(motion.frame, record.gate.position);
    return {{centre.east_m, centre.north_m}, record.gate.heading_rad, record.gate.half_width_m};
}

std::optional<track::TrackRecord> driven_track(const std::vector<track::TrackRecord>& known,
                                               const recording::Recording& recording,
                                               const motion::MotionEstimate& motion) {
    const auto named = [&](const track::TrackRecord& record) { return book::same_name(record.name, recording.track); };
    if (is_dead_reckoned(motion)) {
        const auto found = std::ranges::find_if(known, named);
        return found == known.end() ? std::nullopt : std::optional(*found);
    }
    if (!motion.frame.on_earth) return std::nullopt;
    const track::TrackRecord* best = nullptr;
    double least = 0.0;
    for (const track::TrackRecord& record : known) {
        const auto share = misfit(record, recording, motion);
        if (!share) continue;
        const double rank = *share - (named(record) ? 1.0 : 0.0);
        if (best && rank >= least) continue;
        best = &record;
        least = rank;
    }
    return best ? std::optional(*best) : std::nullopt;
}

std::optional<track::TrackRecord> known_to_all(std::span<const std::shared_ptr<const Session>> sessions) {
    if (sessions.empty() || !sessions.front()->known_track) return std::nullopt;
    const track::TrackRecord& first = *sessions.front()->known_track;
    const bool same = std::ranges::all_of(sessions, [&](const std::shared_ptr<const Session>& session) {
        return session->known_track && book::same_name(session->known_track->name, first.name);
    });
    return same ? std::optional(first) : std::nullopt;
}

std::optional<book::KeptLine> line_to_keep(const track::Track& track,
                                           std::span<const std::shared_ptr<const Session>> sessions) {
    const auto reckoned = [](const std::shared_ptr<const Session>& session) {
        return is_dead_reckoned(*session->motion);
    };
    if (!track.frame.on_earth || std::ranges::all_of(sessions, reckoned)) return std::nullopt;
    return book::KeptLine{track.frame, track.line};
}

} // namespace lapwright::analysis
