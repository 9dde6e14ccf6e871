// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/nodes.h"

#include <algorithm>
#include <cmath>

namespace lapwright::motion {
namespace {

constexpr double same_moment_s = 5e-4;
// Faster receivers are averaged: a car does nothing in a fiftieth of a second.
constexpr double fastest_rate_hz = 31.0;
// Where nothing was measured for longer than the first, nodes stand this far apart: as dense as accelerations are worth
// it, else so that what a draw may do between two of them (√(q T⁵ / 3840) for jerk q) is a few millimetres.
constexpr double longest_step_s = 0.3;
constexpr double step_with_aids_s = 0.1;
constexpr double filled_step_s = 0.25;
// No accelerometer sample is taken for a node further away than this.
constexpr double widest_window_s = 0.06;

double median_step(const std::vector<double>& time_s) {
    std::vector<double> steps(time_s.size() - 1);
    for (std::size_t i = 0; i < steps.size(); ++i)
        steps[i] = time_s[i + 1] - time_s[i];
    const auto middle = steps.begin() + static_cast<std::ptrdiff_t>(steps.size() / 2);
    std::ranges::nth_element(steps, middle);
    return *middle;
}

// Nodes of one series merged with those that are there, both in order of time.
template <typename Write>
std::vector<Node> merged(const std::vector<Node>& nodes, const std::vector<double>& time_s, double latency_s,
                         const Write& write) {
    std::vector<Node> result;
    result.reserve(nodes.size() + time_s.size());
    std::size_t next = 0;
    for (std::size_t i = 0; i < time_s.size(); ++i) {
        const double moment = time_s[i] - latency_s;
        while (next < nodes.size() && nodes[next].time_s < moment + same_moment_s)
            result.push_back(nodes[next++]);
        if (result.empty() || moment - result.back().time_s > same_moment_s) {
            Node fresh;
            fresh.time_s = moment;
            result.push_back(fresh);
        }
        write(result.back(), i);
    }
    result.insert(result.end(), nodes.begin() + static_cast<std::ptrdiff_t>(next), nodes.end());
    return result;
}

bool split_between(const std::vector<double>& splits_s, double before, double after) {
    const auto split = std::ranges::upper_bound(splits_s, before);
    return split != splits_s.end() && *split <= after;
}

// Marks where the path starts afresh and fills what gaps remain.
std::vector<Node> joined(const std::vector<Node>& nodes, const Measurements& measured) {
    const bool has_aids = !measured.longitudinal_mps2.empty() || !measured.lateral_mps2.empty();
    const double step_s = has_aids ? step_with_aids_s : filled_step_s;
    std::vector<Node> result;
    result.reserve(nodes.size());
    for (const Node& node : nodes) {
        if (result.empty()) {
            result.push_back(node);
            continue;
        }
        const double before = result.back().time_s;
        const double gap = node.time_s - before;
        const bool afresh = gap > longest_bridge_s || split_between(measured.splits_s, before, node.time_s);
        if (!afresh && gap > longest_step_s) {
            const int pieces = static_cast<int>(std::ceil(gap / step_s));
            for (int i = 1; i < pieces; ++i) {
                Node filled;
                filled.time_s = before + gap * i / pieces;
                result.push_back(filled);
            }
        }
        result.push_back(node);
        result.back().starts_afresh = afresh;
    }
    return result;
}

// Value of a series at each node: the straight line through the samples nearer to it than to its neighbours.
class NodeReader {
  public:
    NodeReader(const Series& series, double latency_s)
        : series_(series), latency_s_(latency_s), step_s_(median_step(series.time_s)) {}

    double at(double moment_s, double reach_s) {
        const double moment = moment_s + latency_s_;
        const double reach = std::clamp(reach_s, 0.75 * step_s_, std::max(widest_window_s, 0.75 * step_s_));
        while (first_ < series_.size() && series_.time_s[first_] < moment - reach)
            ++first_;
        double n = 0.0, t = 0.0, y = 0.0, tt = 0.0, ty = 0.0;
        for (std::size_t i = first_; i < series_.size() && series_.time_s[i] < moment + reach; ++i) {
            const double dt = series_.time_s[i] - moment;
            n += 1.0;
            t += dt;
            y += series_.values[i];
            tt += dt * dt;
            ty += dt * series_.values[i];
        }
        if (n == 0.0) return absent;
        const double spread = tt - t * t / n;
        const bool may_lean = n > 1.0 && spread > 0.0 && std::fabs(t / n) <= 0.5 * step_s_ + same_moment_s;
        return may_lean ? y / n - (ty - t * y / n) / spread * (t / n) : std::fabs(t) < same_moment_s ? y : absent;
    }

  private:
    const Series& series_;
    double latency_s_;
    double step_s_;
    std::size_t first_ = 0;
};

void read_into(std::vector<Node>& nodes, const Series& series, double latency_s, double Node::* part) {
    if (series.size() < 2) return;
    NodeReader reader(series, latency_s);
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        const double before = i > 0 ? nodes[i].time_s - nodes[i - 1].time_s : widest_window_s;
        const double after = i + 1 < nodes.size() ? nodes[i + 1].time_s - nodes[i].time_s : widest_window_s;
        nodes[i].*part = reader.at(nodes[i].time_s, 0.5 * std::min(before, after));
    }
}

} // namespace

Series thinned(const Series& series, double rate_hz) {
    if (series.size() < 2) return series;
    const auto block = static_cast<std::size_t>(std::ceil(1.0 / (median_step(series.time_s) * rate_hz) - 1e-6));
    if (block <= 1) return series;
    Series result{{}, {}, series.name, series.left_out};
    for (std::size_t first = 0; first + block <= series.size(); first += block) {
        double time = 0.0;
        double value = 0.0;
        for (std::size_t i = first; i < first + block; ++i) {
            time += series.time_s[i];
            value += series.values[i];
        }
        // A block over a hole has no mean moment that would mean anything.
        if (series.time_s[first + block - 1] - series.time_s[first] > 2.0 / rate_hz) continue;
        result.time_s.push_back(time / static_cast<double>(block));
        result.values.push_back(value / static_cast<double>(block));
    }
    return result;
}

namespace {

std::vector<Node> at_positions(const Measurements& measured) {
    Series east{measured.position_time_s, std::vector<double>(measured.position_m.size()), {}, 0};
    Series north = east;
    std::ranges::transform(measured.position_m, east.values.begin(), &Vec2::east);
    std::ranges::transform(measured.position_m, north.values.begin(), &Vec2::north);
    east = thinned(east, fastest_rate_hz);
    north = thinned(north, fastest_rate_hz);
    return merged({}, east.time_s, 0.0,
                  [&](Node& node, std::size_t i) { node.position_m = {east.values[i], north.values[i]}; });
}

} // namespace

std::vector<Node> position_nodes(const Measurements& measured) {
    return joined(at_positions(measured), measured);
}

std::vector<Node> all_nodes(const Measurements& measured, const Latencies& latencies) {
    std::vector<Node> nodes = at_positions(measured);
    const Series speed = thinned(measured.speed, fastest_rate_hz);
    const Series course = thinned(measured.course, fastest_rate_hz);
    nodes = merged(nodes, speed.time_s, latencies.speed_s,
                   [&](Node& node, std::size_t i) { node.speed_mps = speed.values[i]; });
    nodes = merged(nodes, course.time_s, latencies.course_s,
                   [&](Node& node, std::size_t i) { node.course_rad = course.values[i]; });
    return joined(nodes, measured);
}

void add_aids(std::vector<Node>& nodes, const Measurements& measured, const Latencies& latencies) {
    read_into(nodes, measured.longitudinal_mps2, latencies.longitudinal_s, &Node::longitudinal_mps2);
    read_into(nodes, measured.lateral_mps2, latencies.lateral_s, &Node::lateral_mps2);
    read_into(nodes, measured.wheel_speed, latencies.wheel_s, &Node::wheel_speed_mps);
}

} // namespace lapwright::motion
