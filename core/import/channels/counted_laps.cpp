// SPDX-License-Identifier: GPL-3.0-or-later
// The limits are common practice, no source.
#include "core/import/channels/counted_laps.h"

#include <algorithm>

namespace lapwright::import {
namespace {

using recording::Channel;
using recording::Meaning;
using recording::Recording;

constexpr std::size_t fewest_starts = 2;
constexpr double shortest_counted_s = 10.0;
constexpr double starts_below = 0.1; // of what it had reached

// A best or a last lap time stands still, and a trip that someone sets back does so at any time.
std::optional<std::vector<double>> numbers(const Channel& channel) {
    std::vector<double> laps{0.0};
    std::size_t onwards = 0;
    std::size_t starts = 0;
    double last_start_s = (*channel.time_s).front();
    for (std::size_t i = 1; i < channel.size(); ++i) {
        const double before = channel.values[i - 1];
        const double here = channel.values[i];
        const double time_s = (*channel.time_s)[i];
        if (here > before) ++onwards;
        const bool again = before > 0.0 && here >= 0.0 && here < starts_below * before;
        if (here < before && !again) return std::nullopt;
        if (again && time_s - last_start_s < shortest_counted_s) return std::nullopt;
        if (again) {
            ++starts;
            last_start_s = time_s;
        }
        laps.push_back(laps.back() + (again ? 1.0 : 0.0));
    }
    return starts >= fewest_starts && 2 * onwards > channel.size() ? std::optional(std::move(laps)) : std::nullopt;
}

} // namespace

std::optional<Channel> counted_laps(const Recording& recording) {
    if (recording.find(Meaning::lap_number) || recording.find(Meaning::beacon)) return std::nullopt;
    for (const Meaning meaning : {Meaning::lap_time, Meaning::distance}) {
        const Channel* const again = recording.find(meaning);
        if (!again || again->size() < 2) continue;
        auto laps = numbers(*again);
        if (!laps) continue;
        Channel counted = *again;
        counted.name = "Lap, counted by " + again->name;
        counted.meaning = Meaning::lap_number;
        counted.source_unit = base::Unit::none;
        counted.source_unit_text.clear();
        counted.values = std::move(*laps);
        return counted;
    }
    return std::nullopt;
}

} // namespace lapwright::import
