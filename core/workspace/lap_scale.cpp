// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/lap_scale.h"

#include <algorithm>

namespace lapwright::workspace {
namespace {

// Ours, no source.
constexpr double same_track_share = 1.25;
constexpr double shortest_s = 0.5;
constexpr double longest_s = 5.0;

double fastest_alike(const std::vector<OpenSessions::Entry>& entries, double own_s) {
    double least_s = own_s;
    for (const auto& entry : entries)
        if (const lap::Lap* other = entry.session->fastest(); other && other->time_s() * same_track_share > own_s)
            least_s = std::min(least_s, other->time_s());
    return least_s;
}

} // namespace

LapScale lap_scale(const std::vector<OpenSessions::Entry>& entries) {
    LapScale scale;
    double furthest_s = shortest_s;
    for (const auto& entry : entries) {
        const lap::Lap* fastest = entry.session->fastest();
        if (!fastest) continue;
        const double from_s = fastest_alike(entries, fastest->time_s());
        scale.fastest_s[entry.key] = from_s;
        for (const lap::Lap& lap : entry.session->laps)
            if (lap.clean) furthest_s = std::max(furthest_s, lap.time_s() - from_s);
    }
    scale.full_s = std::min(furthest_s, longest_s);
    return scale;
}

std::vector<const lap::Lap*> in_order(const analysis::Session& session, LapOrder order) {
    std::vector<const lap::Lap*> laps;
    for (const lap::Lap& lap : session.laps)
        laps.push_back(&lap);
    if (order == LapOrder::time)
        std::ranges::stable_sort(laps, [](const lap::Lap* a, const lap::Lap* b) {
            const bool flies_a = a->kind == lap::LapKind::flying;
            const bool flies_b = b->kind == lap::LapKind::flying;
            return flies_a != flies_b ? flies_a : flies_a && a->time_s() < b->time_s();
        });
    return laps;
}

} // namespace lapwright::workspace
