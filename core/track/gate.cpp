// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/track/gate.h"

#include "core/base/translation.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lapwright::track {
namespace {

using base::said;
using base::word;

// Laps of a file's own count are further apart than this.
constexpr double min_mark_apart_s = 10.0;

struct Across {
    double along_m; // signed distance behind (−) or past (+) the gate
    double sideways_m;
};

// A gate with its direction worked out once.
struct Line {
    explicit Line(const Gate& gate)
        : centre(gate.centre_m), c(std::cos(gate.heading_rad)), s(std::sin(gate.heading_rad)),
          half_width_m(gate.half_width_m) {}

    [[nodiscard]] Across across(Vec2 p) const {
        const double east = p.east - centre.east;
        const double north = p.north - centre.north;
        return {c * east + s * north, c * north - s * east};
    }

    Vec2 centre;
    double c;
    double s;
    double half_width_m;
};

// The root of the signed distance between two stamps that lie on either side (Illinois variant of regula falsi).
double root_between(const motion::Path& path, const Line& line, std::size_t index) {
    double left = (*path.time_s)[index];
    double right = (*path.time_s)[index + 1];
    double f_left = line.across(path.position_m[index]).along_m;
    double f_right = line.across(path.position_m[index + 1]).along_m;
    double middle = right;
    for (int step = 0; step < 60 && right - left > 1e-10; ++step) {
        middle = (left * f_right - right * f_left) / (f_right - f_left);
        const double f = line.across(path.at(middle, index).position_m).along_m;
        if (std::abs(f) < 1e-9) break;
        if (f < 0.0) {
            left = middle;
            f_left = f;
            f_right *= 0.5;
        } else {
            right = middle;
            f_right = f;
            f_left *= 0.5;
        }
    }
    return middle;
}

bool passes(const motion::Path& path, const Line& line, std::size_t i) {
    const Across before = line.across(path.position_m[i]);
    if (before.along_m >= 0.0) return false;
    const Across after = line.across(path.position_m[i + 1]);
    if (after.along_m < 0.0) return false;
    const double part = before.along_m / (before.along_m - after.along_m);
    return std::abs(before.sideways_m + part * (after.sideways_m - before.sideways_m)) <= line.half_width_m;
}

Gate gate_at(const motion::Moment& moment) {
    return {moment.position_m, std::atan2(moment.velocity_mps.north, moment.velocity_mps.east)};
}

// Samples at which a beacon pulse begins, or a lap number changes: upwards, or downwards where it counts what is left.
std::vector<std::size_t> changes(const recording::Channel& channel) {
    std::vector<std::size_t> up;
    std::vector<std::size_t> down;
    const bool pulse = channel.meaning == recording::Meaning::beacon;
    for (std::size_t i = 1; i < channel.size(); ++i) {
        const double before = channel.values[i - 1];
        const double here = channel.values[i];
        if (pulse ? before == 0.0 && here != 0.0 : here > before) up.push_back(i);
        if (!pulse && here < before) down.push_back(i);
    }
    return down.size() > up.size() ? down : up;
}

// Where the lap changed; nothing where most changes follow each other too fast for laps.
RecordedPassings lap_changes(const recording::Channel& channel) {
    RecordedPassings passings;
    std::size_t too_near = 0;
    for (const std::size_t i : changes(channel)) {
        const double before = (*channel.time_s)[i - 1];
        const double after = (*channel.time_s)[i];
        const double middle = 0.5 * (before + after);
        if (!passings.time_s.empty() && middle - passings.time_s.back() < min_mark_apart_s) {
            ++too_near;
            continue;
        }
        passings.time_s.push_back(middle);
        passings.error_s.push_back(0.5 * (after - before));
    }
    return too_near > passings.time_s.size() ? RecordedPassings{} : passings;
}

struct Source {
    recording::Meaning meaning;
    const char* words;
};

constexpr std::array passing_sources{Source{recording::Meaning::beacon, word("beacon channel of the file")},
                                     Source{recording::Meaning::lap_number, word("lap column of the file")}};

// The change whose place is nearest to the median of all: robust against a lap that was counted in the pit lane.
std::optional<Gate> middle_gate(const motion::Path& path, const std::vector<double>& times) {
    std::vector<double> east;
    std::vector<double> north;
    std::vector<motion::Moment> moments;
    for (const double t : times) {
        if (t < path.start_s() || t > path.end_s()) continue;
        const motion::Moment moment = path.at(t);
        if (moment.speed_mps() < 8.0) continue;
        moments.push_back(moment);
        east.push_back(moment.position_m.east);
        north.push_back(moment.position_m.north);
    }
    if (moments.size() < 2) return std::nullopt;
    const Vec2 centre{math::median(east), math::median(north)};
    const auto distance = [&](const motion::Moment& m) {
        return std::hypot(m.position_m.east - centre.east, m.position_m.north - centre.north);
    };
    const auto nearest = std::ranges::min_element(moments, {}, distance);
    return gate_at(*nearest);
}

} // namespace

std::vector<double> crossings(const motion::Path& path, const Gate& gate, double min_apart_s) {
    const Line line(gate);
    std::vector<double> times;
    for (std::size_t i = 0; i + 1 < path.size(); ++i) {
        if (!passes(path, line, i)) continue;
        const double t = root_between(path, line, i);
        if (times.empty() || t - times.back() >= min_apart_s) times.push_back(t);
    }
    return times;
}

std::optional<double> crossing_near(const motion::Path& path, const Gate& gate, double guess_s) {
    const Line line(gate);
    std::optional<double> best;
    const std::size_t last = path.index_before(guess_s + crossing_search_s);
    for (std::size_t i = path.index_before(guess_s - crossing_search_s); i <= last; ++i) {
        if (!passes(path, line, i)) continue;
        const double t = root_between(path, line, i);
        if (!best || std::abs(t - guess_s) < std::abs(*best - guess_s)) best = t;
    }
    return best;
}

std::optional<RecordedPassings> recorded_passings(const recording::Recording& recording) {
    for (const Source source : passing_sources) {
        const recording::Channel* channel = recording.find(source.meaning);
        if (!channel || !channel->time_s) continue;
        RecordedPassings passings = lap_changes(*channel);
        passings.origin = said(source.words);
        if (passings.time_s.size() >= 2) return passings;
    }
    return std::nullopt;
}

std::optional<ProposedGate> gate_from_channels(const motion::Path& path, const recording::Recording& recording) {
    for (const Source source : passing_sources) {
        const recording::Channel* channel = recording.find(source.meaning);
        if (!channel || !channel->time_s) continue;
        if (const auto gate = middle_gate(path, lap_changes(*channel).time_s))
            return ProposedGate{*gate, said(source.words)};
    }
    return std::nullopt;
}

} // namespace lapwright::track
