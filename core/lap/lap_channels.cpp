// SPDX-License-Identifier: GPL-3.0-or-later
// Channels of the recording carried over to the lap's distance grid.
#include "core/lap/trace_lap.h"

#include <algorithm>
#include <limits>

namespace lapwright::lap {
namespace {

using recording::Meaning;

// Already in the trace, or of no use over one lap.
bool left_out(Meaning meaning) {
    switch (meaning) {
    case Meaning::latitude:
    case Meaning::longitude:
    case Meaning::east:
    case Meaning::north:
    case Meaning::speed:
    case Meaning::course:
    case Meaning::lap_number:
    case Meaning::lap_time:
    case Meaning::beacon:
        return true;
    default:
        return false;
    }
}

bool steps(Meaning meaning) {
    return meaning == Meaning::gear || meaning == Meaning::satellites;
}

// A hole is five of the channel's own steps, and at least half a second.
double longest_step_s(const recording::Channel& channel) {
    const double rate = channel.rate_hz();
    return std::max(0.5, rate > 0.0 ? 5.0 / rate : 0.5);
}

std::vector<double> sampled(const recording::Channel& channel, const LapTrace& trace, double lap_start_s) {
    constexpr double missing = std::numeric_limits<double>::quiet_NaN();
    std::vector<double> values(trace.size(), missing);
    const std::vector<double>& stamps = *channel.time_s;
    const double longest = longest_step_s(channel);
    const bool stepping = steps(channel.meaning);
    std::size_t k = 0;
    for (std::size_t i = 0; i < trace.size(); ++i) {
        const double t = lap_start_s + trace.time_s[i];
        while (k + 2 < stamps.size() && stamps[k + 1] <= t)
            ++k;
        if (stamps.size() < 2 || t < stamps[k] || t > stamps[k + 1] || stamps[k + 1] - stamps[k] > longest) continue;
        const double u = (t - stamps[k]) / (stamps[k + 1] - stamps[k]);
        values[i] = stepping ? channel.values[k] : channel.values[k] + u * (channel.values[k + 1] - channel.values[k]);
    }
    return values;
}

} // namespace

LapTrace with_channels(LapTrace trace, double lap_start_s, const recording::Recording& recording) {
    for (const recording::Channel& channel : recording.channels)
        if (!left_out(channel.meaning) && channel.size() > 0)
            trace.channels.push_back(
                {channel.name, channel.meaning, channel.source_unit, sampled(channel, trace, lap_start_s)});
    return trace;
}

} // namespace lapwright::lap
