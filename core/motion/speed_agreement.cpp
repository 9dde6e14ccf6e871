// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/speed_agreement.h"

#include "core/math/statistics.h"

#include <cmath>

namespace lapwright::motion {
namespace {

using recording::WarningKind;

constexpr double chord_s = 1.0;
constexpr double longest_chord_s = 2.5;
constexpr double slowest_mps = 5.0;
constexpr double fastest_mps = 120.0; // faster is a jump of the positions
constexpr std::size_t min_chords = 20;
// A latency of some tenths shows as 3 m/s under full braking; a chord over a bend is a few per cent short.
constexpr double agree_mps = 3.0;
constexpr double agree_share = 0.06;
constexpr double min_share = 0.6;
constexpr double scale_of_a_wheel = 0.25; // no tyre is further off
constexpr double scale_of_a_receiver = 0.03;

struct Chords {
    std::vector<double> by_positions_mps;
    std::vector<double> readings_mps;
};

// -1: none.
double mean_reading(const Series& speed, std::size_t& at, double from_s, double to_s) {
    while (at < speed.size() && speed.time_s[at] < from_s)
        ++at;
    double sum = 0.0;
    double count = 0.0;
    for (std::size_t i = at; i < speed.size() && speed.time_s[i] <= to_s; ++i) {
        sum += speed.values[i];
        count += 1.0;
    }
    return count > 0.0 ? sum / count : -1.0;
}

Chords chords(const Measurements& measured) {
    Chords found;
    std::size_t at = 0;
    std::size_t from = 0;
    const std::vector<double>& time = measured.position_time_s;
    for (std::size_t to = 1; to < time.size(); ++to) {
        const double lasted_s = time[to] - time[from];
        if (lasted_s < chord_s) continue;
        const Vec2& p = measured.position_m[from];
        const Vec2& q = measured.position_m[to];
        const double by_positions = std::hypot(q.east - p.east, q.north - p.north) / lasted_s;
        const double reading = mean_reading(measured.speed, at, time[from], time[to]);
        from = to;
        if (lasted_s > longest_chord_s || by_positions < slowest_mps || by_positions > fastest_mps) continue;
        if (reading < 0.0) continue;
        found.by_positions_mps.push_back(by_positions);
        found.readings_mps.push_back(reading);
    }
    return found;
}

void drop_speed(Measurements& measured, std::vector<double> ratio) {
    measured.speed = {};
    measured.warnings.push_back({.kind = WarningKind::speed_contradicts_positions, .figures = std::move(ratio)});
}

} // namespace

std::optional<SpeedAgreement> speed_agreement(const Measurements& measured) {
    const Chords found = chords(measured);
    if (found.readings_mps.size() < min_chords) return std::nullopt;
    std::vector<double> ratios;
    for (std::size_t i = 0; i < found.readings_mps.size(); ++i)
        ratios.push_back(found.readings_mps[i] / found.by_positions_mps[i]);
    SpeedAgreement agreement{math::median(ratios), 0.0};
    for (std::size_t i = 0; i < ratios.size(); ++i) {
        const double off = std::fabs(found.readings_mps[i] / agreement.ratio - found.by_positions_mps[i]);
        if (off < agree_mps + agree_share * found.by_positions_mps[i])
            agreement.share += 1.0 / static_cast<double>(ratios.size());
    }
    return agreement;
}

void settle_speed(Measurements& measured) {
    if (measured.speed.empty() || !measured.has_positions()) return;
    const auto found = speed_agreement(measured);
    if (!found) return;
    const double off = found->ratio - 1.0;
    if (!(std::fabs(off) <= scale_of_a_wheel)) {
        drop_speed(measured, {found->ratio});
    } else if (found->share < min_share) {
        drop_speed(measured, {});
    } else if (std::fabs(off) > scale_of_a_receiver) {
        if (measured.wheel_speed.empty()) measured.wheel_speed = measured.speed;
        measured.speed = {};
        measured.warnings.push_back({.kind = WarningKind::speed_scale_off, .figures = {found->ratio}});
    }
}

} // namespace lapwright::motion
