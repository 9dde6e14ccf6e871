// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/gears.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace lapwright::comparison {
namespace {

using recording::Meaning;

// Common practice, no source: neighbouring gears are a tenth apart or more.
constexpr double min_speed_mps = 5.0;
constexpr double ratio_beside_s = 0.15; // the ratio is compared over this, to either side
constexpr double steady_log = 0.02;     // and changes less than this in gear
constexpr double apart_log = 0.03;
constexpr double widest_log = 0.08; // of one gear's ratios
constexpr double near_log = 0.035;
constexpr double min_held_s = 0.4; // in all

// ln of engine speed over speed; NaN where there is none.
std::vector<double> log_ratios(const lap::LapTrace& trace, const lap::TraceChannel& engine) {
    std::vector<double> ratios(trace.size(), std::nan(""));
    for (std::size_t i = 0; i < trace.size(); ++i)
        if (engine.values[i] > 0.0 && trace.speed_mps[i] > min_speed_mps)
            ratios[i] = std::log(engine.values[i] / trace.speed_mps[i]);
    return ratios;
}

struct Held {
    double log_ratio = 0.0;
    double time_s = 0.0;
};

std::vector<Held> held_ratios(const lap::LapTrace& trace, const std::vector<double>& ratios) {
    std::vector<Held> held;
    std::size_t before = 0;
    std::size_t behind = 0;
    for (std::size_t i = 0; i + 1 < trace.size(); ++i) {
        while (trace.time_s[i] - trace.time_s[before] > ratio_beside_s)
            ++before;
        while (behind + 1 < trace.size() && trace.time_s[behind] - trace.time_s[i] < ratio_beside_s)
            ++behind;
        const bool steady =
            std::abs(ratios[behind] - ratios[i]) < steady_log && std::abs(ratios[i] - ratios[before]) < steady_log;
        if (steady) held.push_back({ratios[i], trace.time_s[i + 1] - trace.time_s[i]});
    }
    std::ranges::sort(held, {}, &Held::log_ratio);
    return held;
}

// The gears' ratios, smallest (the longest gear) first; empty when they do not stand apart.
std::vector<double> gear_ratios(const std::vector<Held>& held) {
    std::vector<double> gears;
    std::size_t first = 0;
    for (std::size_t i = 1; i <= held.size(); ++i) {
        if (i < held.size() && held[i].log_ratio - held[i - 1].log_ratio < apart_log) continue;
        double time_s = 0.0;
        for (std::size_t j = first; j < i; ++j)
            time_s += held[j].time_s;
        if (time_s >= min_held_s) {
            if (held[i - 1].log_ratio - held[first].log_ratio > widest_log) return {};
            gears.push_back(held[(first + i) / 2].log_ratio);
        }
        first = i;
    }
    return gears;
}

} // namespace

std::optional<lap::TraceChannel> gears_from_engine_speed(const lap::LapTrace& trace) {
    const lap::TraceChannel* engine = trace.find(Meaning::engine_speed);
    if (engine == nullptr || trace.find(Meaning::gear) != nullptr) return std::nullopt;
    const std::vector<double> ratios = log_ratios(trace, *engine);
    const std::vector<double> gears = gear_ratios(held_ratios(trace, ratios));
    if (gears.empty()) return std::nullopt;
    lap::TraceChannel channel{"gear", Meaning::gear, base::Unit::none, std::vector<double>(trace.size(), 0.0)};
    for (std::size_t i = 0; i < trace.size(); ++i) {
        if (std::isnan(engine->values[i])) channel.values[i] = std::nan("");
        if (std::isnan(ratios[i])) continue;
        const auto nearest =
            std::ranges::min_element(gears, {}, [&](double gear) { return std::abs(gear - ratios[i]); });
        if (std::abs(*nearest - ratios[i]) < near_log) channel.values[i] = static_cast<double>(gears.end() - nearest);
    }
    return channel;
}

} // namespace lapwright::comparison
