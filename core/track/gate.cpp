// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/track/gate.h"

#include "core/math/statistics.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lapwright::track {
namespace {

constexpr double search_s = 2.0;
constexpr double candidate_spacing_m = 25.0;
constexpr double candidate_stretch_m =
    12000.0; // longer than any lap that a club car drives, in two sessions of one track

struct Across {
    double along_m; // signed distance behind (−) or past (+) the gate
    double sideways_m;
};

// A gate with its direction worked out once: proposing one asks millions of times.
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

// Where the lap changed, from a beacon pulse or from a lap number that grows.
RecordedPassings lap_changes(const recording::Channel& channel) {
    RecordedPassings passings;
    const bool pulse = channel.meaning == recording::Meaning::beacon;
    for (std::size_t i = 1; i < channel.size(); ++i) {
        const bool change = pulse ? channel.values[i] != 0.0 && channel.values[i - 1] == 0.0
                                  : channel.values[i] > channel.values[i - 1];
        if (!change) continue;
        const double before = (*channel.time_s)[i - 1];
        const double after = (*channel.time_s)[i];
        passings.time_s.push_back(0.5 * (before + after));
        passings.error_s.push_back(0.5 * (after - before));
    }
    return passings;
}

struct Source {
    recording::Meaning meaning;
    const char* words;
};

constexpr std::array passing_sources{Source{recording::Meaning::beacon, "beacon channel of the file"},
                                     Source{recording::Meaning::lap_number, "lap column of the file"}};

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

std::vector<double> crossings(const motion::Path& path, const Gate& gate, double least_apart_s) {
    const Line line(gate);
    std::vector<double> times;
    for (std::size_t i = 0; i + 1 < path.size(); ++i) {
        if (!passes(path, line, i)) continue;
        const double t = root_between(path, line, i);
        if (times.empty() || t - times.back() >= least_apart_s) times.push_back(t);
    }
    return times;
}

std::optional<double> crossing_near(const motion::Path& path, const Gate& gate, double guess_s) {
    const Line line(gate);
    std::optional<double> best;
    const std::size_t last = path.index_before(guess_s + search_s);
    for (std::size_t i = path.index_before(guess_s - search_s); i <= last; ++i) {
        if (!passes(path, line, i)) continue;
        const double t = root_between(path, line, i);
        if (!best || std::abs(t - guess_s) < std::abs(*best - guess_s)) best = t;
    }
    return best;
}

std::optional<RecordedPassings> recorded_passings(const recording::Recording& recording) {
    constexpr double least_apart_s = 10.0;
    for (const Source source : passing_sources) {
        const recording::Channel* channel = recording.find(source.meaning);
        if (!channel || !channel->time_s) continue;
        const RecordedPassings all = lap_changes(*channel);
        RecordedPassings passings{{}, {}, source.words};
        for (std::size_t i = 0; i < all.time_s.size(); ++i) {
            if (!passings.time_s.empty() && all.time_s[i] - passings.time_s.back() < least_apart_s) continue;
            passings.time_s.push_back(all.time_s[i]);
            passings.error_s.push_back(all.error_s[i]);
        }
        if (passings.time_s.size() >= 2) return passings;
    }
    return std::nullopt;
}

std::optional<ProposedGate> gate_from_channels(const motion::Path& path, const recording::Recording& recording) {
    for (const Source source : passing_sources) {
        const recording::Channel* channel = recording.find(source.meaning);
        if (!channel) continue;
        if (const auto gate = middle_gate(path, lap_changes(*channel).time_s)) return ProposedGate{*gate, source.words};
    }
    return std::nullopt;
}

std::optional<ProposedGate> propose_gate(const motion::Path& path) {
    struct Candidate {
        Gate gate;
        std::size_t passings;
        double speed_mps;
    };
    // Start a third into the session, so that the out lap's slow places and the pit lane are not tried first.
    double driven_m = 0.0;
    double next_m = 0.0;
    std::optional<Candidate> best;
    for (std::size_t i = path.size() / 3; i + 1 < path.size() && driven_m < candidate_stretch_m; ++i) {
        driven_m += std::hypot(path.position_m[i + 1].east - path.position_m[i].east,
                               path.position_m[i + 1].north - path.position_m[i].north);
        const motion::Moment moment = path.at((*path.time_s)[i], i);
        if (driven_m < next_m || moment.speed_mps() < 8.0) continue;
        next_m = driven_m + candidate_spacing_m;
        const Gate gate = gate_at(moment);
        const std::size_t passings = crossings(path, gate).size();
        if (passings < 2) continue;
        const Candidate candidate{gate, passings, moment.speed_mps()};
        if (!best || candidate.passings > best->passings ||
            (candidate.passings == best->passings && candidate.speed_mps > best->speed_mps))
            best = candidate;
    }
    if (!best) return std::nullopt;
    return ProposedGate{best->gate, "proposed by the program on the fastest straight"};
}

} // namespace lapwright::track
