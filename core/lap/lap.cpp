// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lap/lap.h"

#include <algorithm>

namespace lapwright::lap {

std::string_view name(LapKind kind) {
    switch (kind) {
    case LapKind::out:
        return "out";
    case LapKind::flying:
        return "flying";
    case LapKind::in:
        return "in";
    case LapKind::incomplete:
        return "incomplete";
    }
    return "incomplete";
}

const TraceChannel* LapTrace::find(recording::Meaning meaning) const {
    const auto found = std::ranges::find(channels, meaning, &TraceChannel::meaning);
    return found == channels.end() ? nullptr : &*found;
}

std::size_t LapTrace::index_before(double distance) const {
    const double spacing = distance_m.back() / static_cast<double>(size() - 1);
    const double in_steps = std::clamp(distance / spacing, 0.0, static_cast<double>(size() - 1));
    auto i = std::min(static_cast<std::size_t>(in_steps), size() - 2);
    if (i > 0 && distance_m[i] > distance) --i;
    return i;
}

namespace {

double at(const LapTrace& trace, const std::vector<double>& values, double distance) {
    const std::size_t i = trace.index_before(distance);
    const double u =
        std::clamp((distance - trace.distance_m[i]) / (trace.distance_m[i + 1] - trace.distance_m[i]), 0.0, 1.0);
    return values[i] + u * (values[i + 1] - values[i]);
}

} // namespace

double LapTrace::time_at(double distance) const {
    return at(*this, time_s, distance);
}

double LapTrace::speed_at(double distance) const {
    return at(*this, speed_mps, distance);
}

} // namespace lapwright::lap
